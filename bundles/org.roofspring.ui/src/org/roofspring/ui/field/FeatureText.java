package org.roofspring.ui.field;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.FeatureFacts;

/**
 * How the values of one attribute are written for people and read back from what they type. A quantity is shown in the
 * preferred unit; any unit of its dimension is read, and a number alone is taken in the unit shown, unless it is a
 * share, where 0.8 must not be taken for 0.8 %.
 */
public final class FeatureText {
    private static final int DIGITS = 6;
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([+-]?[\\d.]+(?:[eE][+-]?\\d+)?)\\s*(.*)");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d)[ \u00a0\u202f](?=\\d{3}(?!\\d))");

    private final EAttribute attribute;
    private final FeatureFacts facts;
    private final QuantityFormat format;
    private final UnitSystem system;
    private final String currency;

    private FeatureText(EAttribute attribute, UnitSystem system, String currency) {
        this.attribute = attribute;
        this.facts = FeatureFacts.of(attribute);
        this.system = system;
        this.currency = currency;
        this.format = new QuantityFormat(system, currency, DIGITS);
    }

    /** In the units in which a site is shown. */
    public static FeatureText of(EAttribute attribute, Site site) {
        return of(attribute, DisplayUnits.system(site), DisplayUnits.currency(site));
    }

    /** In the units of a system, with amounts of money in a currency. */
    public static FeatureText of(EAttribute attribute, UnitSystem system, String currency) {
        return new FeatureText(attribute, system, currency);
    }

    /** The unit in which values are shown; empty for what is no quantity of one dimension, and for shares. */
    public Optional<Unit> unit() {
        return facts.usualUnit().map(system::preferred).filter(unit -> unit.dimension() != Dimension.RATIO);
    }

    /** The unit as people write it, with raised digits and the site's currency. */
    public Optional<String> unitSymbol() {
        return unit().map(format::symbol).filter(symbol -> !symbol.isEmpty());
    }

    /** The value of an object as it is shown; empty where none was given. */
    public String of(EObject object) {
        Object value = object.eGet(attribute);
        boolean zeroForNone = value instanceof Number && attribute.getDefaultValueLiteral() == null;
        return zeroForNone && !object.eIsSet(attribute) ? "" : write(value);
    }

    /** A value as it is shown; empty for null. */
    public String write(Object value) {
        return switch (value) {
            case null -> "";
            case Quantity quantity -> write(quantity);
            case Collection<?> values -> values.stream().map(this::write).collect(Collectors.joining(", "));
            case Enumerator literal -> Words.choice(literal);
            default -> EcoreUtil.convertToString(attribute.getEAttributeType(), value);
        };
    }

    private String write(Quantity quantity) {
        Optional<Unit> unit = unit();
        boolean shown = unit.isPresent() && quantity.dimension() == unit.get().dimension();
        boolean percent = facts.usualUnit().filter(usual -> usual == Units.PERCENT).isPresent();
        return format.format(shown ? quantity.as(unit.get()) : percent ? quantity.as(Units.PERCENT) : quantity);
    }

    /** What calculations take while no value is given, such as "80 %". */
    public Optional<String> assumed() {
        if (facts.defaultValue().isPresent()) {
            return facts.defaultValue().map(this::write);
        }
        return Optional.empty();
    }

    /** Where that default comes from. */
    public Optional<String> assumedSource() {
        return facts.defaultSource();
    }

    /**
     * Reads what was typed; an empty text is no value.
     *
     * @return a value of the attribute's type, a list where it has many, or null
     * @throws IllegalArgumentException with one sentence: what is wrong and what is accepted
     */
    public Object read(String text) {
        String plain = text.strip();
        if (!attribute.isMany()) {
            return plain.isEmpty() ? null : readOne(plain);
        }
        List<Object> values = new ArrayList<>();
        for (String part : plain.split("[,;]")) {
            if (!part.isBlank()) {
                values.add(readOne(part.strip()));
            }
        }
        return values;
    }

    private Object readOne(String text) {
        EDataType type = attribute.getEAttributeType();
        if (FeatureFacts.isQuantity(attribute)) {
            Quantity quantity = facts.dimension().map(dimension -> Quantity.parse(unspoken(text, dimension), dimension))
                    .orElseGet(() -> Quantity.valueOf(unspoken(text, null)));
            refuse(quantity.toString(), facts.refusal(quantity));
            return quantity;
        }
        if (type instanceof EEnum choices) {
            return choice(choices, text);
        }
        Class<?> java = type.getInstanceClass();
        if (java == int.class || java == long.class || java == Integer.class || java == Long.class) {
            return whole(type, text);
        }
        if (java == String.class) {
            return words(text);
        }
        return EcoreUtil.createFromString(type, text);
    }

    /** Turns the signs of the screen back into those that are read: raised digits, minus, thousands, currency. */
    private String unspoken(String text, Dimension dimension) {
        String plain = THOUSANDS.matcher(text.replace('\u2212', '-')).replaceAll("").replace('\u00a0', ' ').replace('\u202f', ' ');
        Matcher matcher = NUMBER_AND_UNIT.matcher(plain);
        if (!matcher.matches()) {
            return plain;
        }
        String symbol = matcher.group(2).strip();
        if (symbol.isEmpty()) {
            return unit().map(unit -> matcher.group(1) + " " + unit.symbol()).orElse(plain);
        }
        for (Unit unit : Units.catalogue().values()) {
            if ((dimension == null || unit.dimension() == dimension) && symbol.equals(format.symbol(unit))) {
                return matcher.group(1) + " " + unit.symbol();
            }
        }
        return currency.isEmpty() ? plain : matcher.group(1) + " " + symbol.replace(currency, "cur");
    }

    private static Object choice(EEnum choices, String text) {
        for (EEnumLiteral literal : choices.getELiterals()) {
            Enumerator choice = literal.getInstance();
            if (text.equalsIgnoreCase(Words.choice(choice)) || text.equalsIgnoreCase(literal.getName())) {
                return choice;
            }
        }
        throw new IllegalArgumentException("\"" + text + "\" is none of the choices: " + choices.getELiterals().stream()
                .map(literal -> Words.choice(literal.getInstance())).collect(Collectors.joining(", ")));
    }

    private Object whole(EDataType type, String text) {
        String plain = THOUSANDS.matcher(text.replace('\u2212', '-')).replaceAll("");
        try {
            Number value = (Number) EcoreUtil.createFromString(type, plain);
            refuse(plain, facts.refusal(value.doubleValue()));
            return value;
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("\"" + text + "\" is not a whole number", e);
        }
    }

    private static String words(String text) {
        int bad = text.codePoints().filter(c -> c < 0x20 && c != '\n' && c != '\r' && c != '\t'
                || c >= 0xd800 && c <= 0xdfff || c == 0xfffe || c == 0xffff).findFirst().orElse(-1);
        if (bad >= 0) {
            throw new IllegalArgumentException(String.format("the character U+%04X cannot be kept in a site file", bad));
        }
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static void refuse(String value, Optional<String> refusal) {
        if (refusal.isPresent()) {
            throw new IllegalArgumentException(value + " " + refusal.get());
        }
    }
}
