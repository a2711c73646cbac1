package org.roofspring.hydraulics;

/** Constants shared by the formulas of this kernel. */
public final class PhysicalConstants {
    /** Standard gravity [m/s2], exact by definition (3rd CGPM, 1901). */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    /** Standard atmosphere [Pa], exact by definition (10th CGPM, 1954). */
    public static final double STANDARD_ATMOSPHERE_PA = 101_325;

    private PhysicalConstants() {
    }
}
