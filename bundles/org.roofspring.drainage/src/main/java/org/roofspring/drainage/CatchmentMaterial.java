package org.roofspring.drainage;

import java.util.List;
import org.roofspring.drainage.internal.Require;

/**
 * What share of the rain of whole seasons a surface yields. These ratios hold wetting, splash, evaporation and small
 * rains in them; they are for yield, not for the peak of a storm, when a wet roof sheds everything
 * ({@link RoofRunoff#PEAK_RUNOFF_RATIO}).
 *
 * @param id            stable name
 * @param name          for people
 * @param leastRatio    lower end of the range
 * @param greatestRatio upper end of the range
 * @param source        of the range
 */
public record CatchmentMaterial(String id, String name, double leastRatio, double greatestRatio, Source source) {
    private static final Source TABLE = Source.asQuoted(
            "a trainers' manual on rainwater harvesting, table of runoff coefficients, by the India Water Portal");

    public CatchmentMaterial {
        Require.given("id", id);
        Require.given("name", name);
        Require.share("leastRatio", leastRatio);
        Require.range("greatestRatio", greatestRatio, leastRatio, 1, "a share from leastRatio to 1");
        Require.given("source", source);
    }

    /** Middle of the range. */
    public double middleRatio() {
        return (leastRatio + greatestRatio) / 2;
    }

    /** The table of the kernel; callers may use entries of their own instead. */
    public static List<CatchmentMaterial> table() {
        return List.of(new CatchmentMaterial("tiles", "tiles", 0.8, 0.9, TABLE),
                new CatchmentMaterial("corrugated-metal", "corrugated metal sheets", 0.7, 0.9, TABLE),
                new CatchmentMaterial("concrete", "concrete paving", 0.6, 0.8, TABLE),
                new CatchmentMaterial("brick", "brick paving", 0.5, 0.6, TABLE),
                new CatchmentMaterial("soil", "soil on slopes below 10 %", 0.1, 0.3, TABLE),
                new CatchmentMaterial("rock", "rocky natural catchment", 0.2, 0.5, TABLE));
    }

    /**
     * Yield of a year with a loss for wetting [m3], {@code R = A (rain - B) roof} (enHealth, Guidance on use of
     * rainwater tanks, appendix B, after Martin 1980; A from 0.80 to 0.85, B 24 mm a year).
     *
     * @param planAreaM2   from 0 to 1e6 m2
     * @param yearlyMm     rain of the year, from 0 to 20000 mm
     * @param ratio        A, share of what is left, from 0 to 1
     * @param yearlyLossMm B, from 0 to 1000 mm
     */
    public static double yearlyYieldM3(double planAreaM2, double yearlyMm, double ratio, double yearlyLossMm) {
        Require.range("planAreaM2", planAreaM2, 0, 1e6, "a roof area from 0 to 1000000 m2");
        Require.range("yearlyMm", yearlyMm, 0, 20000, "a yearly rain from 0 to 20000 mm");
        Require.share("ratio", ratio);
        Require.range("yearlyLossMm", yearlyLossMm, 0, 1000, "a yearly loss from 0 to 1000 mm");
        return ratio * Math.max(0, yearlyMm - yearlyLossMm) / 1000 * planAreaM2;
    }
}
