package org.roofspring.calc.standard.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.calc.standard.water.UseDemand;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.Use;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.system.Accident;
import org.roofspring.storage.system.AccidentEffect;
import org.roofspring.storage.system.AccidentStudy;
import org.roofspring.storage.system.AccidentStudy.Comparison;
import org.roofspring.storage.system.StorageSystem;
import org.roofspring.storage.system.Transfer;

/** Accidents at the worst day of the record, and what two tanks or a reserve would spare. */
public final class AccidentFindings {
    /** Our own cases, of the usual kind; no source. */
    private static final int NIGHT_HOURS = 12;
    private static final int MENDING_DAYS = 7;
    private static final int CLEANING_DAYS = 3;
    private static final int PUMP_DAYS = 21;
    private static final Quantity PLAIN_TAP = Quantity.of(10, Units.L_PER_MIN);
    private static final double RESERVE_DAYS = 10;
    private static final Source CASES = Source.commonPractice("cases assumed by this program");
    private static final Source STUDY = Source.definition(
            "the record run with and without the accident, begun on each of its days; the day with most demand missed");

    private final WholeSystem system;
    private final LocalDate firstDay;
    private final BooleanSupplier cancelled;
    private final StorageSystem kernel;
    private final int mainStage;
    private final Tank mainTank;
    private final AnswerBuilder answer = new AnswerBuilder(null);
    private final List<List<Object>> rows = new ArrayList<>();

    private AccidentFindings(WholeSystem system, LocalDate firstDay, BooleanSupplier cancelled) {
        this.system = system;
        this.firstDay = firstDay;
        this.cancelled = cancelled;
        kernel = system.system(YieldRule.YAS, system.warmStartM3(YieldRule.YAS, cancelled));
        mainTank = system.chain().stages().stream().flatMap(List::stream)
                .max(Comparator.comparingDouble(tank -> tank.getCapacity().si())).orElseThrow();
        mainStage = system.chain().stageOf(mainTank);
    }

    /** The findings about a site. */
    public static Outcome of(Site site, Inputs inputs, BooleanSupplier cancelled) {
        AccidentFindings findings = new AccidentFindings(SiteStorage.system(site, inputs),
                SiteStorage.rain(inputs).firstDay(), cancelled);
        findings.tapLeftOpen(site);
        findings.burst();
        findings.contaminated();
        findings.cleaning();
        findings.pumpOut();
        findings.answer.add("accidents", "Accidents at the worst day of the record",
                new FindingValue.Table(List.of("What happens",
                "Worst day to begin", "More days short", "More demand missed", "Water lost", "Felt for",
                "Compared with",
                "More demand missed then"), findings.rows));
        findings.answer.caution(new Caution("accident.danger", Severity.DANGER, findings.mainTank.getId(),
                "Water that may be contaminated is not drunk, and a tank is not entered: air in a tank can kill at "
                + "once. The "
                        + "figures say how much water is missed, not whether what is left is safe.", List.of(),
                "Ask your local health authority, and follow the local code for confined spaces.",
                Source.commonPractice("confined spaces and contaminated stores")));
        return findings.answer.build();
    }

    private int mainIndex() {
        return system.chain().stages().get(mainStage).indexOf(mainTank);
    }

    /** The tap that runs fastest, left open for a night; a reserve below a higher outlet would hold some back. */
    private void tapLeftOpen(Site site) {
        Optional<Tap> tap = system.uses().stream().flatMap(use -> use.getTaps().stream())
                .max(Comparator.comparingDouble(AccidentFindings::flowM3PerS));
        int index = tap.map(open -> indexOfUseAt(open)).orElse(0);
        double flow = tap.map(AccidentFindings::flowM3PerS).orElse(PLAIN_TAP.si());
        double volumeM3 = flow * NIGHT_HOURS * 3600;
        String where = tap.map(Names::of).orElse("a tap of " + Names.of(system.uses().get(index)));
        double reserveM3 = reserveM3(site);
        Comparison reserve = AccidentStudy.reserve(kernel, system.series(), new Accident.TapLeftOpen(0, index,
                volumeM3), index,
                reserveM3, cancelled);
        row("tapLeftOpen", "Tap left open for " + NIGHT_HOURS + " h", "reserve of " + litres(reserveM3),
                where + " left open for " + NIGHT_HOURS + " h", reserve.without(),
                "Reserve of " + litres(reserveM3) + " below a higher outlet", reserve.with(),
                new Input("V", "water that runs out if there is enough", Quantity.of(volumeM3, Units.M3)));
    }

    private int indexOfUseAt(Tap tap) {
        for (int use = 0; use < system.uses().size(); use++) {
            if (system.uses().get(use).getTaps().contains(tap)) {
                return use;
            }
        }
        throw new IllegalStateException("the tap belongs to no use");
    }

    private static double flowM3PerS(Tap tap) {
        return tap.getDesignFlow() == null ? PLAIN_TAP.si() : tap.getDesignFlow().si();
    }

    /** Days of first-priority use, as the target asks, else ten. */
    private double reserveM3(Site site) {
        int first = system.uses().stream().mapToInt(Use::getPriority).min().orElseThrow();
        double dayM3 = system.uses().stream().filter(use -> use.getPriority() == first)
                .mapToDouble(UseDemand::fullM3PerDay).sum();
        double days = site.getTarget() == null || site.getTarget().getReserve() == null ? RESERVE_DAYS
                : site.getTarget().getReserve().in(Units.D);
        double stageM3 = system.chain().stages().get(mainStage).stream().mapToDouble(tank -> tank.getCapacity().si())
                .sum();
        return Math.min(stageM3, dayM3 * days);
    }

    private void burst() {
        double belowM3 = Given.si(mainTank, SitePackage.Literals.TANK__DEAD_VOLUME, 0);
        row("burst", "Burst, mended in " + MENDING_DAYS + " d", null, Names.of(mainTank) + " bursts at its outlet, mended in " + MENDING_DAYS + " d",
                AccidentStudy.worst(
                kernel, system.series(), new Accident.Burst(0, MENDING_DAYS, mainStage, mainIndex(), belowM3),
                cancelled),
                null, null);
    }

    private void contaminated() {
        Comparison halves = AccidentStudy.twoTanks(kernel, system.series(),
                new Accident.Contaminated(0, mainStage, mainIndex()), mainStage, cancelled);
        row("contaminated", "Contaminated, let out", "two half-size tanks", Names.of(mainTank) + " contaminated and let out", halves.without(),
                "Two tanks of half the size, valve shut", halves.with());
    }

    private void cleaning() {
        Comparison halves = AccidentStudy.twoTanks(kernel, system.series(),
                new Accident.TankIsolated(0, CLEANING_DAYS, mainStage, mainIndex()), mainStage, cancelled);
        row("cleaning", "Shut off for " + CLEANING_DAYS + " d", "two half-size tanks", Names.of(mainTank) + " shut off for cleaning for " + CLEANING_DAYS + " d", halves.without(),
                "Two tanks of half the size, valve shut", halves.with());
    }

    private void pumpOut() {
        if (kernel.transfers().stream().noneMatch(Transfer::pumped)) {
            return;
        }
        row("pumpOut", "Pump out for " + PUMP_DAYS + " d", null, "Pump out for " + PUMP_DAYS + " d",
                AccidentStudy.worst(kernel, system.series(), new Accident.PumpOut(0, PUMP_DAYS), cancelled), null,
                null);
    }

    private void row(String id, String title, String otherTitle, String what, AccidentEffect effect, String help, AccidentEffect helped,
            Input... inputs) {
        LocalDate day = firstDay.plusDays(effect.accident().firstDay());
        Quantity missed = Quantity.of(effect.extraMissingM3(), Units.M3);
        Step assumed = new Step("E", what, "the case", List.of(inputs), "", null, CASES);
        answer.number(id, title + ": more demand missed", missed, assumed, Step.of("M",
                "demand missed because of it, begun on "
                + day, "missed with it - missed without it", missed, STUDY));
        if (helped != null) {
            Quantity then = Quantity.of(helped.extraMissingM3(), Units.M3);
            answer.number(id + "Helped", title + ", with " + otherTitle, then, assumed, Step.of("M", "the same study of the changed system, at its "
                    + "own worst "
                            + "day, " + firstDay.plusDays(helped.accident().firstDay()),
                            "missed with it - missed without it",
                            then, STUDY));
        }
        rows.add(Arrays.asList(what, day.toString(), Quantity.of(effect.extraShortDays(), Units.D), missed,
                Quantity.of(effect.lostM3(), Units.M3), Quantity.of(effect.daysFelt(), Units.D), help,
                helped == null ? null : Quantity.of(helped.extraMissingM3(), Units.M3)));
    }

    private static String litres(double volumeM3) {
        return Math.round(volumeM3 * 1000) + " L";
    }
}
