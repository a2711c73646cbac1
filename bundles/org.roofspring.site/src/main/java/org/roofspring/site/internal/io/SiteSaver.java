package org.roofspring.site.internal.io;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

import org.roofspring.site.Site;
import org.roofspring.site.io.FileState;
import org.roofspring.site.io.Saved;
import org.roofspring.site.io.SiteChangedException;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;

/** Saves a site over what is there, after a look at it, and keeps that as the previous version. */
public final class SiteSaver {
    private final Disk disk;

    /** @param disk takes each step of writing */
    public SiteSaver(Disk disk) {
        this.disk = disk;
    }

    /**
     * Saves.
     *
     * @param expected what the file is thought to hold, or null to replace whatever it holds
     * @throws SiteChangedException when the file holds something else
     * @throws SiteFileException    when the site cannot be written or the disk refuses; the file is then as it was
     */
    public Saved save(Site site, Path file, FileState expected) throws SiteFileException {
        Path name = file.getFileName(); // the root of a drive has none
        return save(SiteWriter.toBytes(site, name == null ? file.toString() : name.toString()), file, expected);
    }

    /** As {@link #save(Site, Path, FileState)}, from the bytes that a site was turned into. */
    public Saved save(byte[] bytes, Path file, FileState expected) throws SiteFileException {
        Path target = file.toAbsolutePath();
        try {
            if (Files.exists(target)) {
                target = target.toRealPath();
            }
            if (Files.isDirectory(target)) {
                throw new SiteFileException(file + " is a folder; name a file in it, such as "
                        + file.resolve("my.site"));
            }
            return replace(file, target, bytes, expected);
        } catch (SiteFileException e) {
            throw e;
        } catch (IOException e) {
            throw new SiteFileException(file + " could not be written: " + reason(e, target.getParent()), e);
        }
    }

    private Saved replace(Path file, Path target, byte[] bytes, FileState expected) throws IOException {
        byte[] old = disk.read(target, XmlGuard.MAX_BYTES + 1);
        FileState state = FileState.of(bytes);
        if (Arrays.equals(old, bytes)) {
            return new Saved(state, List.of()); // else the previous version would be the same as this one
        }
        if (old != null) {
            refuseToLose(file, old, expected);
        }
        AtomicFile writer = new AtomicFile(disk);
        Path previous = SiteFiles.previousVersion(target);
        if (old != null) {
            writer.write(previous, target, old);
        }
        boolean atomic = writer.write(target, target, bytes);
        disk.deleteLeftovers(target.getParent(), AtomicFile.prefix(target));
        return new Saved(state, atomic ? List.of() : List.of(file + " was saved, but its drive cannot replace a file "
                + "in one step: a power cut while saving could leave no " + target.getFileName()
                + (old == null ? "" : ", only the version before it, " + previous.getFileName())));
    }

    private static void refuseToLose(Path file, byte[] old, FileState expected) throws SiteFileException {
        if (old.length > XmlGuard.MAX_BYTES) {
            throw new SiteFileException(file + " is larger than " + (XmlGuard.MAX_BYTES >> 20)
                    + " MB, so it is no site file and is not replaced; save under another name");
        }
        OptionalInt schema = XmlGuard.schemaOf(old);
        if (schema.orElse(0) > SiteFiles.SCHEMA_VERSION) {
            throw new SiteFileException(file + " was made by a newer Roofspring (schema " + schema.getAsInt()
                    + ") and is not replaced by this one, which writes " + SiteFiles.SCHEMA_VERSION
                    + "; save under another name");
        }
        if (expected != null && !expected.equals(FileState.of(old))) {
            throw new SiteChangedException(file + (expected.equals(FileState.NONE) ? " is there already"
                    : " was changed by another program since it was opened here") + "; it was not replaced");
        }
    }

    private static String reason(IOException e, Path folder) {
        if (e instanceof NoSuchFileException) {
            return "the folder " + folder + " does not exist";
        }
        if (e instanceof AccessDeniedException) {
            return "no permission to write in " + folder;
        }
        return e.getMessage() == null ? e.toString() : e.getMessage();
    }
}
