package org.roofspring.site.edit;

import org.eclipse.emf.common.command.BasicCommandStack;

/**
 * The edits of one site. It knows whether the site differs from what was saved last, and saving keeps what can be
 * undone. An edit that fails throws and is not kept.
 */
public final class SiteCommandStack extends BasicCommandStack {

    @Override
    protected void handleError(Exception exception) {
        throw exception instanceof RuntimeException runtime ? runtime : new IllegalStateException(exception);
    }

    /** Notes that the site is now as it was saved. */
    @Override
    public void saveIsDone() {
        super.saveIsDone();
        notifyListeners();
    }
}
