package org.roofspring.drawing;

import java.util.List;
import java.util.Objects;

/**
 * A finished drawing.
 *
 * @param width       in points (1/72 inch)
 * @param height      in points
 * @param title       what it shows, in a few words
 * @param description what there is to see, for those who cannot; may be empty
 * @param shapes      the first painted first
 */
public record Drawing(double width, double height, String title, String description, List<Shape> shapes) {
    public Drawing {
        if (!(width > 0) || !(height > 0) || width > 20_000 || height > 20_000) {
            throw new IllegalArgumentException("a drawing is up to 20000 points wide and high, not " + width
                    + " by " + height);
        }
        Objects.requireNonNull(title);
        Objects.requireNonNull(description);
        shapes = List.copyOf(shapes);
    }
}
