package org.roofspring.ui.internal;

import org.roofspring.ui.session.SiteSession;

/** Does again what was undone last in the active site. */
public final class RedoHandler extends SessionHandler {
    @Override
    boolean allowed(SiteSession session) {
        return session.commands().canRedo();
    }

    @Override
    void run(SiteSession session) {
        session.redo();
    }
}
