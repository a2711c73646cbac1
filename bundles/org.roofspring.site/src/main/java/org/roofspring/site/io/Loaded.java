package org.roofspring.site.io;

import org.roofspring.site.Site;

/**
 * A site was read.
 *
 * @param site  the site
 * @param state what the file held, to be given when it is saved again
 */
public record Loaded(Site site, FileState state) {
}
