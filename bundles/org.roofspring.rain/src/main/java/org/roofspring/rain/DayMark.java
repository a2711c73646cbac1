package org.roofspring.rain;

/** Where the depth of one day comes from. */
public enum DayMark {
    /** A reading of one day, as it stands in the source. */
    MEASURED(true),
    /** The source has no reading. */
    MISSING(false),
    /** The source has a reading that failed its quality control; the day counts as missing. */
    FAILED_QUALITY(false),
    /** The source has a depth that cannot be (negative, or above the largest ever observed); counts as missing. */
    IMPOSSIBLE(false),
    /** The day lies in a total of several days that was not spread; counts as missing. */
    IN_MULTI_DAY_TOTAL(false),
    /** An equal share of a total of several days. */
    SPREAD(true),
    /** Filled by a stated method. */
    FILLED(true),
    /** Scaled: to the monthly normals of another place, or by a climate stress. */
    SCALED(true),
    /** Invented by a weather generator. */
    SYNTHETIC(true);

    private final boolean hasDepth;

    DayMark(boolean hasDepth) {
        this.hasDepth = hasDepth;
    }

    /** Whether a day so marked has a depth. */
    public boolean hasDepth() {
        return hasDepth;
    }
}
