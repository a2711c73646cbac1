package org.roofspring.ui.parts.outline;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** The Delete key in the outline. */
public final class RemoveHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActivePart(event) instanceof OutlineView outline) {
            outline.removeSelected();
        }
        return null;
    }
}
