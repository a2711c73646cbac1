package org.roofspring.site.io;

import java.io.IOException;

/** Says in one sentence why a site file could not be read or written: which file, where, what is accepted. */
public class SiteFileException extends IOException {
    private static final long serialVersionUID = 1L;

    public SiteFileException(String message) {
        super(message);
    }

    public SiteFileException(String message, Throwable cause) {
        super(message, cause);
    }
}
