package org.roofspring.kernel.testkit;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damages a file: as transport does, as other programs do, and as people do who mean harm. */
final class Mutator {
    private static final List<String> WORDS = List.of("NaN", "1e999", "-1", "-0", "1,5", "99999999999999999999", "0x1F",
            "1e-400", "\u0663", "\u22121", "9999-12-31", "0001-01-01", "2024-02-30", "31.12.1999", "\"", "\"\"", ",",
            ";", "\t", "\r", "\r\n", "\n\n", "\u0000", "\ufeff", "\u2028", "\ud83d\udca7", "#", "<", ">", "&", "&#0;",
            "&x;", "<![CDATA[", "]]>", "<!--", "<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>",
            "<?xml version=\"1.1\" encoding=\"EBCDIC\"?>", "../../x", "=1+1", "[m]", "T", "-9999", "PRCP");
    private static final int LONGEST = 300_000;

    private final Random random;

    Mutator(long seed) {
        random = new Random(seed);
    }

    byte[] mutate(List<byte[]> corpus) {
        byte[] bytes = corpus.get(random.nextInt(corpus.size()));
        for (int i = random.nextInt(4); i >= 0; i--) {
            bytes = once(bytes, corpus);
            if (bytes.length > LONGEST) {
                bytes = Arrays.copyOf(bytes, LONGEST);
            }
        }
        return bytes;
    }

    private byte[] once(byte[] bytes, List<byte[]> corpus) {
        int from = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, from + (random.nextInt(3) == 0 ? random.nextInt(2000) : random.nextInt(12)));
        byte[] piece = Arrays.copyOfRange(bytes, from, to);
        return switch (random.nextInt(13)) {
            case 0 -> replaced(bytes, from, to, new byte[0]);
            case 1 -> replaced(bytes, from, to, repeated(piece, 2 + random.nextInt(3)));
            case 2 -> replaced(bytes, from, to, repeated(piece, random.nextInt(5000)));
            case 3, 4, 5 -> replaced(bytes, from, random.nextBoolean() ? from : to, word());
            case 6 -> flipped(bytes, from);
            case 7 -> Arrays.copyOf(bytes, from);
            case 8 -> spliced(bytes, from, corpus.get(random.nextInt(corpus.size())));
            case 9 -> text(bytes).replace("\n", random.nextBoolean() ? "\r" : "\r\n").getBytes(StandardCharsets.UTF_8);
            case 10 -> ("\ufeff" + text(bytes)).getBytes(random.nextBoolean() ? StandardCharsets.UTF_16LE
                    : StandardCharsets.UTF_8);
            case 11 -> number(bytes, from);
            default -> replaced(bytes, from, from, Arrays.copyOfRange(bytes, to, Math.min(bytes.length, to + 300)));
        };
    }

    /** Puts a word where the next number stands. */
    private byte[] number(byte[] bytes, int from) {
        int begin = from;
        while (begin < bytes.length && !Character.isDigit(bytes[begin])) {
            begin++;
        }
        int end = begin;
        while (end < bytes.length && (Character.isDigit(bytes[end]) || bytes[end] == '.')) {
            end++;
        }
        return replaced(bytes, begin, end, word());
    }

    private byte[] word() {
        return WORDS.get(random.nextInt(WORDS.size())).getBytes(StandardCharsets.UTF_8);
    }

    private byte[] flipped(byte[] bytes, int from) {
        byte[] copy = bytes.clone();
        for (int at = from; at < Math.min(bytes.length, from + 1 + random.nextInt(4)); at++) {
            copy[at] = (byte) random.nextInt();
        }
        return copy;
    }

    private byte[] spliced(byte[] bytes, int from, byte[] other) {
        return replaced(Arrays.copyOf(bytes, from), from, from,
                Arrays.copyOfRange(other, Math.min(other.length, from), other.length));
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static byte[] repeated(byte[] piece, int times) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int i = 0; i < times && out.size() < LONGEST; i++) {
            out.writeBytes(piece);
        }
        return out.toByteArray();
    }

    private static byte[] replaced(byte[] bytes, int from, int to, byte[] middle) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(middle);
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }
}
