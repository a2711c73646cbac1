package org.roofspring.site.internal.io;

import org.w3c.dom.Document;

/** Turns the content of a file of one schema into that of the next. */
public interface Migration {
    /** The schema that this reads; it writes the next one. */
    int from();

    /** Changes the document in place; the schema version attribute is set by the reader. */
    void migrate(Document document);
}
