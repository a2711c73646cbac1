package org.roofspring.ui.parts.workings;

import java.util.Locale;

/** Small changes of text for labels. */
final class Texts {
    private Texts() {
    }

    /** A label takes an ampersand for a mnemonic unless it is doubled. */
    static String plain(String text) {
        return text.replace("&", "&&");
    }

    static String capitalised(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** As many no-break spaces as the text is long, so that equals signs stand below each other. */
    static String padding(String text) {
        return "\u00a0".repeat(text.length());
    }
}
