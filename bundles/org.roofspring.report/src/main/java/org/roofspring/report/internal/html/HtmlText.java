package org.roofspring.report.internal.html;

import java.nio.charset.StandardCharsets;

/** Texts as HTML wants them. */
final class HtmlText {
    private HtmlText() {
    }

    /** A text inside an element or a quoted attribute; characters that HTML forbids are left out. */
    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> {
                    if (allowed(c)) {
                        escaped.appendCodePoint(c);
                    }
                }
            }
        });
        return escaped.toString();
    }

    private static boolean allowed(int c) {
        boolean control = c < 0x20 && c != '\t' && c != '\n' || c >= 0x7f && c < 0xa0;
        boolean notACharacter = c >= 0xfdd0 && c <= 0xfdef || (c & 0xfffe) == 0xfffe;
        return !control && !notACharacter && !(c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    /** The part of an address that leads to an id in the same file. */
    static String fragment(String id) {
        StringBuilder encoded = new StringBuilder("#");
        for (byte b : id.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xff);
            if (c < 0x80 && (Character.isLetterOrDigit(c) || "-._~/@:".indexOf(c) >= 0)) {
                encoded.append(c);
            } else {
                encoded.append('%').append("%02X".formatted((int) c));
            }
        }
        return encoded.toString();
    }
}
