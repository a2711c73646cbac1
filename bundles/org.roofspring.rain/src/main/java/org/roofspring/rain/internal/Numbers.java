package org.roofspring.rain.internal;

/**
 * Reads the numbers of one column, which keep one decimal mark throughout.
 *
 * <p>Stricter than the Java library: digits on both sides of the mark, since "12." is what a cut file leaves.
 */
final class Numbers {
    private char mark;

    /** With a known mark, or 0 where the first number with one decides. */
    Numbers(Character toldMark) {
        this.mark = toldMark == null ? 0 : toldMark;
    }

    /** The number, or NaN when the text is not one. */
    double parse(String text) {
        int length = text.length();
        int at = length > 0 && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        int digits = digitsFrom(text, at);
        if (digits == 0) {
            return Double.NaN;
        }
        at += digits;
        String plain = text;
        if (at < length && (text.charAt(at) == '.' || text.charAt(at) == ',')) {
            if (mark == 0) {
                mark = text.charAt(at);
            }
            int decimals = digitsFrom(text, at + 1);
            if (text.charAt(at) != mark || decimals == 0) {
                return Double.NaN;
            }
            plain = mark == ',' ? text.replace(',', '.') : text;
            at += 1 + decimals;
        }
        if (at < length && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            at += at < length && (text.charAt(at) == '-' || text.charAt(at) == '+') ? 1 : 0;
            digits = digitsFrom(text, at);
            at = digits == 0 ? -1 : at + digits;
        }
        return at == length ? Double.parseDouble(plain) : Double.NaN;
    }

    private static int digitsFrom(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - from;
    }

    /** Decimals of a number's text. */
    static int decimals(String text) {
        int at = Math.max(text.indexOf('.'), text.indexOf(','));
        return at < 0 ? 0 : digitsFrom(text, at + 1);
    }

    /** For a message: how the numbers of this column are written. */
    String accepted(String what) {
        return what + " such as " + (mark == ',' ? "12,5" : "12.5") + " is accepted";
    }
}
