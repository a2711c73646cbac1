package org.roofspring.rain;

/** What becomes of a total that was read after several days. It is never taken as the rain of one day. */
public enum MultiDayPolicy {
    /** Its days stay missing and are counted. */
    REFUSE,
    /** Its days get equal shares, marked {@link DayMark#SPREAD}: keeps the total, hides dry days. */
    SPREAD
}
