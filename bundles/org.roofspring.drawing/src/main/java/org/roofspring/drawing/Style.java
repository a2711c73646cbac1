package org.roofspring.drawing;

import java.util.List;

/**
 * How a shape is filled and outlined.
 *
 * @param fill   colour inside, or null for none
 * @param stroke colour of the outline, or null for none
 * @param width  of the outline in points
 * @param dashes lengths of dashes and gaps in points; empty for a whole line
 */
public record Style(Colour fill, Colour stroke, double width, List<Double> dashes) {
    public Style {
        if (!(width >= 0) || width > 100) {
            throw new IllegalArgumentException("a line is 0 to 100 points wide, not " + width);
        }
        dashes = List.copyOf(dashes);
    }

    /** Filled, without an outline. */
    public static Style filled(Colour fill) {
        return new Style(fill, null, 0, List.of());
    }

    /** An outline alone. */
    public static Style line(Colour stroke, double width) {
        return new Style(null, stroke, width, List.of());
    }

    /** The same with an outline of dashes. */
    public Style dashed(Double... lengths) {
        return new Style(fill, stroke, width, List.of(lengths));
    }
}
