package org.roofspring.ui.internal;

import org.roofspring.ui.session.SiteSession;

/** Takes back the last edit of the active site. */
public final class UndoHandler extends SessionHandler {
    @Override
    boolean allowed(SiteSession session) {
        return session.commands().canUndo();
    }

    @Override
    void run(SiteSession session) {
        session.undo();
    }
}
