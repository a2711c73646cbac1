package org.roofspring.treatment.safety;

import java.util.OptionalDouble;

import org.roofspring.treatment.Source;

/** What a water test measures, with its default limit and what a bad result triggers. */
public enum TestParameter {
    E_COLI("E. coli", "in 100 mL", none(), of(0), true, who("E. coli must not be detectable in 100 mL"),
            "Boil or disinfect all water for drinking and cooking at once, find the cause (inspection, barriers, "
                    + "residual), put it right, test again."),
    HYDROGEN_SULPHIDE_STRIP("hydrogen-sulphide strip", "positive strips", none(), of(0), true,
            Source.fromMemory("WHO/SDE/WSH/02.08, Evaluation of the H2S Method"),
            "Boil or disinfect the water and have E. coli tested by a laboratory; a strip that stays clear proves "
                    + "nothing by itself."),
    PH("pH", "", of(6.5), of(8.5), false, who("pH 6.5 to 8.5 usual in supply"),
            "Below 6.5 the water dissolves metals: test lead, copper and zinc and raise the pH (limestone). Above 8.5 "
                    + "chlorine is slow and above 9 it earns no credit: flush new concrete and wait."),
    TURBIDITY("turbidity", "NTU", none(), of(5), false, who("below 5 NTU, and 1 NTU before disinfection"),
            "Clean screens and filters, let the water settle, look for sludge near the outlet; below 1 NTU before a "
                    + "lamp."),
    FREE_CHLORINE("free chlorine residual", "mg/L", of(0.2), of(5), false, who("0.2 to 5 mg/L at the tap"),
            "Below 0.2 mg/L dose again after finding what used it up; above 5 mg/L wait or dilute before use."),
    LEAD("lead", "mg/L", none(), of(0.01), true, who("lead 0.01 mg/L"),
            "Stop drinking and cooking with it; boiling makes it worse. Find the lead (flashing, paint, solder, "
                    + "fittings), have it removed, test again, and ask the health authority."),
    COPPER("copper", "mg/L", none(), of(2), true, who("copper 2 mg/L"),
            "Stop drinking it; flush standing water, raise a low pH, replace copper parts, test again."),
    ZINC("zinc", "mg/L", none(), of(3), false, who("above 3 mg/L zinc may not be acceptable to consumers"),
            "The taste suffers; raise a low pH and replace worn galvanised parts."),
    PESTICIDES("pesticides", "of the national limit", none(), of(1), true,
            Source.commonPractice("the national limit for the substances sprayed"),
            "Stop drinking and cooking with it; disconnect the roof while spraying goes on and ask the health "
                    + "authority."),
    HYDROCARBONS("hydrocarbons (PAH)", "of the national limit", none(), of(1), true,
            Source.commonPractice("the national limit for polycyclic aromatic hydrocarbons"),
            "Stop drinking and cooking with it; find the source (bitumen, flue, traffic) and ask the health "
                    + "authority.");

    private final String label;
    private final String unit;
    private final TestLimit defaultLimit;

    TestParameter(String label, String unit, OptionalDouble low, OptionalDouble high, boolean health, Source source,
            String action) {
        this.label = label;
        this.unit = unit;
        this.defaultLimit = new TestLimit(low, high, health, source, action);
    }

    /** In running text. */
    public String label() {
        return label;
    }

    /** Unit of values and limits; empty for a pure number. */
    public String unit() {
        return unit;
    }

    public TestLimit defaultLimit() {
        return defaultLimit;
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static Source who(String what) {
        return Source.fromMemory("WHO Guidelines for Drinking-water Quality, 4th ed: " + what);
    }
}
