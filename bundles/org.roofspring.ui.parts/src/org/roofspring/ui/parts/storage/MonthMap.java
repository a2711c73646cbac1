package org.roofspring.ui.parts.storage;

import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.ui.session.FindingKey;

/** Shortage by month: years down, months across, each month in the colour of the share of its demand not supplied. */
final class MonthMap extends Plot {
    private static final int MONTHS = 12;
    private static final int LEGEND = 22;
    private static final int GAP = 6;
    private static final String SUPPLIED = "all supplied";
    private static final String NO_DEMAND = "no demand";
    private static final RGB NONE_MISSING = new RGB(0xe8, 0xee, 0xf2);

    /** A month of the record; the share is null where nothing was asked for. */
    private record Cell(Quantity demandDays, Quantity shortDays, Quantity demand, Quantity missing, Quantity share) {
    }

    private final FindingKey finding;
    private final Figures figures;
    private final Map<YearMonth, Cell> cells = new HashMap<>();
    private int firstYear = Integer.MAX_VALUE;
    private int lastYear = Integer.MIN_VALUE;
    private Rectangle map = new Rectangle(0, 0, 0, 0);

    MonthMap(FindingKey finding, FindingValue.Table table, Figures figures) {
        this.finding = finding;
        this.figures = figures;
        Cells read = new Cells(table);
        for (int row = 0; row < read.size(); row++) {
            YearMonth month = YearMonth.parse(read.text(row, "Month"));
            cells.put(month, new Cell(read.quantity(row, "Days with demand"), read.quantity(row, "Days short"),
                    read.quantity(row, "Demand"), read.quantity(row, "Not supplied"),
                    read.quantity(row, "Share not supplied")));
            firstYear = Math.min(firstYear, month.getYear());
            lastYear = Math.max(lastYear, month.getYear());
        }
    }

    @Override
    public String title() {
        return "Shortage by month, " + firstYear + " to " + lastYear;
    }

    @Override
    public int columns() {
        return cells.isEmpty() ? 0 : MONTHS;
    }

    @Override
    public int rows() {
        return cells.isEmpty() ? 0 : lastYear - firstYear + 1;
    }

    @Override
    public Optional<Reading> reading(int column, int row) {
        YearMonth month = YearMonth.of(firstYear + row, column + 1);
        return Optional.ofNullable(cells.get(month)).map(cell -> new Reading(words(month, cell), finding));
    }

    private String words(YearMonth month, Cell cell) {
        String name = month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear() + ":  ";
        if (cell.share() == null) {
            return name + "no demand";
        }
        if (cell.shortDays().value() == 0) {
            return name + "all " + figures.words(cell.demand()) + " supplied, on " + figures.words(cell.demandDays());
        }
        return name + figures.words(cell.missing()) + " of " + figures.words(cell.demand()) + " not supplied ("
                + figures.words(cell.share()) + "); short on " + figures.format().number(cell.shortDays().value())
                + " of " + figures.words(cell.demandDays());
    }

    @Override
    void paint(Pen pen, Rectangle area) {
        if (cells.isEmpty()) {
            return;
        }
        int left = pen.size("9999").x + pen.height() + 2 * GAP;
        int right = LEGEND + pen.size("100").x + pen.height() + 4 * GAP;
        int below = 2 * pen.height() + GAP;
        map = new Rectangle(area.x + left, area.y, Math.max(MONTHS, area.width - left - right),
                Math.max(rows(), area.height - below));
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < MONTHS; column++) {
                Cell cell = cells.get(YearMonth.of(firstYear + row, column + 1));
                if (cell != null) {
                    cell(pen, bounds(column, row), cell);
                }
            }
        }
        labels(pen, area);
        legend(pen, new Rectangle(map.x + map.width + 3 * GAP, map.y, LEGEND, map.height));
        key(pen, map.x + map.width, area.y + area.height - pen.height());
        pen.centred("Month", map.x + map.width / 2, area.y + area.height - pen.height(), map.x,
                map.x + map.width - keyWidth(pen) - GAP);
    }

    private static void cell(Pen pen, Rectangle bounds, Cell cell) {
        // a hair of paper between the months, where there is room for it
        Rectangle inner = new Rectangle(bounds.x, bounds.y, Math.max(1, bounds.width - 1),
                Math.max(1, bounds.height - (bounds.height > 4 ? 1 : 0)));
        if (cell.share() == null) {
            pen.ink(pen.palette().line()).hatch(inner);
        } else {
            pen.ink(colour(cell)).fill(inner);
        }
    }

    private static RGB colour(Cell cell) {
        return cell.share().value() > 0 ? Ramp.SHORTAGE.at(cell.share().si()) : NONE_MISSING;
    }

    private void labels(Pen pen, Rectangle area) {
        pen.ink(pen.palette().label());
        int every = 1;
        while (rows() * (pen.height() + 2) / every > map.height && every < rows()) {
            every = every == 1 ? 2 : every == 2 ? 5 : every + 5;
        }
        for (int row = 0; row < rows(); row++) {
            if ((firstYear + row) % every == 0) {
                Rectangle bounds = bounds(0, row);
                pen.right(Integer.toString(firstYear + row), map.x - GAP,
                        bounds.y + (bounds.height - pen.height()) / 2);
            }
        }
        pen.upwards("Year", area.x, map.y + map.height / 2);
        TextStyle style = map.width / MONTHS > pen.size("Mmm").x + 4 ? TextStyle.SHORT : TextStyle.NARROW;
        for (int column = 0; column < MONTHS; column++) {
            Rectangle bounds = bounds(column, 0);
            pen.centred(Month.of(column + 1).getDisplayName(style, Locale.ENGLISH), bounds.x + bounds.width / 2,
                    map.y + map.height + 2, 0, Integer.MAX_VALUE);
        }
    }

    /** The scale of colours, with its unit. */
    private void legend(Pen pen, Rectangle bar) {
        Axis axis = Axis.linear(figures.title("Not supplied", Units.PERCENT), 0, 100,
                figures.format());
        Legend.draw(pen, bar, axis, Ramp.SHORTAGE);
    }

    private static int keyWidth(Pen pen) {
        return pen.size(SUPPLIED + NO_DEMAND).x + 2 * side(pen) + 5 * GAP;
    }

    private static int side(Pen pen) {
        return pen.height() - 4;
    }

    /** What is not on the scale, ended at the right end. */
    private static void key(Pen pen, int end, int y) {
        int side = side(pen);
        int x = end - keyWidth(pen);
        Rectangle box = new Rectangle(x, y + 2, side, side);
        pen.ink(NONE_MISSING).fill(box);
        pen.ink(pen.palette().muted()).frame(box);
        pen.ink(pen.palette().label()).text(SUPPLIED, x + side + GAP, y);
        int next = x + side + 4 * GAP + pen.size(SUPPLIED).x;
        Rectangle hatched = new Rectangle(next, y + 2, side, side);
        pen.ink(pen.palette().muted()).hatch(hatched);
        pen.frame(hatched);
        pen.ink(pen.palette().label()).text(NO_DEMAND, next + side + GAP, y);
    }

    @Override
    Point placeAt(int x, int y) {
        if (!map.contains(x, y)) {
            return null;
        }
        return new Point((x - map.x) * MONTHS / map.width, (y - map.y) * rows() / map.height);
    }

    @Override
    Rectangle bounds(int column, int row) {
        int x = map.x + map.width * column / MONTHS;
        int y = map.y + map.height * row / rows();
        return new Rectangle(x, y, map.x + map.width * (column + 1) / MONTHS - x,
                map.y + map.height * (row + 1) / rows() - y);
    }
}
