package org.roofspring.ui.field;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Site;
import org.roofspring.site.edit.Catalogue;

/** Which elements a reference can be set to. */
public final class References {
    private References() {
    }

    /** All elements of the reference's type, in the order of the outline, without the holder and its own parts. */
    public static List<Object> candidates(Site site, EObject holder, EReference reference) {
        List<Object> found = new ArrayList<>();
        for (EReference kind : Catalogue.kinds()) {
            Object value = site.eGet(kind);
            for (Object root : value instanceof List<?> many ? many : value == null ? List.of() : List.of(value)) {
                collect((EObject) root, holder, reference, found);
            }
        }
        return found;
    }

    private static void collect(EObject root, EObject holder, EReference reference, List<Object> found) {
        add(root, holder, reference, found);
        for (Iterator<EObject> inside = root.eAllContents(); inside.hasNext();) {
            add(inside.next(), holder, reference, found);
        }
    }

    private static void add(EObject candidate, EObject holder, EReference reference, List<Object> found) {
        boolean itself = candidate == holder || EcoreUtil.isAncestor(candidate, holder);
        if (!itself && reference.getEReferenceType().isInstance(candidate)) {
            found.add(candidate);
        }
    }
}
