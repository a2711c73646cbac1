package org.roofspring.drawing;

/**
 * A place on a drawing, in points from the upper left corner.
 *
 * @param x to the right
 * @param y downwards
 */
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point needs finite coordinates, not " + x + ", " + y);
        }
    }
}
