package org.roofspring.storage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.storage.internal.DailySeries;
import org.roofspring.storage.internal.FixedVolume;
import org.roofspring.storage.internal.PlainTank;

/**
 * Smallest plain tank that reaches a target time reliability, by bisection on the exact simulation.
 *
 * <p>The record is run twice: a first pass from an empty tank warms the state up, the second is counted. More tank
 * never lowers the number of full days, so bisection finds the smallest volume, here to one microlitre. Where the
 * record's inflow is at least its demand, a tank that never spills meets every day of the second pass: the first pass
 * leaves behind at least its own largest deficit.
 */
public final class TankSizing {

    private TankSizing() {
    }

    /**
     * @param inflowM3 Q of each day [m&sup3;]
     * @param demandM3 D of each day [m&sup3;]
     * @param rule when the demand is drawn
     * @param targetRatio share of the days with demand to be met in full [-], above 0 to 1
     * @param cancelled polled between runs
     * @throws CancellationException when cancelled
     */
    public static SizingAnswer smallestTank(double[] inflowM3, double[] demandM3, YieldRule rule, double targetRatio,
            BooleanSupplier cancelled) {
        checkTarget(targetRatio);
        DailySeries series = DailySeries.of(inflowM3, demandM3);
        long inflow = series.totalInflow();
        long demand = series.totalDemand();
        if (demand == 0 || demand > inflow) {
            return noAnswer(demand == 0 ? SizingAnswer.Reason.NO_DEMAND : SizingAnswer.Reason.DEMAND_ABOVE_INFLOW,
                    inflow, demand);
        }
        int needed = daysNeeded(targetRatio, series.demandDays());
        // Two passes of inflow: a tank that never spills.
        long enough = Math.min(FixedVolume.MAX_UNITS, inflow > FixedVolume.MAX_UNITS ? inflow : 2 * inflow);
        if (WarmRun.of(series, enough, rule).fullDays() < needed) {
            return noAnswer(SizingAnswer.Reason.TANK_BEYOND_RANGE, inflow, demand);
        }
        long tooSmall = -1;
        while (enough - tooSmall > 1) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("sizing was cancelled");
            }
            long middle = tooSmall + (enough - tooSmall) / 2;
            if (WarmRun.of(series, middle, rule).fullDays() >= needed) {
                enough = middle;
            } else {
                tooSmall = middle;
            }
        }
        WarmRun run = WarmRun.of(series, enough, rule);
        return new SizingAnswer.Sized(FixedVolume.toM3(enough), FixedVolume.toM3(run.start()),
                (double) run.fullDays() / series.demandDays());
    }

    /** Full days that make up a share of the days, in decimal: 55 % of 100 days is 55 days, not 56. */
    static int daysNeeded(double targetRatio, int demandDays) {
        return BigDecimal.valueOf(targetRatio).multiply(BigDecimal.valueOf(demandDays))
                .setScale(0, RoundingMode.CEILING).intValueExact();
    }

    static void checkTarget(double targetRatio) {
        if (!(targetRatio > 0 && targetRatio <= 1)) {
            throw new IllegalArgumentException("targetRatio is " + targetRatio + "; accepted is above 0 to 1");
        }
    }

    private static SizingAnswer noAnswer(SizingAnswer.Reason reason, long inflow, long demand) {
        return new SizingAnswer.NoAnswer(reason, FixedVolume.toM3(inflow), FixedVolume.toM3(demand));
    }

    /** A pass to warm up from empty, then a pass that counts. */
    private record WarmRun(long start, int fullDays) {

        static WarmRun of(DailySeries series, long capacity, YieldRule rule) {
            PlainTank tank = new PlainTank(capacity, 0, rule.thetaRatio());
            tank.run(series.inflow(), series.demand());
            long start = tank.volume();
            return new WarmRun(start, tank.run(series.inflow(), series.demand()));
        }
    }
}
