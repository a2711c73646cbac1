package org.roofspring.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.roofspring.storage.ReliabilitySurface;

/**
 * The batch kernel, from rain in mm to the finished surface, on one thread. Beside the harness's wall clock the
 * processor time of the thread is counted, as in the programs it is compared with: on a busy machine the wall clock
 * tells more about the neighbours.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SurfaceBenchmark {

    /** Top folder of the sources. */
    @Param("")
    public String root;

    /** constant, calendar or sixty-years. */
    @Param("constant")
    public String name;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private SurfaceCase surface;

    /** Counted over an iteration. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Counted {

        /** Surfaces made. */
        public long surfaces;

        /** Processor time that they took [ns]. */
        public long processorNs;
    }

    /** Reads the record. */
    @Setup
    public void prepare() throws IOException {
        surface = name.equals("sixty-years") ? SurfaceCase.sixtyYears(Path.of(root))
                : SurfaceCase.demo(Path.of(root), name);
    }

    /** One surface. */
    @Benchmark
    public ReliabilitySurface surface(Counted counted) {
        long begin = threads.getCurrentThreadCpuTime();
        ReliabilitySurface result = surface.run();
        counted.processorNs += threads.getCurrentThreadCpuTime() - begin;
        counted.surfaces++;
        return result;
    }
}
