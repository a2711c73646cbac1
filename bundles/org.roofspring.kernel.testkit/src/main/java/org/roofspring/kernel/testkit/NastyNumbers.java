package org.roofspring.kernel.testkit;

import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;

/**
 * Calls every public entry of a kernel with each number in turn made nasty. The answer is finite, in all that can be
 * asked of it, or one sentence of the kernel says what is wrong; within a time, whatever was asked.
 *
 * <p>Entries are found by reflection, and so are the other arguments. A class that is too hard to make needs a
 * {@link #sample}; a test fails and says so.
 */
public final class NastyNumbers {
    private static final Duration LONGEST_TEST = Duration.ofMinutes(2);
    private static final long LONGEST_NS = 3_000_000_000L;

    private final Class<?> anchor;
    private final List<Object> samples = new ArrayList<>();
    private final Map<String, List<Object[]>> told = new HashMap<>();
    private final Set<Class<?>> madeByKernel = new HashSet<>();
    private final Set<Class<?>> checkedWhenUsed = new HashSet<>();
    private final Set<String> missing = new HashSet<>();
    private final Map<String, String> leftOut = new LinkedHashMap<>();
    private long deadline = Long.MAX_VALUE;

    private NastyNumbers(Class<?> anchor) {
        this.anchor = anchor;
    }

    /** For the kernel that a class belongs to. */
    public static NastyNumbers ofKernel(Class<?> anchor) {
        return new NastyNumbers(anchor);
    }

    /** A sound value of a type that is too hard to make. */
    public NastyNumbers sample(Object value) {
        samples.add(value);
        return this;
    }

    /** An entry, as Class.method, whose documentation says that not-a-number means that there is no value. */
    public NastyNumbers mayBeMissing(String entry) {
        missing.add(entry);
        return this;
    }

    /** Sound arguments for an entry, as Class.method or Class.new. */
    public NastyNumbers arguments(String entry, Object... values) {
        told.computeIfAbsent(entry, name -> new ArrayList<>()).add(values);
        return this;
    }

    /** Records that only the kernel makes, from numbers that it has checked; their constructors are no way in. */
    public NastyNumbers madeByKernel(Class<?>... records) {
        madeByKernel.addAll(Set.of(records));
        return this;
    }

    /** Records that carry numbers without looking; whatever takes one has to look, and is called with them. */
    public NastyNumbers checkedWhenUsed(Class<?>... records) {
        checkedWhenUsed.addAll(Set.of(records));
        return this;
    }

    /** An entry, as Class.method, that is not called, and why. */
    public NastyNumbers leaveOut(String entry, String why) {
        leftOut.put(entry, why);
        return this;
    }

    /** A test for each class that has entries with numbers. */
    public Stream<DynamicTest> tests() {
        KernelClasses kernel = KernelClasses.besides(anchor);
        BooleanSupplier cancelled = () -> System.nanoTime() - deadline > 0;
        Sounds sounds = new Sounds(kernel, samples, told, cancelled);
        Nasties nasties = new Nasties(kernel, sounds, madeByKernel);
        Map<Class<?>, List<Executable>> entries = new LinkedHashMap<>();
        for (Class<?> type : kernel.types()) {
            List<Executable> found = new ArrayList<>();
            if (!type.isRecord() || kernel.isInput(type) && !madeByKernel.contains(type)) {
                found.addAll(KernelClasses.constructors(type));
            }
            found.addAll(KernelClasses.methods(type));
            found.removeIf(entry -> !takesNumbers(kernel, entry) || leftOut.containsKey(name(entry)));
            if (!found.isEmpty()) {
                entries.put(type, found);
            }
        }
        return entries.entrySet().stream().map(one -> DynamicTest.dynamicTest(one.getKey().getSimpleName() + ": "
                + one.getValue().size() + " entries", () -> Assertions.assertTimeoutPreemptively(LONGEST_TEST,
                        () -> check(kernel, sounds, nasties, one.getValue()))));
    }

    private static boolean takesNumbers(KernelClasses kernel, Executable entry) {
        return Arrays.stream(entry.getGenericParameterTypes()).flatMap(type -> KernelClasses.classesIn(type).stream())
                .anyMatch(type -> type.isArray() || type == double.class || type == int.class || type == long.class
                        || type == Double.class || type == Integer.class || type == java.util.OptionalDouble.class
                        || type == java.util.OptionalInt.class || kernel.contains(type) && type.isRecord());
    }

    static String name(Executable entry) {
        return entry.getDeclaringClass().getSimpleName() + "."
                + (entry instanceof Method method ? method.getName() : "new");
    }

    private void check(KernelClasses kernel, Sounds sounds, Nasties nasties, List<Executable> entries) {
        List<String> faults = new ArrayList<>();
        for (Executable entry : entries) {
            deadline = System.nanoTime() + LONGEST_NS;
            Sounds.Call call = sounds.call(entry);
            if (call == null) {
                faults.add(name(entry) + Arrays.toString(entry.getParameterTypes())
                        + ": no sound arguments were found; the test needs a sample");
                continue;
            }
            Parameter[] parameters = entry.getParameters();
            Set<String> ofEntry = new java.util.LinkedHashSet<>();
            for (int place = 0; place < parameters.length; place++) {
                for (Object nasty : nasties.of(call.arguments()[place], parameters[place].getName())) {
                    Object[] arguments = call.arguments().clone();
                    arguments[place] = nasty;
                    String fault = fault(kernel, entry, call.target(), arguments, nasty instanceof Integer);
                    if (fault != null && ofEntry.size() < 4) {
                        ofEntry.add(name(entry) + ": " + fault + ", where " + parameters[place].getName() + " = "
                                + text(nasty));
                    }
                }
            }
            faults.addAll(ofEntry);
        }
        if (!faults.isEmpty()) {
            throw new AssertionError(faults.stream().collect(Collectors.joining("\n", "\n", "")));
        }
    }

    private String fault(KernelClasses kernel, Executable entry, Object target, Object[] arguments, boolean index) {
        long begin = System.nanoTime();
        deadline = begin + LONGEST_NS;
        String fault;
        try {
            Object answer = Sounds.invoke(entry, target, arguments);
            fault = new FiniteAnswer(kernel, part -> missing.contains(name(part)), checkedWhenUsed)
                    .fault(entry, answer);
        } catch (InvocationTargetException e) {
            fault = e.getCause() instanceof CancellationException ? null : Refusal.fault(e.getCause(), index);
        }
        long took = System.nanoTime() - begin;
        return fault == null && took > 2 * LONGEST_NS ? "took " + took / 1_000_000 + " ms" : fault;
    }

    private static String text(Object value) {
        String text = Arrays.deepToString(new Object[] {value});
        return text.length() > 400 ? text.substring(0, 200) + " ... " + text.substring(text.length() - 200) : text;
    }
}
