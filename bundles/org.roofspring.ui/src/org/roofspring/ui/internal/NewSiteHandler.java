package org.roofspring.ui.internal;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.part.Sites;

/** Begins an empty site. */
public final class NewSiteHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Sites.open(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage(), Sessions.service().create());
        return null;
    }
}
