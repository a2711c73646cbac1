package org.roofspring.report.internal.build;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.ValueWords;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Unit;
import org.roofspring.report.Block;
import org.roofspring.site.Element;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Values, elements and features of one site in the words of its report. */
final class Words {
    private static final int DIGITS = 4;
    private static final Map<String, String> ABBREVIATIONS = Map.of("npsh", "NPSH", "uv", "UV", "ph", "pH");

    private final SiteSnapshot snapshot;
    private final UnitSystem units;
    private final QuantityFormat format;

    Words(SiteSnapshot snapshot, UnitSystem units) {
        this.snapshot = snapshot;
        this.units = units;
        Site site = snapshot.site();
        this.format = new QuantityFormat(units, site.getCurrency() == null ? "cur" : site.getCurrency(), DIGITS);
    }

    QuantityFormat format() {
        return format;
    }

    /** A number with its unit. */
    String of(Quantity quantity) {
        return format.format(quantity);
    }

    /** A single value; series and tables by their size. */
    String of(FindingValue value) {
        return ValueWords.of(value, format);
    }

    /** A value of an attribute, of a reference or of a table's cell; empty for none. */
    String of(Object value) {
        return switch (value) {
            case null -> "";
            case Quantity quantity -> of(quantity);
            case FindingValue finding -> of(finding);
            case Boolean flag -> ValueWords.yesNo(flag);
            case Enumerator literal -> literal.getLiteral().equals("unstated") ? "" : spaced(literal.getLiteral());
            case Collection<?> many -> many.stream().map(this::of).collect(Collectors.joining(", "));
            case Element element -> name(element);
            case EObject row -> spaced(row.eClass().getName());
            case Double number -> format.number(number);
            default -> value.toString();
        };
    }

    /** The unit that a quantity is shown in. */
    Unit shownUnit(Quantity quantity) {
        return units.preferred(quantity.unit());
    }

    String symbol(Unit unit) {
        return format.symbol(unit);
    }

    /** The number alone, in the unit that is shown in the head of its column. */
    String number(Quantity quantity) {
        return format.number(quantity.as(shownUnit(quantity)).value());
    }

    /** What people call an element, with what holds it where the name alone says too little. */
    String name(Element element) {
        if (element instanceof NamedElement named && named.getName() != null && !named.getName().isBlank()) {
            boolean bare = named.getName().indexOf(' ') < 0 && named.eContainer() instanceof NamedElement
                    && !(named.eContainer() instanceof Site);
            return bare ? name((Element) named.eContainer()) + ", " + lowered(named.getName()) : named.getName();
        }
        return element.getId() == null ? spaced(element.eClass().getName()) : element.getId();
    }

    /** What people call the element with an identifier; empty for the whole site. */
    String name(String elementId) {
        return elementId == null ? "" : snapshot.find(elementId).map(this::name).orElse(elementId);
    }

    /** The element with an identifier, when it is of a type. */
    <T extends Element> boolean is(String elementId, Class<T> type) {
        return elementId != null && snapshot.find(elementId, type).isPresent();
    }

    /** Name of a feature or class as words, such as "Plan area" for planArea. */
    static String label(String name) {
        String words = spaced(name);
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String spaced(String name) {
        String words = name.replaceAll("(?<=[a-z0-9])(?=[A-Z])|(?<=[a-z])(?=[0-9])", " ").toLowerCase(Locale.ROOT);
        for (Map.Entry<String, String> abbreviation : ABBREVIATIONS.entrySet()) {
            words = words.replaceAll("\\b" + abbreviation.getKey() + "\\b", abbreviation.getValue());
        }
        return words;
    }

    private static String lowered(String text) {
        boolean abbreviation = text.length() > 1 && Character.isUpperCase(text.charAt(1));
        return abbreviation ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    static Block.Tone tone(FindingValue.Verdict.Level level) {
        return switch (level) {
            case GOOD -> Block.Tone.GOOD;
            case CONDITIONAL -> Block.Tone.CONDITIONAL;
            case BAD -> Block.Tone.BAD;
        };
    }
}
