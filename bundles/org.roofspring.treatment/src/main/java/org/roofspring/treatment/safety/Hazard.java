package org.roofspring.treatment.safety;

import java.util.List;

import org.roofspring.treatment.Source;

/**
 * Chemical hazards of a site's materials and surroundings. No step of a train is credited against them: they are
 * removed, or shown by a test to stay within limits.
 */
public enum Hazard {
    LEAD_FLASHING("lead flashing", Effect.BLOCKS, List.of(TestParameter.LEAD),
            "Lead flashing drains to the tank", "have the flashing replaced or covered by a tradesperson who handles "
                    + "lead", nzRoofWater()),
    LEAD_PAINT("lead paint", Effect.BLOCKS, List.of(TestParameter.LEAD),
            "Roof, gutter, downpipe or tank carries lead paint", "have it removed by a licensed person before any "
                    + "water is collected; no dry sanding",
            Source.read("Somerset Regional Council, lead paint and rainwater: remove before collecting")),
    LEAD_PIPE("lead pipe or solder", Effect.BLOCKS, List.of(TestParameter.LEAD),
            "Pipes, solder or fittings contain lead", "replace them", nzRoofWater()),
    ZINC("galvanised roof or tank", Effect.CONDITIONS, List.of(TestParameter.ZINC),
            "Galvanised steel gives off zinc", "flush standing water and replace worn parts", nzRoofWater()),
    COPPER("copper roof, gutter or pipe", Effect.CONDITIONS, List.of(TestParameter.COPPER),
            "Copper dissolves into soft water", "flush standing water, keep the pH above 6.5", nzRoofWater()),
    ASBESTOS_CEMENT("asbestos cement", Effect.CONDITIONS, List.of(TestParameter.TURBIDITY),
            "The roof is of asbestos cement", "do not cut, drill, brush or pressure-wash it; let a licensed remover "
                    + "replace it; keep the water clear of fibres by settling and filtering",
            Source.fromMemory("enHealth, Guidance on Use of Rainwater Tanks, asbestos roofs")),
    BITUMEN("bitumen or tar", Effect.BLOCKS, List.of(TestParameter.HYDROCARBONS),
            "Bitumen or tar products give off hydrocarbons", "do not collect from it for drinking",
            Source.fromMemory("enHealth, Guidance on Use of Rainwater Tanks, roof materials")),
    SPRAY_DRIFT("spray drift", Effect.BLOCKS, List.of(TestParameter.PESTICIDES),
            "Crops near the roof are sprayed", "disconnect the downpipes while spraying goes on, until the roof has "
                    + "been washed by rain",
            Source.fromMemory("enHealth, Guidance on Use of Rainwater Tanks, pesticides")),
    SMOKE("smoke or a flue", Effect.CONDITIONS, List.of(TestParameter.HYDROCARBONS),
            "Smoke, ash or a flue reaches the roof", "lead the first rain away, disconnect after a fire until the roof "
                    + "has been washed", Source.fromMemory("enHealth, Guidance on Use of Rainwater Tanks, bushfires "
                            + "and wood heaters")),
    TRAFFIC("heavy traffic", Effect.BLOCKS, List.of(TestParameter.LEAD, TestParameter.HYDROCARBONS),
            "The roof lies beside heavy traffic", "do not collect it for drinking", southAustralia()),
    INDUSTRY("smelter or industry", Effect.BLOCKS, List.of(TestParameter.LEAD, TestParameter.HYDROCARBONS),
            "A smelter or industry is near", "do not collect it for drinking, and ask the health authority",
            southAustralia()),
    SOFT_ACID_WATER("soft acid water", Effect.CONDITIONS, List.of(TestParameter.PH),
            "Soft acid rain dissolves metals", "bring the pH to 6.5 or more, such as with limestone in the tank",
            Source.fromMemory("WHO Guidelines for Drinking-water Quality, 4th ed, corrosion")),
    NEW_CONCRETE("new concrete", Effect.CONDITIONS, List.of(TestParameter.PH),
            "New concrete raises the pH past the chlorine tables", "fill, leave and drain a new tank, and measure the "
                    + "pH until it stays below 8.5",
            Source.commonPractice("a new concrete tank is filled and drained before use"));

    /** What a hazard does to a verdict on drinking or cooking while no test shows it to stay within limits. */
    public enum Effect {
        /** Not suitable. */
        BLOCKS,
        /** Suitable only if. */
        CONDITIONS
    }

    private final String label;
    private final Effect effect;
    private final List<TestParameter> tests;
    private final String danger;
    private final String control;
    private final Source source;

    Hazard(String label, Effect effect, List<TestParameter> tests, String danger, String control, Source source) {
        this.label = label;
        this.effect = effect;
        this.tests = tests;
        this.danger = danger;
        this.control = control;
        this.source = source;
    }

    public String label() {
        return label;
    }

    public Effect effect() {
        return effect;
    }

    /** The tests that together show whether it stays within limits. */
    public List<TestParameter> tests() {
        return tests;
    }

    /** What is wrong, as a sentence without its stop. */
    public String danger() {
        return danger;
    }

    /** What to do about it, in the imperative, lower case. */
    public String control() {
        return control;
    }

    public Source source() {
        return source;
    }

    /** A metal that soft acid water dissolves. */
    public boolean dissolvesInAcidWater() {
        return this == LEAD_FLASHING || this == LEAD_PIPE || this == ZINC || this == COPPER;
    }

    private static Source nzRoofWater() {
        return Source.read("New Zealand Ministry of Health 2014, Water Safety Plan Guide: Roof Water");
    }

    private static Source southAustralia() {
        return Source.read("South Australia, rainwater fact sheet: do not collect near heavy traffic, smelters or "
                + "industry");
    }
}
