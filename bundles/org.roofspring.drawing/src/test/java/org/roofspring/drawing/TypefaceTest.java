package org.roofspring.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.jupiter.api.Test;

/** Widths against the platform's own reader of the same font, which is independent of ours. */
class TypefaceTest {
    @ParameterizedTest
    @ValueSource(strings = { "", "Volume in all tanks [m\u00b3]", "12\u202f345.6 L/s",
            "\u221220 \u00b0C \u00b5g/L \u2264 \u03c0",
            "gen\u00fcgend \u00c5ngstr\u00f6m \u010d \u0416 \u03a9", "Il1|0O.,;" })
    void measuresLikeThePlatform(String text) throws Exception {
        for (Typeface typeface : Typeface.values()) {
            try (InputStream stream = typeface.open()) {
                // a size of a thousand, unhinted, so that the platform does not round to pixels
                Font font = Font.createFont(Font.TRUETYPE_FONT, stream).deriveFont(1000f);
                double expected = 0;
                for (char c : text.toCharArray()) {
                    expected += font.createGlyphVector(new FontRenderContext(null, true, true),
                            String.valueOf(c)).getGlyphMetrics(0).getAdvanceX();
                }
                assertEquals(expected, typeface.width(text, 1000), 0.5 * Math.max(1, text.length()));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void hasTheSignsThatDocumentsNeed(Typeface typeface) {
        "\u202f\u00a0\u2212\u00b2\u00b3\u00b0\u00b5\u00b7\u2264\u2265\u2013\u2026\u2713\u2715".codePoints()
                .forEach(c -> assertTrue(typeface.has(c), () -> "U+" + Integer.toHexString(c)));
    }

    @Test
    void boldIsWider() {
        assertTrue(Typeface.BOLD.width("Caution", 10) > Typeface.REGULAR.width("Caution", 10));
    }

    @Test
    void theLicenceComesAlong() {
        assertNotNull(Typeface.class.getResource("internal/font/DejaVu-LICENSE.txt"));
    }
}
