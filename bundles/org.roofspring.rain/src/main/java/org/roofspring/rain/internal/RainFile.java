package org.roofspring.rain.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.rain.RainFormatException;

/** The content of a file, known to be text, with its name for messages. */
public final class RainFile {
    static final String ACCEPTED = "GHCN-Daily .dly, GHCN-Daily station CSV, or a CSV with a date and a depth column "
            + "is accepted";
    /** Larger files are refused; a century of days of one station takes 2 MB at most. */
    private static final long MAX_BYTES = 1L << 30;
    private static final int CHUNK = 1 << 20;

    private final String name;
    private final byte[] bytes;
    private final BooleanSupplier cancelled;

    private RainFile(String name, byte[] bytes, BooleanSupplier cancelled) {
        this.name = name;
        this.bytes = bytes;
        this.cancelled = cancelled;
    }

    /** Reads a file whole. */
    public static RainFile read(Path path, BooleanSupplier cancelled) throws IOException {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            throw new RainFormatException(name, 0, 0, "is a folder", ACCEPTED);
        }
        long size = Files.size(path);
        if (size > MAX_BYTES) {
            throw new RainFormatException(name, 0, 0, "has " + size + " bytes", "at most " + MAX_BYTES
                    + " bytes are accepted");
        }
        byte[] bytes = new byte[(int) size];
        int length = 0;
        try (InputStream in = Files.newInputStream(path)) {
            int got = 0;
            while (length < bytes.length && got >= 0) {
                poll(cancelled);
                got = in.read(bytes, length, Math.min(CHUNK, bytes.length - length));
                length += Math.max(got, 0);
            }
        }
        return of(name, length == bytes.length ? bytes : Arrays.copyOf(bytes, length), cancelled);
    }

    /** Takes content that is in memory; the array is not copied and must not change. */
    public static RainFile of(String name, byte[] bytes, BooleanSupplier cancelled) {
        RainFile file = new RainFile(name, bytes, cancelled);
        file.refuseOtherThanText();
        return file;
    }

    private void refuseOtherThanText() {
        if (bytes.length == 0) {
            throw fault(0, 0, "the file is empty", ACCEPTED);
        }
        String kind = startsWith(0x89, 'P', 'N', 'G') ? "a PNG picture"
                : startsWith(0xFF, 0xD8, 0xFF) ? "a JPEG picture"
                : startsWith('%', 'P', 'D', 'F') ? "a PDF"
                : startsWith('P', 'K', 3, 4) ? "a zip archive or a spreadsheet; save the sheet as CSV"
                : startsWith(0x1F, 0x8B) ? "a gzip archive; unpack it first" : null;
        if (kind != null) {
            throw fault(0, 0, "the file is " + kind, ACCEPTED);
        }
        boolean utf16 = startsWith(0xFF, 0xFE) || startsWith(0xFE, 0xFF);
        for (int i = 0; i < Math.min(bytes.length, 64 * 1024) && !utf16; i++) {
            if (bytes[i] >= 0 && bytes[i] < ' ' && "\t\r\n\f".indexOf(bytes[i]) < 0) {
                throw fault(0, 0, "the file is not text (byte " + (i + 1) + " is " + bytes[i] + ")", ACCEPTED);
            }
        }
    }

    private boolean startsWith(int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if (bytes[i] != (byte) start[i]) {
                return false;
            }
        }
        return true;
    }

    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }

    /** The content as text: UTF-8, UTF-16 where marked so, else Windows' Western code page. */
    String text() {
        poll(cancelled);
        if (startsWith(0xFF, 0xFE)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(0xFE, 0xFF)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
        }
        int skip = startsWith(0xEF, 0xBB, 0xBF) ? 3 : 0;
        String utf8 = utf8(skip);
        // else an older single-byte code page; letters beyond ASCII stand only in names
        return utf8 != null ? utf8 : new String(bytes, Charset.forName("windows-1252"));
    }

    /** Decodes piece by piece, to be cancelled in between; null when the bytes are not UTF-8. */
    private String utf8(int skip) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = CoderResult.UNDERFLOW;
        for (int end = skip; end < bytes.length && !result.isError();) {
            poll(cancelled);
            end = Math.min(bytes.length, end + CHUNK);
            in.limit(end);
            result = decoder.decode(in, out, end == bytes.length);
        }
        return result.isError() ? null : out.flip().toString();
    }

    /** The first line that is not blank, for finding the format. */
    public String firstLine() {
        int skip = startsWith(0xEF, 0xBB, 0xBF) ? 3 : 0;
        String start = new String(bytes, skip, Math.min(bytes.length - skip, 4096), StandardCharsets.ISO_8859_1);
        if (startsWith(0xFF, 0xFE) || startsWith(0xFE, 0xFF)) {
            start = text();
        }
        return start.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    }

    /** Whether the file's name ends so, in any case of letters. */
    public boolean isNamed(String extension) {
        return name.toLowerCase(Locale.ROOT).endsWith(extension);
    }

    /** Throws when the caller was asked to stop. */
    public void poll() {
        poll(cancelled);
    }

    private static void poll(BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("reading the rain file was cancelled");
        }
    }

    /** A fault at a place in this file. */
    public RainFormatException fault(long line, int column, String problem, String accepted) {
        return new RainFormatException(name, line, column, problem, accepted);
    }

    /** A piece of a file for a message: one line, in quotes, not too long. */
    static String quoted(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}+", " ");
        return '"' + (oneLine.length() > 40 ? oneLine.substring(0, 37) + "..." : oneLine) + '"';
    }
}
