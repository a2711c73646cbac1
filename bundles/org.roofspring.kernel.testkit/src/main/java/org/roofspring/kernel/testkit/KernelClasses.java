package org.roofspring.kernel.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The public classes of a kernel, read from the folder that they were compiled to, and their public entries. */
final class KernelClasses {
    private final List<Class<?>> types;
    private final Set<Class<?>> inputs = new HashSet<>();

    private KernelClasses(List<Class<?>> types) {
        this.types = types;
        types.forEach(type -> entries(type).forEach(entry -> {
            for (Type parameter : entry.getGenericParameterTypes()) {
                addInput(parameter);
            }
        }));
    }

    /** Everything compiled together with this class, but for packages that are internal. */
    static KernelClasses besides(Class<?> anchor) {
        Path root = root(anchor);
        try (Stream<Path> files = Files.walk(root)) {
            List<Class<?>> types = new ArrayList<>();
            for (Path file : files.filter(path -> path.toString().endsWith(".class")).sorted().toList()) {
                String name = root.relativize(file).toString().replace('\\', '/').replace('/', '.');
                if (!name.contains(".internal.") && !name.endsWith("-info.class")) {
                    Class<?> type = Class.forName(name.substring(0, name.length() - ".class".length()), true,
                            anchor.getClassLoader());
                    if (isPublic(type) && !Throwable.class.isAssignableFrom(type)) {
                        types.add(type);
                    }
                }
            }
            return new KernelClasses(types);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("a class file without its class", e);
        }
    }

    private static Path root(Class<?> anchor) {
        try {
            return Path.of(anchor.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the place of " + anchor + " is no file", e);
        }
    }

    private static boolean isPublic(Class<?> type) {
        for (Class<?> outer = type; outer != null; outer = outer.getEnclosingClass()) {
            if (!Modifier.isPublic(outer.getModifiers()) && !outer.isInterface()) {
                return false;
            }
        }
        return !type.isAnonymousClass() && !type.isLocalClass();
    }

    List<Class<?>> types() {
        return types;
    }

    boolean contains(Class<?> type) {
        return types.contains(type);
    }

    /** Kinds that could stand for this one. */
    List<Class<?>> kindsOf(Class<?> type) {
        return types.stream().filter(type::isAssignableFrom).filter(kind -> !Modifier.isAbstract(kind.getModifiers()))
                .toList();
    }

    /**
     * Whether people outside the kernel hand this type in. A record that is only ever given out holds what the kernel
     * found, and its constructor is not a way in.
     */
    boolean isInput(Class<?> type) {
        return inputs.contains(type);
    }

    private void addInput(Type type) {
        for (Class<?> named : classesIn(type)) {
            if (types.contains(named) && inputs.add(named)) {
                kindsOf(named).forEach(this::addInput);
                if (named.isRecord()) {
                    for (RecordComponent component : named.getRecordComponents()) {
                        addInput(component.getGenericType());
                    }
                }
            }
        }
    }

    static Set<Class<?>> classesIn(Type type) {
        Set<Class<?>> found = new HashSet<>();
        switch (type) {
            case Class<?> plain -> found.add(plain.isArray() ? plain.getComponentType() : plain);
            case ParameterizedType generic -> {
                found.addAll(classesIn(generic.getRawType()));
                for (Type argument : generic.getActualTypeArguments()) {
                    found.addAll(classesIn(argument));
                }
            }
            case WildcardType wildcard -> found.addAll(classesIn(wildcard.getUpperBounds()[0]));
            default -> {
                // a type variable names no class
            }
        }
        return found;
    }

    /** Public static methods, instance methods, and constructors other than of records, which follow from use. */
    private static Stream<Executable> entries(Class<?> type) {
        Stream<Executable> constructors = type.isRecord() ? Stream.of() : Arrays.stream(type.getConstructors());
        return Stream.concat(constructors, methods(type).stream());
    }

    /** Public methods that the class itself has, in an order that is the same on every machine. */
    static List<Method> methods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic()
                        && !isOrdinary(type, method))
                .sorted(Comparator.comparing(Method::getName).thenComparing(Method::toGenericString)).toList();
    }

    private static boolean isOrdinary(Class<?> type, Method method) {
        return switch (method.getName()) {
            case "equals" -> Arrays.equals(method.getParameterTypes(), new Class<?>[] {Object.class});
            case "hashCode", "toString" -> method.getParameterCount() == 0;
            case "valueOf", "values" -> type.isEnum();
            case "compareTo" -> true;
            default -> false;
        };
    }

    static List<Constructor<?>> constructors(Class<?> type) {
        return Modifier.isAbstract(type.getModifiers()) || type.isEnum() ? List.of()
                : Arrays.stream(type.getConstructors()).sorted(Comparator.comparing(Constructor::toGenericString))
                        .toList();
    }
}
