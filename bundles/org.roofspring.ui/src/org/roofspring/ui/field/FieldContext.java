package org.roofspring.ui.field;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.roofspring.ui.session.SiteSession;

/** What every field of one form needs: the session, the element whose features are shown, and the looks. */
public record FieldContext(SiteSession session, EObject element, FormToolkit toolkit) {
}
