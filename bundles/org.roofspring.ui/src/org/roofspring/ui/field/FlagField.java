package org.roofspring.ui.field;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A check box for yes or no. */
final class FlagField extends Field {
    private final EAttribute attribute;
    private Button box;

    FlagField(FieldContext context, Composite parent, EAttribute attribute) {
        super(context, parent, attribute);
        this.attribute = attribute;
    }

    @Override
    Control createControl(Composite into) {
        box = toolkit().createButton(into, "", SWT.CHECK);
        box.addListener(SWT.Selection, event -> edits().set(element(), attribute, box.getSelection()));
        return box;
    }

    @Override
    void layOut(GridData data) {
        data.horizontalAlignment = SWT.BEGINNING;
        data.grabExcessHorizontalSpace = false;
    }

    @Override
    public Control control() {
        return box;
    }

    @Override
    void showValue() {
        box.setSelection(Boolean.TRUE.equals(element().eGet(attribute)));
        box.setToolTipText(help());
    }
}
