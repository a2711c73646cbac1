package org.roofspring.ui.parts.outline;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.roofspring.site.Site;
import org.roofspring.site.edit.Catalogue;

/** The lines of the outline. Kinds of which the site has none are left out. */
final class OutlineContent implements ITreeContentProvider {
    @Override
    public Object[] getElements(Object input) {
        return new Object[] { OutlineNode.of((Site) input) };
    }

    @Override
    public Object[] getChildren(Object parent) {
        OutlineNode node = (OutlineNode) parent;
        List<OutlineNode> children = new ArrayList<>();
        if (node.group() != null) {
            elements(node.element(), node.group()).forEach(element -> children.add(OutlineNode.of(element)));
            return children.toArray();
        }
        for (EReference part : Catalogue.parts(node.element().eClass())) {
            List<EObject> elements = elements(node.element(), part);
            if (part.isMany() && node.element() instanceof Site) {
                if (!elements.isEmpty()) {
                    children.add(new OutlineNode(node.element(), part));
                }
            } else {
                elements.forEach(element -> children.add(OutlineNode.of(element)));
            }
        }
        return children.toArray();
    }

    @SuppressWarnings("unchecked")
    static List<EObject> elements(EObject owner, EReference containment) {
        Object value = owner.eGet(containment);
        return value instanceof List<?> many ? (List<EObject>) many : value == null ? List.of() : List.of((EObject) value);
    }

    @Override
    public Object getParent(Object child) {
        OutlineNode node = (OutlineNode) child;
        if (node.group() != null) {
            return OutlineNode.of(node.element());
        }
        EObject owner = node.element().eContainer();
        if (owner == null) {
            return null;
        }
        EReference containment = node.element().eContainmentFeature();
        return owner instanceof Site && containment.isMany() ? new OutlineNode(owner, containment) : OutlineNode.of(owner);
    }

    @Override
    public boolean hasChildren(Object parent) {
        return getChildren(parent).length > 0;
    }
}
