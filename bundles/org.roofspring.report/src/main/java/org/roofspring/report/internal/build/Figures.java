package org.roofspring.report.internal.build;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.drawing.Drawing;
import org.roofspring.drawing.chart.Axis;
import org.roofspring.drawing.chart.Chart;
import org.roofspring.drawing.chart.ChartPainter;
import org.roofspring.drawing.chart.HeatGrid;
import org.roofspring.drawing.chart.Layer;
import org.roofspring.drawing.chart.Thinning;
import org.roofspring.drawing.chart.Ticks;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.report.Block;

/**
 * Charts of the series of one calculation. Any calculation's curves and daily values are plotted, those that share
 * their
 * axes on one chart; what this program's own calculations are known to give is plotted to be read at a glance.
 */
final class Figures {
    static final double WIDTH = 500;
    private static final double HEIGHT = 190;
    /** About three stretches for each point of paper across: finer is not seen. */
    private static final int STRETCHES = 700;
    private static final int MONTHS = 12;

    private final Answers answers;
    private final Words words;

    Figures(Answers answers, Words words) {
        this.answers = answers;
        this.words = words;
    }

    /** Charts of the findings that are left of a calculation; those that a chart shows whole are taken. */
    List<Block> of(String elementId) {
        List<Block> figures = new ArrayList<>();
        if (elementId == null) {
            yearlyTotals(figures);
            shortageMap(figures);
            surface(figures);
            reliabilityCurve(figures);
            fan(figures);
        } else {
            pumpCurves(elementId, figures);
        }
        daily(elementId, figures);
        curves(elementId, figures);
        return figures;
    }

    private void curves(String elementId, List<Block> figures) {
        Map<List<Object>, List<Finding>> charts = new LinkedHashMap<>();
        for (Finding finding : answers.left(elementId, FindingValue.Curve.class)) {
            FindingValue.Curve curve = (FindingValue.Curve) finding.value();
            charts.computeIfAbsent(List.of(curve.xTitle(), curve.xUnit(), curve.yUnit()),
                    k -> new ArrayList<>()).add(finding);
        }
        charts.values().forEach(group -> {
            FindingValue.Curve first = (FindingValue.Curve) group.get(0).value();
            List<Layer> layers = new ArrayList<>();
            group.forEach(finding -> layers.add(line(name(group, finding), (FindingValue.Curve) finding.value(),
                    layers.size() > 0)));
            figures.add(figure(group, caption(group), axis(first.xTitle(), first.xUnit()), axis(yTitle(group),
                    first.yUnit()), layers));
        });
    }

    private void daily(String elementId, List<Block> figures) {
        Map<List<Object>, List<Finding>> charts = new LinkedHashMap<>();
        for (Finding finding : answers.left(elementId, FindingValue.Daily.class)) {
            FindingValue.Daily daily = (FindingValue.Daily) finding.value();
            charts.computeIfAbsent(List.of(daily.firstDay(), daily.days(), daily.unit()),
                    k -> new ArrayList<>()).add(finding);
        }
        charts.values().forEach(group -> {
            List<Layer> layers = new ArrayList<>();
            group.forEach(finding -> layers.add(line(name(group, finding), (FindingValue.Daily) finding.value())));
            Unit unit = ((FindingValue.Daily) group.get(0).value()).unit();
            figures.add(figure(group, caption(group), Axis.days("Day"), zero(yTitle(group), unit), layers));
        });
    }

    /** Yearly rain as bars, from the table of yearly totals, which stays as a table too. */
    private void yearlyTotals(List<Block> figures) {
        answers.peek("yearlyTotals", null).ifPresent(finding -> {
            if (finding.value() instanceof FindingValue.Table table) {
                int year = table.columns().indexOf("Year");
                int rain = table.columns().indexOf("Rain");
                if (year < 0 || rain < 0 || table.rows().isEmpty()) {
                    return;
                }
                double[] x = table.rows().stream().mapToDouble(row -> yearOf(row.get(year))).toArray();
                double[] y = table.rows().stream().mapToDouble(row -> shown(row.get(rain))).toArray();
                double mean = Arrays.stream(y).filter(Double::isFinite).average().orElse(0);
                figures.add(new Block.Figure(List.of(answers.elsewhere(finding)),
                        paint(new Chart("Rain of each year", describe(y),
                        Axis.years("Year"),
                        zero("Rain", unitOf(table, rain)), List.of(new Layer.Bars("Year", x, y),
                                new Layer.Level("Mean", mean)))),
                        "Rain of each year and the mean of all."));
            }
        });
    }

    private static double yearOf(Object cell) {
        if (cell instanceof Quantity quantity) {
            return quantity.value();
        }
        return cell instanceof String text && text.matches("\\d{1,4}") ? Integer.parseInt(text) : Double.NaN;
    }

    /** Shortage by month and year as a shaded map. */
    private void shortageMap(List<Block> figures) {
        answers.peek("shortageByMonth", null).ifPresent(finding -> {
            if (finding.value() instanceof FindingValue.Table table) {
                int month = table.columns().indexOf("Month");
                int missing = table.columns().indexOf("Not supplied");
                if (month >= 0 && missing >= 0) {
                    Map<LocalDate, Double> byMonth = new LinkedHashMap<>();
                    table.rows().forEach(row -> monthOf(row.get(month)).ifPresent(m -> byMonth.put(m,
                            shown(row.get(missing)))));
                    if (!byMonth.isEmpty()) {
                        String unit = words.symbol(unitOf(table, missing));
                        figures.add(new Block.Figure(List.of(answers.elsewhere(finding)), map(byMonth, unit),
                                "Water not supplied in each month of the record" + (unit.isEmpty() ? "." : ", "
                                        + unit + ".")));
                    }
                }
            }
        });
    }

    private static Optional<LocalDate> monthOf(Object cell) {
        try {
            return cell instanceof String text ? Optional.of(LocalDate.parse(text + "-01"))
                    : Optional.empty();
        } catch (DateTimeParseException e) {
            // a calculation that names its months otherwise keeps its table and gets no map
            return Optional.empty();
        }
    }

    private static Drawing map(Map<LocalDate, Double> byMonth, String unit) {
        TreeSet<Integer> years = new TreeSet<>();
        byMonth.keySet().forEach(month -> years.add(month.getYear()));
        int first = years.first();
        int count = years.last() - first + 1;
        double[][] values = new double[MONTHS][count];
        for (double[] row : values) {
            Arrays.fill(row, Double.NaN);
        }
        byMonth.forEach((month, value) -> values[month.getMonthValue() - 1][month.getYear() - first] = value);
        List<String> columns = IntStream.range(0, count).mapToObj(i -> Integer.toString(first + i)).toList();
        List<String> rows = Arrays.stream(Month.values()).map(Ticks::monthName).toList();
        long months = byMonth.values().stream().filter(value -> value > 0).count();
        return ChartPainter.paint(new HeatGrid("Shortage by month and year", months + " of " + byMonth.size()
                + " months have a shortage.", columns, rows, values, unit), WIDTH, HEIGHT);
    }

    /** Days without enough water by roof and tank, shaded. */
    private void surface(List<Block> figures) {
        answers.peek("surface", null).ifPresent(finding -> {
            if (finding.value() instanceof FindingValue.Table table) {
                int roof = table.columns().indexOf("Roof");
                int volume = table.columns().indexOf("Usable volume");
                int met = table.columns().indexOf("Days met in full");
                if (roof >= 0 && volume >= 0 && met >= 0 && !table.rows().isEmpty()) {
                    List<String> roofs = distinct(table, roof);
                    List<String> volumes = distinct(table, volume);
                    double[][] notMet = new double[roofs.size()][volumes.size()];
                    for (double[] row : notMet) {
                        Arrays.fill(row, Double.NaN);
                    }
                    table.rows().forEach(row -> notMet[roofs.indexOf(words.of(row.get(roof)))]
                            [volumes.indexOf(words.of(row.get(volume)))] = 100 - shown(row.get(met)));
                    figures.add(new Block.Figure(List.of(answers.elsewhere(finding)),
                            ChartPainter.paint(new HeatGrid("Days not met in full, by roof and tank",
                            "", volumes, roofs, notMet, "% of days not met"), WIDTH, HEIGHT),
                            "Days not met in full, by roof (downwards) and usable volume of the tank (across)."));
                }
            }
        });
    }

    private List<String> distinct(FindingValue.Table table, int column) {
        return table.rows().stream().map(row -> words.of(row.get(column))).distinct().toList();
    }

    /** Reliability over volume with the tanks as they are and as they would have to be. */
    private void reliabilityCurve(List<Block> figures) {
        answers.take("reliabilityCurve", null, FindingValue.Curve.class).ifPresent(finding -> {
            FindingValue.Curve curve = (FindingValue.Curve) finding.value();
            double[] percent = curve.yUnit() == Units.ONE ? Arrays.stream(curve.y()).map(y -> 100 * y).toArray()
                    : curve.y();
            Unit xUnit = words.shownUnit(Quantity.of(0, curve.xUnit()));
            double[] x = Arrays.stream(curve.x()).map(v -> Quantity.of(v, curve.xUnit()).in(xUnit)).toArray();
            List<Layer> layers = new ArrayList<>();
            layers.add(new Layer.Line("Share of days met", x, percent, false));
            mark(layers, "presentVolume", "Tanks as they are", xUnit, x, percent);
            mark(layers, "requiredVolume", "Volume that reaches the target", xUnit, x, percent);
            figures.add(new Block.Figure(List.of(answers.shown(finding)), paint(new Chart(finding.title(), "",
                    axis(curve.xTitle(), xUnit),
                    Axis.of("Share of days met", "%"), layers)), finding.title() + "."));
        });
    }

    private void mark(List<Layer> layers, String findingId, String name, Unit unit, double[] x, double[] y) {
        answers.peek(findingId, null).ifPresent(finding -> {
            if (finding.value() instanceof FindingValue.Number number && x.length > 0) {
                double at = number.quantity().in(unit);
                if (at >= x[0] && at <= x[x.length - 1]) {
                    layers.add(new Layer.Points(name, new double[] { at }, new double[] { between(x, y, at) }));
                }
            }
        });
    }

    private static double between(double[] x, double[] y, double at) {
        int i = 1;
        while (i < x.length - 1 && x[i] < at) {
            i++;
        }
        return x[i] == x[i - 1] ? y[i] : y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
    }

    /** The water ahead as a band with its middle. */
    private void fan(List<Block> figures) {
        var low = answers.peek("fanLow", null);
        var middle = answers.peek("fanMiddle", null);
        var high = answers.peek("fanHigh", null);
        if (low.isPresent() && middle.isPresent() && high.isPresent()
                && low.get().value() instanceof FindingValue.Daily l
                && middle.get().value() instanceof FindingValue.Daily m
                        && high.get().value() instanceof FindingValue.Daily h
                && l.days() == h.days() && l.days() == m.days()) {
            List<Finding> group = List.of(low.get(), middle.get(), high.get());
            group.forEach(finding -> answers.take(finding.id(), null, FindingValue.Daily.class));
            double[] x = IntStream.range(0, l.days()).mapToDouble(i -> l.firstDay().toEpochDay() + i).toArray();
            figures.add(figure(group, "Usable water ahead: one year in ten runs below the band, one in ten"
                    + " above it.", Axis.days("Day"),
                    zero("Usable water", l.unit()), List.of(new Layer.Band("Eight years in ten", x, shown(l), shown(h)),
                            new Layer.Line("Half of the years", x, shown(m), false))));
        }
    }

    /** Candidates' curves over the band of heads that the system can ask for. */
    private void pumpCurves(String pumpId, List<Block> figures) {
        var lowest = answers.peek("systemLowest", pumpId);
        var highest = answers.peek("systemHighest", pumpId);
        if (lowest.isEmpty() || highest.isEmpty() || !(lowest.get().value() instanceof FindingValue.Curve low)
                || !(highest.get().value() instanceof FindingValue.Curve high) || !Arrays.equals(low.x(), high.x())) {
            return;
        }
        List<Finding> group = new ArrayList<>(List.of(lowest.get(), highest.get()));
        List<Layer> layers = new ArrayList<>();
        layers.add(new Layer.Band("Head the system needs", shown(low.x(), low.xUnit()), shown(low.y(), low.yUnit()),
                shown(high.y(), high.yUnit())));
        for (Finding finding : answers.all(FindingValue.Curve.class)) {
            if (finding.id().equals("headCurve")) {
                group.add(finding);
                layers.add(line(words.name(finding.elementId()), (FindingValue.Curve) finding.value(),
                        layers.size() > 1));
            }
        }
        group.forEach(finding -> answers.take(finding.id(), finding.elementId(), FindingValue.Curve.class));
        double most = Arrays.stream(shown(high.y(), high.yUnit())).max().orElse(1);
        figures.add(figure(group, "Curves of the pumps over the heads that the system needs, from the easiest to the"
                + " hardest state.",
                axis("Flow", low.xUnit()), zero("Head", low.yUnit()).upTo(most), layers));
    }

    private Block.Figure figure(List<Finding> findings, String caption, Axis x, Axis y, List<Layer> layers) {
        Chart chart = new Chart(caption, "", x, y, layers);
        return new Block.Figure(findings.stream().map(answers::shown).toList(), paint(chart), caption);
    }

    private static Drawing paint(Chart chart) {
        return ChartPainter.paint(chart, WIDTH, HEIGHT);
    }

    private Layer line(String name, FindingValue.Curve curve, boolean dashed) {
        return new Layer.Line(name, shown(curve.x(), curve.xUnit()), shown(curve.y(), curve.yUnit()), dashed);
    }

    private Layer line(String name, FindingValue.Daily daily) {
        Thinning thinned = Thinning.of(daily.firstDay().toEpochDay(), daily.values(), STRETCHES);
        return new Layer.Line(name, thinned.x(), shown(thinned.y(), daily.unit()), false);
    }

    private double[] shown(FindingValue.Daily daily) {
        return shown(daily.values(), daily.unit());
    }

    /** Values in the unit that is shown. */
    private double[] shown(double[] values, Unit unit) {
        Unit shown = words.shownUnit(Quantity.of(0, unit));
        return shown == unit ? values
                : Arrays.stream(values).map(v -> Double.isFinite(v) ? Quantity.of(v, unit).in(shown) : v).toArray();
    }

    private double shown(Object cell) {
        return cell instanceof Quantity quantity ? quantity.as(words.shownUnit(quantity)).value() : Double.NaN;
    }

    private Unit unitOf(FindingValue.Table table, int column) {
        return table.rows().stream().map(row -> row.get(column))
                .filter(Quantity.class::isInstance).map(Quantity.class::cast)
                .map(words::shownUnit).findFirst().orElse(Units.ONE);
    }

    private Axis axis(String title, Unit unit) {
        return Axis.of(title, words.symbol(words.shownUnit(Quantity.of(0, unit))));
    }

    private Axis zero(String title, Unit unit) {
        return Axis.fromZero(title, words.symbol(words.shownUnit(Quantity.of(0, unit))));
    }

    private static String name(List<Finding> group, Finding finding) {
        return group.size() == 1 ? "" : finding.title();
    }

    /** What all of a group measure: the title where there is one series and it is short. */
    private static String yTitle(List<Finding> group) {
        if (group.size() == 1) {
            String title = group.get(0).title();
            if (title.length() <= 36) {
                return title;
            }
        }
        // several series of one unit: what that unit measures
        Dimension dimension = unitOf(group.get(0).value()).dimension();
        return dimension == Dimension.LENGTH ? "Height" : dimension == Dimension.RATIO ? ""
                : Words.label(dimension.name());
    }

    private static Unit unitOf(FindingValue series) {
        return series instanceof FindingValue.Curve curve ? curve.yUnit() : ((FindingValue.Daily) series).unit();
    }

    private static String caption(List<Finding> group) {
        return String.join("; ", group.stream().map(Finding::title).toList()) + ".";
    }

    private static String describe(double[] y) {
        double least = Arrays.stream(y).filter(Double::isFinite).min().orElse(0);
        double most = Arrays.stream(y).filter(Double::isFinite).max().orElse(0);
        return "From " + Math.round(least) + " to " + Math.round(most) + ".";
    }
}
