package org.roofspring.site.io;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.ecore.resource.ResourceSet;
import org.roofspring.site.Site;
import org.roofspring.site.internal.io.AtomicFile;
import org.roofspring.site.internal.io.SiteReader;
import org.roofspring.site.internal.io.SiteResourceSet;
import org.roofspring.site.internal.io.SiteWriter;

/**
 * Opens and saves site files. Works in plain Java as well as in OSGi.
 *
 * <p>The same site always gives the same bytes, and saving a file that was loaded and not changed gives the bytes that
 * were read, if this program wrote them.
 */
public final class SiteFiles {
    /** The schema that this program writes, and the newest that it reads. */
    public static final int SCHEMA_VERSION = 1;

    private SiteFiles() {
    }

    /**
     * Reads a site file into a resource set of its own.
     *
     * @throws SiteFileException when the file cannot be read, is no site file, was made by a newer schema, or holds a
     *         value, feature or reference that is not understood; nothing on disk is changed
     */
    public static Site load(Path file) throws SiteFileException {
        return load(file, newResourceSet());
    }

    /**
     * Reads a site file into a given resource set, such as that of an editing domain.
     *
     * @param resources made by {@link #newResourceSet()}, or set up by it; left unchanged when the file is refused
     * @throws SiteFileException as {@link #load(Path)}
     */
    public static Site load(Path file, ResourceSet resources) throws SiteFileException {
        return new SiteReader(SCHEMA_VERSION, List.of()).read(file, resources);
    }

    /**
     * Writes a site: the file holds the whole old or the whole new site, whatever happens. Elements that have no
     * identifier yet are given one; nothing else of the site is changed.
     *
     * @throws SiteFileException when the site cannot be written as a file (two elements with one identifier, a
     *         reference to an element outside the site, a character that XML cannot carry) or the disk refuses
     */
    public static void save(Site site, Path file) throws SiteFileException {
        AtomicFile.write(file, SiteWriter.toBytes(site, file.getFileName().toString()));
    }

    /**
     * A resource set that knows the model and reads nothing but what it is handed: no other file, no network address.
     */
    public static ResourceSet newResourceSet() {
        return new SiteResourceSet();
    }
}
