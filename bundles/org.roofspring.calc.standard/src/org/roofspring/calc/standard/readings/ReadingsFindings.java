package org.roofspring.calc.standard.readings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.economy.readings.Cause;
import org.roofspring.economy.readings.Doubt;
import org.roofspring.economy.readings.GapAnswer;
import org.roofspring.economy.readings.GapAnswer.Interval;
import org.roofspring.economy.readings.GapAnswer.Judged;
import org.roofspring.economy.readings.GapStudy;
import org.roofspring.economy.readings.LevelReading;
import org.roofspring.economy.readings.MeterReading;
import org.roofspring.economy.readings.WaterCourse;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Reading;
import org.roofspring.site.ReadingKind;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.storage.outlook.TankGauge;
import org.roofspring.storage.system.SystemSeries;

/** Readings of the most read tank against the balance of its water: what is missing, and why most likely. */
public final class ReadingsFindings {
    /** Error of one reading of a dipstick: common practice, no source. */
    private static final double DIPSTICK_M = 0.01;
    private static final Source ERRORS = Source.commonPractice("errors assumed: dipstick 1 cm; inflow 20 % of a day and"
            + " 8 % of all; use 30 % of a day and 15 % of all, or 2 % by a meter");
    private static final Source BALANCE = Source.definition("change of volume against inflow less use, in stretches in"
            + " which the tank neither spilled nor ran dry; generalised least squares");

    private ReadingsFindings() {
    }

    /** The tank with most readings of its water; empty where none has two. */
    public static Optional<Tank> tank(Site site) {
        return site.getTanks().stream().filter(tank -> tank.isInUse() && tank.getCapacity() != null
                && TankWater.gauge(tank).isPresent() && levels(site, tank).size() >= 2)
                .max(Comparator.comparingInt(tank -> levels(site, tank).size()));
    }

    private static Map<LocalDate, Double> levels(Site site, Tank tank) {
        Map<LocalDate, Double> volumes = new TreeMap<>();
        TankGauge gauge = TankWater.gauge(tank).orElseThrow();
        for (Reading reading : site.getReadings()) {
            if (reading.getElement() == tank && reading.getDate() != null && reading.getValue() != null
                    && reading.getValue().si() >= 0) {
                if (reading.getKind() == ReadingKind.TANK_LEVEL && is(reading, Dimension.LENGTH)) {
                    volumes.put(reading.getDate(), gauge.volumeM3(reading.getValue().si()));
                } else if (reading.getKind() == ReadingKind.TANK_VOLUME && is(reading, Dimension.VOLUME)) {
                    volumes.put(reading.getDate(), reading.getValue().si());
                }
            }
        }
        return volumes;
    }

    private static boolean is(Reading reading, Dimension dimension) {
        return reading.getValue().unit().dimension() == dimension;
    }

    private static Map<LocalDate, Double> meter(Site site) {
        Map<LocalDate, Double> totals = new TreeMap<>();
        site.getReadings().stream().filter(reading -> reading.getKind() == ReadingKind.WATER_METER
                && reading.getDate() != null && reading.getValue() != null && is(reading, Dimension.VOLUME))
                .forEach(reading -> totals.put(reading.getDate(), reading.getValue().si()));
        return totals;
    }

    /** The findings about a site that has a tank with readings. */
    public static Outcome of(Site site, Inputs inputs, CalculationContext context) {
        Tank tank = tank(site).orElseThrow();
        FindingValue.Daily rain = SiteStorage.rain(inputs);
        WholeSystem system = SiteStorage.system(site, inputs);
        Map<LocalDate, Double> read = levels(site, tank);
        LocalDate end = rain.firstDay().plusDays(rain.days());
        List<LocalDate> within = read.keySet().stream()
                .filter(day -> !day.isBefore(rain.firstDay()) && !day.isAfter(end)).toList();
        if (within.size() < 2) {
            return new Outcome.NotComputable(new Outcome.Problem(tank.getId(), null, "Fewer than two readings of "
                    + Names.of(tank) + " lie within the rain record, which runs from " + rain.firstDay() + " to "
                    + end.minusDays(1) + "."));
        }
        LocalDate first = within.getFirst();
        int days = (int) ChronoUnit.DAYS.between(first, within.getLast());
        double stageM3 = system.chain().stages().get(Math.max(0, system.chain().stageOf(tank))).stream()
                .mapToDouble(other -> other.getCapacity().si()).sum();
        double scale = stageM3 / tank.getCapacity().si();
        WaterCourse course = course(site, system, (int) ChronoUnit.DAYS.between(rain.firstDay(), first), days, first,
                stageM3);
        List<LevelReading> levels = within.stream().map(day -> new LevelReading((int) ChronoUnit.DAYS.between(first,
                day), read.get(day) * scale)).toList();
        try {
            List<MeterReading> meters = meter(site).entrySet().stream()
                    .filter(entry -> !entry.getKey().isBefore(first) && !entry.getKey().isAfter(within.getLast()))
                    .map(entry -> new MeterReading((int) ChronoUnit.DAYS.between(first, entry.getKey()),
                            entry.getValue())).toList();
            GapAnswer judged = GapStudy.of(course, levels, meters, Doubt.usual(dipstickM3(tank) * scale),
                    context.randomSeed(), context.cancelled());
            return findings(tank, first, course, levels, meters, judged, read.size() - within.size());
        } catch (IllegalArgumentException e) {
            return new Outcome.NotComputable(new Outcome.Problem(tank.getId(), null,
                    "The readings cannot be judged: " + e.getMessage() + "."));
        }
    }

    private static double dipstickM3(Tank tank) {
        TankGauge gauge = TankWater.gauge(tank).orElseThrow();
        double middle = TankWater.topHeightM(tank) / 2;
        return Math.max(1e-6, gauge.volumeM3(middle + DIPSTICK_M) - gauge.volumeM3(middle));
    }

    private static WaterCourse course(Site site, WholeSystem system, int offset, int days, LocalDate first,
            double capacityM3) {
        SystemSeries series = system.series();
        double[] loss = new double[days];
        site.getIncidents().stream().filter(incident -> incident.getVolumeLost() != null && incident.getFrom() != null)
                .forEach(incident -> {
                    LocalDate last = incident.getTo() == null ? incident.getFrom() : incident.getTo();
                    long length = Math.max(1, ChronoUnit.DAYS.between(incident.getFrom(), last) + 1);
                    for (long i = 0; i < length; i++) {
                        long day = ChronoUnit.DAYS.between(first, incident.getFrom()) + i;
                        if (day >= 0 && day < days) {
                            loss[(int) day] += incident.getVolumeLost().si() / length;
                        }
                    }
                });
        return new WaterCourse(sum(series.inflowM3(), offset, days), sum(series.demandM3(), offset, days), loss,
                capacityM3);
    }

    private static double[] sum(List<double[]> all, int offset, int days) {
        double[] sum = new double[days];
        for (double[] one : all) {
            for (int day = 0; day < days; day++) {
                sum[day] += one[offset + day];
            }
        }
        return sum;
    }

    private static Outcome findings(Tank tank, LocalDate first, WaterCourse course, List<LevelReading> levels,
            List<MeterReading> meters, GapAnswer judged, int outside) {
        AnswerBuilder answer = new AnswerBuilder(tank.getId());
        List<Interval> intervals = switch (judged) {
            case Judged enough -> enough.intervals();
            case GapAnswer.TooFew few -> few.intervals();
        };
        answer.add("expected", "Water as reckoned from the first reading", new FindingValue.Daily(first,
                GapStudy.expectedM3(course, meters, levels.getFirst().day(), levels.getFirst().volumeM3()), Units.M3));
        List<List<Object>> rows = new ArrayList<>();
        intervals.forEach(stretch -> rows.add(Arrays.asList(first.plusDays(stretch.fromDay()).toString(),
                first.plusDays(stretch.toDay()).toString(), Quantity.of(stretch.expectedM3(), Units.M3),
                Quantity.of(stretch.observedM3(), Units.M3), Quantity.of(stretch.missingM3(), Units.M3),
                stretch.counts())));
        answer.add("stretches", "From reading to reading", new FindingValue.Table(List.of("From", "To", "As reckoned",
                "As read", "Missing", "Counts"), rows), Step.of("m", "missing at the end of a stretch; it counts where "
                        + "the tank surely neither spilled nor ran dry", "V + Q - U - V'", null, BALANCE));
        if (judged instanceof Judged enough) {
            judged(answer, first, enough, intervals);
        } else if (judged instanceof GapAnswer.TooFew few) {
            answer.add("verdict", "Readings against the balance", new Verdict(Level.CONDITIONAL,
                    "Too few readings to judge by: " + few.counting() + " of " + intervals.size()
                            + " stretches count, and it takes " + few.needed() + ".",
                    List.of("Read the dipstick each week, and a meter behind the tank.")));
        }
        if (outside > 0) {
            answer.caution(new Caution("readings.outside-record", Severity.INFO, tank.getId(),
                    "Readings outside the rain record, left out: {0}.", List.of(Quantity.of(outside)), "", BALANCE));
        }
        answer.caution(new Caution("readings.no-proof", Severity.INFO, tank.getId(),
                "The likeliest cause is where to look first, no proof: a theft is a word for any water that went at "
                + "once.", List.of(), "", BALANCE));
        return answer.build();
    }

    private static void judged(AnswerBuilder answer, LocalDate first, Judged judged, List<Interval> intervals) {
        long counting = intervals.stream().filter(Interval::counts).count();
        Input count = new Input("N", "stretches that count", Quantity.of(counting));
        loss(answer, "loss", "Loss that nothing explains", judged.loss().best(), "median", count);
        loss(answer, "lossLow", "Loss: low end of the 95 % interval", judged.loss().low(), "2.5 % lie below", count);
        loss(answer, "lossHigh", "Loss: high end of the 95 % interval", judged.loss().high(), "2.5 % lie above", count);
        Quantity signal = Quantity.of(judged.signal());
        answer.number("signal", "How far the clearest pattern stands out", signal, Step.of("z",
                "in standard deviations;"
                + " an alarm above " + Math.round(judged.threshold() * 100) / 100.0
                + ", which sound readings pass in 2 %"
                + " of cases", "max of w . z / |w|", signal, ERRORS, count));
        List<List<Object>> chances = new ArrayList<>();
        judged.chances().forEach((cause, chance) -> chances.add(List.of(cause.words(), Quantity.ofSi(chance,
                Units.PERCENT))));
        answer.add("causes", "If something is wrong: causes", new FindingValue.Table(List.of("Cause", "Weight"),
                chances),
                Step.of("p", "mean likelihood over days of beginning and sizes", "shares", null, ERRORS));
        String until = "Judged up to " + first.plusDays(judged.untilDay()) + ".";
        answer.add("verdict", "Readings against the balance", judged.cause().map(cause -> new Verdict(
                judged.alarm() ? Level.BAD : Level.CONDITIONAL, "Likeliest cause: " + cause.words() + ".",
                List.of(size(cause, judged), "Since about " + first.plusDays(judged.sinceDay()) + ".", until)))
                .orElseGet(() -> new Verdict(Level.GOOD, "The readings agree with the balance.", List.of(until))));
        judged.meteredRatio().ifPresent(ratio -> answer.share("meteredShare", "Metered use over planned use", ratio,
                Step.of("u", "by the meter over by the plan, between its first and last reading", "U / P",
                        Quantity.ofSi(ratio, Units.PERCENT), BALANCE)));
    }

    private static String size(Cause cause, Judged judged) {
        String low = round(judged.size().low(), cause);
        String high = round(judged.size().high(), cause);
        return "Size from " + low + " to " + high + switch (cause) {
            case LEAK -> " L a day.";
            case THEFT -> " m3.";
            case BLOCKAGE -> " % of the rain.";
            case USE -> " % of the planned use.";
        };
    }

    private static String round(double value, Cause cause) {
        return switch (cause) {
            case LEAK -> String.valueOf(Math.round(value * 1000));
            case THEFT -> String.valueOf(Math.round(value * 10) / 10.0);
            case BLOCKAGE, USE -> String.valueOf(Math.round(value * 100));
        };
    }

    private static void loss(AnswerBuilder answer, String id, String title, double m3PerDay, String rule, Input count) {
        Quantity loss = Quantity.ofSi(Units.M3_PER_D.toSi(m3PerDay), Units.L_PER_D);
        answer.number(id, title, loss, Step.of("L", "as a steady loss, over all days on which it may have begun: "
                + rule, "likelihood over sizes", loss, BALANCE, count));
    }
}
