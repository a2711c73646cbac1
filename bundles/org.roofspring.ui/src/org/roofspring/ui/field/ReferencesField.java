package org.roofspring.ui.field;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.dialogs.ListSelectionDialog;
import org.roofspring.site.edit.Words;

/** The names of any number of other elements, and a button to choose them. */
final class ReferencesField extends Field {
    private final EReference reference;
    private Label names;
    private Button choose;

    ReferencesField(FieldContext context, Composite parent, EReference reference) {
        super(context, parent, reference);
        this.reference = reference;
    }

    @Override
    Control createControl(Composite into) {
        names = toolkit().createLabel(into, "", SWT.WRAP);
        return names;
    }

    @Override
    void layOut(GridData data) {
        data.widthHint = 180;
    }

    @Override
    boolean usesButtonColumn() {
        return true;
    }

    @Override
    Control createButton(Composite into) {
        choose = toolkit().createButton(into, "Choose\u2026", SWT.PUSH);
        choose.addListener(SWT.Selection, event -> choose());
        return choose;
    }

    @Override
    public Control control() {
        return names;
    }

    @Override
    void showValue() {
        List<?> chosen = (List<?>) element().eGet(reference);
        String text = chosen.isEmpty() ? "none" : chosen.stream().map(each -> Words.name((EObject) each)).collect(Collectors.joining(", "));
        if (!text.equals(names.getText())) {
            names.setText(text);
            names.requestLayout();
        }
        names.setToolTipText(help());
    }

    private void choose() {
        List<Object> candidates = References.candidates(session().site(), element(), reference);
        ListSelectionDialog dialog = new ListSelectionDialog(choose.getShell(), candidates, ArrayContentProvider.getInstance(),
                LabelProvider.createTextProvider(each -> Words.name((EObject) each)), help());
        dialog.setTitle(Words.feature(reference) + " of " + Words.name(element()));
        dialog.setInitialElementSelections((List<?>) element().eGet(reference));
        if (dialog.open() == org.eclipse.jface.window.Window.OK) {
            edits().set(element(), reference, new ArrayList<>(List.of(dialog.getResult())));
        }
    }
}
