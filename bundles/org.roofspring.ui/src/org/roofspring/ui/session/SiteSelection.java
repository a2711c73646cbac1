package org.roofspring.ui.session;

import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What is selected in a site; every part shows the same.
 *
 * @param element the selected element, or the owner of the selected group
 * @param group   the containment whose elements are selected as a group, or null
 * @param feature the field that should have the focus, or null
 * @param finding the selected finding, or null
 */
public record SiteSelection(EObject element, EReference group, EStructuralFeature feature, FindingKey finding) {
    public SiteSelection {
        Objects.requireNonNull(element);
    }

    /** An element; the finding stays. */
    public SiteSelection to(EObject newElement) {
        return new SiteSelection(newElement, null, null, finding);
    }

    /** All elements of one kind; the finding stays. */
    public SiteSelection to(EObject owner, EReference newGroup) {
        return new SiteSelection(owner, newGroup, null, finding);
    }

    /** A field of an element; the finding stays. */
    public SiteSelection to(EObject newElement, EStructuralFeature newFeature) {
        return new SiteSelection(newElement, null, newFeature, finding);
    }

    /** A finding; the element stays. */
    public SiteSelection to(FindingKey newFinding) {
        return new SiteSelection(element, group, null, newFinding);
    }
}
