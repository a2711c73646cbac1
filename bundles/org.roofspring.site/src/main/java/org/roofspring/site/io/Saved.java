package org.roofspring.site.io;

import java.util.List;

/**
 * A site was saved.
 *
 * @param state    what the file holds now
 * @param messages sentences that the person should read; empty when all is as it should be
 */
public record Saved(FileState state, List<String> messages) {
    public Saved {
        messages = List.copyOf(messages);
    }
}
