package org.roofspring.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.roofspring.hydraulics.PipeFriction;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.WorkingRange;

/**
 * Friction factors solved against an explicit formula, and a board of pumps against plain bisection. The programs take
 * turns in rounds, each in a process of its own.
 */
final class HydraulicsGroup implements Bench.Group {

    private static final int ROUNDS = 3;

    /** A residual of 1e-13 in 1/sqrt(f), 3.5 at least, bears 6e-14 relative on f at most. */
    private static final double RESIDUAL = 1e-13;

    /** Swamee and Jain's formula is an approximation; over this range of pipes it is up to 4 % off. */
    private static final double EXPLICIT_TOLERANCE = 0.04;

    /** A billionth of a drop a second: where the curves meet at a small angle, no more digits are to be had. */
    private static final double FLOW_TOLERANCE_M3_PER_S = 1e-15;
    private static final double VALUE_TOLERANCE = 1e-10;

    @Override
    public void run(Bench.Places places, Report report) throws Exception {
        checkFriction(report);
        checkBoard(report);
        Map<String, List<Double>> times = new LinkedHashMap<>();
        for (int round = 1; round <= ROUNDS; round++) {
            for (String program : List.of("Colebrook.explicit", "Colebrook.solved", "Board.bisected", "Board.board")) {
                double time = time(program.replace(".", "Benchmark\\."));
                times.computeIfAbsent(program, key -> new ArrayList<>()).add(time);
                report.note(String.format(Locale.ROOT, "hydraulics, round %d of %d: %-20s %.4g %s", round, ROUNDS,
                        program, time, program.startsWith("Board") ? "ms" : "ns"));
            }
        }
        double solved = Medians.of(times.get("Colebrook.solved"));
        double explicit = Medians.of(times.get("Colebrook.explicit"));
        double board = Medians.of(times.get("Board.board"));
        double bisected = Medians.of(times.get("Board.bisected"));
        double duties = (double) BoardCase.PUMPS * BoardCase.STATES;
        report.figure("hydraulics.colebrook", solved, "ns");
        report.figure("hydraulics.explicit", explicit, "ns");
        report.ratio("hydraulics.colebrook_over_explicit", solved / explicit);
        report.figure("hydraulics.board_500x25", board, "ms");
        report.figure("hydraulics.board_duty", board * 1e6 / duties, "ns");
        report.figure("hydraulics.bisection_duty", bisected * 1e6 / duties, "ns");
        report.ratio("hydraulics.board_over_bisection", board / bisected);
    }

    /** Puts each solution into the equation it is to solve, and compares it with the explicit formula. */
    private static void checkFriction(Report report) {
        ColebrookBenchmark pipes = new ColebrookBenchmark();
        double worst = 0;
        double mostOff = 0;
        for (int i = 0; i < ColebrookBenchmark.PIPES; i++) {
            double factor = PipeFriction.colebrookWhite(pipes.reynolds[i], pipes.roughness[i]);
            double x = 1 / Math.sqrt(factor);
            double residual = x + 2 * Math.log10(pipes.roughness[i] / 3.7 + 2.51 * x / pipes.reynolds[i]);
            worst = Math.max(worst, Math.abs(residual));
            mostOff = Math.max(mostOff,
                    Math.abs(PipeFriction.swameeJain(pipes.reynolds[i], pipes.roughness[i]) / factor - 1));
        }
        if (!(worst <= RESIDUAL) || !(mostOff <= EXPLICIT_TOLERANCE)) {
            throw new IllegalStateException("the friction factors leave " + worst + " of the equation and are "
                    + mostOff + " off the explicit formula");
        }
        report.note(String.format(Locale.ROOT, "hydraulics: solved friction factors leave %.1g of the equation; the "
                + "explicit formula is off by %.1f %% at most", worst, 100 * mostOff));
    }

    /** Refuses to compare unless both find the same duty points, with the same values at each. */
    private static void checkBoard(Report report) {
        BoardCase board = BoardCase.invented();
        List<WorkingRange> ranges = board.run();
        List<List<DutyPoint>> bisected = board.bisected();
        int met = 0;
        for (int pump = 0; pump < BoardCase.PUMPS; pump++) {
            for (int state = 0; state < BoardCase.STATES; state++) {
                Optional<DutyPoint> found = ranges.get(pump).duties().get(state).outcome().working();
                DutyPoint expected = bisected.get(pump).get(state);
                if (found.isPresent() != (expected != null) || expected != null && !same(found.get(), expected)) {
                    throw new IllegalStateException("pump " + pump + " in state " + state + ": the board finds " + found
                            + ", bisection " + expected);
                }
                met += expected == null ? 0 : 1;
            }
        }
        report.note("hydraulics: board and bisection agree on " + met + " duty points and "
                + (BoardCase.PUMPS * BoardCase.STATES - met) + " states without one");
    }

    private static boolean same(DutyPoint a, DutyPoint b) {
        return Math.abs(a.flowM3PerS() - b.flowM3PerS()) <= FLOW_TOLERANCE_M3_PER_S
                && near(a.headM(), b.headM(), VALUE_TOLERANCE)
                && near(a.npshAvailableM(), b.npshAvailableM(), VALUE_TOLERANCE)
                && near(a.specificEnergyJPerM3().orElseThrow(), b.specificEnergyJPerM3().orElseThrow(),
                        VALUE_TOLERANCE);
    }

    private static boolean near(double a, double b, double tolerance) {
        return Math.abs(a - b) <= tolerance * Math.abs(b);
    }

    /** Time of one run in a fresh JVM, in the unit of the benchmark: the median of its iterations. */
    private static double time(String benchmark) throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder().include("\\b" + benchmark + "$").forks(1).threads(1)
                .warmupIterations(6).warmupTime(TimeValue.seconds(1))
                .measurementIterations(9).measurementTime(TimeValue.milliseconds(500))
                .shouldFailOnError(true).verbosity(VerboseMode.SILENT);
        if (Runtime.version().feature() >= 23) {
            options.jvmArgsAppend("--sun-misc-unsafe-memory-access=allow"); // the harness uses it, and would warn
        }
        List<Double> times = new ArrayList<>();
        for (RunResult result : new Runner(options.build()).run()) {
            for (BenchmarkResult fork : result.getBenchmarkResults()) {
                for (IterationResult iteration : fork.getIterationResults()) {
                    times.add(iteration.getPrimaryResult().getScore());
                }
            }
        }
        if (times.isEmpty()) {
            throw new IllegalStateException("the harness measured nothing for " + benchmark);
        }
        return Medians.of(times);
    }
}
