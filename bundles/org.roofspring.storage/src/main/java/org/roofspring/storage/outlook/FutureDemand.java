package org.roofspring.storage.outlook;

import java.time.LocalDate;
import java.util.List;

/** What will be asked for on the days to come. */
@FunctionalInterface
public interface FutureDemand {

    /**
     * Demand of each use, in the order of the system [m&sup3;]; new arrays, each day 0 to 2,000,000.
     *
     * @param firstDate date of the first value
     * @param days values wanted
     */
    List<double[]> seriesM3(LocalDate firstDate, int days);

    /** The same amount every day, for a system of one use [m&sup3; a day]. */
    static FutureDemand everyDay(double volumeM3PerDay) {
        return (firstDate, days) -> List.of(
                org.roofspring.storage.TankBalance.constantDemand(volumeM3PerDay, days));
    }

    /**
     * This demand with some uses rationed.
     *
     * @param ration what is cut, and to which share
     */
    default FutureDemand under(Ration ration) {
        return (firstDate, days) -> {
            List<double[]> series = seriesM3(firstDate, days);
            for (int use = 0; use < series.size(); use++) {
                if (ration.cuts(use)) {
                    double[] demand = series.get(use);
                    for (int day = 0; day < demand.length; day++) {
                        demand[day] *= ration.allowedRatio();
                    }
                }
            }
            return series;
        };
    }
}
