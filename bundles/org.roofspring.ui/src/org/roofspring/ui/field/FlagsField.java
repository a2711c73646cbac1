package org.roofspring.ui.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.roofspring.site.edit.Words;

/** Check boxes for any number of literals of an enumeration, such as the days of the week. */
final class FlagsField extends Field {
    private final EAttribute attribute;
    private final Map<Enumerator, Button> boxes = new LinkedHashMap<>();
    private Composite group;

    FlagsField(FieldContext context, Composite parent, EAttribute attribute) {
        super(context, parent, attribute);
        this.attribute = attribute;
    }

    @Override
    Control createControl(Composite into) {
        group = toolkit().createComposite(into);
        RowLayout layout = new RowLayout();
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = 10;
        group.setLayout(layout);
        for (EEnumLiteral literal : ((EEnum) attribute.getEAttributeType()).getELiterals()) {
            Button box = toolkit().createButton(group, Words.choice(literal.getInstance()), SWT.CHECK);
            box.addListener(SWT.Selection, event -> choose());
            boxes.put(literal.getInstance(), box);
        }
        return group;
    }

    @Override
    void layOut(org.eclipse.swt.layout.GridData data) {
        data.widthHint = 320;
    }

    @Override
    boolean topAligned() {
        return true;
    }

    @Override
    public Control control() {
        return group;
    }

    @Override
    void showValue() {
        List<?> chosen = (List<?>) element().eGet(attribute);
        boxes.forEach((literal, box) -> box.setSelection(chosen.contains(literal)));
        group.setToolTipText(help());
    }

    private void choose() {
        List<Object> chosen = new ArrayList<>();
        boxes.forEach((literal, box) -> {
            if (box.getSelection()) {
                chosen.add(literal);
            }
        });
        edits().set(element(), attribute, chosen);
    }
}
