package org.roofspring.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.roofspring.storage.ReliabilityCurve;
import org.roofspring.storage.ReliabilitySurface;

/**
 * The roof by tank surface in Java against C and NumPy. All programs take turns in five rounds, each in a process of
 * its own, and the medians of their processor time are compared, so that a busy machine disturbs little.
 */
final class StorageGroup implements Bench.Group {

    private static final int ROUNDS = 5;
    private static final int C_REPEATS = 101;
    private static final int NUMPY_REPEATS = 3;
    private static final double SUPPLIED_TOLERANCE = 1e-9;

    /** Days: the others compute in doubles without rounding to the microlitre, and may see a near tie otherwise. */
    private static final int FULL_DAYS_TOLERANCE = 2;
    private static final String PYTHON = "/usr/bin/python3";

    @Override
    public void run(Bench.Places places, Report report) throws Exception {
        Files.createDirectories(places.work());
        if (!Programs.works(List.of("gcc", "--version"))) {
            throw new IOException("gcc is missing; install the package gcc");
        }
        report.note(Programs.run(List.of("gcc", "--version")).lines().findFirst().orElse("gcc"));
        Path sources = places.root().resolve("releng/org.roofspring.bench/src/main");
        String c = Programs.compile(sources.resolve("c/surface.c"), places.work().resolve("surface")).toString();
        String numpy = sources.resolve("python/surface.py").toString();
        boolean hasNumpy = Programs.works(List.of(PYTHON, "-c", "import numpy"));
        if (!hasNumpy) {
            report.note("NumPy is missing, so it is left out; install the package python3-numpy");
        }

        Map<String, Callable<Double>> programs = new LinkedHashMap<>();
        Map<String, Double> designDays = new LinkedHashMap<>();
        for (String name : List.of("constant", "calendar")) {
            SurfaceCase surface = SurfaceCase.demo(places.root(), name);
            designDays.put(name, surface.designDays());
            String data = places.work().resolve("surface-" + name + ".txt").toString();
            String result = places.work().resolve("result.txt").toString();
            surface.write(Path.of(data));
            Map<String, List<String>> others = new LinkedHashMap<>();
            others.put("c " + name, List.of(c, data, result, "blocked", "" + C_REPEATS));
            if (name.equals("constant")) {
                others.put("c-spell " + name, List.of(c, data, result, "spell", "" + C_REPEATS));
                if (hasNumpy) {
                    others.put("numpy " + name, List.of(PYTHON, numpy, data, result, "" + NUMPY_REPEATS));
                }
            }
            ReliabilitySurface expected = surface.run();
            others.forEach((program, command) -> programs.put(program, () -> {
                double time = Double.parseDouble(Programs.run(command));
                int daysOff = agree(expected, Path.of(result), program);
                report.note("storage: " + program + " agrees; full days differ by " + daysOff + " at most");
                return time;
            }));
            programs.put("java " + name, () -> java(places.root(), name));
        }

        Map<String, List<Double>> times = new LinkedHashMap<>();
        for (int round = 1; round <= ROUNDS; round++) {
            for (Map.Entry<String, Callable<Double>> program : programs.entrySet()) {
                String demand = program.getKey().split(" ")[1];
                double time = program.getValue().call() / designDays.get(demand);
                times.computeIfAbsent(program.getKey(), key -> new ArrayList<>()).add(time);
                report.note(String.format(Locale.ROOT, "storage, round %d of %d: %-16s %.4f ns a design-day", round,
                        ROUNDS, program.getKey(), time));
            }
        }
        Map<String, Double> medians = new LinkedHashMap<>();
        times.forEach((program, all) -> medians.put(program, Medians.of(all)));
        medians.forEach((program, time) -> report.figure("storage." + program.replace(' ', '.'), time,
                "ns/design-day"));
        report.figure("storage.surface_60_years", java(places.root(), "sixty-years") / 1e6, "ms");
        report.figure("storage.java_design_days", 1e9 / medians.get("java constant"), "1/s");
        double java = medians.get("java constant");
        report.ratio("storage.java_over_c_spell", medians.get("c-spell constant") / java);
        report.ratio("storage.java_over_c_calendar", medians.get("c calendar") / medians.get("java calendar"));
        report.ratio("storage.java_over_c", medians.get("c constant") / java);
        if (hasNumpy) {
            report.ratio("storage.java_over_numpy", medians.get("numpy constant") / java);
        }
    }

    /** Processor time of one surface in a fresh JVM [ns]: the median of its iterations. */
    private static double java(Path root, String name) throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder().include("\\bSurfaceBenchmark\\.surface$")
                .param("root", root.toString()).param("name", name).forks(1).threads(1)
                .warmupIterations(8).warmupTime(TimeValue.seconds(1))
                .measurementIterations(9).measurementTime(TimeValue.milliseconds(300))
                .shouldFailOnError(true).verbosity(VerboseMode.SILENT);
        if (Runtime.version().feature() >= 23) {
            options.jvmArgsAppend("--sun-misc-unsafe-memory-access=allow"); // the harness uses it, and would warn
        }
        List<Double> times = new ArrayList<>();
        for (RunResult result : new Runner(options.build()).run()) {
            for (BenchmarkResult fork : result.getBenchmarkResults()) {
                for (IterationResult iteration : fork.getIterationResults()) {
                    times.add(counted(iteration, "processorNs") / counted(iteration, "surfaces"));
                }
            }
        }
        if (times.isEmpty()) {
            throw new IllegalStateException("the harness measured nothing");
        }
        return Medians.of(times);
    }

    private static double counted(IterationResult iteration, String name) {
        return iteration.getSecondaryResults().get(name).getScore();
    }

    /** Refuses to compare programs that do not give the same surface; tells by how many full days they differ. */
    private static int agree(ReliabilitySurface expected, Path file, String program) throws IOException {
        List<String> lines = Files.readAllLines(file);
        int line = 0;
        int mostDaysOff = 0;
        for (ReliabilityCurve curve : expected.curves()) {
            for (int tank = 0; tank < curve.tanks(); tank++) {
                String[] parts = lines.get(line++).split(" ");
                double supplied = Double.parseDouble(parts[0]);
                int fullDays = Integer.parseInt(parts[1]);
                double off = Math.abs(supplied - curve.suppliedM3(tank));
                int daysOff = Math.abs(fullDays - curve.fullDays(tank));
                if (!(off <= SUPPLIED_TOLERANCE * curve.suppliedM3(tank)) || daysOff > FULL_DAYS_TOLERANCE) {
                    throw new IllegalStateException(program + " disagrees on design " + line + ": " + supplied
                            + " m3 and " + fullDays + " days, not " + curve.suppliedM3(tank) + " m3 and "
                            + curve.fullDays(tank) + " days");
                }
                mostDaysOff = Math.max(mostDaysOff, daysOff);
            }
        }
        if (line != lines.size()) {
            throw new IllegalStateException(program + " gave " + lines.size() + " designs, not " + line);
        }
        return mostDaysOff;
    }
}
