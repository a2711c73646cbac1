package org.roofspring.economy.upkeep;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.economy.internal.Checks;

/**
 * Work that comes again. It is due at whichever of its occasions comes first.
 *
 * @param id              identifier
 * @param name            what is to be done
 * @param intervalDays    due again so long after it was done, above 0 to 36525 [d]; rounded up to whole days
 * @param dueOn           days of the year on which it is due; 29 February means the last of that month
 * @param afterVolumeM3   due again after so much water, above 0 to 1e6 [m3]
 * @param flowM3PerDay    water that passes in a mean day, 0 to 1e6 [m3/d]
 * @param beforeFirstRain whether it is due before the first rain after the dry season
 * @param lastDone        day it was last done; empty where it is not known
 */
public record UpkeepTask(String id, String name, OptionalDouble intervalDays, List<MonthDay> dueOn,
        OptionalDouble afterVolumeM3, double flowM3PerDay, boolean beforeFirstRain, Optional<LocalDate> lastDone) {
    public UpkeepTask {
        Checks.text("id", id);
        Checks.text("name", name);
        Checks.present("interval (intervalDays)", intervalDays).ifPresent(days -> Checks.within("interval of " + name
                + " (intervalDays)", days, Double.MIN_VALUE, 36_525));
        dueOn = Checks.list("days of the year (dueOn)", dueOn);
        Checks.present("volume (afterVolumeM3)", afterVolumeM3).ifPresent(volume -> Checks.within("volume of " + name
                + " (afterVolumeM3)", volume, Double.MIN_VALUE, 1e6));
        Checks.within("flow of " + name + " (flowM3PerDay)", flowM3PerDay, 0, 1e6);
        Checks.present("day it was last done (lastDone)", lastDone);
    }

    /** Whether anything makes it due. */
    public boolean hasOccasion() {
        return intervalDays.isPresent() || !dueOn.isEmpty() || afterVolumeM3.isPresent() || beforeFirstRain;
    }
}
