package org.roofspring.ui.internal;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.session.SessionListener;
import org.roofspring.ui.session.SiteSession;

/** A command on the active session; enabled while the session allows it. */
abstract class SessionHandler extends AbstractHandler {
    private final SessionListener listener = (session, aspect) -> refresh();

    SessionHandler() {
        Sessions.service().addListener(listener);
        refresh();
    }

    private void refresh() {
        boolean now = session().filter(this::allowed).isPresent();
        setBaseEnabled(now);
    }

    private static Optional<SiteSession> session() {
        return Sessions.service().active();
    }

    @Override
    public final Object execute(ExecutionEvent event) {
        session().filter(this::allowed).ifPresent(this::run);
        return null;
    }

    @Override
    public void dispose() {
        Sessions.service().removeListener(listener);
        super.dispose();
    }

    abstract boolean allowed(SiteSession session);

    abstract void run(SiteSession session);
}
