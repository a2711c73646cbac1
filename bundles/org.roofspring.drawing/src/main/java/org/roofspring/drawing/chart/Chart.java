package org.roofspring.drawing.chart;

import java.util.List;
import java.util.Objects;

/**
 * What is plotted.
 *
 * @param title       what it shows
 * @param description what there is to see, for those who cannot; may be empty
 * @param x           the axis below
 * @param y           the axis at the left
 * @param layers      the first at the back
 */
public record Chart(String title, String description, Axis x, Axis y, List<Layer> layers) {
    public Chart {
        Objects.requireNonNull(title);
        Objects.requireNonNull(description);
        Objects.requireNonNull(x);
        Objects.requireNonNull(y);
        layers = List.copyOf(layers);
    }
}
