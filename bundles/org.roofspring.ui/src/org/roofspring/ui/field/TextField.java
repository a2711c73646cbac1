package org.roofspring.ui.field;

import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.ui.session.Drafts;

/**
 * A line or several lines of text for an attribute: a quantity, a number, a day, words. Enter or leaving the field takes
 * the text over; Escape withdraws it.
 */
final class TextField extends Field {
    private static final int LINES = 3;
    private static final int WIDTH_OF_VALUES = 150;
    private static final int WIDTH_OF_WORDS = 180;

    private final EAttribute attribute;
    private final boolean manyLines;
    private Text text;
    private String shown = "";

    TextField(FieldContext context, Composite parent, EAttribute attribute, boolean manyLines) {
        super(context, parent, attribute);
        this.attribute = attribute;
        this.manyLines = manyLines;
    }

    @Override
    Control createControl(Composite into) {
        int style = manyLines ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE;
        text = toolkit().createText(into, "", style | SWT.BORDER);
        text.addListener(SWT.FocusOut, event -> takeOver());
        if (!manyLines) {
            text.addListener(SWT.DefaultSelection, event -> takeOver());
        }
        text.addListener(SWT.Modify, event -> typed());
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE && changed()) {
                event.doit = false;
                withdraw();
            } else if (manyLines && (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS)) {
                event.doit = true;
            }
        });
        return text;
    }

    @Override
    void layOut(GridData data) {
        if (manyLines) {
            data.heightHint = LINES * text.getLineHeight();
            data.widthHint = WIDTH_OF_WORDS;
        } else if (FeatureFacts.isQuantity(attribute) || attribute.getEAttributeType().getInstanceClass() != String.class) {
            data.widthHint = WIDTH_OF_VALUES;
            data.grabExcessHorizontalSpace = false;
            data.horizontalAlignment = SWT.BEGINNING;
        } else {
            data.widthHint = WIDTH_OF_WORDS;
        }
    }

    @Override
    boolean topAligned() {
        return manyLines;
    }

    @Override
    public Control control() {
        return text;
    }

    private FeatureText codec() {
        return FeatureText.of(attribute, session().site());
    }

    private boolean changed() {
        return !text.getText().equals(shown) || session().drafts().get(element(), attribute).isPresent();
    }

    @Override
    void showValue() {
        if (!text.getText().equals(shown)) {
            return; // being typed
        }
        Optional<Drafts.Draft> draft = session().drafts().get(element(), attribute);
        show(draft.map(Drafts.Draft::text).orElseGet(() -> codec().of(element())));
        text.setMessage(codec().assumed().map(value -> value + " (default)").orElse(""));
        if (problem().isEmpty()) {
            text.setToolTipText(help());
        }
    }

    private void show(String newText) {
        shown = newText;
        if (!text.getText().equals(newText)) {
            text.setText(newText);
            if (text.isFocusControl()) {
                text.setSelection(newText.length());
            }
        }
    }

    /** A text that was wrong loses its mark as soon as it is right. */
    private void typed() {
        Optional<Drafts.Draft> draft = session().drafts().get(element(), attribute);
        if (draft.isPresent() && !draft.get().text().equals(text.getText())) {
            try {
                codec().read(text.getText());
                session().drafts().remove(element(), attribute);
                showProblem();
            } catch (IllegalArgumentException e) {
                session().drafts().put(element(), attribute, text.getText(), e.getMessage());
                shown = text.getText();
                showProblem();
            }
        }
    }

    @Override
    public void takeOver() {
        if (text.isDisposed() || session().closed() || !session().contains(element()) || text.getText().equals(shown)) {
            return;
        }
        String typed = text.getText();
        try {
            Object value = codec().read(typed);
            session().drafts().remove(element(), attribute);
            shown = typed;
            edits().set(element(), attribute, value);
            show(codec().of(element()));
        } catch (IllegalArgumentException e) {
            shown = typed;
            session().drafts().put(element(), attribute, typed, e.getMessage());
        }
        showProblem();
    }

    private void withdraw() {
        session().drafts().remove(element(), attribute);
        show(codec().of(element()));
        showProblem();
    }

    /** Meaning, default with its source, and the value as it was given where that is shown in another unit. */
    @Override
    String help() {
        StringBuilder help = new StringBuilder(super.help());
        FeatureText codec = codec();
        codec.assumed().ifPresent(value -> help.append("\nDefault ").append(value)
                .append(codec.assumedSource().map(source -> ": " + source).orElse("")).append('.'));
        if (element().eGet(attribute) instanceof Quantity given) {
            help.append("\nGiven as ").append(given).append('.');
        }
        return help.toString();
    }
}
