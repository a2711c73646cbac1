package org.roofspring.calc;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;

/**
 * Something the reader must know before acting on an answer.
 *
 * @param code      stable, dotted, lower case, such as {@code tank.raised-load}
 * @param severity  how bad
 * @param elementId the element it is about, or null for the site
 * @param pattern   text with {0}, {1}... for the arguments ({@link MessageFormat} syntax)
 * @param arguments {@link Quantity} or {@link String}; quantities are written in the reader's units when shown
 * @param askWhom   who must be asked where someone can be hurt (local code, licensed practice), else empty
 * @param source    why it is so
 */
public record Caution(String code, Severity severity, String elementId, String pattern, List<Object> arguments,
        String askWhom, Source source) {

    /** How bad. DANGER where someone can be hurt or made ill. */
    public enum Severity {
        INFO, WARNING, DANGER;

        /** As on the command line: {@code info}, {@code warning}, {@code danger}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Caution {
        Objects.requireNonNull(code);
        Objects.requireNonNull(severity);
        Objects.requireNonNull(pattern);
        arguments = List.copyOf(arguments);
        Objects.requireNonNull(askWhom);
        Objects.requireNonNull(source);
        if (severity == Severity.DANGER && askWhom.isBlank()) {
            throw new IllegalArgumentException("the danger " + code + " must say who is to be asked");
        }
    }

    /** The text in the reader's units, ending with whom to ask. */
    public String text(QuantityFormat format) {
        Object[] words = arguments.stream().map(a -> a instanceof Quantity q ? format.format(q) : a.toString()).toArray();
        String text = new MessageFormat(pattern.replace("'", "''"), Locale.ROOT).format(words);
        return askWhom.isBlank() ? text : text + " " + askWhom;
    }
}
