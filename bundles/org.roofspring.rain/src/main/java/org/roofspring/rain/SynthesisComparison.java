package org.roofspring.rain;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Synthetic rain against the record it was fitted to: the same span is invented many times over, and each figure of
 * the record is set beside the middle and the middle 90 % of the invented ones.
 *
 * @param rows    a figure each
 * @param repeats how many times the span was invented
 */
public record SynthesisComparison(List<Row> rows, int repeats) {
    /** A figure that matters for storage falls short when its middle is below this part of the record's. */
    private static final double SHORT = 0.9;

    /** What the table shows. */
    public enum Figure {
        /** Mean rain of a calendar month. */
        MONTH_MEAN,
        /** Mean rain of a year. */
        YEAR_MEAN,
        /** Standard deviation of the totals of complete calendar years. */
        YEARLY_SPREAD,
        /** Wet days over days. */
        WET_DAY_SHARE,
        /** Longest dry spell of the whole span. */
        LONGEST_DRY_SPELL,
        /** Mean over the complete calendar years of the longest dry spell within each. */
        YEARLY_DRY_SPELL
    }

    /**
     * One figure.
     *
     * @param figure    what it is
     * @param label     for display
     * @param unit      mm, d or blank
     * @param record    of the record
     * @param synthetic middle of the invented spans
     * @param low       5 % of the invented spans are below
     * @param high      5 % of the invented spans are above
     */
    public record Row(Figure figure, String label, String unit, double record, double synthetic, double low,
            double high) {
        /** Whether the record lies outside what the synthesis makes nine times in ten. */
        public boolean isOutside() {
            return record < low || record > high;
        }

        /** Whether the synthesis makes too little of it, so that a tank sized on it would be too small. */
        public boolean fallsShort() {
            boolean bearsOnStorage = figure == Figure.YEARLY_SPREAD || figure == Figure.LONGEST_DRY_SPELL
                    || figure == Figure.YEARLY_DRY_SPELL;
            return bearsOnStorage && (synthetic < SHORT * record || record > high);
        }
    }

    /**
     * Fits a synthesis to a record and compares.
     *
     * @param repeats   how many times the span is invented, 20 to 10,000; 100 gives steady limits
     * @param cancelled polled for each simulated year
     * @throws MissingRainException when no weather can be fitted
     */
    public static SynthesisComparison of(RainRecord record, int repeats, long seed, BooleanSupplier cancelled) {
        return of(record, WeatherSynthesis.fit(record), repeats, seed, cancelled);
    }

    /** Compares a synthesis with a record, as {@link #of(RainRecord, int, long, BooleanSupplier)}. */
    public static SynthesisComparison of(RainRecord record, WeatherSynthesis synthesis, int repeats, long seed,
            BooleanSupplier cancelled) {
        if (repeats < 20 || repeats > 10_000) {
            throw new IllegalArgumentException("repeats is " + repeats + "; 20 to 10000 is accepted");
        }
        Map<String, Row> ofRecord = new LinkedHashMap<>();
        figures(record).forEach(row -> ofRecord.put(row.label, row));
        Map<String, double[]> invented = new LinkedHashMap<>();
        ofRecord.keySet().forEach(label -> invented.put(label, new double[repeats]));
        for (int repeat = 0; repeat < repeats; repeat++) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the comparison of the weather synthesis was cancelled");
            }
            RainRecord made = synthesis.generate(record.firstDay(), record.days(), seed + repeat, cancelled);
            for (Row row : figures(withGapsOf(record, made))) {
                invented.get(row.label)[repeat] = row.record;
            }
        }
        List<Row> rows = new ArrayList<>();
        ofRecord.forEach((label, row) -> {
            double[] values = invented.get(label);
            Arrays.sort(values);
            rows.add(new Row(row.figure, label, row.unit, row.record, quantile(values, 0.5), quantile(values, 0.05),
                    quantile(values, 0.95)));
        });
        return new SynthesisComparison(List.copyOf(rows), repeats);
    }

    /** Gaps cut dry spells and leave out years, so the invented span gets the same. */
    private static RainRecord withGapsOf(RainRecord record, RainRecord made) {
        if (record.isComplete()) {
            return made;
        }
        double[] depthMm = made.completeDepthsMm();
        for (int day = 0; day < depthMm.length; day++) {
            depthMm[day] = record.isMissing(day) ? Double.NaN : depthMm[day];
        }
        return RainRecord.of(made.firstDay(), depthMm, DayMark.SYNTHETIC);
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        double above = sorted[Math.min(below + 1, sorted.length - 1)];
        return sorted[below] + (place - below) * (above - sorted[below]);
    }

    /** The figures of one record, in the column of the record. */
    private static List<Row> figures(RainRecord record) {
        RainStatistics statistics = RainStatistics.of(record);
        List<Row> rows = new ArrayList<>();
        double[] monthsMm = statistics.monthlyMeansMm();
        for (Month month : Month.values()) {
            add(rows, Figure.MONTH_MEAN, month.getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " rain", "mm",
                    OptionalDouble.of(monthsMm[month.ordinal()]));
        }
        add(rows, Figure.YEAR_MEAN, "yearly rain", "mm", statistics.annualMeanMm());
        add(rows, Figure.YEARLY_SPREAD, "yearly spread (standard deviation)", "mm", statistics.annualSpreadMm());
        add(rows, Figure.WET_DAY_SHARE, "wet-day share", "", statistics.wetDayRatio());
        List<DrySpell> spells = statistics.drySpells();
        add(rows, Figure.LONGEST_DRY_SPELL, "longest dry spell", "d", OptionalDouble.of(
                spells.stream().mapToInt(DrySpell::days).max().orElse(0)));
        add(rows, Figure.YEARLY_DRY_SPELL, "longest dry spell of a year, mean", "d", yearlySpell(statistics));
        return rows;
    }

    private static OptionalDouble yearlySpell(RainStatistics statistics) {
        return statistics.completeYears().stream().mapToInt(year -> {
            RainRecord record = statistics.record();
            return RainStatistics.of(record.slice(LocalDate.of(year.year(), 1, 1),
                    LocalDate.of(year.year(), 12, 31))).longestDrySpell().map(DrySpell::days).orElse(0);
        }).average();
    }

    private static void add(List<Row> rows, Figure figure, String label, String unit, OptionalDouble value) {
        value.ifPresent(number -> rows.add(new Row(figure, label, unit, number, number, number, number)));
    }

    /** The rows of a figure; empty where the record is too short for it. */
    public List<Row> rows(Figure figure) {
        return rows.stream().filter(row -> row.figure == figure).toList();
    }

    /** Whether yearly spread or dry spells fall short, so that storage sized on the synthesis would be too small. */
    public boolean fallsShort() {
        return rows.stream().anyMatch(Row::fallsShort);
    }

    /** What the table means, in sentences; always that synthetic rain does not replace the record. */
    public String verdict() {
        StringBuilder text = new StringBuilder();
        for (Row row : rows) {
            if (row.fallsShort()) {
                text.append(String.format(Locale.ROOT, "The %s falls short: %.0f %s in the synthesis, %.0f %s in the "
                        + "record. ", row.label, row.synthetic, row.unit, row.record, row.unit));
            }
        }
        if (text.isEmpty()) {
            text.append("Yearly spread and dry spells are within what the record shows. ");
        } else {
            text.append("Storage sized on this synthetic rain would be too small. ");
        }
        long means = rows(Figure.MONTH_MEAN).stream().filter(Row::isOutside).count();
        if (means > 0) {
            text.append(means == 1 ? "The mean of 1 month lies" : "The means of " + means + " months lie")
                    .append(" outside what the synthesis makes nine times in ten. ");
        }
        return text.append("Synthetic rain stands beside the record, never in place of it.").toString();
    }
}
