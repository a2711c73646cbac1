package org.roofspring.kernel.testkit;

import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** What a sound argument becomes when a number in it is made nasty. */
final class Nasties {
    private static final double[] NUMBERS = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
        Double.MIN_VALUE, -Double.MIN_VALUE, Double.MIN_NORMAL, 1e-300, 1e-9, Double.MAX_VALUE, -Double.MAX_VALUE,
        1e300, 1e150, 1e12, 1e6, -0.0, 0, -1, -1e-9};
    private static final int[] WHOLE = {Integer.MIN_VALUE, -1, 0, 1, 1_000_000, Integer.MAX_VALUE};
    private static final int KEPT = 60;

    private final KernelClasses kernel;
    private final Sounds sounds;
    private final Set<Class<?>> madeByKernel;
    private final Map<Class<?>, List<Object>> accepted = new HashMap<>();

    Nasties(KernelClasses kernel, Sounds sounds, Set<Class<?>> madeByKernel) {
        this.madeByKernel = madeByKernel;
        this.kernel = kernel;
        this.sounds = sounds;
    }

    List<Object> of(Object sound, String name) {
        List<Object> nasties = new ArrayList<>();
        switch (sound) {
            case null -> { }
            case Double ignored -> {
                for (double number : NUMBERS) {
                    nasties.add(number);
                }
            }
            case Integer ignored -> {
                for (int number : WHOLE) {
                    nasties.add(number);
                }
            }
            case Long ignored -> {
                for (int number : name.toLowerCase(Locale.ROOT).contains("seed") ? new int[0] : WHOLE) {
                    nasties.add((long) number);
                }
                nasties.add(Long.MAX_VALUE);
                nasties.add(Long.MIN_VALUE);
            }
            case OptionalDouble ignored -> of(0.5, name).forEach(
                    value -> nasties.add(OptionalDouble.of((Double) value)));
            case OptionalInt ignored -> of(1, name).forEach(value -> nasties.add(OptionalInt.of((Integer) value)));
            case Optional<?> maybe -> maybe.ifPresent(
                    value -> of(value, name).forEach(nasty -> nasties.add(Optional.of(nasty))));
            case List<?> list -> {
                nasties.add(List.of());
                int middle = list.size() / 2;
                of(list.isEmpty() ? null : list.get(middle), name).forEach(nasty -> {
                    List<Object> copy = new ArrayList<>(list);
                    copy.set(middle, nasty);
                    nasties.add(Collections.unmodifiableList(copy));
                });
            }
            case Set<?> set -> set.stream().findFirst().ifPresent(
                    first -> of(first, name).forEach(nasty -> nasties.add(Set.of(nasty))));
            case Map<?, ?> map -> map.entrySet().stream().findFirst().ifPresent(first -> of(first.getValue(), name)
                    .forEach(nasty -> nasties.add(Map.of(first.getKey(), nasty))));
            default -> {
                if (sound.getClass().isArray()) {
                    ofArray(sound, name, nasties);
                } else if (kernel.contains(sound.getClass()) && sound.getClass().isRecord()) {
                    nasties.addAll(accepted(sound.getClass()));
                }
            }
        }
        return nasties;
    }

    private void ofArray(Object array, String name, List<Object> nasties) {
        nasties.add(Array.newInstance(array.getClass().getComponentType(), 0));
        int length = Array.getLength(array);
        if (length > 0) {
            for (Object nasty : of(Array.get(array, length / 2), name)) {
                Object copy = Array.newInstance(array.getClass().getComponentType(), length);
                System.arraycopy(array, 0, copy, 0, length);
                Array.set(copy, length / 2, nasty);
                nasties.add(copy);
            }
        }
    }

    /** Records with a nasty number that the constructor has let in, such as a roof as large as a continent. */
    private List<Object> accepted(Class<?> type) {
        List<Object> known = accepted.get(type);
        if (known != null) {
            return known;
        }
        accepted.put(type, List.of()); // a record in itself
        List<Object> found = new ArrayList<>();
        if (kernel.isInput(type) && !madeByKernel.contains(type)) {
            for (Constructor<?> constructor : KernelClasses.constructors(type)) {
                Sounds.Call call = sounds.call(constructor);
                for (int place = 0; call != null && place < call.arguments().length; place++) {
                    for (Object nasty : of(call.arguments()[place], constructor.getParameters()[place].getName())) {
                        Object[] arguments = call.arguments().clone();
                        arguments[place] = nasty;
                        try {
                            found.add(Sounds.invoke(constructor, null, arguments));
                        } catch (InvocationTargetException e) {
                            // refused, as its own test checks
                        }
                    }
                }
            }
        }
        Collections.shuffle(found, new java.util.Random(1));
        accepted.put(type, List.copyOf(found.subList(0, Math.min(KEPT, found.size()))));
        return accepted.get(type);
    }
}
