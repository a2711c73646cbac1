package org.roofspring.ui.parts.drainage;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** The lines as a tree: each roof, and below each part what its water goes to. */
final class WayContent implements ITreeContentProvider {
    private final Supplier<List<WayLine>> roofs;

    WayContent(Supplier<List<WayLine>> roofs) {
        this.roofs = roofs;
    }

    @Override
    public Object[] getElements(Object input) {
        return roofs.get().toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return ((WayLine) parent).onward().toArray();
    }

    @Override
    public Object getParent(Object line) {
        List<String> path = ((WayLine) line).path();
        List<String> above = path.subList(0, path.size() - 1);
        return roofs.get().stream().flatMap(WayLine::all).filter(other -> other.path().equals(above)).findFirst()
                .orElse(null);
    }

    @Override
    public boolean hasChildren(Object line) {
        return !((WayLine) line).onward().isEmpty();
    }

    /** Lines of one place are the same line, whatever their figures, so that a refresh keeps what is open. */
    static final class ByPath implements IElementComparer {
        @Override
        public boolean equals(Object a, Object b) {
            return a instanceof WayLine one && b instanceof WayLine other ? one.path().equals(other.path())
                    : a.equals(b);
        }

        @Override
        public int hashCode(Object element) {
            return element instanceof WayLine line ? line.path().hashCode() : element.hashCode();
        }
    }
}
