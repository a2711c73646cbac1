package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;

/**
 * Share of days met, roof across and tank upwards, with the line above which the target is reached, the site's own
 * point, and the cheapest pair where prices are known.
 */
final class SurfacePlot extends Plot {
    private static final RGB INK = new RGB(0x20, 0x14, 0x08);
    private static final RGB WHITE = new RGB(255, 255, 255);
    private static final int LEGEND = 22;
    private static final int NEAR = 9;

    private final Figures figures;
    private final double[] roofs;
    private final double[] tanks;
    private final Unit roofUnit;
    private final Unit tankUnit;
    private final Cells cells;
    private final List<Mark> marks = new ArrayList<>();
    private final Optional<Quantity> target;
    private PlotFrame frame;

    /** @param table tank by tank for each roof, both rising */
    SurfacePlot(Found found, FindingValue.Table table) {
        figures = found.figures();
        cells = new Cells(table);
        Quantity first = cells.quantity(0, "Roof");
        int tanksOfEach = 0;
        while (tanksOfEach < cells.size() && cells.quantity(tanksOfEach, "Roof").equals(first)) {
            tanksOfEach++;
        }
        roofUnit = first.unit();
        tankUnit = cells.quantity(0, "Usable volume").unit();
        roofs = new double[cells.size() / tanksOfEach];
        tanks = new double[tanksOfEach];
        for (int roof = 0; roof < roofs.length; roof++) {
            roofs[roof] = figures.number(cells.quantity(roof * tanksOfEach, "Roof"));
        }
        for (int tank = 0; tank < tanks.length; tank++) {
            tanks[tank] = figures.number(cells.quantity(tank, "Usable volume"));
        }
        target = found.quantity("target");
        marks(found);
    }

    private void marks(Found found) {
        Optional<Quantity> roof = found.quantity("presentRoof");
        Optional<Quantity> tank = found.quantity("presentVolume");
        if (roof.isPresent() && tank.isPresent()) {
            String met = found.words("presentReliability").map(share -> ", " + share + " of days met").orElse("");
            marks.add(new Mark(figures.number(roof.get()), figures.number(tank.get()), "this site", Mark.Shape.DISC,
                    new Reading("This site:  " + figures.words(roof.get()) + " of roof, " + figures.words(tank.get())
                            + " usable" + met, TankSizeView.key("presentReliability"))));
        }
        Optional<Quantity> cheapRoof = found.quantity("cheapestRoof");
        Optional<Quantity> cheapTank = found.quantity("cheapestTank");
        if (cheapRoof.isPresent() && cheapTank.isPresent()) {
            String words = "Cheapest pair:  " + figures.words(cheapRoof.get()) + " of roof, "
                    + figures.words(cheapTank.get()) + " usable, " + found.words("cheapestCost").orElse("") + ", "
                    + found.words("cheapestReliability").orElse("") + " of days met. "
                    + found.value("cheapestPair", FindingValue.Text.class).map(FindingValue.Text::text).orElse("");
            marks.add(new Mark(figures.number(cheapRoof.get()), figures.number(cheapTank.get()), "cheapest",
                    Mark.Shape.SQUARE, new Reading(words, TankSizeView.key("cheapestCost"))));
        }
    }

    @Override
    public String title() {
        return "Share of days met, roof by tank";
    }

    @Override
    public int columns() {
        return roofs.length;
    }

    /** The tanks, largest first, and a row of marks below them. */
    @Override
    public int rows() {
        return tanks.length + (marks.isEmpty() ? 0 : 1);
    }

    private int row(int roof, int tank) {
        return roof * tanks.length + tank;
    }

    @Override
    public Optional<Reading> reading(int column, int row) {
        if (row >= tanks.length) {
            return column < marks.size() ? Optional.of(marks.get(column).reading()) : Optional.empty();
        }
        int cell = row(column, tanks.length - 1 - row);
        return Optional.of(new Reading(figures.words(cells.quantity(cell, "Roof")) + " of roof, "
                + figures.words(cells.quantity(cell, "Usable volume")) + " usable:  "
                + figures.words(cells.quantity(cell, "Days met in full")) + " of days met in full, "
                + figures.words(cells.quantity(cell, "Demand supplied")) + " of the demand supplied",
                TankSizeView.key("surface")));
    }

    private static double half(double[] values) {
        return values.length > 1 ? (values[1] - values[0]) / 2 : values[0] / 2;
    }

    @Override
    void paint(Pen pen, Rectangle area) {
        Axis across = Axis.linear(figures.title("Roof, plan area", roofUnit), roofs[0] - half(roofs),
                roofs[roofs.length - 1] + half(roofs), figures.format());
        Axis up = Axis.linear(figures.title("Usable volume", tankUnit), tanks[0] - half(tanks),
                tanks[tanks.length - 1] + half(tanks), figures.format());
        int height = area.height - PlotFrame.below(pen) - pen.height() / 2;
        int left = PlotFrame.leftOf(pen, up, height);
        int right = LEGEND + pen.size("100").x + pen.height() + 3 * pen.height();
        Rectangle inner = new Rectangle(area.x + left, area.y + pen.height() / 2, area.width - left - right, height);
        frame = PlotFrame.draw(pen, inner, across, up, false, true);
        for (int roof = 0; roof < roofs.length; roof++) {
            for (int tank = 0; tank < tanks.length; tank++) {
                pen.ink(Ramp.RELIABILITY.at(cells.quantity(row(roof, tank), "Days met in full").si()));
                pen.fill(bounds(roof, tanks.length - 1 - tank));
            }
        }
        LabelPlacer labels = new LabelPlacer(pen, inner);
        contour(pen, labels);
        marks.forEach(mark -> labels.keepOff(Mark.bounds(frame.x(mark.x()), frame.y(mark.y()))));
        for (Mark mark : marks) {
            mark.draw(pen, mark.shape() == Mark.Shape.DISC ? INK : pen.palette().danger().getRGB(), frame.x(mark.x()),
                    frame.y(mark.y()));
        }
        for (Mark mark : marks) {
            pen.inkOn(ground(mark));
            labels.put(mark.label(), frame.x(mark.x()), frame.y(mark.y()));
        }
        Legend.draw(pen, new Rectangle(inner.x + inner.width + pen.height(), inner.y, LEGEND, inner.height),
                Axis.linear(figures.title("Days met in full", Units.PERCENT), 0, 100, figures.format()),
                Ramp.RELIABILITY);
    }

    /** Colour of the surface under a mark. */
    private RGB ground(Mark mark) {
        int roof = nearest(roofs, mark.x());
        int tank = nearest(tanks, mark.y());
        return Ramp.RELIABILITY.at(cells.quantity(row(roof, tank), "Days met in full").si());
    }

    private static int nearest(double[] values, double value) {
        int place = Arrays.binarySearch(values, value);
        int next = Math.clamp(place >= 0 ? place : -place - 1, 0, values.length - 1);
        return next > 0 && value - values[next - 1] < values[next] - value ? next - 1 : next;
    }

    /** The edge between the pairs that reach the target and those that do not. */
    private void contour(Pen pen, LabelPlacer labels) {
        List<Integer> points = new ArrayList<>();
        for (int roof = 0; roof < roofs.length; roof++) {
            int tank = 0;
            while (tank < tanks.length && !cells.flag(row(roof, tank), "Reaches the target")) {
                tank++;
            }
            Rectangle column = bounds(roof, 0);
            int y = tank == tanks.length ? column.y : bounds(roof, tanks.length - 1 - tank).y
                    + bounds(roof, tanks.length - 1 - tank).height;
            if (tank < tanks.length || !points.isEmpty()) {
                if (points.isEmpty()) {
                    points.addAll(List.of(column.x, column.y));
                }
                points.addAll(List.of(column.x, y, column.x + column.width, y));
            }
        }
        if (points.isEmpty()) {
            return;
        }
        int[] line = points.stream().mapToInt(Integer::intValue).toArray();
        pen.ink(INK).line(4, line);
        pen.ink(WHITE).line(2, line);
        for (int i = 0; i < line.length; i += 2) {
            labels.keepOff(new Rectangle(line[i] - 3, line[i + 1] - 3, 6, 6));
        }
        target.ifPresent(share -> {
            pen.ink(WHITE);
            labels.put("target " + figures.words(share), line[line.length - 2], line[line.length - 1]);
        });
    }

    @Override
    Point placeAt(int x, int y) {
        if (frame == null || !frame.inner().contains(x, y)) {
            return null;
        }
        for (int i = 0; i < marks.size(); i++) {
            if (Math.hypot(frame.x(marks.get(i).x()) - x, frame.y(marks.get(i).y()) - y) <= NEAR) {
                return new Point(i, tanks.length);
            }
        }
        Rectangle inner = frame.inner();
        return new Point((x - inner.x) * roofs.length / inner.width, (y - inner.y) * tanks.length / inner.height);
    }

    @Override
    Rectangle bounds(int column, int row) {
        if (row >= tanks.length) {
            Mark mark = marks.get(column);
            return Mark.bounds(frame.x(mark.x()), frame.y(mark.y()));
        }
        Rectangle inner = frame.inner();
        int x = inner.x + inner.width * column / roofs.length;
        int y = inner.y + inner.height * row / tanks.length;
        return new Rectangle(x, y, inner.x + inner.width * (column + 1) / roofs.length - x,
                inner.y + inner.height * (row + 1) / tanks.length - y);
    }
}
