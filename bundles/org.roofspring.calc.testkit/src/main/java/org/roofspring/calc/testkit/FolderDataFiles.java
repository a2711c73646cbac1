package org.roofspring.calc.testkit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.roofspring.calc.DataFiles;

/** Data files in one folder, for tests. */
record FolderDataFiles(Path folder) implements DataFiles {
    @Override
    public Path resolve(String relative) throws IOException {
        if (folder == null || !Files.isRegularFile(folder.resolve(relative))) {
            throw new IOException("There is no data file " + relative + " in the folder of the site.");
        }
        return folder.resolve(relative);
    }
}
