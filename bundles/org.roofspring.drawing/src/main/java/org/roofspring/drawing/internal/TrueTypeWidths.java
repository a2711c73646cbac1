package org.roofspring.drawing.internal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * How far each character of a TrueType font moves on, read from its tables head, hhea, hmtx and cmap (formats 4 and 12;
 * ISO/IEC 14496-22, Open Font Format). Kerning is left out, as it is by those who draw the text.
 */
public final class TrueTypeWidths {
    private static final int DIRECT = 0x2100;

    private final ByteBuffer font;
    private final double unitsPerEm;
    private final int metrics;
    private final int hmtx;
    private final Map<Integer, Integer> glyphs = new HashMap<>();
    /** Width of the usual characters in em; -1 where the font has no sign. */
    private final double[] direct = new double[DIRECT];

    private TrueTypeWidths(byte[] bytes) {
        font = ByteBuffer.wrap(bytes);
        Map<String, Integer> tables = new HashMap<>();
        int count = unsigned(4);
        for (int i = 0; i < count; i++) {
            int entry = 12 + 16 * i;
            tables.put(new String(bytes, entry, 4, StandardCharsets.US_ASCII), font.getInt(entry + 8));
        }
        unitsPerEm = unsigned(table(tables, "head") + 18);
        metrics = unsigned(table(tables, "hhea") + 34);
        hmtx = table(tables, "hmtx");
        readCharacters(table(tables, "cmap"));
        for (int c = 0; c < DIRECT; c++) {
            Integer glyph = glyphs.get(c);
            direct[c] = glyph == null ? -1 : advance(glyph);
        }
    }

    /** @throws IllegalArgumentException when a table that is needed is missing */
    public static TrueTypeWidths read(byte[] font) {
        return new TrueTypeWidths(font);
    }

    private static int table(Map<String, Integer> tables, String name) {
        Integer offset = tables.get(name);
        if (offset == null) {
            throw new IllegalArgumentException("the font has no table " + name);
        }
        return offset;
    }

    private void readCharacters(int cmap) {
        int count = unsigned(cmap + 2);
        for (int i = 0; i < count; i++) {
            int subtable = cmap + font.getInt(cmap + 4 + 8 * i + 4);
            switch (unsigned(subtable)) {
                case 4 -> readFormat4(subtable);
                case 12 -> readFormat12(subtable);
                default -> { }
            }
        }
    }

    private void readFormat4(int at) {
        int segments = unsigned(at + 6) / 2;
        int ends = at + 14;
        int starts = ends + 2 * segments + 2;
        int deltas = starts + 2 * segments;
        int offsets = deltas + 2 * segments;
        for (int s = 0; s < segments; s++) {
            int end = unsigned(ends + 2 * s);
            int start = unsigned(starts + 2 * s);
            int delta = unsigned(deltas + 2 * s);
            int offset = unsigned(offsets + 2 * s);
            for (int c = start; c <= end && c != 0xffff; c++) {
                int glyph = c + delta & 0xffff;
                if (offset != 0) {
                    int indirect = unsigned(offsets + 2 * s + offset + 2 * (c - start));
                    glyph = indirect == 0 ? 0 : indirect + delta & 0xffff;
                }
                put(c, glyph);
            }
        }
    }

    private void readFormat12(int at) {
        int groups = font.getInt(at + 12);
        for (int g = 0; g < groups; g++) {
            int entry = at + 16 + 12 * g;
            int start = font.getInt(entry);
            int end = font.getInt(entry + 4);
            int glyph = font.getInt(entry + 8);
            for (int c = start; c <= end; c++) {
                put(c, glyph + c - start);
            }
        }
    }

    private void put(int character, int glyph) {
        if (glyph != 0) {
            glyphs.put(character, glyph);
        }
    }

    private double advance(int glyph) {
        return unsigned(hmtx + 4 * Math.min(glyph, metrics - 1)) / unitsPerEm;
    }

    /** Width of a text in em; a character that the font lacks counts as its sign for unknown ones. */
    public double width(String text) {
        double em = 0;
        for (int i = 0; i < text.length();) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            double known = c < DIRECT ? direct[c] : -1;
            em += known >= 0 ? known : advance(glyphs.getOrDefault(c, 0));
        }
        return em;
    }

    /** Whether the font has a sign for a character. */
    public boolean has(int codePoint) {
        return codePoint >= 0 && codePoint < DIRECT ? direct[codePoint] >= 0 : glyphs.containsKey(codePoint);
    }

    private int unsigned(int at) {
        return Short.toUnsignedInt(font.getShort(at));
    }
}
