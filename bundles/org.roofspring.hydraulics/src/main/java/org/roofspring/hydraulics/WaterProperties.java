package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * Liquid water at atmospheric pressure.
 *
 * <p>Density and viscosity: IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa
 * (also Patek et al., J. Phys. Chem. Ref. Data 38, 2009). Vapour pressure: IAPWS SR1-86(1992), Revised Supplementary
 * Release on Saturation Properties of Ordinary Water Substance (also Wagner and Pruss, 1993). The coefficients are from
 * memory and are checked against values of IAPWS-95 and R12-08. The pressure of a supply changes the density by less
 * than 0.05 % for each 1000 kPa, which is left out.
 *
 * @param temperatureC         temperature [degC], 0 to 60
 * @param densityKgPerM3       density [kg/m3]
 * @param dynamicViscosityPaS  dynamic viscosity [Pa.s]
 * @param vapourPressurePa     saturation pressure of vapour [Pa], absolute
 */
public record WaterProperties(double temperatureC, double densityKgPerM3, double dynamicViscosityPaS,
        double vapourPressurePa) {
    /** Coldest water accepted [degC]. */
    public static final double LOWEST_TEMPERATURE_C = 0;
    /** Hottest water accepted [degC]. */
    public static final double HIGHEST_TEMPERATURE_C = 60;

    private static final double GAS_CONSTANT_J_PER_KG_K = 461.51805;
    private static final double REFERENCE_TEMPERATURE_K = 10;
    private static final double REFERENCE_PRESSURE_PA = 1e5;
    private static final double CRITICAL_TEMPERATURE_K = 647.096;
    private static final double CRITICAL_PRESSURE_PA = 22.064e6;

    public WaterProperties {
        Require.within("water temperature", temperatureC, LOWEST_TEMPERATURE_C, HIGHEST_TEMPERATURE_C, "degC");
        Require.within("density", densityKgPerM3, 900, 1200, "kg/m3");
        Require.within("dynamic viscosity", dynamicViscosityPaS, 1e-4, 1e-2, "Pa.s");
        Require.within("vapour pressure", vapourPressurePa, 0, PhysicalConstants.STANDARD_ATMOSPHERE_PA, "Pa");
    }

    /**
     * Water at a temperature.
     *
     * @param temperatureC [degC], 0 to 60
     * @throws IllegalArgumentException outside that range
     */
    public static WaterProperties at(double temperatureC) {
        Require.within("water temperature", temperatureC, LOWEST_TEMPERATURE_C, HIGHEST_TEMPERATURE_C, "degC");
        double kelvin = temperatureC + 273.15;
        return new WaterProperties(temperatureC, density(kelvin), viscosity(kelvin), saturationPressure(kelvin));
    }

    /** Kinematic viscosity [m2/s]: dynamic viscosity over density. */
    public double kinematicViscosityM2PerS() {
        return dynamicViscosityPaS / densityKgPerM3;
    }

    /** The head of this water that a pressure holds up [m]: p / (rho g), p from -1e12 to 1e12 Pa. */
    public double headM(double pressurePa) {
        return Require.within("pressure", pressurePa, -1e12, 1e12, "Pa")
                / (densityKgPerM3 * PhysicalConstants.GRAVITY_M_PER_S2);
    }

    /** The pressure under a head of this water [Pa]: rho g h, h from -1e8 to 1e8 m. */
    public double pressurePa(double headM) {
        return Require.within("head", headM, -1e8, 1e8, "m") * densityKgPerM3 * PhysicalConstants.GRAVITY_M_PER_S2;
    }

    /** SR6-08 equation for the specific volume at 0.1 MPa, inverted. */
    private static double density(double kelvin) {
        double alpha = REFERENCE_TEMPERATURE_K / (593 - kelvin);
        double beta = REFERENCE_TEMPERATURE_K / (kelvin - 232);
        double alpha4 = Math.pow(alpha, 4);
        double sum = 1.93763157e-2
                + alpha4 * (6.74458446e3 + alpha * (-2.22521604e5
                        + alpha * alpha * (1.00231247e8 + alpha * (-1.63552118e9 + alpha * 8.32299658e9))))
                + beta * (5.78545292e-3 + beta * (-1.53195665e-2 + beta * (3.11337859e-2
                        + beta * (-4.23546241e-2 + beta * (3.38713507e-2 + beta * -1.19946761e-2)))));
        return REFERENCE_PRESSURE_PA / (GAS_CONSTANT_J_PER_KG_K * REFERENCE_TEMPERATURE_K * sum);
    }

    /** SR6-08 equation for the viscosity at 0.1 MPa. */
    private static double viscosity(double kelvin) {
        double t = kelvin / 300;
        return 1e-6 * (280.68 * Math.pow(t, -1.9) + 511.45 * Math.pow(t, -7.7) + 61.131 * Math.pow(t, -19.6)
                + 0.45903 * Math.pow(t, -40));
    }

    /** SR1-86 equation for the saturation pressure. */
    private static double saturationPressure(double kelvin) {
        double theta = 1 - kelvin / CRITICAL_TEMPERATURE_K;
        double root = Math.sqrt(theta);
        double theta3 = theta * theta * theta;
        double sum = theta * (-7.85951783 + 1.84408259 * root)
                + theta3 * (-11.7866497 + 22.6807411 * root - 15.9618719 * theta
                        + 1.80122502 * theta3 * theta * root);
        return CRITICAL_PRESSURE_PA * Math.exp(CRITICAL_TEMPERATURE_K / kelvin * sum);
    }
}
