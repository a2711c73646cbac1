package org.roofspring.ui.part;

import java.nio.file.Path;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.session.SiteSession;

/** Opens sites in editors. */
public final class Sites {
    private Sites() {
    }

    /**
     * Opens a site file in its editor, or brings up the editor that has it open. A file that cannot be read is named,
     * and nothing else happens.
     */
    public static void open(IWorkbenchPage page, Path file) {
        try {
            open(page, Sessions.service().open(file));
        } catch (SiteFileException e) {
            MessageDialog.openError(page.getWorkbenchWindow().getShell(), "This site cannot be opened", e.getMessage());
        }
    }

    /** Opens the editor of a session. */
    public static void open(IWorkbenchPage page, SiteSession session) {
        try {
            page.openEditor(new SiteEditorInput(session), PartIds.SITE_EDITOR);
        } catch (PartInitException e) {
            throw new IllegalStateException("the editor " + PartIds.SITE_EDITOR + " is missing", e);
        }
    }
}
