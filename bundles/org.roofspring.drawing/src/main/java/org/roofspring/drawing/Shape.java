package org.roofspring.drawing;

import java.util.List;
import java.util.Objects;

/** What a drawing is made of. Painters switch over these kinds; there are no others. */
public sealed interface Shape {

    /** A rectangle with its upper left corner at (x, y). */
    record Rect(double x, double y, double width, double height, Style style) implements Shape {
        public Rect {
            requireFinite(x, y, width, height);
            Objects.requireNonNull(style);
        }
    }

    /** A straight line. */
    record Line(Point from, Point to, Style style) implements Shape {
        public Line {
            Objects.requireNonNull(from);
            Objects.requireNonNull(to);
            Objects.requireNonNull(style);
        }
    }

    /** Straight lines from point to point, not closed. */
    record Polyline(List<Point> points, Style style) implements Shape {
        public Polyline {
            points = List.copyOf(points);
            Objects.requireNonNull(style);
        }
    }

    /** An outline of straight and curved pieces. */
    record Path(List<Piece> pieces, Style style) implements Shape {
        public Path {
            pieces = List.copyOf(pieces);
            Objects.requireNonNull(style);
            if (!pieces.isEmpty() && !(pieces.get(0) instanceof Move)) {
                throw new IllegalArgumentException("a path begins with a move");
            }
        }
    }

    /** A piece of a path. */
    sealed interface Piece {
    }

    /** Begins a part of a path. */
    record Move(Point to) implements Piece {
    }

    /** Straight on. */
    record LineTo(Point to) implements Piece {
    }

    /** A cubic curve. */
    record CurveTo(Point firstControl, Point secondControl, Point to) implements Piece {
    }

    /** Back to where the part began. */
    record Close() implements Piece {
    }

    /** Where a text stands to its point. */
    enum Anchor {
        START, MIDDLE, END
    }

    /**
     * One line of text.
     *
     * @param at       the point on the base line that the anchor means
     * @param text     without line breaks
     * @param size     in points
     * @param typeface regular or bold
     * @param colour   of the letters
     * @param anchor   where the text stands to the point
     * @param turn     degrees clockwise about the point
     */
    record Text(Point at, String text, double size, Typeface typeface, Colour colour, Anchor anchor, double turn)
            implements Shape {
        public Text {
            Objects.requireNonNull(at);
            Objects.requireNonNull(text);
            Objects.requireNonNull(typeface);
            Objects.requireNonNull(colour);
            Objects.requireNonNull(anchor);
            requireFinite(size, turn);
        }
    }

    /** Shapes that belong together, the first painted first. */
    record Group(List<Shape> shapes) implements Shape {
        public Group {
            shapes = List.copyOf(shapes);
        }
    }

    /** Shapes of which only what lies inside a rectangle is seen. */
    record Clip(Rect area, List<Shape> shapes) implements Shape {
        public Clip {
            Objects.requireNonNull(area);
            shapes = List.copyOf(shapes);
        }
    }

    private static void requireFinite(double... values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a shape needs finite measures, not " + value);
            }
        }
    }
}
