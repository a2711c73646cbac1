package org.roofspring.ui.parts.form;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.CheckboxCellEditor;
import org.eclipse.jface.viewers.ComboBoxViewerCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.field.FeatureText;
import org.roofspring.ui.field.References;
import org.roofspring.ui.session.Drafts;
import org.roofspring.ui.session.SiteSession;

/** Editing of one column of rows. What cannot be taken over stays in the cell as typed, with a sentence below. */
final class CellEditing extends EditingSupport {
    private static final String NONE = "\u2014";
    private final TableViewer viewer;
    private final SiteSession session;
    private final EStructuralFeature feature;

    CellEditing(TableViewer viewer, SiteSession session, EStructuralFeature feature) {
        super(viewer);
        this.viewer = viewer;
        this.session = session;
        this.feature = feature;
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        if (isChoice()) {
            ComboBoxViewerCellEditor editor = new ComboBoxViewerCellEditor(viewer.getTable(), SWT.READ_ONLY);
            editor.setContentProvider(ArrayContentProvider.getInstance());
            editor.setLabelProvider(LabelProvider.createTextProvider(CellEditing::words));
            editor.setInput(choices((EObject) row));
            return editor;
        }
        return isFlag() ? new CheckboxCellEditor(viewer.getTable()) : new TextCellEditor(viewer.getTable());
    }

    private boolean isChoice() {
        return !feature.isMany() && (feature instanceof EReference || feature.getEType() instanceof EEnum);
    }

    private boolean isFlag() {
        return feature.getEType().getInstanceClass() == boolean.class;
    }

    private static String words(Object choice) {
        return choice instanceof Enumerator literal ? Words.choice(literal)
                : choice instanceof EObject object ? Words.name(object) : NONE;
    }

    private List<Object> choices(EObject row) {
        List<Object> choices = new ArrayList<>();
        if (feature instanceof EReference reference) {
            choices.add(NONE);
            choices.addAll(References.candidates(session.site(), row, reference));
        } else {
            ((EEnum) feature.getEType()).getELiterals().forEach(literal -> choices.add(literal.getInstance()));
        }
        return choices;
    }

    @Override
    protected boolean canEdit(Object row) {
        return !(feature instanceof EReference && feature.isMany());
    }

    @Override
    protected Object getValue(Object row) {
        EObject object = (EObject) row;
        if (isChoice()) {
            return object.eGet(feature) == null ? NONE : object.eGet(feature);
        }
        if (isFlag()) {
            return object.eGet(feature);
        }
        return session.drafts().get(object, feature).map(Drafts.Draft::text).orElseGet(() -> codec().of(object));
    }

    private FeatureText codec() {
        return FeatureText.of((EAttribute) feature, session.site());
    }

    @Override
    protected void setValue(Object row, Object value) {
        EObject object = (EObject) row;
        if (session.closed() || !session.contains(object)) {
            return;
        }
        if (isChoice()) {
            session.edits().set(object, feature, NONE.equals(value) ? null : value);
        } else if (isFlag()) {
            session.edits().set(object, feature, value);
        } else {
            take(object, (String) value);
        }
        viewer.update(row, null);
    }

    private void take(EObject object, String typed) {
        if (typed.equals(getValue(object))) {
            return;
        }
        try {
            Object value = codec().read(typed);
            session.drafts().remove(object, feature);
            session.edits().set(object, feature, value);
        } catch (IllegalArgumentException e) {
            session.drafts().put(object, feature, typed, Words.feature(feature) + ": " + e.getMessage());
        }
    }
}
