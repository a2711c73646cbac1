package org.roofspring.ui.parts.form;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.roofspring.site.io.SiteChangedException;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.part.SiteEditorInput;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SessionListener;
import org.roofspring.ui.session.SiteSession;

/** The editor of one site. Closing it closes the session. */
public final class SiteEditor extends EditorPart {
    private static final String ENDING = ".site";
    private final SessionListener listener = this::changed;
    private SiteSession session;
    private SiteForm form;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof SiteEditorInput siteInput)) {
            throw new PartInitException("the site editor opens site files only");
        }
        session = siteInput.session();
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleToolTip(input.getToolTipText());
    }

    @Override
    public void createPartControl(Composite parent) {
        form = new SiteForm(parent, session);
        Sessions.service().addListener(listener);
    }

    private void changed(SiteSession changed, Aspect aspect) {
        if (aspect == Aspect.UNITS) {
            form.refresh();
        } else if (changed == session) {
            switch (aspect) {
                case MODEL, DRAFTS -> form.refresh();
                case SELECTION -> form.follow();
                case FILE -> {
                    setPartName(getEditorInput().getName());
                    setTitleToolTip(getEditorInput().getToolTipText());
                    firePropertyChange(IEditorPart.PROP_DIRTY);
                }
                default -> {
                    // results are shown elsewhere
                }
            }
        }
    }

    @Override
    public boolean isDirty() {
        return session.dirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (session.file().isEmpty()) {
            doSaveAs();
            monitor.setCanceled(session.dirty());
            return;
        }
        attempt(session::save);
        monitor.setCanceled(session.dirty());
    }

    @Override
    public boolean isSaveAsAllowed() {
        return true;
    }

    @Override
    public void doSaveAs() {
        askForFile().ifPresent(file -> attempt(() -> session.saveAs(file)));
    }

    /** A way to save; gives sentences to show. */
    private interface Save {
        List<String> run() throws SiteFileException;
    }

    private void attempt(Save save) {
        try {
            String messages = String.join(" ", save.run());
            getEditorSite().getActionBars().getStatusLineManager().setMessage(messages.isEmpty() ? null : messages);
        } catch (SiteChangedException e) {
            askAboutChanged(e.getMessage());
        } catch (SiteFileException e) {
            MessageDialog.openError(getSite().getShell(), "This site cannot be saved", e.getMessage());
        }
    }

    private void askAboutChanged(String message) {
        Path previous = SiteFiles.previousVersion(session.file().orElseThrow()).getFileName();
        switch (MessageDialog.open(MessageDialog.QUESTION, getSite().getShell(), "The file was changed elsewhere",
                message + ". You can save under another name and compare, or replace it; what it holds now is then kept"
                        + " as " + previous + ".", SWT.NONE, "Save as\u2026", "Replace", "Cancel")) {
            case 0 -> doSaveAs();
            case 1 -> attempt(session::saveOver);
            default -> {
                // nothing is saved, and the site stays open with its edits
            }
        }
    }

    private Optional<Path> askForFile() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setText("Save site as");
        dialog.setFilterNames(new String[] { "Site files (*.site)" });
        dialog.setFilterExtensions(new String[] { "*" + ENDING });
        dialog.setOverwrite(true);
        session.file().ifPresent(file -> dialog.setFilterPath(file.getParent().toString()));
        dialog.setFileName(session.file().map(file -> file.getFileName().toString()).orElse("new" + ENDING));
        String chosen = dialog.open();
        if (chosen == null) {
            return Optional.empty();
        }
        Path file = Path.of(chosen.endsWith(ENDING) ? chosen : chosen + ENDING);
        boolean renamed = !chosen.endsWith(ENDING) && java.nio.file.Files.exists(file);
        if (renamed && new MessageDialog(getSite().getShell(), "Replace the file?", null, file + " is there already.",
                MessageDialog.QUESTION, 1, "Replace", "Cancel").open() != Window.OK) {
            return Optional.empty();
        }
        return Optional.of(file);
    }

    /** The form, for tests. */
    public SiteForm form() {
        return form;
    }

    /** The session that is edited. */
    public SiteSession session() {
        return session;
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }

    @Override
    public void dispose() {
        Sessions.service().removeListener(listener);
        if (session != null) {
            Sessions.service().close(session);
        }
        super.dispose();
    }
}
