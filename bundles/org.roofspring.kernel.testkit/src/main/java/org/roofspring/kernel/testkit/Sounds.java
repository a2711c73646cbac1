package org.roofspring.kernel.testkit;

import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;

/**
 * Finds sound arguments: values that an entry answers with. What a number is to mean is taken from its name; a type of
 * the kernel is made by its constants, constructors and factories, or by what else of the kernel gives one out.
 */
final class Sounds {
    private static final int TRIES = 400;
    private static final int KEPT = 6;
    private static final double[] ANY = {0.5, 1, 10, 0.05, 3, 100, 0, 1e-3, 1000, 1e-5, 1e5};

    private final KernelClasses kernel;
    private final List<Object> given;
    private final Map<Class<?>, List<Object>> made = new HashMap<>();
    private final Set<Class<?>> inProgress = new HashSet<>();
    private final BooleanSupplier cancelled;
    private final Map<String, List<Object[]>> told;

    Sounds(KernelClasses kernel, List<Object> given, Map<String, List<Object[]>> told, BooleanSupplier cancelled) {
        this.told = told;
        this.kernel = kernel;
        this.given = given;
        this.cancelled = cancelled;
    }

    /** A call that an entry answers: what it is called on, and with what. */
    record Call(Object target, Object[] arguments, Object answer) {
    }

    /** Finds arguments that the entry answers with; null when there are none among those tried. */
    Call call(Executable entry) {
        List<Object> targets = entry instanceof Method method && !Modifier.isStatic(method.getModifiers())
                ? of(entry.getDeclaringClass()) : Arrays.asList((Object) null);
        List<List<Object>> choices = new ArrayList<>();
        Parameter[] parameters = entry.getParameters();
        Type[] types = entry.getGenericParameterTypes();
        for (int i = 0; i < parameters.length; i++) {
            choices.add(of(types.length == parameters.length ? types[i] : parameters[i].getType(),
                    parameters[i].getName()));
        }
        if (targets.isEmpty()) {
            return null;
        }
        for (Object[] hint : hints(entry)) {
            Call call = attempt(entry, targets.get(0), hint);
            if (call != null) {
                return call;
            }
        }
        if (choices.stream().anyMatch(List::isEmpty)) {
            return null;
        }
        Random random = new Random(entry.toGenericString().hashCode());
        for (int attempt = 0; attempt < TRIES; attempt++) {
            Object target = targets.get(attempt == 0 ? 0 : random.nextInt(targets.size()));
            Object[] arguments = new Object[choices.size()];
            for (int i = 0; i < arguments.length; i++) {
                List<Object> choice = choices.get(i);
                int bound = attempt < 60 ? Math.min(choice.size(), 3) : choice.size();
                arguments[i] = choice.get(attempt == 0 ? 0 : random.nextInt(bound));
            }
            Call call = attempt(entry, target, arguments);
            if (call != null) {
                return call;
            }
            if (choices.isEmpty() && targets.size() == 1) {
                return null;
            }
        }
        return null;
    }

    /** The call when it is answered, else null: these do not go together; others may. */
    private static Call attempt(Executable entry, Object target, Object[] arguments) {
        try {
            Object answer = invoke(entry, target, arguments);
            boolean nothing = entry instanceof Method method && method.getReturnType() == void.class;
            return answer != null || nothing ? new Call(target, arguments, answer) : null;
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            return null;
        }
    }

    /** Arguments that were told, and what the samples of a record were made of. */
    private List<Object[]> hints(Executable entry) {
        List<Object[]> hints = new ArrayList<>(told.getOrDefault(NastyNumbers.name(entry), List.of()).stream()
                .filter(arguments -> arguments.length == entry.getParameterCount()).toList());
        if (entry instanceof Constructor<?> constructor && constructor.getDeclaringClass().isRecord()) {
            RecordComponent[] components = constructor.getDeclaringClass().getRecordComponents();
            given.stream().filter(value -> value.getClass() == constructor.getDeclaringClass()
                    && components.length == constructor.getParameterCount()).forEach(value -> hints.add(
                            Arrays.stream(components).map(component -> part(component, value)).toArray()));
        }
        return hints;
    }

    private static Object part(RecordComponent component, Object value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    static Object invoke(Executable entry, Object target, Object[] arguments) throws InvocationTargetException {
        try {
            return entry instanceof Constructor<?> constructor ? constructor.newInstance(arguments)
                    : ((Method) entry).invoke(target, arguments);
        } catch (IllegalAccessException | InstantiationException e) {
            throw new IllegalStateException(entry + " is public but cannot be called", e);
        }
    }

    List<Object> of(Type type, String name) {
        return switch (type) {
            case Class<?> plain when plain.isArray() -> arrays(plain.getComponentType(), name);
            case Class<?> plain -> ofPlain(plain, name);
            case ParameterizedType generic -> ofGeneric(generic, name);
            case WildcardType wildcard -> of(wildcard.getUpperBounds()[0], name);
            default -> List.of();
        };
    }

    private List<Object> ofPlain(Class<?> type, String name) {
        if (type == double.class || type == Double.class) {
            return Arrays.stream(numbers(name)).<Object>mapToObj(value -> value).toList();
        }
        if (type == int.class || type == Integer.class) {
            return name.toLowerCase(Locale.ROOT).contains("year") ? List.of(2001, 3, 1, 20, 10)
                    : List.of(3, 1, 2, 10, 0, 30, 12, 365, 1000, 20000);
        }
        if (type == long.class || type == Long.class) {
            return List.of(3L, 1L, 86400L, 0L, 1000000000L);
        }
        if (type == boolean.class || type == Boolean.class) {
            return List.of(true, false);
        }
        if (type == char.class || type == Character.class) {
            return List.of(',', ';');
        }
        if (type == String.class || type == CharSequence.class || type == Object.class) {
            return List.of("x", "1 m", "m", "a b");
        }
        return foreign(type).map(List::of).orElseGet(() -> of(type));
    }

    private Optional<Object> foreign(Class<?> type) {
        if (type == BooleanSupplier.class) {
            return Optional.of(cancelled);
        }
        List<Object> known = List.of(LocalDate.of(2001, 3, 1), YearMonth.of(2001, 3), MonthDay.of(3, 1), Month.MARCH,
                DayOfWeek.MONDAY, OptionalDouble.of(0.5), OptionalInt.of(3), Locale.ROOT, Duration.ofHours(1));
        if (type == RandomGenerator.class || type == Random.class) {
            return Optional.of(new Random(1));
        }
        if (type == DoubleUnaryOperator.class) {
            return Optional.of((DoubleUnaryOperator) x -> x);
        }
        if (type == DoubleBinaryOperator.class) {
            return Optional.of((DoubleBinaryOperator) Math::max);
        }
        if (type == ToDoubleFunction.class) {
            return Optional.of((ToDoubleFunction<Object>) any -> 1);
        }
        if (type == IntToDoubleFunction.class) {
            return Optional.of((IntToDoubleFunction) i -> i);
        }
        return known.stream().filter(value -> value.getClass() == type).findFirst();
    }

    private List<Object> ofGeneric(ParameterizedType generic, String name) {
        Class<?> raw = (Class<?>) generic.getRawType();
        if (foreign(raw).isPresent()) {
            return List.of(foreign(raw).get());
        }
        List<Object> first = of(generic.getActualTypeArguments()[0], name);
        if (first.isEmpty()) {
            return List.of();
        }
        if (raw == List.class || raw == Collection.class || raw == Iterable.class) {
            List<Object> lists = new ArrayList<>();
            if (first.get(0) instanceof Double) {
                lists.add(List.of(1.0, 2.0, 3.0, 5.0, 9.0));
                lists.add(List.of(0.0, 0.5, 1.0));
            }
            lists.add(List.of(first.get(0)));
            lists.add(List.copyOf(first.subList(0, Math.min(2, first.size()))));
            lists.add(List.copyOf(first));
            for (int length : new int[] {2, 12, 24, 7, 10}) {
                lists.add(repeated(first, length));
            }
            lists.add(List.of());
            return lists;
        }
        if (raw == Set.class) {
            return List.of(Set.of(first.get(0)), Set.of());
        }
        if (raw == Optional.class) {
            return List.of(Optional.of(first.get(0)), Optional.empty());
        }
        if (raw == Map.class) {
            List<Object> second = of(generic.getActualTypeArguments()[1], name);
            return second.isEmpty() ? List.of() : List.of(Map.of(first.get(0), second.get(0)), Map.of());
        }
        return List.of();
    }

    private static List<Object> repeated(List<Object> first, int length) {
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            list.add(first.get(i % first.size()));
        }
        return List.copyOf(list);
    }

    private List<Object> arrays(Class<?> component, String name) {
        List<Object> elements = component.isArray() ? arrays(component.getComponentType(), name)
                : ofPlain(component, name);
        List<Object> arrays = new ArrayList<>();
        for (int length : elements.isEmpty() ? new int[0] : new int[] {3, 12, 365, 24, 31, 7, 1, 730, 2, 0}) {
            Object array = Array.newInstance(component, length);
            for (int i = 0; i < length; i++) {
                Array.set(array, i, elements.get(component == double.class ? i % 2 : 0));
            }
            arrays.add(array);
        }
        return arrays;
    }

    private static double[] numbers(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        Map<String, double[]> meanings = Map.of("flow", new double[] {1e-3, 1e-4}, "temperature", new double[] {20, 5},
                "area", new double[] {50, 1e-3, 2}, "volume", new double[] {5, 0.1},
                "duration", new double[] {3600, 60},
                "diameter", new double[] {0.05, 0.1}, "pressure", new double[] {1e5, 3e5},
                "head", new double[] {10, 2});
        double[] first = meanings.entrySet().stream().filter(entry -> lower.contains(entry.getKey()))
                .map(Map.Entry::getValue).findFirst().orElse(new double[0]);
        double[] all = Arrays.copyOf(first, first.length + ANY.length);
        System.arraycopy(ANY, 0, all, first.length, ANY.length);
        return all;
    }

    /** Some values of a type of the kernel. */
    List<Object> of(Class<?> type) {
        List<Object> known = made.get(type);
        if (known != null) {
            return known;
        }
        if (!kernel.contains(type) || !inProgress.add(type)) {
            return given.stream().filter(type::isInstance).toList();
        }
        Set<Object> values = new java.util.LinkedHashSet<>();
        given.stream().filter(type::isInstance).forEach(values::add);
        if (type.isEnum()) {
            values.addAll(Arrays.asList(type.getEnumConstants()));
        }
        constants(type, values);
        for (Class<?> kind : kernel.kindsOf(type)) {
            if (kind != type) {
                values.addAll(of(kind).subList(0, Math.min(2, of(kind).size())));
            }
        }
        build(type, values);
        inProgress.remove(type);
        List<Object> found = values.stream().limit(type.isEnum() ? values.size() : KEPT).toList();
        if (!found.isEmpty() || inProgress.isEmpty()) {
            made.put(type, found);
        }
        return found;
    }

    private void build(Class<?> type, Set<Object> values) {
        for (Executable maker : KernelClasses.constructors(type)) {
            add(maker, values);
        }
        for (Method maker : KernelClasses.methods(type)) {
            if (Modifier.isStatic(maker.getModifiers()) && gives(maker, type)) {
                add(maker, values);
            }
        }
        for (Class<?> other : values.isEmpty() ? kernel.types() : List.<Class<?>>of()) {
            for (Method maker : KernelClasses.methods(other)) {
                if (values.isEmpty() && other != type && gives(maker, type)) {
                    add(maker, values);
                }
            }
        }
    }

    private static boolean gives(Method maker, Class<?> type) {
        return KernelClasses.classesIn(maker.getGenericReturnType()).contains(type);
    }

    private void add(Executable maker, Set<Object> values) {
        if (values.size() >= KEPT) {
            return;
        }
        Call call = call(maker);
        if (call != null) {
            switch (call.answer()) {
                case Optional<?> maybe -> maybe.ifPresent(values::add);
                case Collection<?> many -> many.stream().limit(KEPT).forEach(values::add);
                case Map<?, ?> map -> map.values().stream().limit(KEPT).forEach(values::add);
                default -> values.add(call.answer());
            }
            Class<?> wanted = maker instanceof Constructor<?> constructor ? constructor.getDeclaringClass() : null;
            values.removeIf(value -> wanted != null && !wanted.isInstance(value));
        }
    }

    private static void constants(Class<?> type, Set<Object> values) {
        for (Field field : type.getFields()) {
            if (Modifier.isStatic(field.getModifiers()) && type.isAssignableFrom(field.getType())) {
                try {
                    values.add(field.get(null));
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException(field + " is public but cannot be read", e);
                }
            }
        }
    }
}
