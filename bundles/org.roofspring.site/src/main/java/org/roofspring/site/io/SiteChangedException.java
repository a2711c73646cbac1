package org.roofspring.site.io;

/** The file holds something that this program has not seen, so saving would lose it. Nothing was written. */
public class SiteChangedException extends SiteFileException {
    private static final long serialVersionUID = 1L;

    public SiteChangedException(String message) {
        super(message);
    }
}
