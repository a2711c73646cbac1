package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * A slow sand filter with its living layer.
 *
 * @param velocityMPerS flow over bed area, above 0 to 0.01 [m/s]
 * @param ripenedS      in use without a break since filling or scraping, 0 to 1e9 [s]
 * @param keptWet       never run dry
 */
public record SlowSand(double velocityMPerS, double ripenedS, boolean keptWet) implements Treatment {
    /** Fastest rate, 0.4 m/h [m/s]: from memory, verify against Huisman and Wood 1974, Slow Sand Filtration. */
    public static final double MAX_VELOCITY_M_PER_S = 0.4 / 3600;
    /** Time in which the layer forms, 21 days [s]: from memory, the same. */
    public static final double RIPENING_S = 21 * 86_400.0;
    /** Above this the bed clogs within days [NTU]: from memory, the same. */
    public static final double MAX_TURBIDITY_NTU = 10;

    public SlowSand {
        Checks.positive("filtration rate (velocityMPerS)", velocityMPerS, 0.01, "m/s");
        Checks.within("ripening (ripenedS)", ripenedS, 0, 1e9, "s");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.BIOLOGICAL;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of(
                Condition.of("sand.rate", velocityMPerS <= MAX_VELOCITY_M_PER_S * (1 + 1e-9),
                        "The water passes at no more than 0.4 m/h", Checks.shown(velocityMPerS * 3600) + " m/h"),
                Condition.of("sand.ripened", ripenedS >= RIPENING_S, "The sand has ripened for 21 days",
                        Checks.shown(ripenedS / 86_400) + " days"),
                Condition.of("sand.wet", keptWet, "The sand never runs dry", keptWet ? "kept wet" : "it runs dry"),
                Condition.of("sand.chlorine", entering.freeChlorineMgPerL() == 0,
                        "No chlorine reaches the living layer",
                        Checks.shown(entering.freeChlorineMgPerL()) + " mg/L"),
                Limits.turbidity("sand.turbidity", entering, MAX_TURBIDITY_NTU));
    }
}
