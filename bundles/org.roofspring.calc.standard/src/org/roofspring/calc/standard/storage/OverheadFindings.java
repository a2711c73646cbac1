package org.roofspring.calc.standard.storage;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.storage.withinday.DayPattern;
import org.roofspring.storage.withinday.OutageAnswer;
import org.roofspring.storage.withinday.OutageStudy;
import org.roofspring.storage.withinday.OverheadResult;
import org.roofspring.storage.withinday.OverheadRun;
import org.roofspring.storage.withinday.OverheadSystem;
import org.roofspring.storage.withinday.OverheadTank;
import org.roofspring.storage.withinday.TapTime;

/** One overhead tank on its busiest day: its course, pump starts, how long taps run without the pump, outages. */
final class OverheadFindings {
    private static final int SETTLING_DAYS = 14;
    private static final int COUNTED_DAYS = 7;
    private static final double HOUR_S = 3600;
    private static final Source EVENTS = Source.definition(
            "the volume moves in straight lines from event to event: a change of draw or power, a level reached");

    private final Site site;
    private final Tank tank;
    private final OverheadSystem system;
    private final OverheadUse use;
    private final List<Pump> pumps;
    private final AnswerBuilder answer;

    OverheadFindings(Site site, Tank tank, OverheadStudy.Reading.Found found) {
        this.site = site;
        this.tank = tank;
        system = found.system();
        use = found.use();
        pumps = found.pumps();
        answer = new AnswerBuilder(tank.getId());
    }

    Outcome.Completed find(BooleanSupplier cancelled) {
        busiestDay();
        OverheadResult run = OverheadRun.run(system, OverheadRun.settledVolumeM3(system, SETTLING_DAYS, cancelled),
                COUNTED_DAYS, List.of(), cancelled);
        days(run);
        course(run);
        withoutPump();
        outages(cancelled);
        answer.caution(new Caution("overhead.even-rest", Severity.INFO, tank.getId(),
                "Use that no peak is entered for is spread evenly from " + OverheadUse.DAY_BEGINS + " to "
                        + OverheadUse.DAY_ENDS + ", and every day is taken as the busiest; enter the peaks of each "
                        + "use.",
                List.of(), "", Source.commonPractice("use is spread over the daytime")));
        return answer.build();
    }

    private void busiestDay() {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < use.uses().size(); i++) {
            if (use.volumeM3().get(i) > 0) {
                steps.add(Step.of("D", Names.of(use.uses().get(i)) + ", as its calendar has it on a " + weekday(),
                        "count x amount x factor", Quantity.of(use.volumeM3().get(i), Units.M3).as(Units.L),
                        Source.definition("amounts and calendar of the use")));
            }
        }
        Quantity total = Quantity.of(use.totalM3(), Units.M3);
        steps.add(Step.of("D", "uses beyond the pump, on the first day of the calendars on which they ask for most: a "
                + weekday() + " like " + use.date(), "sum", total, Source.definition("sum over the uses")));
        answer.number("busiestDay", "Draw on the busiest day", total, steps.toArray(Step[]::new));
    }

    private String weekday() {
        return use.date().getDayOfWeek().getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH);
    }

    private void days(OverheadResult run) {
        Input[] levels = levels();
        String when = " over " + COUNTED_DAYS + " busiest days, once days have become alike";
        number("lowestVolume", "Lowest volume", run.lowestVolumeM3(), Units.M3, "least volume" + when + "; first at "
                + clock(run.lowestS()), "min V(t)", levels);
        number("dryTime", "Time a day in which taps fall short", hours(run.dryS() / COUNTED_DAYS),
                Units.H,
                "time with the tank at its outlet and the draw above what the pump lifts" + when, "t / "
                + COUNTED_DAYS, levels);
        number("pumpHours", "Hours a day that the pump runs", hours(run.pumpRunS() / COUNTED_DAYS), Units.H,
                "time pumping" + when, "t / " + COUNTED_DAYS, levels);
        number("pumpStarts", "Pump starts a day", run.pumpStartsPerDay(), Units.PER_D, "starts" + when,
                "count / " + COUNTED_DAYS, levels);
        int most = run.mostStartsWithin(HOUR_S);
        number("mostStartsInAnHour", "Most pump starts within an hour", most, Units.PER_H, "starts within any hour"
                + when,
                "largest count", levels);
        if (run.dryS() > 0) {
            answer.caution(new Caution("overhead.dry", Severity.WARNING, tank.getId(),
                    "On the busiest day taps fed by {0} run short for {1}, with pump and power in order.",
                    List.of(Names.of(tank), Quantity.of(hours(run.dryS() / COUNTED_DAYS), Units.H)), "", EVENTS));
        }
        for (Pump pump : pumps) {
            if (pump.getMaxStarts() != null && most > pump.getMaxStarts().in(Units.PER_H)) {
                answer.caution(new Caution("overhead.starts", Severity.WARNING, pump.getId(),
                        "{0} starts {1} times within an hour; its motor stands {2}. Set the levels further apart.",
                        List.of(Names.of(pump), Integer.toString(most), pump.getMaxStarts()), "", EVENTS));
            }
        }
    }

    private Input[] levels() {
        OverheadTank kernel = system.tank();
        return new Input[] {SizingFindings.volume("Vs", "volume at which the pump starts", kernel.startVolumeM3()),
            SizingFindings.volume("Vp", "volume at which it stops", kernel.stopVolumeM3()),
            SizingFindings.volume("Vd", "volume below the outlet", kernel.deadVolumeM3()),
            new Input("Q", "flow of the pump", Quantity.of(system.pump().largestFlowM3PerS(), Units.M3_PER_S)
            .as(Units.L_PER_S))};
    }

    private void course(OverheadResult run) {
        List<OverheadResult.Corner> day = run.trace().stream().filter(corner -> corner.timeS() <= DayPattern.DAY_S)
                .toList();
        answer.add("course", "Volume through the busiest day", new FindingValue.Curve("Hour", Units.H,
                day.stream().mapToDouble(corner -> hours(corner.timeS())).toArray(), Units.M3,
                day.stream().mapToDouble(OverheadResult.Corner::volumeM3).toArray()));
        List<List<Object>> rows = new ArrayList<>();
        for (OverheadResult.Corner corner : day) {
            rows.add(List.of(clock(corner.timeS()), Quantity.of(corner.volumeM3(), Units.M3), corner.pumping()));
        }
        answer.add("courseTable", "Course of the busiest day",
                new FindingValue.Table(List.of("Until", "Volume", "Pump has run"), rows));
    }

    private void withoutPump() {
        OverheadTank kernel = system.tank();
        tapTime("tapsFromFull", "Taps run with the pump off, from full", kernel.stopVolumeM3());
        tapTime("tapsFromStart", "Taps run with the pump off, from its start", kernel.startVolumeM3());
    }

    private void tapTime(String id, String title, double fromM3) {
        double usableM3 = fromM3 - system.tank().deadVolumeM3();
        Optional<TapTime> time = TapTime.shortest(system.draw(), usableM3);
        time.ifPresent(shortest -> number(id, title, hours(shortest.durationS()), Units.H,
                "time until the last drop, from the worst moment of the busiest day, " + clock(shortest.fromS()),
                "shortest t with D(t0, t0 + t) = V", SizingFindings.volume("V", "volume above the outlet", usableM3)));
    }

    private void outages(BooleanSupplier cancelled) {
        OptionalDouble bridged = OutageStudy.longestBridgedS(system, cancelled);
        number("outageBridged", "Longest outage bridged, whenever it begins", hours(bridged.orElse(0)), Units.H,
                "from the starting height or while the tank is filled again, at the worst moment of the day",
                "largest t without a dry tap", levels());
        Quantity target = site.getTarget() == null ? null : site.getTarget().getPumpOutage();
        if (target == null) {
            answer.add("verdict", "Whether an outage is bridged", bridged.isEmpty()
                    ? new Verdict(Level.BAD, "Taps run dry without any outage.", List.of())
                    : new Verdict(Level.CONDITIONAL, "No target is set for an outage.", List.of()));
            return;
        }
        Input asked = new Input("t", "outage to be bridged", target.as(Units.H), site.getTarget().getId(),
                SitePackage.Literals.TARGET__PUMP_OUTAGE.getName());
        boolean enough = bridged.isPresent() && bridged.getAsDouble() >= target.si();
        String smallest = switch (OutageStudy.smallestTank(system, target.si(), cancelled)) {
            case OutageAnswer.Smallest answered -> {
                double capacityM3 = answered.tank().capacityM3();
                number("smallestTank", "Smallest tank that bridges the target outage", capacityM3, Units.M3,
                        "by halving, with the same proportions of heights; the worst begins at "
                                + clock(answered.worst().outageS() % DayPattern.DAY_S), "smallest S without a dry tap",
                                asked);
                yield String.format(java.util.Locale.ROOT, "It takes %.2f m3 of the same proportions; there are "
                        + "%.2f m3.",
                        capacityM3, system.tank().capacityM3());
            }
            case OutageAnswer.None none -> reason(none);
        };
        String longest = String.format(java.util.Locale.ROOT, "At the worst moment it bridges %.1f h; the target is "
                + "%.1f h.",
                hours(bridged.orElse(0)), hours(target.si()));
        answer.add("verdict", "Whether an outage is bridged", new Verdict(enough ? Level.GOOD : Level.BAD,
                enough ? "The tank bridges the target outage." : "The tank does not bridge the target outage.",
                List.of(longest, smallest)));
    }

    private static String reason(OutageAnswer.None none) {
        return switch (none.reason()) {
            case NO_DRAW -> "Nothing is drawn.";
            case PUMP_TOO_WEAK -> "In its hours the pump lifts no more than a busiest day takes, so no tank would "
                    + "recover.";
            case NOTHING_ABOVE_START_LEVEL -> "The pump starts only when the tank is empty, so no size helps.";
            case BEYOND_RANGE -> "The tank would be larger than can be computed with (2 000 000 m3).";
        };
    }

    private void number(String id, String title, double value, Unit unit, String meaning, String formula,
            Input... inputs) {
        Quantity quantity = Quantity.of(value, unit);
        answer.number(id, title, quantity, Step.of("x", meaning, formula, quantity, EVENTS, inputs));
    }

    private static double hours(double seconds) {
        return seconds / HOUR_S;
    }

    private static String clock(double timeS) {
        double ofDay = timeS % DayPattern.DAY_S;
        return timeS > 0 && ofDay == 0 ? "24:00"
                : LocalTime.ofSecondOfDay(Math.min(86_399, Math.round(ofDay))).toString();
    }
}
