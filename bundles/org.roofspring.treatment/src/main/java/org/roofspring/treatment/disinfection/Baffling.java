package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.Source;

/**
 * How much of a flowing tank's mean residence time 90 % of the water really stays (T10/T).
 */
public enum Baffling {
    /** Filled, dosed, left to stand, then used. */
    STANDING(1.0, "standing, not flowing"),
    /** One inlet and outlet, no baffles, high inlet speed. */
    NONE(0.1, "unbaffled, flowing"),
    /** Single or several unbaffled inlets and outlets. */
    POOR(0.3, "poor: no baffles inside"),
    /** Baffled inlet or outlet with some baffles inside. */
    AVERAGE(0.5, "average: some baffles inside"),
    /** Perforated inlet baffle, serpentine or perforated baffles inside. */
    SUPERIOR(0.7, "superior: serpentine baffles"),
    /** A long pipe. */
    PLUG_FLOW(1.0, "plug flow in a pipe");

    public static final Source SOURCE = Source.fromMemory("US EPA 1991, Guidance Manual for Compliance with the "
            + "Filtration and Disinfection Requirements for Public Water Systems, Table C-5");

    private final double ratio;
    private final String label;

    Baffling(double ratio, String label) {
        this.ratio = ratio;
        this.label = label;
    }

    /** T10/T [ratio]. */
    public double ratio() {
        return ratio;
    }

    public String label() {
        return label;
    }
}
