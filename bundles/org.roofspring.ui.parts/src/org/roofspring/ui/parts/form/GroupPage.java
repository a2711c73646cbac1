package org.roofspring.ui.parts.form;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.session.SiteSession;

/** A table of all elements of one kind. */
final class GroupPage implements FormPage {
    private final ObjectTable table;

    GroupPage(SiteSession session, EObject owner, EReference group, FormToolkit toolkit, ScrolledForm form) {
        Label what = toolkit.createLabel(form.getBody(), FeatureFacts.documentation(group), SWT.WRAP);
        what.setForeground(Palette.of(what).muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(320, SWT.DEFAULT).applyTo(what);
        table = ObjectTable.create(session, owner, group, toolkit, form.getBody(), false);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(table.control());
    }

    @Override
    public void refresh() {
        table.refresh();
    }

    @Override
    public void takeOver() {
        table.takeOver();
    }
}
