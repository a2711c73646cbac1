package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.roofspring.calc.FindingValue.Daily;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

/** Usable water ahead as a fan, with the days it lasts; below it the chance of having gone short by each date. */
final class FanPlot extends Plot {
    private static final RGB FAN = new RGB(0xc4, 0xdc, 0xee);
    private static final RGB CHANCE = new RGB(0xf3, 0xd9, 0xb8);
    private static final double SHARE_OF_FAN = 0.62;
    private static final int GAP = 6;
    private static final String BAND = "1 year in 10 to 9 in 10 have no more";
    private static final String MIDDLE = "half of the years have no more";
    private static final List<String> LEFT = List.of("daysLeftCautious", "daysLeftMiddle", "daysLeftHopeful");
    private static final List<String> LEFT_WORDS = List.of("1 year in 10", "half", "9 in 10");

    /** Days that the water lasts in a share of the years. */
    private record Lasting(int days, String label) {
    }

    private final Ahead ahead;
    private final Figures figures;
    private final List<Lasting> lasting = new ArrayList<>();
    private PlotFrame fan;
    private PlotFrame chance;

    FanPlot(Ahead ahead, Found found) {
        this.ahead = ahead;
        figures = found.figures();
        for (int i = 0; i < LEFT.size(); i++) {
            String words = LEFT_WORDS.get(i);
            found.quantity(LEFT.get(i)).map(days -> (int) Math.round(days.in(Units.D)))
                    .filter(days -> days < ahead.days())
                    .ifPresent(days -> lasting.add(new Lasting(days, days + " d (" + words + ")")));
        }
    }

    @Override
    public String title() {
        return "Usable water and chance of going short, " + ahead.date(0) + " to " + ahead.date(ahead.days() - 1);
    }

    @Override
    public int columns() {
        return ahead.days();
    }

    /** The fan above, the chance below. */
    @Override
    public int rows() {
        return 2;
    }

    private double shown(Daily series, int day) {
        return figures.number(series.value(day), series.unit());
    }

    private String words(Daily series, int day) {
        return figures.words(Quantity.of(series.value(day), series.unit()));
    }

    @Override
    public Optional<Reading> reading(int column, int row) {
        String date = ahead.date(column) + ":  ";
        return Optional.of(row == 0
                ? new Reading(date + "usable water " + words(ahead.low(), column) + " (1 year in 10 has no more), "
                        + words(ahead.middle(), column) + " (half), " + words(ahead.high(), column) + " (9 in 10)",
                        DaysAheadView.key("fan"))
                : new Reading(date + "chance of having gone short " + words(ahead.chance(), column),
                        DaysAheadView.key("chanceByDate")));
    }

    @Override
    void paint(Pen pen, Rectangle area) {
        double most = Arrays.stream(ahead.high().values()).max().orElse(0);
        Axis across = Axis.dates(ahead.date(0), ahead.days());
        Axis volume = Axis.linear(figures.title("Usable water", ahead.high().unit()), 0,
                Math.max(1e-9, 1.05 * figures.number(most, ahead.high().unit())), figures.format());
        Axis percent = Axis.linear(figures.title("Gone short", Units.PERCENT), 0, 100, figures.format());
        int gap = pen.height();
        int room = area.height - PlotFrame.below(pen) - gap - pen.height() - GAP;
        int fanHeight = (int) (room * SHARE_OF_FAN);
        int left = Math.max(PlotFrame.leftOf(pen, volume, fanHeight),
                PlotFrame.leftOf(pen, percent, room - fanHeight));
        int width = area.width - left - 2 * pen.height();
        Rectangle upper = new Rectangle(area.x + left, area.y + pen.height() + GAP, width, fanHeight);
        key(pen, upper.x, area.y - GAP);
        Rectangle lower = new Rectangle(upper.x, upper.y + fanHeight + gap, width, room - fanHeight);
        fan = PlotFrame.draw(pen, upper, across, volume, true, false);
        chance = PlotFrame.draw(pen, lower, across, percent, true, true);
        band(pen);
        area(pen, chance, ahead.chance());
        lasting(pen);
    }

    private void band(Pen pen) {
        int[] low = points(fan, ahead.low());
        int[] high = points(fan, ahead.high());
        int[] outline = Arrays.copyOf(high, high.length + low.length);
        for (int i = 0; i < low.length; i += 2) {
            outline[high.length + i] = low[low.length - 2 - i];
            outline[high.length + i + 1] = low[low.length - 1 - i];
        }
        pen.ink(FAN).fill(outline);
        pen.ink(pen.palette().water());
        pen.line(1, low);
        pen.line(1, high);
        pen.line(3, points(fan, ahead.middle()));
    }

    /** What band and line stand for. */
    private static void key(Pen pen, int x, int y) {
        int side = pen.height() - 4;
        pen.ink(FAN).fill(new Rectangle(x, y + 2, 2 * side, side));
        pen.ink(pen.palette().water()).line(x, y + 2, x + 2 * side, y + 2);
        pen.line(x, y + 2 + side, x + 2 * side, y + 2 + side);
        pen.ink(pen.palette().label()).text(BAND, x + 2 * side + GAP, y);
        int next = x + 2 * side + 3 * GAP + pen.size(BAND).x;
        pen.ink(pen.palette().water()).line(3, next, y + pen.height() / 2, next + 2 * side, y + pen.height() / 2);
        pen.ink(pen.palette().label()).text(MIDDLE, next + 2 * side + GAP, y);
    }

    /** A line over its filled area. */
    private void area(Pen pen, PlotFrame frame, Daily series) {
        int[] points = points(frame, series);
        int[] area = Arrays.copyOf(points, points.length + 4);
        area[points.length] = points[points.length - 2];
        area[points.length + 1] = frame.y(0);
        area[points.length + 2] = points[0];
        area[points.length + 3] = frame.y(0);
        pen.ink(CHANCE).fill(area);
        pen.ink(pen.palette().warning()).line(2, points);
    }

    private int[] points(PlotFrame frame, Daily series) {
        int[] points = new int[2 * ahead.days()];
        for (int day = 0; day < ahead.days(); day++) {
            // as the day ends
            points[2 * day] = frame.x(day + 1.0);
            points[2 * day + 1] = frame.y(shown(series, day));
        }
        return points;
    }

    /** Upright lines where the water ends in a share of the years. */
    private void lasting(Pen pen) {
        LabelPlacer labels = new LabelPlacer(pen, chance.inner());
        for (Lasting one : lasting) {
            int x = fan.x(one.days());
            pen.ink(pen.palette().label()).dashed(x, fan.inner().y, x, chance.y(0));
        }
        for (Lasting one : lasting) {
            labels.put(one.label(), fan.x(one.days()), chance.inner().y + pen.height());
        }
    }

    @Override
    Point placeAt(int x, int y) {
        if (fan == null) {
            return null;
        }
        Rectangle inner = fan.inner();
        int day = (x - inner.x) * ahead.days() / Math.max(1, inner.width);
        boolean within = x >= inner.x && day < ahead.days();
        return within && inner.contains(x, y) ? new Point(day, 0)
                : within && chance.inner().contains(x, y) ? new Point(day, 1) : null;
    }

    @Override
    Rectangle bounds(int column, int row) {
        PlotFrame frame = row == 0 ? fan : chance;
        int x = frame.x(column);
        return new Rectangle(x, frame.inner().y, Math.max(1, frame.x(column + 1.0) - x), frame.inner().height);
    }
}
