package org.roofspring.ui.internal;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.part.SiteEditorInput;
import org.roofspring.ui.session.SessionService;
import org.roofspring.ui.session.SiteSession;

/** Makes the session of the active editor the active one, and names it in the title of the window. */
final class ActiveSiteTracker implements IPartListener2 {
    private final IWorkbenchWindowConfigurer window;
    private final SessionService sessions = Sessions.service();

    ActiveSiteTracker(IWorkbenchWindowConfigurer window) {
        this.window = window;
    }

    void start() {
        window.getWindow().getPartService().addPartListener(this);
        sessions.addListener((session, aspect) -> showTitle());
        follow();
    }

    private void follow() {
        if (window.getWindow().getActivePage() == null) {
            return;
        }
        IEditorPart editor = window.getWindow().getActivePage().getActiveEditor();
        SiteSession session = editor != null && editor.getEditorInput() instanceof SiteEditorInput input ? input.session() : null;
        sessions.activate(session == null || session.closed() ? null : session);
    }

    private void showTitle() {
        window.setTitle(sessions.active().map(session -> (session.dirty() ? "*" : "") + session.title() + " - Roofspring")
                .orElse("Roofspring"));
    }

    @Override
    public void partActivated(IWorkbenchPartReference part) {
        follow();
    }

    @Override
    public void partBroughtToTop(IWorkbenchPartReference part) {
        follow();
    }

    @Override
    public void partClosed(IWorkbenchPartReference part) {
        follow();
    }

    @Override
    public void partOpened(IWorkbenchPartReference part) {
        follow();
    }
}
