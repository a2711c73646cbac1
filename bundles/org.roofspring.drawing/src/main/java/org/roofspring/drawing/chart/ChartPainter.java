package org.roofspring.drawing.chart;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.drawing.Colour;
import org.roofspring.drawing.Colours;
import org.roofspring.drawing.Drawing;
import org.roofspring.drawing.Point;
import org.roofspring.drawing.Shape;
import org.roofspring.drawing.Style;
import org.roofspring.drawing.Typeface;

/** Turns charts into shapes. The legend stands above the plot, never on the data. */
public final class ChartPainter {
    private static final double TEXT = 8;
    private static final double MARGIN = 6;
    private static final double LINE = 1.2;
    private static final double LEAST_SIDE = 80;
    private static final Style GRID = Style.line(Colours.GRID, 0.5);
    private static final Style FRAME = Style.line(Colours.FAINT_INK, 0.7);
    private static final Double[][] DASHES = { {}, { 5.0, 2.5 }, { 1.5, 2.0 }, { 7.0, 2.0, 1.5, 2.0 } };

    private final Chart chart;
    private final double width;
    private final double height;
    private final List<Shape> shapes = new ArrayList<>();
    private Scale x;
    private Scale y;
    private Shape.Rect plot;

    private ChartPainter(Chart chart, double width, double height) {
        this.chart = chart;
        this.width = width;
        this.height = height;
        if (width < LEAST_SIDE || height < LEAST_SIDE) {
            throw new IllegalArgumentException("a chart is at least 80 points wide and high, not " + width + " by "
                    + height);
        }
    }

    /**
     * Paints a chart.
     *
     * @param width  of the whole drawing in points, at least 80
     * @param height of the whole drawing in points, at least 80
     */
    public static Drawing paint(Chart chart, double width, double height) {
        return new ChartPainter(chart, width, height).paint();
    }

    /** Paints a grid of shaded cells; sizes as for a chart. */
    public static Drawing paint(HeatGrid grid, double width, double height) {
        return HeatGridPainter.paint(grid, width, height);
    }

    private Drawing paint() {
        Extent extent = Extent.of(chart);
        double legendHeight = legend();
        double top = MARGIN + legendHeight;
        double bottom = height - MARGIN - 2 * TEXT - 10;
        Ticks yTicks = ticks(chart.y(), extent.lowY(), extent.highY(), (int) Math.max(2, (bottom - top) / 28));
        double labels = yTicks.labels().stream().mapToDouble(label -> Typeface.REGULAR.width(label,
                TEXT)).max().orElse(0);
        double left = MARGIN + TEXT + 5 + labels + 4;
        double right = width - MARGIN - 10;
        Ticks xTicks = ticks(chart.x(), extent.lowX(), extent.highX(), (int) Math.max(2, (right - left) / 55));
        plot = new Shape.Rect(left, top, right - left, bottom - top, FRAME);
        x = new Scale(xTicks.low(), xTicks.high(), left, right);
        y = new Scale(yTicks.low(), yTicks.high(), bottom, top);
        grid(xTicks, yTicks);
        List<Shape> data = new ArrayList<>();
        for (int i = 0; i < chart.layers().size(); i++) {
            data.add(layer(chart.layers().get(i), i));
        }
        shapes.add(new Shape.Clip(plot, data));
        shapes.add(plot);
        axisTitles();
        return new Drawing(width, height, chart.title(), chart.description(), shapes);
    }

    private static Ticks ticks(Axis axis, double low, double high, int most) {
        int room = Math.min(most, 40);
        return switch (axis.kind()) {
            case NUMBER -> Ticks.numbers(low, high, room);
            case DAY -> Ticks.days(low, high, room);
            case YEAR -> Ticks.years(low, high, room);
        };
    }

    private void grid(Ticks xTicks, Ticks yTicks) {
        for (int i = 0; i < yTicks.at().size(); i++) {
            double at = y.of(yTicks.at().get(i));
            shapes.add(new Shape.Line(new Point(plot.x(), at), new Point(plot.x() + plot.width(), at), GRID));
            text(plot.x() - 4, at + TEXT * 0.35, yTicks.labels().get(i), Shape.Anchor.END, 0);
        }
        double bottom = plot.y() + plot.height();
        for (int i = 0; i < xTicks.at().size(); i++) {
            double at = x.of(xTicks.at().get(i));
            shapes.add(new Shape.Line(new Point(at, plot.y()), new Point(at, bottom), GRID));
            text(at, bottom + TEXT + 3, xTicks.labels().get(i), Shape.Anchor.MIDDLE, 0);
        }
    }

    private void axisTitles() {
        text(plot.x() + plot.width() / 2, height - MARGIN, chart.x().label(), Shape.Anchor.MIDDLE, 0);
        text(MARGIN + TEXT * 0.8, plot.y() + plot.height() / 2, chart.y().label(), Shape.Anchor.MIDDLE, -90);
    }

    private void text(double atX, double atY, String text, Shape.Anchor anchor, double turn) {
        shapes.add(new Shape.Text(new Point(atX, atY), text, TEXT, Typeface.REGULAR, Colours.INK, anchor, turn));
    }

    /** Names of the layers in rows above the plot; gives the height it took. */
    private double legend() {
        double row = TEXT + 5;
        double at = MARGIN;
        double base = MARGIN + TEXT;
        boolean any = false;
        for (int i = 0; i < chart.layers().size(); i++) {
            Layer layer = chart.layers().get(i);
            if (layer.name().isEmpty()) {
                continue;
            }
            double wide = 22 + Typeface.REGULAR.width(layer.name(), TEXT) * 1.06 + 12;
            if (any && at + wide > width - MARGIN) {
                at = MARGIN;
                base += row;
            }
            any = true;
            key(layer, i, at, base - TEXT * 0.35);
            text(at + 22, base, layer.name(), Shape.Anchor.START, 0);
            at += wide;
        }
        return any ? base - MARGIN + 6 : 4;
    }

    private void key(Layer layer, int index, double at, double middle) {
        switch (layer) {
            case Layer.Band band -> shapes.add(new Shape.Rect(at, middle - 3.5, 17, 7, Style.filled(pale(index))));
            case Layer.Bars bars -> shapes.add(new Shape.Rect(at + 4, middle - 3.5, 9, 7, Style.filled(colour(index))));
            case Layer.Points points -> shapes.add(ring(at + 8.5, middle, colour(index)));
            default -> shapes.add(new Shape.Line(new Point(at, middle), new Point(at + 17, middle), lineStyle(layer,
                    index)));
        }
    }

    private Shape layer(Layer layer, int index) {
        return switch (layer) {
            case Layer.Line line -> lines(line.x(), line.y(), lineStyle(line, index));
            case Layer.Step step -> lines(stepped(step.x(), true), stepped(step.y(), false), lineStyle(step, index));
            case Layer.Band band -> band(band, index);
            case Layer.Bars bars -> bars(bars, index);
            case Layer.Points points -> points(points, index);
            case Layer.Level level -> new Shape.Line(new Point(plot.x(), y.of(level.y())),
                    new Point(plot.x() + plot.width(), y.of(level.y())), lineStyle(level, index));
        };
    }

    /** A step holds its y until the next x, so every corner but the first and last is doubled. */
    private static double[] stepped(double[] values, boolean across) {
        if (values.length < 2) {
            return values;
        }
        double[] corners = new double[2 * values.length - 1];
        for (int i = 0; i < values.length; i++) {
            corners[2 * i] = values[i];
            if (i + 1 < values.length) {
                corners[2 * i + 1] = across ? values[i + 1] : values[i];
            }
        }
        return corners;
    }

    private Shape lines(double[] xs, double[] ys, Style style) {
        List<Shape> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (int i = 0; i < xs.length; i++) {
            if (Double.isFinite(xs[i]) && Double.isFinite(ys[i])) {
                run.add(new Point(x.of(xs[i]), y.of(ys[i])));
            } else if (!run.isEmpty()) {
                runs.add(new Shape.Polyline(run, style));
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            runs.add(new Shape.Polyline(run, style));
        }
        return new Shape.Group(runs);
    }

    private Shape band(Layer.Band band, int index) {
        List<Shape.Piece> pieces = new ArrayList<>();
        int count = band.x().length;
        for (int i = 0; i < 2 * count; i++) {
            int k = i < count ? i : 2 * count - 1 - i;
            double value = i < count ? band.low()[k] : band.high()[k];
            if (Double.isFinite(value)) {
                Point point = new Point(x.of(band.x()[k]), y.of(value));
                pieces.add(pieces.isEmpty() ? new Shape.Move(point) : new Shape.LineTo(point));
            }
        }
        if (!pieces.isEmpty()) {
            pieces.add(new Shape.Close());
        }
        return new Shape.Path(pieces, Style.filled(pale(index)));
    }

    private Shape bars(Layer.Bars bars, int index) {
        List<Shape> all = new ArrayList<>();
        double half = Extent.barWidth(bars.x()) / 2;
        for (int i = 0; i < bars.x().length; i++) {
            if (Double.isFinite(bars.y()[i])) {
                double from = x.of(bars.x()[i] - half);
                double to = x.of(bars.x()[i] + half);
                double top = Math.min(y.of(bars.y()[i]), y.of(0));
                all.add(new Shape.Rect(from, top, to - from, Math.abs(y.of(bars.y()[i]) - y.of(0)),
                        Style.filled(colour(index))));
            }
        }
        return new Shape.Group(all);
    }

    private Shape points(Layer.Points points, int index) {
        List<Shape> all = new ArrayList<>();
        for (int i = 0; i < points.x().length; i++) {
            if (Double.isFinite(points.x()[i]) && Double.isFinite(points.y()[i])) {
                all.add(ring(x.of(points.x()[i]), y.of(points.y()[i]), colour(index)));
            }
        }
        return new Shape.Group(all);
    }

    /** A circle from four cubic curves. */
    private static Shape ring(double atX, double atY, Colour colour) {
        double r = 2.6;
        double c = r * 0.5523;
        return new Shape.Path(List.of(new Shape.Move(new Point(atX + r, atY)),
                new Shape.CurveTo(new Point(atX + r, atY + c), new Point(atX + c, atY + r), new Point(atX, atY + r)),
                new Shape.CurveTo(new Point(atX - c, atY + r), new Point(atX - r, atY + c), new Point(atX - r, atY)),
                new Shape.CurveTo(new Point(atX - r, atY - c), new Point(atX - c, atY - r), new Point(atX, atY - r)),
                new Shape.CurveTo(new Point(atX + c, atY - r), new Point(atX + r, atY - c), new Point(atX + r, atY)),
                new Shape.Close()), new Style(Colour.WHITE, colour, 1.1, List.of()));
    }

    private static Colour colour(int index) {
        return Colours.series(index);
    }

    private static Colour pale(int index) {
        return Colours.series(index).towards(Colour.WHITE, 0.75);
    }

    /** Lines differ in their dashes as well as in colour. */
    private static Style lineStyle(Layer layer, int index) {
        Style style = Style.line(colour(index), LINE);
        boolean dashed = layer instanceof Layer.Level || layer instanceof Layer.Line line && line.dashed();
        return dashed ? style.dashed(DASHES[1 + index % (DASHES.length - 1)]) : style;
    }
}
