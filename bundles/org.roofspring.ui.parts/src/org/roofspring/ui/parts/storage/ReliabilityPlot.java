package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.ui.session.FindingKey;

/**
 * Share of days met over usable volume, with the target, the volume that reaches it, the tanks there are, the site as
 * built with its interval, and what the simple rules would give.
 */
final class ReliabilityPlot extends Plot {
    private static final List<String> RULES = List.of("ruleFivePercent", "ruleSixPercent", "ruleDemandSide");
    private static final List<String> RULE_LABELS = List.of("5 %", "6 %", "dry time");
    private static final int NEAR = 9;

    private final Figures figures;
    private final double[] volumes;
    private final double[] shares;
    private final Unit volumeUnit;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final Optional<Quantity> target;
    private final Optional<Quantity> low;
    private final Optional<Quantity> high;
    private PlotFrame frame;

    ReliabilityPlot(Found found, Optional<Found> balance, FindingValue.Table table) {
        figures = found.figures();
        Cells cells = new Cells(table);
        volumes = new double[cells.size()];
        shares = new double[cells.size()];
        volumeUnit = cells.quantity(0, "Usable volume").unit();
        FindingKey curve = TankSizeView.key("reliabilityTable");
        for (int row = 0; row < volumes.length; row++) {
            Quantity volume = cells.quantity(row, "Usable volume");
            Quantity met = cells.quantity(row, "Days met in full");
            volumes[row] = figures.number(volume);
            shares[row] = percent(met);
            readings.add(new Reading(figures.words(volume) + " usable:  " + figures.words(met) + " of days met in full, "
                    + figures.words(cells.quantity(row, "Demand supplied")) + " of the demand supplied, short on "
                    + figures.words(cells.quantity(row, "Days short in the record")), curve));
        }
        target = found.quantity("target");
        low = found.quantity("timeReliabilityLow");
        high = found.quantity("timeReliabilityHigh");
        rules(found);
        sizes(found, balance);
    }

    private static double percent(Quantity share) {
        return share.in(Units.PERCENT);
    }

    private void rules(Found found) {
        Optional<Cells> rules = found.value("rules", FindingValue.Table.class).map(Cells::new);
        for (int row = 0; rules.isPresent() && row < Math.min(RULES.size(), rules.get().size()); row++) {
            Quantity volume = rules.get().quantity(row, "Usable volume");
            Quantity met = rules.get().quantity(row, "Days it would meet here");
            if (met != null && figures.number(volume) <= volumes[volumes.length - 1]) {
                marks.add(new Mark(figures.number(volume), percent(met), RULE_LABELS.get(row), Mark.Shape.TRIANGLE,
                        new Reading(rules.get().text(row, "Rule") + ":  " + figures.words(volume) + ", would meet "
                                + figures.words(met) + " of days here. " + rules.get().text(row, "Why it differs"),
                                TankSizeView.key(RULES.get(row)))));
            }
        }
    }

    private void sizes(Found found, Optional<Found> balance) {
        Optional<Quantity> present = found.quantity("presentVolume");
        Optional<Quantity> built = balance.flatMap(of -> of.quantity("timeReliability"));
        if (target.isPresent()) {
            found.quantity("requiredVolume").ifPresent(volume -> marks.add(new Mark(figures.number(volume),
                    percent(target.get()), "needed " + figures.words(volume), Mark.Shape.SQUARE, new Reading("Needed:  "
                            + figures.words(volume) + " usable reach the target of " + figures.words(target.get()),
                            TankSizeView.key("requiredVolume")))));
        }
        present.flatMap(volume -> found.quantity("presentReliability").map(met -> new Mark(figures.number(volume),
                percent(met), "tank " + figures.words(volume), Mark.Shape.DISC, new Reading("The tanks there are:  "
                        + figures.words(volume) + " usable; one plain tank of it would meet " + figures.words(met)
                        + " of days", TankSizeView.key("presentReliability"))))).ifPresent(marks::add);
        if (present.isPresent() && built.isPresent()) {
            String interval = low.isPresent() && high.isPresent() ? ", within " + figures.words(low.get()) + " and "
                    + figures.words(high.get()) : "";
            marks.add(new Mark(figures.number(present.get()), percent(built.get()), "as built "
                    + figures.words(built.get()), Mark.Shape.RING, new Reading("As built:  "
                            + figures.words(built.get()) + " of days met" + interval
                            + "; rations, leaks, evaporation and pumps count", new FindingKey(TankSizeView.BALANCE,
                                    "timeReliability", null))));
        }
    }

    @Override
    public String title() {
        return "Share of days met over usable volume";
    }

    @Override
    public int columns() {
        return volumes.length + marks.size();
    }

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public Optional<Reading> reading(int column, int row) {
        return Optional.of(column < volumes.length ? readings.get(column)
                : marks.get(column - volumes.length).reading());
    }

    @Override
    void paint(Pen pen, Rectangle area) {
        Axis up = Axis.linear(figures.title("Days met in full", Units.PERCENT), 0, 100, figures.format());
        Axis across = Axis.linear(figures.title("Usable volume", volumeUnit), 0,
                Math.max(volumes[volumes.length - 1], Double.MIN_NORMAL), figures.format());
        // marks crowd near the whole, so that there is room for their names above it
        int above = 2 * pen.height() + pen.height() / 2;
        int height = area.height - PlotFrame.below(pen) - above;
        int left = PlotFrame.leftOf(pen, up, height);
        frame = PlotFrame.draw(pen, new Rectangle(area.x + left, area.y + above, area.width - left - 2 * pen.height(),
                height), across, up, true, true);
        Rectangle inner = frame.inner();
        LabelPlacer labels = new LabelPlacer(pen, new Rectangle(inner.x, area.y, inner.width, above + height));
        int[] points = new int[2 * volumes.length];
        for (int i = 0; i < volumes.length; i++) {
            points[2 * i] = frame.x(volumes[i]);
            points[2 * i + 1] = frame.y(shares[i]);
            labels.keepOff(new Rectangle(points[2 * i] - 2, points[2 * i + 1] - 2, 4, 4));
        }
        target.ifPresent(share -> {
            int y = frame.y(percent(share));
            pen.ink(pen.palette().good()).dashed(inner.x, y, inner.x + inner.width, y);
            labels.keepOff(new Rectangle(inner.x, y - 1, inner.width, 2));
        });
        pen.ink(pen.palette().water()).line(2, points);
        interval(pen);
        marks.forEach(mark -> labels.keepOff(Mark.bounds(frame.x(mark.x()), frame.y(mark.y()))));
        for (Mark mark : marks.reversed()) {
            mark.draw(pen, ink(pen, mark), frame.x(mark.x()), frame.y(mark.y()));
        }
        for (Mark mark : marks.reversed()) {
            pen.ink(pen.palette().label());
            labels.put(mark.label(), frame.x(mark.x()), frame.y(mark.y()));
        }
        target.ifPresent(share -> {
            pen.ink(pen.palette().good());
            labels.put("target " + figures.words(share), inner.x, frame.y(percent(share)));
        });
    }

    /** How sure the site as built is. */
    private void interval(Pen pen) {
        Mark last = marks.isEmpty() ? null : marks.getLast();
        if (last != null && last.shape() == Mark.Shape.RING && low.isPresent() && high.isPresent()) {
            int x = frame.x(last.x());
            int top = frame.y(percent(high.get()));
            int bottom = frame.y(percent(low.get()));
            pen.ink(pen.palette().label()).line(2, x, top, x, bottom);
            pen.line(2, x - 8, top, x + 8, top);
            pen.line(2, x - 8, bottom, x + 8, bottom);
        }
    }

    private static org.eclipse.swt.graphics.RGB ink(Pen pen, Mark mark) {
        return switch (mark.shape()) {
            case SQUARE -> pen.palette().good().getRGB();
            case TRIANGLE -> pen.palette().warning().getRGB();
            default -> pen.palette().label().getRGB();
        };
    }

    @Override
    Point placeAt(int x, int y) {
        if (frame == null || !frame.inner().contains(x, y)) {
            return null;
        }
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            if (Math.hypot(frame.x(mark.x()) - x, frame.y(mark.y()) - y) <= NEAR) {
                return new Point(volumes.length + i, 0);
            }
        }
        int nearest = 0;
        for (int i = 1; i < volumes.length; i++) {
            if (Math.abs(frame.x(volumes[i]) - x) < Math.abs(frame.x(volumes[nearest]) - x)) {
                nearest = i;
            }
        }
        return new Point(nearest, 0);
    }

    @Override
    Rectangle bounds(int column, int row) {
        if (column >= volumes.length) {
            Mark mark = marks.get(column - volumes.length);
            return Mark.bounds(frame.x(mark.x()), frame.y(mark.y()));
        }
        int x = frame.x(volumes[column]);
        int y = frame.y(shares[column]);
        return new Rectangle(x - 3, y - 3, 6, 6);
    }
}
