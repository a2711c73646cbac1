package org.roofspring.storage.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.system.StorageSystem;
import org.roofspring.storage.system.Tank;

/**
 * Where things stand, and how far to look.
 *
 * @param system the tanks and uses; the volumes that its tanks name for the start are not used
 * @param weather record whose years are run forward
 * @param demand what will be asked for
 * @param watched indices of the uses that must not go short; none means all
 * @param today first day of the look ahead, as it begins
 * @param stageVolumeM3 volume in each stage as it begins, dead volume included [m&sup3;]; not to be written to
 * @param horizonDays days to look ahead [d], 1 to 3660
 */
public record OutlookQuestion(StorageSystem system, PastWeather weather, FutureDemand demand, Set<Integer> watched,
        LocalDate today, double[] stageVolumeM3, int horizonDays) {

    private static final int MOST_DAYS = 3660;

    /** Copies the set and checks what can be checked before a run. */
    public OutlookQuestion {
        watched = Set.copyOf(watched);
        for (int use : watched) {
            if (use < 0 || use >= system.uses().size()) {
                throw new IllegalArgumentException("watched holds " + use + "; accepted are the uses 0 to "
                        + (system.uses().size() - 1));
            }
        }
        if (today == null) {
            throw new IllegalArgumentException("today is missing; accepted is a date");
        }
        if (horizonDays < 1 || horizonDays > MOST_DAYS) {
            throw new IllegalArgumentException(
                    "horizonDays is " + horizonDays + "; accepted is 1 to " + MOST_DAYS);
        }
    }

    /**
     * One plain tank with the same demand every day.
     *
     * @param capacityM3 S [m&sup3;]
     * @param rule when the demand is drawn
     * @param firstDate date of day 0 of the record
     * @param inflowM3 Q of each day of the record [m&sup3;]
     * @param demandM3PerDay D [m&sup3; a day]
     * @param today first day of the look ahead
     * @param volumeM3 in the tank as it begins [m&sup3;]
     * @param horizonDays days to look ahead [d]
     */
    public static OutlookQuestion plainTank(double capacityM3, YieldRule rule, LocalDate firstDate, double[] inflowM3,
            double demandM3PerDay, LocalDate today, double volumeM3, int horizonDays) {
        return new OutlookQuestion(StorageSystem.single(Tank.plain("tank", capacityM3, 0), rule),
                new PastWeather(firstDate, List.of(inflowM3), new double[0]), FutureDemand.everyDay(demandM3PerDay),
                Set.of(), today, new double[] {volumeM3}, horizonDays);
    }

    /** The same with a ration in force. */
    public OutlookQuestion under(Ration ration) {
        return new OutlookQuestion(system, weather, demand.under(ration), watched, today, stageVolumeM3, horizonDays);
    }

    /** The same from another date and other volumes. */
    public OutlookQuestion from(LocalDate date, double[] volumeM3) {
        return new OutlookQuestion(system, weather, demand, watched, date, volumeM3, horizonDays);
    }

    /** The same with another look ahead. */
    public OutlookQuestion within(int days) {
        return new OutlookQuestion(system, weather, demand, watched, today, stageVolumeM3, days);
    }

    /** Whether more water, or less use, can never bring a shortage sooner; see the package description. */
    boolean moreIsNeverWorse() {
        boolean all = IntStream.range(0, system.uses().size()).allMatch(this::watches);
        return all && system.topUp().isEmpty() && system.uses().stream().allMatch(use -> use.rationing().isEmpty());
    }

    boolean watches(int use) {
        return watched.isEmpty() || watched.contains(use);
    }
}
