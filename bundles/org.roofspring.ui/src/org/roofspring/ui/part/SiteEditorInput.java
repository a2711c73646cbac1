package org.roofspring.ui.part;

import java.util.Objects;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.session.SiteSession;

/** An open site as the input of its editor; the workbench remembers its file and opens it again at the next start. */
public final class SiteEditorInput implements IEditorInput, IPersistableElement {
    static final String FILE = "file";
    private final SiteSession session;

    public SiteEditorInput(SiteSession session) {
        this.session = Objects.requireNonNull(session);
    }

    public SiteSession session() {
        return session;
    }

    @Override
    public boolean exists() {
        return session.file().isPresent();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Icons.descriptor("site");
    }

    @Override
    public String getName() {
        return session.title();
    }

    @Override
    public IPersistableElement getPersistable() {
        return session.file().isPresent() ? this : null;
    }

    @Override
    public String getToolTipText() {
        return session.file().map(Object::toString).orElse("Not saved yet");
    }

    @Override
    public String getFactoryId() {
        return SiteInputFactory.ID;
    }

    @Override
    public void saveState(IMemento memento) {
        session.file().ifPresent(file -> memento.putString(FILE, file.toString()));
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter.isInstance(session) ? adapter.cast(session) : null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SiteEditorInput input && input.session == session;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(session);
    }
}
