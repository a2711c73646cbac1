package org.roofspring.storage.system;

/**
 * What an accident costs, against the same record without it.
 *
 * @param accident what happened, with the day it began
 * @param extraMissingM3 demand that goes short because of it [m&sup3;]
 * @param extraShortDays days that go short because of it [d]; below 0 only where rationing begins earlier and so saves
 *            days later
 * @param lostM3 water lost by it, leaked and dumped [m&sup3;]
 * @param daysFelt from its first day until the system stands as it would have stood without it, or the record ends [d]
 */
public record AccidentEffect(Accident accident, double extraMissingM3, int extraShortDays, double lostM3,
        int daysFelt) {
}
