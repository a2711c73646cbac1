package org.roofspring.ui.look;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.TableWrapData;
import org.eclipse.ui.forms.widgets.TableWrapLayout;

/**
 * Entries below each other, each with its text wrapped to the width, so that nothing is cut. For lists of tens, not
 * thousands.
 */
public final class CardList {
    private final FormToolkit toolkit;
    private final ScrolledForm form;
    private final Consumer<Object> follow;
    private List<Card> shown;
    private Label introductionLabel;

    /** @param follow is given the target of a link that was followed */
    public CardList(Composite parent, Consumer<Object> follow) {
        this.follow = follow;
        toolkit = new FormToolkit(parent.getDisplay());
        form = toolkit.createScrolledForm(parent);
        form.setExpandHorizontal(true);
        TableWrapLayout layout = new TableWrapLayout();
        layout.leftMargin = 10;
        layout.rightMargin = 10;
        layout.topMargin = 8;
        layout.bottomMargin = 8;
        layout.verticalSpacing = 8;
        form.getBody().setLayout(layout);
        form.addDisposeListener(event -> toolkit.dispose());
    }

    public Control control() {
        return form;
    }

    public void setFocus() {
        form.setFocus();
    }

    /** The entries that are shown. */
    public List<Card> cards() {
        return shown == null ? List.of() : shown;
    }

    /**
     * Shows other entries; nothing is drawn anew when they are the same.
     *
     * @param introduction a line above them, such as how many there are, or why there are none
     */
    public void show(String introduction, List<Card> cards) {
        if (cards.equals(shown)) {
            introduce(introduction);
            return;
        }
        shown = List.copyOf(cards);
        form.setRedraw(false);
        try {
            Composite body = form.getBody();
            for (Control child : body.getChildren()) {
                child.dispose();
            }
            introductionLabel = label(body, introduction, Palette.of(body).muted(), false);
            cards.forEach(card -> create(body, card));
            form.reflow(true);
        } finally {
            form.setRedraw(true);
        }
    }

    private void introduce(String introduction) {
        String text = introduction.replace("&", "&&");
        if (!text.equals(introductionLabel.getText())) {
            introductionLabel.setText(text);
            form.reflow(true);
        }
    }

    private void create(Composite body, Card card) {
        Composite entry = toolkit.createComposite(body);
        TableWrapLayout layout = new TableWrapLayout();
        layout.numColumns = 2;
        layout.leftMargin = 0;
        layout.rightMargin = 0;
        layout.topMargin = 0;
        layout.bottomMargin = 0;
        layout.verticalSpacing = 2;
        layout.horizontalSpacing = 8;
        entry.setLayout(layout);
        entry.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        Label icon = toolkit.createLabel(entry, "");
        icon.setImage(Icons.image(card.icon()));
        icon.setLayoutData(new TableWrapData(TableWrapData.LEFT, TableWrapData.TOP, rows(card), 1));
        heading(entry, card);
        if (!card.text().isEmpty()) {
            label(entry, card.text(), null, false);
        }
        card.footnotes().forEach(note -> label(entry, note, Palette.of(entry).muted(), false));
        Label line = toolkit.createSeparator(body, SWT.HORIZONTAL);
        TableWrapData data = new TableWrapData(TableWrapData.FILL_GRAB);
        data.maxHeight = 2;
        line.setLayoutData(data);
    }

    private static int rows(Card card) {
        return 1 + (card.text().isEmpty() ? 0 : 1) + card.footnotes().size();
    }

    private void heading(Composite entry, Card card) {
        Composite line = toolkit.createComposite(entry);
        TableWrapLayout layout = new TableWrapLayout();
        layout.numColumns = 1 + card.links().size();
        layout.leftMargin = 0;
        layout.rightMargin = 0;
        layout.topMargin = 0;
        layout.bottomMargin = 0;
        layout.horizontalSpacing = 12;
        line.setLayout(layout);
        line.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        label(line, card.heading(), tone(entry, card.tone()), true);
        for (Card.Link link : card.links()) {
            Hyperlink hyperlink = toolkit.createHyperlink(line, link.text(), SWT.WRAP);
            hyperlink.addHyperlinkListener(following(link.target()));
        }
    }

    private IHyperlinkListener following(Object target) {
        return new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent event) {
                follow.accept(target);
            }
        };
    }

    private Label label(Composite parent, String text, Color color, boolean bold) {
        Label label = toolkit.createLabel(parent, text.replace("&", "&&"), SWT.WRAP);
        if (color != null) {
            label.setForeground(color);
        }
        if (bold) {
            label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
        label.setLayoutData(new TableWrapData(bold ? TableWrapData.LEFT : TableWrapData.FILL_GRAB));
        return label;
    }

    private static Color tone(Control control, Card.Tone tone) {
        Palette palette = Palette.of(control);
        return switch (tone) {
            case PLAIN -> null;
            case GOOD -> palette.good();
            case WARNING -> palette.warning();
            case DANGER -> palette.danger();
            case STALE -> palette.stale();
        };
    }
}
