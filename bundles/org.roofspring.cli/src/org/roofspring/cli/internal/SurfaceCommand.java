package org.roofspring.cli.internal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageTerms;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.CatchmentInflow;
import org.roofspring.storage.CheapestPair;
import org.roofspring.storage.ReliabilityCurve;
import org.roofspring.storage.ReliabilitySurface;
import org.roofspring.storage.SweepSettings;
import org.roofspring.storage.TankBalance;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Every tank of a range under every roof of a range. */
@Command(name = "surface", description = "Time and volumetric reliability of every tank of a range under every roof "
        + "of a "
        + "range, over a rain record; with costs and a target, the cheapest pair.")
public final class SurfaceCommand extends AnswerCommand {
    private static final int MOST_OF_EACH = 512;
    /** More columns do not fit a terminal. */
    private static final int MOST_COLUMNS = 8;

    @Mixin
    private CatchmentOptions catchment;

    @Option(names = "--roof-to", required = true, converter = QuantityOption.Area.class,
            description = "largest plan area; --roof is the smallest")
    private Quantity roofTo;

    @Option(names = "--roofs", defaultValue = "6", description = "how many roofs, evenly spaced [${DEFAULT-VALUE}]")
    private int roofs;

    @Option(names = "--tank", required = true, converter = QuantityOption.Volume.class,
            description = "smallest usable volume, such as 1000L")
    private Quantity tank;

    @Option(names = "--tank-to", required = true, converter = QuantityOption.Volume.class,
            description = "largest usable volume")
    private Quantity tankTo;

    @Option(names = "--tanks", defaultValue = "12", description = "how many tanks, evenly spaced [${DEFAULT-VALUE}]")
    private int tanks;

    @Option(names = "--target", converter = QuantityOption.Ratio.class,
            description = "share of days met in full that the cheapest pair must reach, such as 95%%")
    private Quantity target;

    @Option(names = "--roof-cost", converter = QuantityOption.Money.class,
            description = "cost of each m2 of roof, such as 20cur")
    private Quantity roofCost;

    @Option(names = "--tank-cost", converter = QuantityOption.Money.class,
            description = "cost of each m3 of tank, such as 150cur")
    private Quantity tankCost;

    @Option(names = "--csv", description = "write the surface as comma-separated values and nothing else")
    private boolean csv;

    @Override
    Outcome answer() throws IOException {
        check();
        double[] areaM2 = range(catchment.catchment().areaM2(), roofTo.si(), roofs);
        double[] volumeM3 = range(tank.si(), tankTo.si(), tanks);
        double[] depthMm = catchment.filledRain().record().completeDepthsMm();
        List<CatchmentInflow> inflows = new ArrayList<>();
        for (double area : areaM2) {
            inflows.add(new CatchmentInflow(area, catchment.catchment().runoffRatio(), catchment.catchment().lossMm()));
        }
        ReliabilitySurface surface = ReliabilitySurface.of(inflows, depthMm,
                TankBalance.constantDemand(catchment.demandM3PerDay(), depthMm.length), volumeM3,
                SweepSettings.warm(catchment.rule()), () -> false);
        if (surface.curves().getFirst().demandDays() == 0) {
            return new Outcome.NotComputable(List.of(new Outcome.Problem("Nothing is demanded, so no reliability "
                    + "can be reached or missed.")), List.of());
        }
        AnswerBuilder answer = new AnswerBuilder(null);
        boolean table = !csv && !json() && roofs <= MOST_COLUMNS;
        answer.add("surface", "Share of days met in full", table ? grid(surface, areaM2) : rows(surface, areaM2));
        if (target != null) {
            cheapest(answer, surface, areaM2, volumeM3);
        }
        return answer.build();
    }

    private void check() {
        if (csv && json()) {
            throw new Failures.BadInputException("--csv and --json are both given; one of them is accepted");
        }
        count("--roofs", roofs);
        count("--tanks", tanks);
        Check.notNegative("--tank", tank);
        order("--roof-to", roofTo, Quantity.of(catchment.catchment().areaM2(), Units.M2));
        order("--tank-to", tankTo, tank);
        if (target == null != (roofCost == null) || target == null != (tankCost == null)) {
            throw new Failures.BadInputException("The cheapest pair needs --target, --roof-cost and --tank-cost "
                    + "together");
        }
        if (target != null) {
            Check.positive("--target", target);
            Check.between("--target", target, Quantity.of(0), Quantity.of(1));
            Check.notNegative("--roof-cost", roofCost);
            Check.notNegative("--tank-cost", tankCost);
        }
    }

    private static void count(String option, int given) {
        if (given < 1 || given > MOST_OF_EACH) {
            throw new Failures.BadInputException(option + " is " + given + "; 1 to " + MOST_OF_EACH + " is accepted");
        }
    }

    private static void order(String option, Quantity largest, Quantity smallest) {
        if (!(largest.si() >= smallest.si())) {
            throw new Failures.BadInputException(option + " is " + largest + "; " + smallest + " or more is accepted");
        }
    }

    private static double[] range(double from, double to, int count) {
        double[] range = new double[count];
        for (int i = 0; i < count; i++) {
            range[i] = count == 1 ? from : from + (to - from) * i / (count - 1);
        }
        return range;
    }

    /** A line for each pair. */
    private static FindingValue.Table rows(ReliabilitySurface surface, double[] areaM2) {
        List<List<Object>> rows = new ArrayList<>();
        for (int roof = 0; roof < areaM2.length; roof++) {
            ReliabilityCurve curve = surface.curves().get(roof);
            for (int i = 0; i < curve.tanks(); i++) {
                rows.add(List.of(Quantity.of(areaM2[roof], Units.M2), Quantity.of(curve.capacityM3(i), Units.M3),
                        Quantity.of(curve.timeReliability(i).orElseThrow()),
                        Quantity.of(curve.volumetricReliability(i).orElseThrow()),
                        Quantity.of(curve.demandDays() - curve.fullDays(i), Units.D)));
            }
        }
        return new FindingValue.Table(List.of("roof", "tank", "timeReliability", "volumetricReliability", "shortDays"),
                rows);
    }

    /** Tanks down, roofs across. */
    private static FindingValue.Table grid(ReliabilitySurface surface, double[] areaM2) {
        List<String> columns = new ArrayList<>(List.of("Tank"));
        for (double area : areaM2) {
            columns.add("Roof " + Quantity.of(Math.round(area * 10) / 10.0, Units.M2));
        }
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < surface.curves().getFirst().tanks(); i++) {
            List<Object> row = new ArrayList<>();
            row.add(Quantity.of(surface.curves().getFirst().capacityM3(i), Units.M3));
            for (ReliabilityCurve curve : surface.curves()) {
                row.add(Quantity.ofSi(curve.timeReliability(i).orElseThrow(), Units.PERCENT));
            }
            rows.add(row);
        }
        return new FindingValue.Table(columns, rows);
    }

    private void cheapest(AnswerBuilder answer, ReliabilitySurface surface, double[] areaM2, double[] volumeM3) {
        double[] roofCosts = java.util.Arrays.stream(areaM2).map(area -> area * roofCost.si()).toArray();
        double[] tankCosts = java.util.Arrays.stream(volumeM3).map(volume -> volume * tankCost.si()).toArray();
        Optional<CheapestPair> pair = CheapestPair.of(surface, roofCosts, tankCosts, target.si());
        answer.flag("targetReached", "A pair of the surface reaches the target", pair.isPresent());
        if (pair.isEmpty()) {
            return;
        }
        Quantity roof = Quantity.of(areaM2[pair.get().roof()], Units.M2);
        Quantity volume = Quantity.of(volumeM3[pair.get().tank()], Units.M3);
        Quantity cost = Quantity.of(pair.get().cost(), Units.MONEY);
        Quantity reached = Quantity.of(pair.get().timeReliability());
        Source search = Source.definition("least cost of the pairs of the surface that reach the target");
        Input asked = new Input("R", "target", target);
        answer.number("cheapestRoof", "Roof of the cheapest pair", roof, Step.of("A", "of the cheapest pair",
                "least cost with Rt >= R",
                roof, search, asked));
        answer.number("cheapestTank", "Tank of the cheapest pair", volume, Step.of("S", "of the cheapest pair",
                "least cost with Rt >= R",
                volume, search, asked));
        answer.number("cheapestCost", "Its cost", cost, Step.of("K", "cost of both", "A a + S s", cost,
                Source.definition("area and volume times their costs"),
                new Input("A", "roof", roof), new Input("a", "cost of each m2", roofCost), new Input("S", "tank",
                volume),
                new Input("s", "cost of each m3", tankCost)));
        answer.number("cheapestReliability", "Share of days that it meets in full", reached, Step.of("Rt",
                "time reliability, warmed up over one pass",
                "full days / days with demand", reached, StorageTerms.MODEL));
    }

    @Override
    String written(Outcome.Completed completed) {
        return csv ? CsvText.table((FindingValue.Table) completed.finding("surface").orElseThrow().value())
                .stripTrailing()
                : super.written(completed);
    }
}
