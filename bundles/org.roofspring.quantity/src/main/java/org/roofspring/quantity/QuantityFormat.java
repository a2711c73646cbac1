package org.roofspring.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Objects;

/**
 * Writes quantities for people: a few significant digits, thousands set apart by a narrow space, the unit with raised
 * digits. Never used where a number is read back.
 */
public final class QuantityFormat {
    private static final char NARROW_SPACE = '\u202f';
    private final UnitSystem system;
    private final String currency;
    private final int digits;

    /**
     * @param system   units to show
     * @param currency code shown in place of the money unit, such as {@code KES}
     * @param digits   significant digits, 1 to 15
     */
    public QuantityFormat(UnitSystem system, String currency, int digits) {
        this.system = Objects.requireNonNull(system);
        this.currency = Objects.requireNonNull(currency);
        if (digits < 1 || digits > 15) {
            throw new QuantityException("1 to 15 significant digits can be shown, not " + digits);
        }
        this.digits = digits;
    }

    /** Metric units and four significant digits. */
    public static QuantityFormat metric() {
        return new QuantityFormat(UnitSystem.METRIC, "cur", 4);
    }

    /** Number and unit in the preferred unit of the system. */
    public String format(Quantity quantity) {
        Quantity shown = quantity.as(system.preferred(quantity.unit()));
        String unit = symbol(shown.unit());
        String number = number(shown.value());
        if (unit.isEmpty()) {
            return number;
        }
        return unit.equals("%") ? number + NARROW_SPACE + "%" : number + "\u00a0" + unit;
    }

    /**
     * A number alone: whole digits are never rounded away below 10^digits, and trailing zeros are dropped.
     *
     * @throws IllegalArgumentException when the value is infinite or not a number
     */
    public String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the value to show is " + value + "; a finite number is accepted");
        }
        if (value == 0) {
            return "0";
        }
        double magnitude = Math.abs(value);
        if (magnitude >= 1e12 || magnitude < 1e-5) {
            return new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP)).stripTrailingZeros()
                    .toString().replace("E+", "e").replace("E", "e");
        }
        int whole = magnitude < 1 ? 0 : (int) Math.floor(Math.log10(magnitude)) + 1;
        int leadingZeros = magnitude >= 1 ? 0 : (int) Math.floor(-Math.log10(magnitude));
        int decimals = Math.max(0, digits - whole + leadingZeros);
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setGroupingSeparator(NARROW_SPACE);
        symbols.setMinusSign('\u2212');
        DecimalFormat format = new DecimalFormat(decimals == 0 ? "#,##0" : "#,##0." + "#".repeat(decimals), symbols);
        format.setRoundingMode(RoundingMode.HALF_UP);
        format.setGroupingSize(3);
        return format.format(value);
    }

    /** The symbol with raised digits and the site's currency. */
    public String symbol(Unit unit) {
        if (unit == Units.ONE) {
            return "";
        }
        String text = unit.symbol().replace("cur", currency).replace("degC", "\u00b0C").replace("degF", "\u00b0F")
                .replace("um", "\u00b5m").replace("ug/", "\u00b5g/");
        return text.startsWith("1/") ? text.replace("1/", "/")
                : text.replaceAll("(?<=m)2", "\u00b2").replaceAll("(?<=m)3", "\u00b3").replaceAll("(?<=ft)2", "\u00b2")
                        .replace("mg.min", "mg\u00b7min");
    }
}
