package org.roofspring.ui.parts.form;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.part.SelectionActions;
import org.roofspring.ui.session.SiteSelection;
import org.roofspring.ui.session.SiteSession;

/** The form of what is selected in a session: an element, or all elements of one kind. */
public final class SiteForm {
    private final SiteSession session;
    private final FormToolkit toolkit;
    private final ScrolledForm form;
    private final SelectionActions actions;
    private final Map<String, Boolean> openSections = new HashMap<>();
    private final Runnable takeOver = () -> {
        if (page() != null) {
            page().takeOver();
        }
    };
    private FormPage page;
    private EObject shownElement;
    private EReference shownGroup;

    SiteForm(Composite parent, SiteSession session) {
        this.session = session;
        toolkit = new FormToolkit(parent.getDisplay());
        form = toolkit.createScrolledForm(parent);
        form.setExpandHorizontal(true);
        toolkit.decorateFormHeading(form.getForm());
        GridLayoutFactory.swtDefaults().margins(12, 8).spacing(0, 10).applyTo(form.getBody());
        actions = new SelectionActions(() -> session.closed() ? Optional.empty() : Optional.of(session));
        for (Action action : actions.all()) {
            form.getToolBarManager().add(action);
        }
        form.getToolBarManager().update(true);
        session.addPendingInput(takeOver);
        form.addDisposeListener(event -> {
            session.removePendingInput(takeOver);
            toolkit.dispose();
        });
        follow();
    }

    private FormPage page() {
        return page;
    }

    /** Shows what is selected now, and gives the field that was asked for the focus. */
    void follow() {
        SiteSelection selection = session.selection();
        if (selection.element() != shownElement || selection.group() != shownGroup) {
            shownElement = selection.element();
            shownGroup = selection.group();
            build();
        }
        if (selection.feature() != null) {
            page.reveal(selection.feature());
        }
        actions.refresh();
    }

    private void build() {
        form.setRedraw(false);
        try {
            if (page != null) {
                page.takeOver();
            }
            for (Control child : form.getBody().getChildren()) {
                child.dispose();
            }
            form.setOrigin(0, 0);
            page = shownGroup == null ? new ElementPage(session, shownElement, toolkit, form, openSections)
                    : new GroupPage(session, shownElement, shownGroup, toolkit, form);
            showHeading();
            form.reflow(true);
        } finally {
            form.setRedraw(true);
        }
    }

    private void showHeading() {
        String heading = shownGroup == null ? Words.name(shownElement) : Words.feature(shownGroup);
        Image icon = shownGroup == null ? Icons.of(shownElement.eClass()) : Icons.of(shownGroup);
        String text = heading.replace("&", "&&");
        if (!text.equals(form.getText())) {
            form.setText(text);
        }
        if (icon != form.getImage()) {
            form.setImage(icon);
        }
    }

    /** Shows the values that the model has now. */
    void refresh() {
        if (form.isDisposed() || session.closed()) {
            return;
        }
        follow();
        if (session.contains(shownElement)) {
            page.refresh();
            showHeading();
        }
        actions.refresh();
    }

    void setFocus() {
        form.setFocus();
    }

    /** The widget of the whole form, for tests. */
    public Composite control() {
        return form;
    }
}
