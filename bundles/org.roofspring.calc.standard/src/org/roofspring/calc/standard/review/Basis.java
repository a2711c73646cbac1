package org.roofspring.calc.standard.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Element;
import org.roofspring.site.snapshot.Fingerprint;

/**
 * What a decision rests on: features of the site with the values they had, one to a line, such as
 * {@code run-rising.length = 95 m}. It is kept with the decision; the decision stands while the site gives the same lines,
 * so that undoing a change restores it.
 *
 * @param lines each {@code element.feature = value}, no feature twice
 */
public record Basis(List<String> lines) {
    private static final String EQUALS = " = ";
    private static final String NOT_GIVEN = "not given";

    public Basis {
        lines = List.copyOf(lines);
    }

    /** Some features of an element; the rows of a table, such as the points of a curve, make a line each. */
    public static Basis of(Element element, EStructuralFeature... features) {
        List<String> lines = new ArrayList<>();
        for (EStructuralFeature feature : features) {
            String name = element.getId() + "." + feature.getName();
            if (feature instanceof EReference reference && reference.isContainment() && feature.isMany()) {
                List<?> rows = (List<?>) element.eGet(feature);
                for (int i = 0; i < rows.size(); i++) {
                    lines.add(name + " " + (i + 1) + EQUALS + single(feature, rows.get(i)));
                }
            } else {
                lines.add(name + EQUALS + value(element, feature));
            }
        }
        return new Basis(lines);
    }

    /** This and another; a feature that both name counts once. */
    public Basis and(Basis other) {
        List<String> all = new ArrayList<>(lines);
        other.lines.stream().filter(line -> !all.contains(line)).forEach(all::add);
        return new Basis(all);
    }

    /** Equal where all lines are equal. */
    public String fingerprint() {
        return Fingerprint.of(lines);
    }

    /**
     * What differs from an earlier basis, in sentences without a full stop.
     *
     * @param before lines that were kept with a decision
     * @param nameOf what people call the element with an identifier
     */
    public List<String> changesSince(Collection<String> before, UnaryOperator<String> nameOf) {
        Map<String, String> then = parsed(before);
        Map<String, String> now = parsed(lines);
        List<String> changes = new ArrayList<>();
        then.forEach((feature, value) -> {
            if (!now.containsKey(feature)) {
                changes.add(words(feature, nameOf) + " no longer belongs to it");
            } else if (!now.get(feature).equals(value)) {
                changes.add(words(feature, nameOf) + " was " + value + " and is " + now.get(feature));
            }
        });
        now.keySet().stream().filter(feature -> !then.containsKey(feature))
                .forEach(feature -> changes.add(words(feature, nameOf) + " is new"));
        return changes;
    }

    /** {@code run-rising.agedRoughness} as "aged roughness of Rising main". */
    private static String words(String feature, UnaryOperator<String> nameOf) {
        int dot = feature.lastIndexOf('.');
        String words = feature.substring(dot + 1).replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return dot < 0 ? words : words + " of " + nameOf.apply(feature.substring(0, dot));
    }

    private static Map<String, String> parsed(Collection<String> lines) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : lines) {
            int at = line.indexOf(EQUALS);
            values.put(at < 0 ? line : line.substring(0, at), at < 0 ? "" : line.substring(at + EQUALS.length()));
        }
        return values;
    }

    private static String value(EObject object, EStructuralFeature feature) {
        Object value = object.eGet(feature);
        if (value == null || value instanceof Collection<?> many && many.isEmpty()) {
            return NOT_GIVEN;
        }
        return value instanceof Collection<?> many
                ? many.stream().map(one -> single(feature, one)).collect(Collectors.joining("; ")) : single(feature, value);
    }

    private static String single(EStructuralFeature feature, Object value) {
        if (feature instanceof EAttribute attribute) {
            return EcoreUtil.convertToString(attribute.getEAttributeType(), value).replaceAll("\\s+", " ");
        }
        if (!((EReference) feature).isContainment()) {
            return String.valueOf(((Element) value).getId());
        }
        EObject row = (EObject) value;
        return row.eClass().getEAllStructuralFeatures().stream().filter(row::eIsSet)
                .map(part -> part.getName() + " " + value(row, part)).collect(Collectors.joining(", "));
    }
}
