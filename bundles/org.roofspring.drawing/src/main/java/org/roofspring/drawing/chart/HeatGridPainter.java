package org.roofspring.drawing.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.roofspring.drawing.Colour;
import org.roofspring.drawing.Colours;
import org.roofspring.drawing.Drawing;
import org.roofspring.drawing.Point;
import org.roofspring.drawing.Shape;
import org.roofspring.drawing.Style;
import org.roofspring.drawing.Typeface;

/** Shades cells in even steps of lightness, with the scale beside them in words and numbers. */
final class HeatGridPainter {
    private static final double TEXT = 7.5;
    private static final double MARGIN = 6;
    private static final int SCALE_STEPS = 5;
    private static final Colour NONE = Colour.of(0xf3f5f7);
    private static final Style CELL_EDGE = Style.line(Colour.WHITE, 0.4);

    private HeatGridPainter() {
    }

    static Drawing paint(HeatGrid grid, double width, double height) {
        List<Shape> shapes = new ArrayList<>();
        double greatest = Arrays.stream(grid.values()).flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite).max().orElse(0);
        Ticks scale = Ticks.numbers(0, greatest > 0 ? greatest : 1, SCALE_STEPS);
        double labels = grid.rows().stream().mapToDouble(label -> Typeface.REGULAR.width(label, TEXT)).max().orElse(0);
        double left = MARGIN + labels + 5;
        double top = MARGIN + TEXT + 12;
        double cellWidth = (width - MARGIN - left) / grid.columns().size();
        double cellHeight = (height - MARGIN - TEXT - 4 - top) / grid.rows().size();
        if (cellWidth <= 0 || cellHeight <= 0) {
            throw new IllegalArgumentException("a grid of " + grid.columns().size() + " by " + grid.rows().size()
                    + " cells does not fit on " + width + " by " + height + " points");
        }
        scale(shapes, scale, grid.unit(), left);
        int every = (int) Math.max(1, Math.ceil((TEXT + 1) / cellHeight));
        for (int r = 0; r < grid.rows().size(); r++) {
            double y = top + r * cellHeight;
            String name = r % every == 0 ? grid.rows().get(r) : "";
            label(shapes, left - 4, y + cellHeight / 2 + TEXT * 0.35, name, Shape.Anchor.END);
            for (int c = 0; c < grid.columns().size(); c++) {
                double value = grid.values()[r][c];
                if (Double.isFinite(value)) {
                    Style style = new Style(shade(value, scale.high()), CELL_EDGE.stroke(), CELL_EDGE.width(),
                            List.of());
                    shapes.add(new Shape.Rect(left + c * cellWidth, y, cellWidth, cellHeight, style));
                }
            }
        }
        double below = top + grid.rows().size() * cellHeight + TEXT + 3;
        double free = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < grid.columns().size(); c++) {
            double at = left + (c + 0.5) * cellWidth;
            double half = Typeface.REGULAR.width(grid.columns().get(c), TEXT) / 2;
            if (!grid.columns().get(c).isEmpty() && at - half > free) {
                label(shapes, at, below, grid.columns().get(c), Shape.Anchor.MIDDLE);
                free = at + half + 4;
            }
        }
        return new Drawing(width, height, grid.title(), grid.description(), shapes);
    }

    /** The scale above the grid: a box for each step, from its number on. */
    private static void scale(List<Shape> shapes, Ticks scale, String unit, double left) {
        double at = left;
        for (int i = 0; i < scale.at().size(); i++) {
            shapes.add(new Shape.Rect(at, MARGIN, 12, TEXT, Style.filled(shade(scale.at().get(i), scale.high()))));
            String label = scale.labels().get(i) + (i + 1 == scale.at().size() && !unit.isEmpty() ? " " + unit : "");
            label(shapes, at + 15, MARGIN + TEXT * 0.85, label, Shape.Anchor.START);
            at += 15 + Typeface.REGULAR.width(label, TEXT) * 1.06 + 10;
        }
    }

    private static Colour shade(double value, double greatest) {
        double share = Math.max(0, Math.min(1, value / greatest));
        // the least shortage must be told from none at a glance
        return share == 0 ? NONE : Colour.of(0xf6cfae).towards(Colours.SHORTAGE, share);
    }

    private static void label(List<Shape> shapes, double x, double y, String text, Shape.Anchor anchor) {
        if (text.isEmpty()) {
            return;
        }
        shapes.add(new Shape.Text(new Point(x, y), text, TEXT, Typeface.REGULAR, Colours.INK, anchor, 0));
    }
}
