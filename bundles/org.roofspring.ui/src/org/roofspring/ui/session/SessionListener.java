package org.roofspring.ui.session;

/** Is told on the model thread what has changed. */
@FunctionalInterface
public interface SessionListener {

    /**
     * @param session which session; null when no session is active any more, or units changed for all
     * @param aspect  what about it
     */
    void changed(SiteSession session, Aspect aspect);
}
