package org.roofspring.site.internal.io;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.roofspring.site.io.SiteFileException;

/**
 * Turns the bytes of a file into text: UTF-8, or UTF-16 with a byte order mark. Decoded here and strictly, because XML
 * parsers differ in what they make of a wrong byte.
 */
final class XmlText {
    private static final String EXPECTED = "a site file is XML with the root element site:Site";
    private static final Pattern ENCODING = Pattern.compile(
            "\\A<\\?xml[^>]{0,80}?encoding\\s*=\\s*[\"']([^\"']{1,40})");

    private XmlText() {
    }

    static String decode(String name, byte[] bytes) throws SiteFileException {
        if (bytes.length == 0) {
            throw new SiteFileException(name + " is empty; " + EXPECTED);
        }
        boolean marked = startsWith(bytes, 0xef, 0xbb, 0xbf);
        Charset charset = startsWith(bytes, 0xfe, 0xff) || startsWith(bytes, 0xff, 0xfe) ? StandardCharsets.UTF_16
                : StandardCharsets.UTF_8;
        ByteBuffer in = ByteBuffer.wrap(bytes, marked ? 3 : 0, bytes.length - (marked ? 3 : 0));
        if (charset == StandardCharsets.UTF_8 && !beginsAsXml(in)) {
            throw new SiteFileException(name + " is not a site file: it does not begin as XML; " + EXPECTED);
        }
        try {
            CharBuffer text = charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(in);
            requireUnicode(name, text);
            return text.toString();
        } catch (CharacterCodingException e) {
            throw new SiteFileException(name + ", line " + line(bytes, in.position()) + ": a byte there is not valid "
                    + charset + "; a site file is written in UTF-8", e);
        }
    }

    private static boolean beginsAsXml(ByteBuffer in) {
        int start = in.position();
        while (start < in.limit() && in.get(start) <= ' ' && in.get(start) > 0) {
            start++;
        }
        return start < in.limit() && in.get(start) == '<';
    }

    private static void requireUnicode(String name, CharBuffer text) throws SiteFileException {
        Matcher declared = ENCODING.matcher(text);
        if (declared.find()) {
            String encoding = declared.group(1);
            if (!encoding.matches("(?i)UTF-?8|UTF-?16|US-ASCII|ASCII")) {
                throw new SiteFileException(name + " says it is written in " + XmlGuard.abridged(encoding)
                        + "; a site file is written in UTF-8");
            }
        }
    }

    private static long line(byte[] bytes, int position) {
        String before = new String(Arrays.copyOf(bytes, position), StandardCharsets.ISO_8859_1);
        return 1 + before.chars().filter(c -> c == '\n').count();
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xff) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
