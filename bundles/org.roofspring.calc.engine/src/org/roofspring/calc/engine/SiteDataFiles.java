package org.roofspring.calc.engine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.roofspring.calc.DataFiles;

/** Data files in the folder of the site file and below; a name that leads elsewhere is refused. */
final class SiteDataFiles implements DataFiles {
    private final Path folder;

    /** @param folder of the site file, or null while the site has not been saved */
    SiteDataFiles(Path folder) {
        this.folder = folder;
    }

    @Override
    public Path resolve(String relative) throws IOException {
        if (folder == null) {
            throw new IOException("The data file " + relative + " cannot be found before the site is saved.");
        }
        try {
            Path root = folder.toAbsolutePath().normalize();
            Path file = root.resolve(relative).normalize();
            if (Path.of(relative).isAbsolute() || !file.startsWith(root)) {
                throw new IOException("The data file " + relative + " lies outside the folder of the site; put it beside the site file or below.");
            }
            if (!Files.isRegularFile(file)) {
                throw new IOException("There is no data file " + relative + " in the folder of the site.");
            }
            if (!file.toRealPath().startsWith(root.toRealPath())) {
                throw new IOException("The data file " + relative + " is a link that leads outside the folder of the site.");
            }
            return file;
        } catch (InvalidPathException e) {
            throw new IOException("The data file name \"" + relative + "\" is not a path: " + e.getReason() + ".", e);
        }
    }

    /** Changes when the file does: size and time, or that there is none. */
    String stamp(String relative) {
        try {
            Path file = resolve(relative);
            return Files.size(file) + "@" + Files.getLastModifiedTime(file).toMillis();
        } catch (IOException e) {
            return "none: " + e.getMessage();
        }
    }
}
