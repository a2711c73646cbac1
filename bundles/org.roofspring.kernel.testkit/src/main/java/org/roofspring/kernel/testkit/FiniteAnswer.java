package org.roofspring.kernel.testkit;

import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/** Looks for a number that is not finite in an answer and all that can be asked of it. */
final class FiniteAnswer {
    private static final int DEPTH = 5;
    private static final int ELEMENTS = 400;

    private final KernelClasses kernel;
    private final Predicate<Executable> mayBeMissing;
    private final Set<Class<?>> unchecked;
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    FiniteAnswer(KernelClasses kernel, Predicate<Executable> mayBeMissing, Set<Class<?>> unchecked) {
        this.unchecked = unchecked;
        this.kernel = kernel;
        this.mayBeMissing = mayBeMissing;
    }

    /** Where the number that is not finite stands; null when there is none. */
    String fault(Executable entry, Object answer) {
        return fault(answer, "answer", mayBeMissing.test(entry), 0);
    }

    private String fault(Object value, String path, boolean missing, int depth) {
        return switch (value) {
            case null -> null;
            case Double number -> accepted(number, missing) ? null : path + " is " + number;
            case OptionalDouble maybe -> fault(maybe.orElse(0), path, missing, depth);
            case Optional<?> maybe -> fault(maybe.orElse(null), path, missing, depth);
            case double[] numbers -> array(numbers, path, missing);
            case Object[] array -> each(java.util.Arrays.asList(array), path, missing, depth);
            case Map<?, ?> map -> each(map.values(), path, missing, depth);
            case Collection<?> many -> each(many, path, missing, depth);
            default -> kernel.contains(value.getClass()) && !(value instanceof Enum) && depth < DEPTH
                    && !unchecked.contains(value.getClass()) && seen.add(value)
                    ? parts(value, path, depth) : null;
        };
    }

    private static boolean accepted(double number, boolean missing) {
        return Double.isFinite(number) || missing && Double.isNaN(number);
    }

    private static String array(double[] numbers, String path, boolean missing) {
        for (int i = 0; i < numbers.length; i++) {
            if (!accepted(numbers[i], missing)) {
                return path + "[" + i + "] is " + numbers[i];
            }
        }
        return null;
    }

    private String each(Collection<?> many, String path, boolean missing, int depth) {
        int index = 0;
        for (Object element : many) {
            String fault = index < ELEMENTS ? fault(element, path + "[" + index + "]", missing, depth + 1) : null;
            if (fault != null) {
                return fault;
            }
            index++;
        }
        return null;
    }

    private String parts(Object value, String path, int depth) {
        for (Method part : KernelClasses.methods(value.getClass())) {
            if (part.getParameterCount() == 0 && !Modifier.isStatic(part.getModifiers())) {
                String here = path + "." + part.getName();
                try {
                    String fault = fault(part.invoke(value), here, mayBeMissing.test(part), depth + 1);
                    if (fault != null) {
                        return fault;
                    }
                } catch (InvocationTargetException e) {
                    String fault = Refusal.fault(e.getCause());
                    if (fault != null) {
                        return here + " " + fault;
                    }
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException(part + " is public but cannot be called", e);
                }
            }
        }
        return null;
    }
}
