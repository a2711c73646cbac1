package org.roofspring.ui.part;

import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.ViewPart;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SessionListener;
import org.roofspring.ui.session.SessionService;
import org.roofspring.ui.session.SiteSession;

/**
 * A view of the active session. While no site is open it says so; while it lies behind another view it does no work but
 * {@link #summarise}.
 */
public abstract class SessionView extends ViewPart {
    private final Set<Aspect> aspects;
    private final SessionListener listener = this::changed;
    private final IPartListener2 visibility = new IPartListener2() {
        @Override
        public void partVisible(IWorkbenchPartReference part) {
            if (part.getPart(false) == SessionView.this) {
                appeared();
            }
        }

        @Override
        public void partHidden(IWorkbenchPartReference part) {
            if (part.getPart(false) == SessionView.this) {
                visible = false;
            }
        }
    };
    private SessionService sessions;
    private Composite pages;
    private Composite content;
    private Composite nothing;
    private boolean visible;
    private boolean missed;

    /** @param aspects of a session that bear on what is shown */
    protected SessionView(Aspect... aspects) {
        this.aspects = Set.of(aspects);
    }

    @Override
    public final void createPartControl(Composite parent) {
        sessions = Sessions.service();
        pages = new Composite(parent, SWT.NONE);
        StackLayout stack = new StackLayout();
        pages.setLayout(stack);
        nothing = new Composite(pages, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(12, 12).applyTo(nothing);
        Label hint = new Label(nothing, SWT.WRAP);
        hint.setText("No site is open. Choose File, Open to open a site file.");
        hint.setForeground(Palette.of(nothing).muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(160, SWT.DEFAULT).applyTo(hint);
        content = new Composite(pages, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(content);
        createContent(content);
        visible = getSite().getPage().isPartVisible(this);
        getSite().getPage().addPartListener(visibility);
        sessions.addListener(listener);
        showActive();
    }

    private void appeared() {
        visible = true;
        if (missed) {
            showActive();
        }
    }

    /** Makes the widgets; the parent has a grid of one column without margins. */
    protected abstract void createContent(Composite parent);

    /** Shows a session from scratch: another one was activated, or units have changed. */
    protected abstract void show(SiteSession session);

    /** Shows what has changed about the session that is shown. */
    protected abstract void update(SiteSession session, Aspect aspect);

    /** Tells in the title how much there is to see; called for every change, also while the view is hidden. */
    protected void summarise(SiteSession session) {
    }

    /** The session that was shown is gone and must be let go of. */
    protected void forget() {
    }

    private void changed(SiteSession session, Aspect aspect) {
        if (aspect == Aspect.ACTIVE || aspect == Aspect.UNITS) {
            showActive();
        } else if (session != null && session == sessions.active().orElse(null) && aspects.contains(aspect)) {
            if (visible) {
                update(session, aspect);
            } else {
                missed = true;
            }
            summarise(session);
        }
    }

    private void showActive() {
        Optional<SiteSession> active = sessions.active();
        ((StackLayout) pages.getLayout()).topControl = active.isPresent() ? content : nothing;
        if (active.isEmpty()) {
            forget();
        } else if (visible) {
            show(active.get());
        }
        missed = active.isPresent() && !visible;
        active.ifPresent(this::summarise);
        pages.layout();
    }

    /** The session that is shown. */
    protected final Optional<SiteSession> session() {
        return sessions.active();
    }

    @Override
    public void dispose() {
        if (sessions != null) {
            sessions.removeListener(listener);
            getSite().getPage().removePartListener(visibility);
        }
        super.dispose();
    }
}
