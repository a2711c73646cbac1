package org.roofspring.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.WorkingRange;

/** All duty points of a board of pumps, with efficiency, suction and energy at each, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class BoardBenchmark {

    private final BoardCase board = BoardCase.invented();

    /** By bracketed root finding, piece by piece of the curve. */
    @Benchmark
    public List<WorkingRange> board() {
        return board.run();
    }

    /** By plain bisection over the whole curve. */
    @Benchmark
    public List<List<DutyPoint>> bisected() {
        return board.bisected();
    }
}
