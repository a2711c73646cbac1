package org.roofspring.rain;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A layout of rain file. */
public enum RainFormat {
    /** Found from the content. */
    AUTO("auto", "found from the content"),
    /** GHCN-Daily fixed columns, one month of one element a line. Source: NOAA, GHCN-Daily readme, version 3.00. */
    GHCN_DLY("dly", "GHCN-Daily .dly"),
    /** GHCN-Daily CSV of a station: columns STATION, DATE, PRCP and PRCP_ATTRIBUTES. */
    GHCN_STATION_CSV("station", "GHCN-Daily station CSV"),
    /** Any CSV with a column of dates and a column of depths. */
    GENERIC_CSV("csv", "CSV with a date and a depth column"),
    /** CSV with twelve rows of month and depth, perhaps wet days; read by {@link RainReader#readNormals}. */
    MONTHLY_NORMALS("normals", "CSV of twelve monthly normals");

    private final String id;
    private final String title;

    RainFormat(String id, String title) {
        this.id = id;
        this.title = title;
    }

    /** Its name on the command line. */
    public String id() {
        return id;
    }

    /** What it is, for messages. */
    public String title() {
        return title;
    }

    /**
     * The format of an id.
     *
     * @throws IllegalArgumentException naming the ids that are accepted
     */
    public static RainFormat named(String id) {
        for (RainFormat format : values()) {
            if (format.id.equals(id == null ? null : id.trim().toLowerCase(Locale.ROOT))) {
                return format;
            }
        }
        throw new IllegalArgumentException("\"" + id + "\" is not a rain format; accepted are "
                + Arrays.stream(values()).map(RainFormat::id).collect(Collectors.joining(", ")));
    }
}
