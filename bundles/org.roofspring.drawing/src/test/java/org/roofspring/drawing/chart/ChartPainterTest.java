package org.roofspring.drawing.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.roofspring.drawing.Drawing;
import org.roofspring.drawing.Shape;
import org.roofspring.drawing.SvgWriter;

class ChartPainterTest {
    private static final double[] X = { 0, 1, 2, 3, 4 };
    private static final double[] Y = { 0, 120, 30, Double.NaN, 90 };

    private static Chart everyLayer() {
        return new Chart("Level", "", Axis.of("Flow", "L/s"), Axis.fromZero("Volume in all tanks", "m\u00b3"), List.of(
                new Layer.Band("range", X, new double[] { 0, 10, 20, 30, 40 }, new double[] { 9, 90, 80, 70, 60 }),
                new Layer.Bars("yearly", X, Y), new Layer.Step("step", X, Y), new Layer.Line("line", X, Y, true),
                new Layer.Points("measured", X, Y), new Layer.Level("a limit with rather a long name", 100)));
    }

    @Test
    void everyTextLiesOnTheDrawingAndTheLegendAboveThePlot() {
        Drawing drawing = ChartPainter.paint(everyLayer(), 480, 220);
        double plotTop = drawing.shapes().stream().filter(Shape.Clip.class::isInstance)
                .mapToDouble(shape -> ((Shape.Clip) shape).area().y()).findFirst().orElseThrow();
        for (Shape.Text text : texts(drawing)) {
            assertInside(text, drawing);
            if (everyLayer().layers().stream().anyMatch(layer -> layer.name().equals(text.text()))) {
                assertTrue(text.at().y() < plotTop, text.text());
            }
        }
    }

    @Test
    void textsDoNotLieOnEachOther() {
        for (double width : new double[] { 160, 300, 480, 700 }) {
            List<Shape.Text> level = texts(ChartPainter.paint(everyLayer(), width,
                    200)).stream().filter(text -> text.turn() == 0).toList();
            for (int i = 0; i < level.size(); i++) {
                for (int k = i + 1; k < level.size(); k++) {
                    double[] a = box(level.get(i));
                    double[] b = box(level.get(k));
                    boolean apart = a[1] <= b[0] || b[1] <= a[0] || a[3] <= b[2] || b[3] <= a[2];
                    assertTrue(apart, level.get(i).text() + " on " + level.get(k).text() + " at width " + width);
                }
            }
        }
    }

    @Test
    void daysAndYears() {
        double[] days = new double[365];
        for (int i = 0; i < days.length; i++) {
            days[i] = 20_000 + i;
        }
        Drawing drawing = ChartPainter.paint(new Chart("Ahead", "", Axis.days("Day"), Axis.fromZero("Water", "m\u00b3"),
                List.of(new Layer.Line("", days, days, false))), 400, 200);
        assertTrue(texts(drawing).stream().anyMatch(text -> text.text().equals("Nov")),
                () -> texts(drawing).toString());
    }

    @Test
    void anEmptyChartIsStillAChart() {
        Chart empty = new Chart("Nothing", "", Axis.of("x", ""), Axis.of("y", ""), List.of());
        assertTrue(SvgWriter.document(ChartPainter.paint(empty, 200, 100)).contains("<rect"));
        assertThrows(IllegalArgumentException.class, () -> ChartPainter.paint(empty, 20, 100));
    }

    @Test
    void theGridShadesWhatIsNotZeroAndLeavesOutWhatIsNotThere() {
        HeatGrid grid = new HeatGrid("Shortage", "", List.of("2001", "2002", "2003"), List.of("Jan", "Feb"),
                new double[][] { { 0, 5, Double.NaN }, { 10, 0, 1 } }, "m\u00b3");
        Drawing drawing = ChartPainter.paint(grid, 300, 120);
        List<Shape.Rect> cells = drawing.shapes().stream()
                .filter(Shape.Rect.class::isInstance).map(Shape.Rect.class::cast)
                .filter(rect -> rect.style().stroke() != null).toList();
        assertEquals(5, cells.size());
        assertEquals(cells.get(0).style().fill(), cells.get(3).style().fill());
        assertEquals(5, cells.stream().map(rect -> rect.style().fill()).filter(c -> c != null).count());
        texts(drawing).forEach(text -> assertInside(text, drawing));
        assertThrows(IllegalArgumentException.class, () -> new HeatGrid("", "", List.of("a"), List.of("b"),
                new double[][] { { 1, 2 } }, ""));
    }

    @Test
    void seriesColoursDifferInLightnessFromTheirNeighbours() {
        for (int i = 0; i < 4; i++) {
            var a = org.roofspring.drawing.Colours.series(i);
            var b = org.roofspring.drawing.Colours.series(i + 1);
            assertTrue(Math.abs(lightness(a) - lightness(b)) > 0.05, i + " and " + (i + 1));
        }
    }

    /** Relative luminance as WCAG 2.1 defines it. */
    private static double lightness(org.roofspring.drawing.Colour c) {
        return 0.2126 * linear(c.red()) + 0.7152 * linear(c.green()) + 0.0722 * linear(c.blue());
    }

    private static double linear(int part) {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static void assertInside(Shape.Text text, Drawing drawing) {
        if (text.turn() == 0) {
            double[] box = box(text);
            assertTrue(box[0] >= 0 && box[1] <= drawing.width() && box[2] >= 0 && box[3] <= drawing.height(),
                    text.toString());
        } else {
            double half = text.typeface().width(text.text(), text.size()) / 2;
            assertTrue(text.at().y() - half >= 0 && text.at().y() + half <= drawing.height(), text.toString());
        }
    }

    private static double[] box(Shape.Text text) {
        double width = text.typeface().width(text.text(), text.size());
        double left = text.at().x() - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        return new double[] { left, left + width, text.at().y() - 0.75 * text.size(), text.at().y()
                + 0.2 * text.size() };
    }

    private static List<Shape.Text> texts(Drawing drawing) {
        List<Shape.Text> texts = new ArrayList<>();
        drawing.shapes().forEach(shape -> collect(shape, texts));
        return texts;
    }

    private static void collect(Shape shape, List<Shape.Text> texts) {
        switch (shape) {
            case Shape.Text text -> texts.add(text);
            case Shape.Group group -> group.shapes().forEach(inner -> collect(inner, texts));
            case Shape.Clip clip -> clip.shapes().forEach(inner -> collect(inner, texts));
            default -> { }
        }
    }
}
