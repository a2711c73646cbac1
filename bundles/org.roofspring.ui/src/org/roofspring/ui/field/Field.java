package org.roofspring.ui.field;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.roofspring.site.edit.SiteChecks;
import org.roofspring.site.edit.SiteEdits;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.session.Drafts;
import org.roofspring.ui.session.SiteSession;

/**
 * A label, a control for one feature of one element, and below it the sentence that says what is wrong, if anything.
 * The parent has a grid of {@link #COLUMNS} columns.
 */
public abstract class Field {
    /** Columns of the grid that fields are laid out in: label, control, button. */
    public static final int COLUMNS = 3;
    /** Key of the control's data that holds the name of the feature. */
    public static final String FEATURE_KEY = "org.roofspring.ui.feature";
    private static final int WIDEST_MESSAGE = 320;

    private final FieldContext context;
    private final EStructuralFeature feature;
    private final Composite parent;
    private Label label;
    private Label problem;

    Field(FieldContext context, Composite parent, EStructuralFeature feature) {
        this.context = context;
        this.parent = parent;
        this.feature = feature;
    }

    /** Makes the widgets; called once by the factory. */
    final void build() {
        label = toolkit().createLabel(parent, Words.feature(feature));
        label.setForeground(Palette.of(parent).label());
        label.setLayoutData(new GridData(SWT.BEGINNING, topAligned() ? SWT.BEGINNING : SWT.CENTER, false, false));
        label.setToolTipText(help());
        Control control = createControl(parent);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, usesButtonColumn() ? 1 : 2, 1);
        layOut(data);
        control.setLayoutData(data);
        control.setData(FEATURE_KEY, feature.getName());
        name(control);
        if (usesButtonColumn()) {
            createButton(parent).setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        }
        refresh();
    }

    /** Width that the label needs, so that the controls of several sections can stand below each other. */
    public final int labelWidth() {
        return label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    /** Makes the label so wide. */
    public final void setLabelWidth(int width) {
        ((GridData) label.getLayoutData()).widthHint = width;
    }

    private void name(Control control) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = Words.feature(feature);
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = help();
            }
        });
    }

    abstract Control createControl(Composite into);

    /** The control that takes the focus. */
    public abstract Control control();

    /** Shows the value that the model has now, or what was typed and could not be taken over. */
    public final void refresh() {
        if (!control().isDisposed() && session().contains(element())) {
            showValue();
            showProblem();
        }
    }

    abstract void showValue();

    /** Takes over what was typed, if anything was. */
    public void takeOver() {
    }

    /** Room for changes of the usual layout. */
    void layOut(GridData data) {
    }

    boolean topAligned() {
        return false;
    }

    boolean usesButtonColumn() {
        return false;
    }

    Control createButton(Composite into) {
        throw new IllegalStateException("no button");
    }

    /** The sentence that is shown below the control now. */
    public Optional<String> problem() {
        Optional<Drafts.Draft> draft = session().drafts().get(element(), feature);
        if (draft.isPresent()) {
            return draft.map(Drafts.Draft::problem);
        }
        return SiteChecks.of(element()).stream().filter(fault -> fault.feature() == feature)
                .map(SiteChecks.Fault::sentence).findFirst();
    }

    final void showProblem() {
        Optional<String> sentence = problem();
        if (sentence.isEmpty() && problem == null) {
            return;
        }
        if (problem == null) {
            problem = toolkit().createLabel(parent, "", SWT.WRAP);
            problem.setForeground(Palette.of(parent).danger());
            problem.moveBelow(usesButtonColumn() ? lastOfRow() : control());
            GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false, COLUMNS, 1);
            data.widthHint = WIDEST_MESSAGE;
            problem.setLayoutData(data);
        }
        boolean show = sentence.isPresent();
        String text = show ? "\u26a0 " + capitalised(sentence.get()) : "";
        if (text.equals(problem.getText())) {
            return;
        }
        problem.setText(text);
        problem.setVisible(show);
        ((GridData) problem.getLayoutData()).exclude = !show;
        control().setToolTipText(show ? sentence.get() : help());
        problem.requestLayout();
    }

    private Control lastOfRow() {
        Control[] siblings = parent.getChildren();
        for (int i = 0; i < siblings.length; i++) {
            if (siblings[i] == control() && i + 1 < siblings.length) {
                return siblings[i + 1];
            }
        }
        return control();
    }

    private static String capitalised(String sentence) {
        String ended = sentence.endsWith(".") ? sentence : sentence + ".";
        return ended.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + ended.substring(1);
    }

    /** What the feature means, for the tool tip. */
    String help() {
        return FeatureFacts.documentation(feature);
    }

    public final EStructuralFeature feature() {
        return feature;
    }

    final EObject element() {
        return context.element();
    }

    final SiteSession session() {
        return context.session();
    }

    final SiteEdits edits() {
        return context.session().edits();
    }

    final FormToolkit toolkit() {
        return context.toolkit();
    }
}
