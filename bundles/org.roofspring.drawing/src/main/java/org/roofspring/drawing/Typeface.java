package org.roofspring.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

import org.roofspring.drawing.internal.TrueTypeWidths;

/**
 * The font that drawings and documents are set in: DejaVu Sans Condensed, which comes along, so that a text is as
 * wide on
 * every machine. Its licence lies beside it in this bundle.
 */
public enum Typeface {
    REGULAR("DejaVuSansCondensed.ttf"), BOLD("DejaVuSansCondensed-Bold.ttf");

    private final String file;
    private volatile TrueTypeWidths widths;

    Typeface(String file) {
        this.file = file;
    }

    /** The font file (TrueType); to be closed by the caller. */
    public InputStream open() {
        InputStream stream = Typeface.class.getResourceAsStream("internal/font/" + file);
        if (stream == null) {
            throw new IllegalStateException("the font " + file + " is missing from the drawing bundle");
        }
        return stream;
    }

    /** Width of a text in points at a size in points. */
    public double width(String text, double size) {
        return widths().width(text) * size;
    }

    /** Whether the font has a sign for a character. */
    public boolean has(int codePoint) {
        return widths().has(codePoint);
    }

    private TrueTypeWidths widths() {
        TrueTypeWidths known = widths;
        if (known == null) {
            try (InputStream stream = open()) {
                known = TrueTypeWidths.read(stream.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            widths = known;
        }
        return known;
    }
}
