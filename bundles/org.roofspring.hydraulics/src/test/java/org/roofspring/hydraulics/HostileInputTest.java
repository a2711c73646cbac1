package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.roofspring.hydraulics.gravity.FixtureUnits;
import org.roofspring.hydraulics.gravity.GravityFlow;
import org.roofspring.hydraulics.gravity.GravitySolver;
import org.roofspring.hydraulics.gravity.GravityState;
import org.roofspring.hydraulics.gravity.GravityTree;
import org.roofspring.hydraulics.gravity.Node;
import org.roofspring.hydraulics.gravity.Outlet;
import org.roofspring.hydraulics.gravity.Reach;
import org.roofspring.hydraulics.gravity.SchoolBreak;
import org.roofspring.hydraulics.gravity.StandpostHead;
import org.roofspring.hydraulics.pump.DutyOutcome;
import org.roofspring.hydraulics.pump.DutySolver;
import org.roofspring.hydraulics.pump.NpshMargin;
import org.roofspring.hydraulics.pump.PressureSwitch;
import org.roofspring.hydraulics.pump.PressureVessel;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpPoint;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.PumpedLine;
import org.roofspring.hydraulics.pump.StateRange;
import org.roofspring.hydraulics.pump.Suction;
import org.roofspring.hydraulics.pump.SuctionConditions;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.hydraulics.pump.WorkingRange;

/**
 * Every public constructor, factory and method of the API, called with not-a-number, infinite, subnormal, huge,
 * negative and ordinary numbers: each call gives finite numbers or refuses in one sentence.
 */
class HostileInputTest {
    private static final double[] NUMBERS = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
        Double.MIN_VALUE, -Double.MIN_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, 1e300, -1, -0.0, 0, 1e-9, 1e-3, 0.02,
        0.5, 1, 3, 20, 1000, 101_325};
    private static final int[] COUNTS = {Integer.MIN_VALUE, -1, 0, 1, 2, 7, Integer.MAX_VALUE};
    private static final int CALLS = 100;
    /** They hold what the kernel has worked out, not what a caller gives. */
    private static final Set<String> RESULTS = Set.of("PipeLoss", "DutyPoint", "SuctionReview", "WaterHammer",
            "DirectSupply", "OutletFlow", "GravityFlow", "WorkingRange", "StateDuty", "Meets", "StaticHeadAboveShutOff",
            "RunsOut", "BelowFirstPoint", "Course", "Point", "GradeLine", "HazenWilliams");

    private final Map<Class<?>, Object> samples = new HashMap<>();
    private final Random random = new Random(7);
    private final Map<String, String> wrong = new LinkedHashMap<>();
    private int answered;
    private int refused;

    HostileInputTest() {
        WaterProperties water = WaterProperties.at(20);
        PipeRun pipe = new PipeRun(0.03, 20, 7e-6, 3);
        PumpCurve pump = PumpCurve.of("p", List.of(PumpPoint.of(0, 30), PumpPoint.of(1e-3, 24), PumpPoint.of(2e-3, 9)));
        SystemCurve system = SystemCurve.of(10, pipe.carrying(water), water);
        SystemState state = new SystemState(0, 10, 20, 101_325, true);
        PumpedLine line = new PumpedLine(1, List.of(), HeadLoss.none(), HeadLoss.none(),
                List.of(AgeingRun.lasting(pipe)));
        Outlet outlet = new Outlet("o", "b", HeadLoss.rated(1e-4, 1, 2), 1e-4);
        GravityTree tree = GravityTree.of("a", List.of(new Node("a", 2), new Node("b", 0)),
                List.of(Reach.of("r", "a", "b", pipe)), List.of(outlet));
        GravityState full = new GravityState(3, 20, false);
        Stream.of(water, pipe, pump, system, state, line, outlet, tree, full, FlowRegime.LAMINAR, HeadLoss.none(),
                FittingType.ELBOW_90, new FittingCount(FittingType.EXIT, 1), PipeCatalogue.PE_100,
                PipeCatalogue.allSizes().get(0), VelocityLimits.DELIVERY, AgeingRun.lasting(pipe), new Band(1, 2),
                new ProfilePoint(0, 1), PumpPoint.of(0, 30), PumpSet.single(pump), Suction.level(), NpshMargin.USUAL,
                DutySolver.solve(PumpSet.single(pump), system), new PressureVessel(0.1, 1e5),
                new PressureSwitch(1e5, 2e5),
                new SuctionConditions(1, List.of(pipe), HeadLoss.none(), 20, 101_325), StandpostHead.USUAL,
                new StateRange(Band.at(0), Band.at(5), Band.at(20), Band.at(1e5), false), new Node("a", 1),
                Reach.of("r", "a", "b", pipe), FixtureUnits.FLUSH_TANKS, new SchoolBreak(30, 600, 60, 3e-4, 1e-4, 3),
                GravitySolver.open(tree, full, Set.of("o"), () -> false), pipe.lossAt(1e-4, water),
                WorkingRange.of(PumpSet.single(pump), line, List.of(state))).forEach(this::addSample);
        samples.put(List.class, List.of());
        samples.put(Map.class, Map.of("r", 1e-4));
        samples.put(Set.class, Set.of("o"));
        samples.put(String.class, "o");
        samples.put(BooleanSupplier.class, (BooleanSupplier) () -> false);
        samples.put(DoubleUnaryOperator.class, (DoubleUnaryOperator) at -> 1e-3);
        samples.put(Path.class, Path.of("not-there.csv"));
        samples.put(Optional.class, Optional.empty());
        samples.put(double[].class, new double[] {1, 2});
    }

    private void addSample(Object sample) {
        for (Class<?> type = sample.getClass(); type != null && type != Object.class; type = type.getSuperclass()) {
            samples.put(type, sample);
            Arrays.stream(type.getInterfaces()).filter(each -> each.getName().startsWith("org.roofspring"))
                    .forEach(each -> samples.put(each, sample));
        }
    }

    @Test
    void everyPublicEntryAnswersOrRefuses() throws Exception {
        List<String> classes = apiClasses();
        assertTrue(classes.size() > 50, classes + " are too few to be the API");
        for (String name : classes) {
            Class<?> type = Class.forName(name);
            if (!Modifier.isPublic(type.getModifiers()) || Throwable.class.isAssignableFrom(type)) {
                continue;
            }
            if (!RESULTS.contains(type.getSimpleName())) {
                for (Constructor<?> constructor : type.getConstructors()) {
                    hammer(constructor, null);
                }
            }
            for (Method method : type.getDeclaredMethods()) {
                boolean isStatic = Modifier.isStatic(method.getModifiers());
                if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic()
                        && (isStatic || samples.containsKey(type)) && method.getParameterCount() > 0
                        && !method.getName().equals("equals") && !method.getName().equals("valueOf")) {
                    hammer(method, isStatic ? null : samples.get(type));
                }
            }
        }
        assertEquals(Map.of(), wrong);
        assertTrue(answered > 500 && refused > 500, answered + " answered, " + refused + " refused");
    }

    private static List<String> apiClasses() throws Exception {
        Path root = Path.of(URI.create(PipeRun.class.getProtectionDomain().getCodeSource().getLocation().toString()));
        try (Stream<Path> files = Files.walk(root)) {
            return new ArrayList<>(files.map(file -> root.relativize(file).toString().replace('/', '.'))
                    .filter(file -> file.endsWith(".class") && !file.contains(".internal.")
                            && !file.contains("package-info"))
                    .map(file -> file.substring(0, file.length() - 6)).sorted().toList());
        }
    }

    private void hammer(Executable entry, Object target) throws ReflectiveOperationException {
        for (int call = 0; call < CALLS; call++) {
            Object[] arguments = Arrays.stream(entry.getParameterTypes()).map(type -> argument(entry, type)).toArray();
            try {
                Object result = entry instanceof Method method ? method.invoke(target, arguments)
                        : ((Constructor<?>) entry).newInstance(arguments);
                if (!isFinite(result, 0)) {
                    wrong.put(entry.toString(), Arrays.toString(arguments) + " gives " + result);
                }
                answered++;
            } catch (InvocationTargetException thrown) {
                String reason = thrown.getCause().getMessage();
                if (thrown.getCause() instanceof IOException) {
                    continue;
                }
                if (!(thrown.getCause() instanceof IllegalArgumentException) || reason == null || reason.length() < 15
                        || reason.contains("\n")) {
                    wrong.put(entry.toString(), Arrays.toString(arguments) + " throws " + thrown.getCause());
                }
                refused++;
            }
        }
    }

    private Object argument(Executable entry, Class<?> type) {
        if (type == double.class) {
            return NUMBERS[random.nextInt(NUMBERS.length)];
        }
        if (type == int.class) {
            return COUNTS[random.nextInt(COUNTS.length)];
        }
        if (type == boolean.class) {
            return random.nextBoolean();
        }
        if (type == OptionalDouble.class) {
            return random.nextBoolean() ? OptionalDouble.empty()
                    : OptionalDouble.of(NUMBERS[random.nextInt(NUMBERS.length)]);
        }
        return random.nextInt(20) == 0 ? null : Optional.ofNullable(samples.get(type))
                .orElseThrow(() -> new AssertionError("no sample of " + type + " for " + entry));
    }

    private static boolean isFinite(Object value, int depth) throws ReflectiveOperationException {
        if (value instanceof Double number) {
            return Double.isFinite(number);
        } else if (value instanceof OptionalDouble number) {
            return number.isEmpty() || Double.isFinite(number.getAsDouble());
        } else if (value instanceof Optional<?> optional) {
            return isFinite(optional.orElse(null), depth);
        } else if (value instanceof Iterable<?> values) {
            for (Object each : values) {
                if (!isFinite(each, depth + 1)) {
                    return false;
                }
            }
        } else if (value instanceof Record && depth < 3) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                component.getAccessor().setAccessible(true);
                if (!isFinite(component.getAccessor().invoke(value), depth + 1)) {
                    return false;
                }
            }
        }
        return true;
    }
}
