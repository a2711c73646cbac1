package org.roofspring.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.roofspring.hydraulics.PipeFriction;

/**
 * Friction factors of many pipes: Colebrook-White solved to the last digits, and the explicit formula of Swamee and
 * Jain, each through its public entry.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ColebrookBenchmark {

    /** Pipes. */
    static final int PIPES = 4096;

    /** Reynolds numbers, even in their logarithm from 4e3 to 1e8. */
    final double[] reynolds = new double[PIPES];

    /** Relative roughnesses, even in their logarithm from 1e-7 to 0.05, one in sixteen smooth. */
    final double[] roughness = new double[PIPES];

    /** Makes the pipes. */
    public ColebrookBenchmark() {
        Random random = new Random(11);
        for (int i = 0; i < PIPES; i++) {
            reynolds[i] = 4e3 * Math.pow(1e8 / 4e3, random.nextDouble());
            roughness[i] = i % 16 == 0 ? 0 : 1e-7 * Math.pow(0.05 / 1e-7, random.nextDouble());
        }
    }

    /** Solved. */
    @Benchmark
    @OperationsPerInvocation(PIPES)
    public double solved() {
        double sum = 0;
        for (int i = 0; i < PIPES; i++) {
            sum += PipeFriction.colebrookWhite(reynolds[i], roughness[i]);
        }
        return sum;
    }

    /** Explicit. */
    @Benchmark
    @OperationsPerInvocation(PIPES)
    public double explicit() {
        double sum = 0;
        for (int i = 0; i < PIPES; i++) {
            sum += PipeFriction.swameeJain(reynolds[i], roughness[i]);
        }
        return sum;
    }
}
