package org.roofspring.rain;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** How missing days are filled. */
public enum GapMethod {
    /** Not at all: a record with missing days is refused. */
    REFUSE("refuse", "missing days are refused"),
    /** As days without rain: never flatters a tank. */
    ZERO("zero", "missing days are taken as dry"),
    /** With the mean of the wet and dry days of the same calendar month that are present. */
    MONTH_MEAN("mean", "missing days get the mean depth of their calendar month, which shortens dry spells"),
    /** With the mean of the days present within a week of the same day of the year. */
    CLIMATOLOGY("climatology", "missing days get the mean depth of the same fortnight in other years, which "
            + "shortens dry spells");

    private final String id;
    private final String statement;

    GapMethod(String id, String statement) {
        this.id = id;
        this.statement = statement;
    }

    /** Its name on the command line and in files. */
    public String id() {
        return id;
    }

    /** What it does, for a report. */
    public String statement() {
        return statement;
    }

    /**
     * The method of an id.
     *
     * @throws IllegalArgumentException naming the ids that are accepted
     */
    public static GapMethod named(String id) {
        for (GapMethod method : values()) {
            if (method.id.equals(id == null ? null : id.trim().toLowerCase(Locale.ROOT))) {
                return method;
            }
        }
        throw new IllegalArgumentException("\"" + id + "\" is not a way to fill missing days; accepted are "
                + Arrays.stream(values()).map(GapMethod::id).collect(Collectors.joining(", ")));
    }
}
