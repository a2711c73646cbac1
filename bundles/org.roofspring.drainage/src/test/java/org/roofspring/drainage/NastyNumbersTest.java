package org.roofspring.drainage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.drainage.intensity.AnnualMaxima;
import org.roofspring.drainage.intensity.CollectionEfficiency;
import org.roofspring.drainage.intensity.DepthInterval;
import org.roofspring.drainage.intensity.DesignIntensity;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.drainage.intensity.ExtremeLaw;
import org.roofspring.drainage.intensity.GevLaw;
import org.roofspring.drainage.intensity.GumbelLaw;
import org.roofspring.drainage.intensity.IntensityRelation;
import org.roofspring.drainage.intensity.PlottingPosition;
import org.roofspring.drainage.intensity.WithinDayRain;
import org.roofspring.drainage.siting.Flotation;
import org.roofspring.drainage.siting.GroundKind;
import org.roofspring.drainage.siting.PollutionSource;
import org.roofspring.drainage.siting.Soakaway;
import org.roofspring.drainage.siting.TankLoad;
import org.roofspring.drainage.tank.CalmedInlet;
import org.roofspring.drainage.tank.Diverter;
import org.roofspring.drainage.tank.FirstFlush;
import org.roofspring.drainage.tank.FloatingIntake;
import org.roofspring.drainage.tank.InletScreen;
import org.roofspring.drainage.tank.OverflowCheck;
import org.roofspring.drainage.tank.OverflowPipe;
import org.roofspring.drainage.tank.Vent;

/**
 * Every public entry with every number in turn made nasty: the answer is finite, or one sentence says what is wrong.
 */
class NastyNumbersTest {
    private static final double[] NASTY = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
        Double.MIN_VALUE, -Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE, -Double.MAX_VALUE, -0.0, 0, -1, 1e-9,
        1e-3, 0.5, 1, 100, 1e5, 1e9};

    private static final GutterSection SECTION = new HalfRoundSection(0.1);
    private static final Gutter GUTTER = new Gutter(SECTION, 6, 0.005);
    private static final GutterRun RUN = new GutterRun(GUTTER, new GutterOutlet(0.06, true), new Downpipe(0.075), 2);
    private static final GumbelLaw GUMBEL = new GumbelLaw(60, 20);
    private static final DurationRatios RATIOS = DurationRatios.brazilian();
    private static final IntensityRelation TALBOT = new IntensityRelation.Talbot(3000, 20);

    /** Instances whose constructors and methods are tried, and which serve as arguments of others. */
    private static final List<Object> SAMPLES = List.of(SECTION, new RectangularSection(0.1, 0.05),
            new TrapezoidalSection(0.1, 0.05, 0.05), GUTTER, RUN, new GutterOutlet(0.06, false), new Downpipe(0.075),
            new RoofPlane(10, 4, 2), CatchmentMaterial.table().getFirst(),
            new AnnualMaxima(List.of(1.0, 2.0, 3.0, 4.0, 9.0)), GUMBEL,
            new GevLaw(60, 20, -0.1), RATIOS.points().getFirst(), RATIOS, TALBOT,
            new IntensityRelation.Sherman(3000, 20, 0.8), new IntensityRelation.Wenzel(3000, 20, 0.9),
            new WithinDayRain.NestedBursts(RATIOS), new WithinDayRain.ExponentialIntensities(10800),
            new CollectionEfficiency(50, 365, 900, 800), new Diverter(0.01, 1, 0.005, 0.62),
            new InletScreen(0.02, 0.5, 0.02), new OverflowPipe(0.1), new FloatingIntake(5e-4, 0.025, 0.1),
            new CalmedInlet(0.002, 0.04), new TankLoad(5, 100, 400, 4), GroundKind.table().getFirst(),
            new Flotation(5, 100, 0, 0), new PollutionSource(PollutionSource.Kind.LATRINE, 20, 1),
            new Soakaway(1, 1, 1, 0.3, 1e-5), GutterCapacity.of(GUTTER));

    private static final List<Class<?>> STATICS = List.of(RoofRunoff.class, StandardGutter.class, GutterCapacity.class,
            WaterSurface.class, RoofPlane.class, CatchmentMaterial.class, OutletLayout.class, GumbelLaw.class,
            ExtremeLaw.class, DepthInterval.class, DesignIntensity.class, CollectionEfficiency.class, FirstFlush.class,
            Diverter.class, OverflowCheck.class, Vent.class, CalmedInlet.class, Soakaway.class);

    /** Results, which are not validated, since only the kernel makes them. */
    private static final List<Class<?>> RESULTS = List.of(CollectionEfficiency.class, GutterCapacity.class);

    @TestFactory
    Stream<DynamicTest> everyEntry() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Object sample : SAMPLES) {
            Class<?> type = sample.getClass();
            if (!RESULTS.contains(type)) {
                for (Constructor<?> constructor : type.getConstructors()) {
                    tests.add(test(constructor, null));
                }
            }
            for (Method method : type.getMethods()) {
                if (!Modifier.isStatic(method.getModifiers()) && method.getDeclaringClass() != Object.class
                        && method.getDeclaringClass() != Record.class && takesNumbers(method)) {
                    tests.add(test(method, sample));
                }
            }
        }
        for (Class<?> type : STATICS) {
            for (Method method : type.getMethods()) {
                if (Modifier.isStatic(method.getModifiers()) && takesNumbers(method)) {
                    tests.add(test(method, null));
                }
            }
        }
        assertTrue(tests.size() > 100, () -> "only " + tests.size() + " entries found");
        return tests.stream();
    }

    private static boolean takesNumbers(Method method) {
        return Arrays.stream(method.getParameterTypes()).anyMatch(NastyNumbersTest::isNumeric);
    }

    private static boolean isNumeric(Class<?> type) {
        return type == double.class || type == int.class || type == double[].class || type == List.class;
    }

    private static DynamicTest test(Executable entry, Object target) {
        return DynamicTest.dynamicTest(entry.getDeclaringClass().getSimpleName() + " " + entry.getName() + " "
                + Arrays.toString(entry.getParameterTypes()), () -> {
                    Class<?>[] types = entry.getParameterTypes();
                    for (int position = 0; position < types.length; position++) {
                        if (!isNumeric(types[position])) {
                            continue;
                        }
                        for (double nasty : NASTY) {
                            Object[] arguments = new Object[types.length];
                            for (int i = 0; i < types.length; i++) {
                                double sound = types[i] == int.class ? 3 : 0.7;
                                arguments[i] = argument(entry, types[i], i == position ? nasty : sound);
                            }
                            attempt(entry, target, arguments);
                        }
                    }
                });
    }

    private static Object argument(Executable entry, Class<?> type, double number) {
        if (type == double.class) {
            return number;
        }
        if (type == int.class) {
            return (int) Math.max(-1, Math.min(50, number));
        }
        if (type == long.class) {
            return 1L;
        }
        if (type == boolean.class) {
            return true;
        }
        if (type == String.class) {
            return "x";
        }
        if (type == double[].class) {
            return new double[] {5, number, 50};
        }
        if (type == BooleanSupplier.class) {
            return (BooleanSupplier) () -> false;
        }
        if (type == List.class) {
            if (Arrays.toString(entry.getGenericParameterTypes()).contains(Soakaway.Storm.class.getName())) {
                return List.of(new Soakaway.Storm(3600, 40));
            }
            return entry.getDeclaringClass() == DurationRatios.class ? RATIOS.points()
                    : List.of(7.0, 8.0, 9.0, 10.0, number, 60.0);
        }
        if (type == Source.class) {
            return Source.assumed("x");
        }
        if (type == ExtremeLaw.class) {
            return GUMBEL;
        }
        if (type == IntensityRelation.class) {
            return TALBOT;
        }
        if (type == PlottingPosition.class) {
            return PlottingPosition.WEIBULL;
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return SAMPLES.stream().filter(type::isInstance).findFirst()
                .orElseThrow(() -> new AssertionError("no sample of " + type));
    }

    private static void attempt(Executable entry, Object target, Object[] arguments)
            throws ReflectiveOperationException {
        String call = entry.getName() + Arrays.toString(arguments) + " on " + target;
        try {
            Object answer = entry instanceof Constructor<?> constructor ? constructor.newInstance(arguments)
                    : ((Method) entry).invoke(target, arguments);
            assertFinite(answer, call);
        } catch (InvocationTargetException e) {
            Throwable cause = e.getCause();
            boolean refused = cause instanceof IllegalArgumentException || cause instanceof NoAnswerException;
            assertTrue(refused && !cause.getMessage().isBlank() && !cause.getClass().getName().contains("hipparchus"),
                    () -> call + " failed with " + cause);
        }
    }

    private static void assertFinite(Object answer, String call) throws ReflectiveOperationException {
        switch (answer) {
            case null -> throw new AssertionError(call + " gave nothing");
            case Double number -> assertTrue(Double.isFinite(number), () -> call + " gave " + number);
            case OptionalDouble maybe -> assertTrue(Double.isFinite(maybe.orElse(0)), () -> call + " gave " + maybe);
            case List<?> list -> {
                for (Object element : list) {
                    assertFinite(element, call);
                }
            }
            case Record record -> {
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    assertFinite(component.getAccessor().invoke(record), call);
                }
                for (Method method : record.getClass().getMethods()) {
                    if (method.getParameterCount() == 0 && method.getReturnType() == double.class) {
                        assertFinite(method.invoke(record), call + " then " + method.getName());
                    }
                }
            }
            default -> {
                // texts, verdicts, arrays with NaN where a day is missing
            }
        }
    }
}
