package org.roofspring.site.edit;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.roofspring.site.Site;

/**
 * An edit whose changes are recorded while it runs, so that undo restores exactly what was there, and an edit of many
 * parts is one step. An edit that fails half-way leaves no trace.
 */
final class RecordedCommand extends AbstractCommand implements SiteCommand {
    private final Site site;
    private final EObject subject;
    private final Runnable edit;
    private ChangeDescription changes;

    RecordedCommand(String label, Site site, EObject subject, Runnable edit) {
        super(label);
        this.site = site;
        this.subject = subject;
        this.edit = edit;
    }

    @Override
    public EObject subject() {
        return subject;
    }

    @Override
    protected boolean prepare() {
        return true;
    }

    @Override
    public void execute() {
        ChangeRecorder recorder = new ChangeRecorder(site);
        boolean done = false;
        try {
            edit.run();
            done = true;
        } finally {
            changes = recorder.endRecording();
            recorder.dispose();
            if (!done) {
                changes.apply();
            }
        }
    }

    @Override
    public void undo() {
        changes.applyAndReverse();
    }

    @Override
    public void redo() {
        changes.applyAndReverse();
    }
}
