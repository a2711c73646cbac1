package org.roofspring.ui.internal;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.roofspring.ui.part.Sites;

/** Asks for site files and opens them. */
public final class OpenHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText("Open site");
        dialog.setFilterNames(new String[] { "Site files (*.site)", "All files" });
        dialog.setFilterExtensions(new String[] { "*.site", "*" });
        if (dialog.open() != null) {
            for (String name : dialog.getFileNames()) {
                Sites.open(window.getActivePage(), Path.of(dialog.getFilterPath(), name));
            }
        }
        return null;
    }
}
