package org.roofspring.ui.parts.outline;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * A line of the outline: an element, or the heading above all elements of one kind.
 *
 * @param group null for an element
 */
record OutlineNode(EObject element, EReference group) {
    static OutlineNode of(EObject element) {
        return new OutlineNode(element, null);
    }
}
