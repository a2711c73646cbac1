package org.roofspring.site.io;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file held at some time, by its content and not by its date: a copy, a synchronised folder or a clock that was
 * set changes a date without changing a site, and the other way round.
 *
 * @param sha256 of the content, in hexadecimal digits; empty when there was no file
 */
public record FileState(String sha256) {
    /** There was no file. */
    public static final FileState NONE = new FileState("");

    /** The state of a file with this content. */
    public static FileState of(byte[] content) {
        try {
            return new FileState(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
