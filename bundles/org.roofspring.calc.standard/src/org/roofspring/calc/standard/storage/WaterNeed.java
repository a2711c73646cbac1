package org.roofspring.calc.standard.storage;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Units;
import org.roofspring.storage.system.SystemSeries;

/**
 * Inflow and demand of a whole site, as of one tank.
 *
 * @param firstDay of the record
 * @param inflowM3 to all tanks, on each day
 * @param demandM3 of all uses, on each day
 */
record WaterNeed(LocalDate firstDay, double[] inflowM3, double[] demandM3) {
    private static final double DAYS_PER_YEAR = Units.YR.toSi(1) / Units.D.toSi(1);

    static WaterNeed of(WholeSystem system, LocalDate firstDay) {
        SystemSeries series = system.series();
        return new WaterNeed(firstDay, sum(series.inflowM3(), series.days()), sum(series.demandM3(), series.days()));
    }

    private static double[] sum(List<double[]> series, int days) {
        double[] sum = new double[days];
        for (double[] one : series) {
            for (int day = 0; day < days; day++) {
                sum[day] += one[day];
            }
        }
        return sum;
    }

    int days() {
        return inflowM3.length;
    }

    double totalInflowM3() {
        return Arrays.stream(inflowM3).sum();
    }

    double totalDemandM3() {
        return Arrays.stream(demandM3).sum();
    }

    /** Length of the record in mean years. */
    double years() {
        return days() / DAYS_PER_YEAR;
    }

    double yearlyInflowM3() {
        return totalInflowM3() / years();
    }

    double yearlyDemandM3() {
        return totalDemandM3() / years();
    }
}
