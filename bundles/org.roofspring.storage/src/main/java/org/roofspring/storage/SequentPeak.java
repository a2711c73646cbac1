package org.roofspring.storage;

import org.roofspring.storage.internal.DailySeries;
import org.roofspring.storage.internal.FixedVolume;

/**
 * The sequent-peak (mass curve) storage: the smallest store that, full at the start, meets every demand of the record.
 * <pre>
 * K(0) = 0,  K(t) = max(0, K(t-1) + D(t) - Q(t)),  storage = max K
 * </pre>
 * Taken over the record twice, it also covers a critical stretch that runs over the end of the record into its
 * beginning. It knows nothing of the order of events within a day; it agrees with the rule yield before spillage.
 *
 * <p>Source: Fair, G. M., Geyer, J. C. and Okun, D. A., <i>Water and Wastewater Engineering</i>, mass-curve method;
 * Thomas, H. A. and Burden, R. P. (1963) for the algorithm (from memory).
 *
 * @param volumeM3 storage [m&sup3;]
 * @param firstDay day the critical drawdown begins, counted over all passes; the first day when there is none
 * @param lastDay day the drawdown is deepest, counted over all passes
 * @param sustainable false when the record's demand is above its inflow: the drawdown then deepens with each pass and
 *            the volume answers no question about the long run
 */
public record SequentPeak(double volumeM3, int firstDay, int lastDay, boolean sustainable) {

    /**
     * @param inflowM3 Q of each day [m&sup3;]
     * @param demandM3 D of each day [m&sup3;]
     * @param passes how many times the record is taken in a row, 1 to 10
     */
    public static SequentPeak of(double[] inflowM3, double[] demandM3, int passes) {
        if (passes < 1 || passes > 10) {
            throw new IllegalArgumentException("passes is " + passes + "; accepted is 1 to 10");
        }
        DailySeries series = DailySeries.of(inflowM3, demandM3);
        int days = Math.multiplyExact(series.days(), passes);
        long deficit = 0;
        long deepest = 0;
        int began = 0;
        int firstDay = 0;
        int lastDay = 0;
        for (int step = 0; step < days; step++) {
            int day = step % series.days();
            if (deficit == 0) {
                began = step;
            }
            deficit = Math.max(0, Math.addExact(deficit, series.demand()[day] - series.inflow()[day]));
            if (deficit > deepest) {
                deepest = deficit;
                firstDay = began;
                lastDay = step;
            }
        }
        return new SequentPeak(FixedVolume.toM3(deepest), firstDay, lastDay,
                series.totalDemand() <= series.totalInflow());
    }
}
