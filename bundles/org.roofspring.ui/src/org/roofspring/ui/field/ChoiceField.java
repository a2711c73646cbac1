package org.roofspring.ui.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.roofspring.site.edit.Words;

/** A choice of one: a literal of an enumeration, or another element of the site, with a button that goes there. */
final class ChoiceField extends Field {
    private static final String NONE = "\u2014";

    private final EStructuralFeature feature;
    private final List<Object> choices = new ArrayList<>();
    private Combo combo;
    private Button goTo;

    ChoiceField(FieldContext context, Composite parent, EStructuralFeature feature) {
        super(context, parent, feature);
        this.feature = feature;
    }

    @Override
    Control createControl(Composite into) {
        combo = new Combo(into, SWT.READ_ONLY | SWT.DROP_DOWN);
        toolkit().adapt(combo, true, false);
        combo.setVisibleItemCount(20);
        WheelPasser.install(combo);
        combo.addListener(SWT.Selection, event -> choose());
        return combo;
    }

    @Override
    boolean usesButtonColumn() {
        return feature instanceof EReference;
    }

    @Override
    Control createButton(Composite into) {
        goTo = toolkit().createButton(into, "Go to", SWT.PUSH);
        goTo.setToolTipText("Shows the element that is chosen here");
        goTo.addListener(SWT.Selection, event -> {
            if (element().eGet(feature) instanceof EObject target) {
                session().select(session().selection().to(target));
            }
        });
        return goTo;
    }

    @Override
    void layOut(GridData data) {
        data.widthHint = 180;
    }

    @Override
    public Control control() {
        return combo;
    }

    @Override
    void showValue() {
        List<Object> offered = feature instanceof EAttribute attribute ? literals((EEnum) attribute.getEAttributeType())
                : References.candidates(session().site(), element(), (EReference) feature);
        List<String> words = new ArrayList<>();
        choices.clear();
        if (feature instanceof EReference) {
            choices.add(null);
            words.add(NONE);
        }
        for (Object choice : offered) {
            choices.add(choice);
            words.add(choice instanceof Enumerator literal ? Words.choice(literal) : Words.name((EObject) choice));
        }
        String[] items = words.toArray(String[]::new);
        if (!java.util.Arrays.equals(items, combo.getItems())) {
            combo.setItems(items);
        }
        Object value = element().eGet(feature);
        int index = choices.indexOf(value);
        if (combo.getSelectionIndex() != index) {
            combo.select(index);
        }
        if (goTo != null) {
            goTo.setEnabled(value != null);
        }
        combo.setToolTipText(help());
    }

    private static List<Object> literals(EEnum type) {
        return type.getELiterals().stream().<Object>map(literal -> literal.getInstance()).toList();
    }

    private void choose() {
        int index = combo.getSelectionIndex();
        if (index >= 0 && !Objects.equals(choices.get(index), element().eGet(feature))) {
            edits().set(element(), feature, choices.get(index));
        }
    }
}
