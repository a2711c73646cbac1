package org.roofspring.site.io;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.resource.ResourceSet;
import org.roofspring.site.Site;
import org.roofspring.site.internal.io.LocalDisk;
import org.roofspring.site.internal.io.SiteReader;
import org.roofspring.site.internal.io.SiteResourceSet;
import org.roofspring.site.internal.io.SiteSaver;

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
        return new SiteReader(SCHEMA_VERSION, List.of()).read(file, resources).site();
    }

    /**
     * Reads a site file that shall be saved again: tells what it held, so that a change by another program is noticed.
     *
     * @throws SiteFileException as {@link #load(Path)}
     */
    public static Loaded open(Path file) throws SiteFileException {
        return new SiteReader(SCHEMA_VERSION, List.of()).read(file, newResourceSet());
    }

    /**
     * Writes a site over whatever the file holds; see {@link #save(Site, Path, FileState)}.
     *
     * @throws SiteFileException as there, but for a file that was changed
     */
    public static Saved save(Site site, Path file) throws SiteFileException {
        return new SiteSaver(new LocalDisk()).save(site, file, null);
    }

    /**
     * Writes a site: the file holds the whole old or the whole new site, whatever happens, and what it held before is
     * kept beside it as {@link #previousVersion}. Elements that have no identifier yet are given one; nothing else of
     * the site is changed. A file that holds this site already is left alone.
     *
     * @param expected what the file held when it was last read or written; a file that is gone is made again
     * @throws SiteChangedException when it holds something else, which is then left as it is
     * @throws SiteFileException    when the site cannot be written as a file (two elements with one identifier, a
     *         reference to an element outside the site, a character that XML cannot carry), the file was made by a
     *         newer schema, or the disk refuses
     */
    public static Saved save(Site site, Path file, FileState expected) throws SiteFileException {
        return new SiteSaver(new LocalDisk()).save(site, file, Objects.requireNonNull(expected, "expected"));
    }

    /** Where the version before the last save is kept: the name of the file with a tilde behind it. */
    public static Path previousVersion(Path file) {
        return file.resolveSibling(file.getFileName() + "~");
    }

    /**
     * A resource set that knows the model and reads nothing but what it is handed: no other file, no network address.
     */
    public static ResourceSet newResourceSet() {
        return new SiteResourceSet();
    }
}
