package org.roofspring.report.internal.pdf;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.drawing.Typeface;

/** Breaks a text into lines. Only an ordinary space ends a word; a word that is wider than the line is cut. */
final class TextLines {
    private TextLines() {
    }

    static List<String> of(String text, Typeface face, double size, double width) {
        List<String> lines = new ArrayList<>();
        double space = face.width(" ", size);
        for (String paragraph : printable(text, face).split("\n", -1)) {
            StringBuilder line = new StringBuilder();
            double used = 0;
            for (String word : paragraph.split(" ")) {
                String rest = word;
                double wide = face.width(rest, size);
                if (!line.isEmpty() && used + space + wide > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    used = 0;
                }
                while (wide > width && rest.codePointCount(0, rest.length()) > 1) {
                    int cut = fitting(rest, face, size, width);
                    lines.add(rest.substring(0, cut));
                    rest = rest.substring(cut);
                    wide = face.width(rest, size);
                }
                used += (line.isEmpty() ? 0 : space) + wide;
                line.append(line.isEmpty() ? "" : " ").append(rest);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    /** How many characters fit, at least one. */
    private static int fitting(String word, Typeface face, double size, double width) {
        int cut = word.offsetByCodePoints(0, 1);
        while (cut < word.length()) {
            int next = word.offsetByCodePoints(cut, 1);
            if (face.width(word.substring(0, next), size) > width) {
                break;
            }
            cut = next;
        }
        return cut;
    }

    /** Width of the longest word. */
    static double widestWord(String text, Typeface face, double size) {
        double widest = 0;
        for (String word : printable(text, face).split("[ \n]")) {
            widest = Math.max(widest, face.width(word, size));
        }
        return widest;
    }

    /** The text with a replacement sign for each character that the font lacks; control characters are left out. */
    static String printable(String text, Typeface face) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '\n' && !face.has(c)) {
                return replaced(text, face);
            }
        }
        return text;
    }

    private static String replaced(String text, Typeface face) {
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == '\n' || c == '\t' || c == '\r') {
                printable.append(c == '\n' ? '\n' : ' ');
            } else if (face.has(c)) {
                printable.appendCodePoint(c);
            } else if (!Character.isISOControl(c)) {
                printable.append('\ufffd');
            }
        });
        return printable.toString();
    }
}
