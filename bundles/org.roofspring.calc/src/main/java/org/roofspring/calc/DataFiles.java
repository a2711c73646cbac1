package org.roofspring.calc;

import java.io.IOException;
import java.nio.file.Path;

/** Read access to the files a site names, relative to the site file and never outside its folder. */
public interface DataFiles {

    /**
     * Resolves a name from the site file.
     *
     * @param relative path with forward slashes, relative to the folder of the site file
     * @return the path of an existing, readable file
     * @throws IOException with one sentence when the name leads outside the folder, or there is no such file
     */
    Path resolve(String relative) throws IOException;
}
