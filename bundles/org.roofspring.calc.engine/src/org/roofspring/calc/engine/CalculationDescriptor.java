package org.roofspring.calc.engine;

import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationInfo;

/**
 * Identity of a calculation and what it depends on, known without creating it. The components are those of
 * {@link CalculationInfo}; {@code provider} names the bundle it comes from.
 */
public record CalculationDescriptor(String id, String version, String title, List<String> reads, List<String> requires,
        List<String> uses, int deadlineS, String provider) {

    public CalculationDescriptor {
        Objects.requireNonNull(id);
        Objects.requireNonNull(version);
        Objects.requireNonNull(title);
        reads = List.copyOf(reads);
        requires = List.copyOf(requires);
        uses = List.copyOf(uses);
        if (!id.matches("[a-z][a-z0-9]*([.-][a-z0-9]+)*")) {
            throw new IllegalArgumentException("the calculation id \"" + id + "\" of " + provider
                    + " is not dotted lower case, such as storage.balance");
        }
        if (deadlineS < 1 || deadlineS > 3600) {
            throw new IllegalArgumentException("the deadline of " + id + " is " + deadlineS + " s; 1 to 3600 s is accepted");
        }
    }

    /** From the annotation on a class, where there is no service. */
    public static CalculationDescriptor of(Class<? extends Calculation> type) {
        CalculationInfo info = type.getAnnotation(CalculationInfo.class);
        if (info == null) {
            throw new IllegalArgumentException(type.getName() + " lacks @CalculationInfo");
        }
        return new CalculationDescriptor(info.id(), info.version(), info.title(), List.of(info.reads()),
                List.of(info.requires()), List.of(info.uses()), info.deadline(), type.getPackageName());
    }

    /**
     * From the properties of a service.
     *
     * @throws IllegalArgumentException with one sentence when a property is missing or unusable
     */
    static CalculationDescriptor of(Map<String, Object> properties, String provider) {
        return new CalculationDescriptor(text(properties, "id", provider), text(properties, "version", provider),
                text(properties, "title", provider), texts(properties, "reads"), texts(properties, "requires"),
                texts(properties, "uses"), properties.get(CalculationInfo.PREFIX_ + "deadline") instanceof Integer s ? s : 60,
                provider);
    }

    private static String text(Map<String, Object> properties, String name, String provider) {
        if (properties.get(CalculationInfo.PREFIX_ + name) instanceof String text && !text.isBlank()) {
            return text;
        }
        throw new IllegalArgumentException("a calculation of " + provider + " lacks the service property "
                + CalculationInfo.PREFIX_ + name);
    }

    private static List<String> texts(Map<String, Object> properties, String name) {
        return switch (properties.get(CalculationInfo.PREFIX_ + name)) {
            case String[] texts -> List.of(texts);
            case String text -> List.of(text);
            case null, default -> List.of();
        };
    }

    /** All calculations whose findings it may read. */
    public List<String> dependencies() {
        return java.util.stream.Stream.concat(requires.stream(), uses.stream()).distinct().toList();
    }
}
