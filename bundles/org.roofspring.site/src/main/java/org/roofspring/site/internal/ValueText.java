package org.roofspring.site.internal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;

/**
 * Turns values of the model's data types into text and back. The annotation of the data type says how: a quantity of
 * one dimension, or a day or time. An empty text is no value.
 */
public final class ValueText implements EDataType.Internal.ConversionDelegate {
    /** Source of the annotation of data types that are quantities; details {@code dimension} and {@code unit}. */
    public static final String QUANTITY = "http://www.roofspring.org/quantity";
    /** Source of the annotation of data types that are days or times; detail {@code kind}. */
    public static final String TIME = "http://www.roofspring.org/time";

    private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("MM-dd");
    private static final Map<String, ValueText> TIMES = Map.of(
            "DATE", new ValueText(time("a day such as 2024-03-31", LocalDate::parse), Object::toString),
            "DAY_OF_YEAR", new ValueText(time("a day of the year such as 03-31 (month, day)",
                    text -> MonthDay.parse(text, MONTH_DAY)), value -> MONTH_DAY.format((MonthDay) value)),
            "TIME_OF_DAY", new ValueText(time("a time of day such as 10:30", LocalTime::parse), Object::toString));

    private final Function<String, Object> reader;
    private final Function<Object, String> writer;

    private ValueText(Function<String, Object> reader, Function<Object, String> writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /**
     * The conversion of a data type.
     *
     * @throws IllegalArgumentException when the type carries no annotation that says how
     */
    public static ValueText of(EDataType type) {
        String kind = EcoreUtil.getAnnotation(type, TIME, "kind");
        if (kind != null) {
            return TIMES.get(kind);
        }
        if (type.getEAnnotation(QUANTITY) == null) {
            throw new IllegalArgumentException(type.getName() + " is neither a quantity nor a time");
        }
        String dimension = EcoreUtil.getAnnotation(type, QUANTITY, "dimension");
        return dimension == null ? new ValueText(Quantity::valueOf, Object::toString)
                : new ValueText(text -> Quantity.parse(text, Dimension.valueOf(dimension)), Object::toString);
    }

    @Override
    public Object createFromString(String literal) {
        return literal == null || literal.isBlank() ? null : reader.apply(literal.trim());
    }

    @Override
    public String convertToString(Object value) {
        return value == null ? null : writer.apply(value);
    }

    private static Function<String, Object> time(String accepted, Function<String, Object> parser) {
        return text -> {
            try {
                return parser.apply(text);
            } catch (DateTimeException e) {
                throw new IllegalArgumentException("\"" + text + "\" is not " + accepted, e);
            }
        };
    }
}
