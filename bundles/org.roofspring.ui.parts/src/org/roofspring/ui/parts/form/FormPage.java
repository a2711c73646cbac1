package org.roofspring.ui.parts.form;

import org.eclipse.emf.ecore.EStructuralFeature;

/** What the form shows for one selection. */
interface FormPage {

    /** Shows the values that the model has now. */
    void refresh();

    /** Takes over what is being typed. */
    default void takeOver() {
    }

    /** Scrolls a field into view and gives it the focus. */
    default void reveal(EStructuralFeature feature) {
    }
}
