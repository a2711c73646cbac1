package org.roofspring.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The catalogue of units. Factors are exact by definition unless a comment says otherwise (inch, foot, pound and US
 * gallon: International Yard and Pound Agreement 1959; imperial gallon 4.54609 L; standard gravity 9.80665 m/s2).
 */
public final class Units {
    private static final Map<String, Unit> BY_SYMBOL = new LinkedHashMap<>();
    private static final Map<String, Unit> BY_ALIAS = new LinkedHashMap<>();

    public static final Unit M = unit("m", Dimension.LENGTH, 1, 1);
    public static final Unit MM = unit("mm", Dimension.LENGTH, 1, 1000);
    public static final Unit CM = unit("cm", Dimension.LENGTH, 1, 100);
    public static final Unit UM = unit("um", Dimension.LENGTH, 1, 1e6, "\u00b5m", "\u03bcm");
    public static final Unit KM = unit("km", Dimension.LENGTH, 1000, 1);
    public static final Unit IN = unit("in", Dimension.LENGTH, 254, 10000);
    public static final Unit FT = unit("ft", Dimension.LENGTH, 3048, 10000);

    public static final Unit M2 = unit("m2", Dimension.AREA, 1, 1);
    public static final Unit MM2 = unit("mm2", Dimension.AREA, 1, 1e6);
    public static final Unit CM2 = unit("cm2", Dimension.AREA, 1, 1e4);
    public static final Unit HA = unit("ha", Dimension.AREA, 1e4, 1);
    public static final Unit FT2 = unit("ft2", Dimension.AREA, 9290304, 1e8);

    public static final Unit M3 = unit("m3", Dimension.VOLUME, 1, 1);
    public static final Unit L = unit("L", Dimension.VOLUME, 1, 1000, "l", "litre", "liter");
    public static final Unit ML = unit("mL", Dimension.VOLUME, 1, 1e6, "ml");
    public static final Unit GAL_US = unit("galUS", Dimension.VOLUME, 3785411784d, 1e12);
    public static final Unit GAL_IMP = unit("galImp", Dimension.VOLUME, 454609, 1e8);

    public static final Unit M3_PER_S = unit("m3/s", Dimension.FLOW, 1, 1);
    public static final Unit L_PER_S = unit("L/s", Dimension.FLOW, 1, 1000, "l/s");
    public static final Unit L_PER_MIN = unit("L/min", Dimension.FLOW, 1, 60_000, "l/min");
    public static final Unit L_PER_H = unit("L/h", Dimension.FLOW, 1, 3_600_000, "l/h");
    public static final Unit L_PER_D = unit("L/d", Dimension.FLOW, 1, 86_400_000, "l/d");
    public static final Unit M3_PER_H = unit("m3/h", Dimension.FLOW, 1, 3600);
    public static final Unit M3_PER_D = unit("m3/d", Dimension.FLOW, 1, 86_400);
    public static final Unit GPM = unit("gpm", Dimension.FLOW, 3785411784d, 60e12, "gpm(US)", "galUS/min");
    public static final Unit GAL_US_PER_D = unit("galUS/d", Dimension.FLOW, 3785411784d, 86_400e12);
    public static final Unit GAL_IMP_PER_MIN = unit("galImp/min", Dimension.FLOW, 454609, 60e8);
    public static final Unit GAL_IMP_PER_D = unit("galImp/d", Dimension.FLOW, 454609, 86_400e8);

    public static final Unit M_PER_S = unit("m/s", Dimension.VELOCITY, 1, 1);
    public static final Unit FT_PER_S = unit("ft/s", Dimension.VELOCITY, 3048, 10000);

    public static final Unit PA = unit("Pa", Dimension.PRESSURE, 1, 1);
    public static final Unit KPA = unit("kPa", Dimension.PRESSURE, 1000, 1);
    public static final Unit BAR = unit("bar", Dimension.PRESSURE, 100_000, 1);
    public static final Unit MBAR = unit("mbar", Dimension.PRESSURE, 100, 1, "hPa");
    /** Metre of water at 1000 kg/m3 and standard gravity; {@code m} means this where a pressure is expected. */
    public static final Unit M_HEAD = unit("m(head)", Dimension.PRESSURE, 9806.65, 1, "mH2O");
    /** Pound-force per square inch: 4.4482216152605 N over 6.4516e-4 m2. */
    public static final Unit PSI = unit("psi", Dimension.PRESSURE, 4.4482216152605, 6.4516e-4);

    public static final Unit W = unit("W", Dimension.POWER, 1, 1);
    public static final Unit KW = unit("kW", Dimension.POWER, 1000, 1);
    /** Mechanical horsepower, 550 ft.lbf/s. */
    public static final Unit HP = unit("hp", Dimension.POWER, 745.69987158227022, 1);

    public static final Unit J = unit("J", Dimension.ENERGY, 1, 1);
    public static final Unit WH = unit("Wh", Dimension.ENERGY, 3600, 1);
    public static final Unit KWH = unit("kWh", Dimension.ENERGY, 3_600_000, 1);

    public static final Unit J_PER_M3 = unit("J/m3", Dimension.SPECIFIC_ENERGY, 1, 1);
    public static final Unit WH_PER_M3 = unit("Wh/m3", Dimension.SPECIFIC_ENERGY, 3600, 1);
    public static final Unit KWH_PER_M3 = unit("kWh/m3", Dimension.SPECIFIC_ENERGY, 3_600_000, 1);

    public static final Unit S = unit("s", Dimension.DURATION, 1, 1);
    public static final Unit MIN = unit("min", Dimension.DURATION, 60, 1);
    public static final Unit H = unit("h", Dimension.DURATION, 3600, 1);
    public static final Unit D = unit("d", Dimension.DURATION, 86_400, 1, "day", "days");
    /** Mean Gregorian year, 365.2425 d. */
    public static final Unit YR = unit("yr", Dimension.DURATION, 365.2425 * 86_400, 1);

    public static final Unit DEG_C = unit("degC", Dimension.TEMPERATURE, 1, 1, "\u00b0C");
    public static final Unit DEG_F = offset("degF", 5, 9, -160.0 / 9.0, "\u00b0F");
    public static final Unit K = offset("K", 1, 1, -273.15);

    public static final Unit MM_PER_H = unit("mm/h", Dimension.INTENSITY, 1, 1);
    public static final Unit MM_PER_D = unit("mm/d", Dimension.INTENSITY, 1, 24);
    public static final Unit IN_PER_H = unit("in/h", Dimension.INTENSITY, 254, 10);

    public static final Unit MG_PER_L = unit("mg/L", Dimension.CONCENTRATION, 1, 1, "mg/l", "g/m3");
    public static final Unit UG_PER_L = unit("ug/L", Dimension.CONCENTRATION, 1, 1000, "\u00b5g/L");
    public static final Unit G_PER_L = unit("g/L", Dimension.CONCENTRATION, 1000, 1);
    public static final Unit MG_MIN_PER_L = unit("mg.min/L", Dimension.CONTACT_TIME, 1, 1);
    public static final Unit MJ_PER_CM2 = unit("mJ/cm2", Dimension.UV_DOSE, 1, 1);
    public static final Unit J_PER_M2 = unit("J/m2", Dimension.UV_DOSE, 1, 10);
    public static final Unit NTU = unit("NTU", Dimension.TURBIDITY, 1, 1);

    public static final Unit KG_PER_M3 = unit("kg/m3", Dimension.DENSITY, 1, 1);
    public static final Unit KG_PER_L = unit("kg/L", Dimension.DENSITY, 1000, 1, "g/mL", "kg/l", "g/cm3");
    public static final Unit KG = unit("kg", Dimension.MASS, 1, 1);
    public static final Unit G = unit("g", Dimension.MASS, 1, 1000);
    public static final Unit MG = unit("mg", Dimension.MASS, 1, 1e6);
    public static final Unit LB = unit("lb", Dimension.MASS, 45359237, 1e8);

    public static final Unit RPM = unit("rpm", Dimension.ROTATION, 1, 1);
    public static final Unit DEG = unit("deg", Dimension.ANGLE, 1, 1, "\u00b0");
    public static final Unit RAD = unit("rad", Dimension.ANGLE, 180 / Math.PI, 1);
    public static final Unit PER_S = unit("1/s", Dimension.FREQUENCY, 1, 1);
    public static final Unit PER_H = unit("1/h", Dimension.FREQUENCY, 1, 3600);
    public static final Unit PER_D = unit("1/d", Dimension.FREQUENCY, 1, 86_400);
    public static final Unit PER_YR = unit("1/yr", Dimension.FREQUENCY, 1, 365.2425 * 86_400);

    /** The site's own currency; screens and reports put its code in place of the symbol. */
    public static final Unit MONEY = unit("cur", Dimension.MONEY, 1, 1);
    public static final Unit MONEY_PER_M3 = unit("cur/m3", Dimension.UNIT_COST, 1, 1);
    public static final Unit MONEY_PER_L = unit("cur/L", Dimension.UNIT_COST, 1000, 1);
    public static final Unit MONEY_PER_KWH = unit("cur/kWh", Dimension.ENERGY_COST, 1, 1);

    public static final Unit ONE = unit("1", Dimension.RATIO, 1, 1);
    public static final Unit PERCENT = unit("%", Dimension.RATIO, 1, 100);

    private Units() {
    }

    /** All units in catalogue order, by symbol; cannot be changed. */
    public static Map<String, Unit> catalogue() {
        return Collections.unmodifiableMap(BY_SYMBOL);
    }

    /**
     * Finds a unit by its symbol or a usual other spelling.
     *
     * @param symbol such as {@code m3/s} or {@code m³/s}; case matters where the unit system says so (mm, MW)
     */
    public static Optional<Unit> find(String symbol) {
        String plain = plain(symbol);
        Unit unit = BY_SYMBOL.get(plain);
        return Optional.ofNullable(unit != null ? unit : BY_ALIAS.get(plain));
    }

    /**
     * Finds a unit where a dimension is expected: there {@code m} is a head of water if a pressure is due.
     */
    public static Optional<Unit> find(String symbol, Dimension expected) {
        if (expected == Dimension.PRESSURE && symbol.equals("m")) {
            return Optional.of(M_HEAD);
        }
        return find(symbol);
    }

    /** The unit whose factor is one and offset nil, in which kernels compute. */
    public static Unit si(Dimension dimension) {
        for (Unit unit : BY_SYMBOL.values()) {
            if (unit.dimension() == dimension && unit.toSi(1) == 1 && unit.toSi(0) == 0) {
                return unit;
            }
        }
        throw new IllegalStateException("no base unit for " + dimension);
    }

    private static String plain(String symbol) {
        return symbol.trim().replace("^", "").replace('\u00b2', '2').replace('\u00b3', '3').replace('\u00b7', '.');
    }

    private static Unit unit(String symbol, Dimension dimension, double numerator, double denominator,
            String... aliases) {
        return register(new Unit(symbol, dimension, numerator, denominator, 0), aliases);
    }

    private static Unit offset(String symbol, double numerator, double denominator, double offset, String... aliases) {
        return register(new Unit(symbol, Dimension.TEMPERATURE, numerator, denominator, offset), aliases);
    }

    private static Unit register(Unit unit, String... aliases) {
        BY_SYMBOL.put(unit.symbol(), unit);
        for (String alias : aliases) {
            BY_ALIAS.put(alias, unit);
        }
        return unit;
    }
}
