package org.roofspring.ui.parts.workings;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.TableWrapData;
import org.eclipse.ui.forms.widgets.TableWrapLayout;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Working;
import org.roofspring.calc.ValueWords;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.site.Element;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/** The workings of the selected finding. An input that was entered by hand is a link to its field. */
public final class WorkingsView extends SessionView {
    /** What is on the screen; when it is the same again, nothing is drawn anew. */
    private record Shown(SiteSession session, FindingKey key, Finding finding, Working working, String unit) {
    }

    private FormToolkit toolkit;
    private ScrolledForm form;
    private Shown shown;
    private Label state;

    public WorkingsView() {
        super(Aspect.RESULTS, Aspect.SELECTION);
    }

    @Override
    protected void createContent(Composite parent) {
        toolkit = new FormToolkit(parent.getDisplay());
        form = toolkit.createScrolledForm(parent);
        form.setExpandHorizontal(true);
        form.addDisposeListener(event -> toolkit.dispose());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        form.getBody().setLayout(layout(1, 10, 8, 4));
    }

    private static TableWrapLayout layout(int columns, int side, int top, int spacing) {
        TableWrapLayout layout = new TableWrapLayout();
        layout.numColumns = columns;
        layout.leftMargin = side;
        layout.rightMargin = side;
        layout.topMargin = top;
        layout.bottomMargin = top;
        layout.verticalSpacing = spacing;
        layout.horizontalSpacing = 12;
        return layout;
    }

    @Override
    protected void show(SiteSession session) {
        SiteResults results = session.live().results();
        Optional<FindingKey> key = Optional.ofNullable(session.selection().finding()).or(() -> first(results));
        Finding finding = key.flatMap(k -> k.in(results)).orElse(null);
        Working working = key.flatMap(k -> k.working(results)).orElse(null);
        boolean stale = key.filter(k -> session.live().outOfDate(k.calculationId())).isPresent();
        Shown now = new Shown(session, key.orElse(null), finding, working, DisplayUnits.system(session.site()).name());
        if (!now.equals(shown)) {
            shown = now;
            draw(session);
        }
        if (state != null) {
            showState(session, stale);
        }
    }

    /** While no finding is selected, the first number with workings is shown, in the order of the findings part. */
    private static Optional<FindingKey> first(SiteResults results) {
        for (CalculationResult result : List.copyOf(results.results()).reversed()) {
            Optional<FindingKey> key = result.completed().flatMap(outcome -> outcome.workings().stream()
                    .map(working -> new FindingKey(result.descriptor().id(), working.findingId(), working.elementId())).findFirst());
            if (key.isPresent()) {
                return key;
            }
        }
        return Optional.empty();
    }

    private void draw(SiteSession session) {
        Composite body = form.getBody();
        form.setRedraw(false);
        try {
            for (Control child : body.getChildren()) {
                child.dispose();
            }
            state = null;
            if (shown.key() == null) {
                text(body, "Nothing has been calculated yet.", false).setForeground(Palette.of(body).muted());
            } else if (shown.finding() == null) {
                text(body, "This finding has no value now. The Problems part says why.", false).setForeground(Palette.of(body).muted());
            } else {
                heading(session, body);
                boolean detail = new ValueDetail(toolkit, session.format()).show(shown.finding().value(), body, line -> text(body, line, false));
                if (shown.working() == null && !detail && shown.finding().value() instanceof FindingValue.Number) {
                    text(body, "This finding comes without workings.", false).setForeground(Palette.of(body).muted());
                } else if (shown.working() != null) {
                    List<Working.Step> steps = shown.working().steps();
                    for (int i = 0; i < steps.size(); i++) {
                        step(session, body, steps.size() == 1 ? "" : i + 1 + ".  ", steps.get(i));
                    }
                }
            }
            form.reflow(true);
        } finally {
            form.setRedraw(true);
        }
    }

    private void heading(SiteSession session, Composite body) {
        String about = session.element(shown.finding().elementId()).map(element -> " of " + Words.name(element)).orElse("");
        Label title = text(body, shown.finding().title() + about + ":  " + ValueWords.of(shown.finding().value(), session.format()), false);
        title.setFont(JFaceResources.getHeaderFont());
        state = text(body, calculation(session), false);
    }

    private String calculation(SiteSession session) {
        return session.live().results().result(shown.key().calculationId()).map(result -> result.descriptor().title()).orElse("");
    }

    private void showState(SiteSession session, boolean stale) {
        String text = Texts.plain(calculation(session) + (stale ? "  \u2013  out of date, being calculated anew" : ""));
        if (!text.equals(state.getText())) {
            state.setText(text);
        }
        state.setForeground(stale ? Palette.of(state).warning() : Palette.of(state).muted());
    }

    private void step(SiteSession session, Composite body, String number, Working.Step step) {
        QuantityFormat format = session.format();
        line(body);
        text(body, number + Texts.capitalised(step.meaning()), true);
        boolean named = step.formula().startsWith(step.symbol() + " =");
        code(body, named ? step.formula() : step.symbol() + " = " + step.formula(), false);
        if (step.substituted() != null && !step.substituted().isBlank() && !step.substituted().equals(step.formula())) {
            code(body, named ? step.substituted() : Texts.padding(step.symbol()) + " = " + step.substituted(), false);
        }
        if (step.result() != null) {
            code(body, Texts.padding(step.symbol()) + " = " + format.format(step.result()), true);
        }
        if (!step.inputs().isEmpty()) {
            inputs(session, body, step.inputs(), format);
        }
        text(body, "Source: " + step.source(), false).setForeground(Palette.of(body).muted());
    }

    private void inputs(SiteSession session, Composite body, List<Working.Input> inputs, QuantityFormat format) {
        Composite table = toolkit.createComposite(body);
        table.setLayout(layout(3, 16, 2, 2));
        table.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        for (Working.Input input : inputs) {
            Label symbol = toolkit.createLabel(table, Texts.plain(input.symbol()));
            symbol.setFont(JFaceResources.getTextFont());
            symbol.setLayoutData(new TableWrapData(TableWrapData.LEFT, TableWrapData.MIDDLE));
            String value = format.format(input.value());
            Optional<Element> element = session.element(input.elementId());
            if (element.isPresent() && input.feature() != null) {
                Hyperlink link = toolkit.createHyperlink(table, value, SWT.NONE);
                link.setToolTipText("Shows the field where this was entered");
                link.addHyperlinkListener(new HyperlinkAdapter() {
                    @Override
                    public void linkActivated(HyperlinkEvent event) {
                        session.reveal(element.get(), element.get().eClass().getEStructuralFeature(input.feature()));
                    }
                });
            } else {
                toolkit.createLabel(table, Texts.plain(value));
            }
            String of = element.map(found -> ", " + Words.name(found)).orElse("");
            Label meaning = toolkit.createLabel(table, Texts.plain(input.meaning() + of), SWT.WRAP);
            meaning.setForeground(Palette.of(table).label());
            meaning.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        }
    }

    private Label text(Composite body, String text, boolean bold) {
        Label label = toolkit.createLabel(body, Texts.plain(text), SWT.WRAP);
        if (bold) {
            label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
        label.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        return label;
    }

    private void code(Composite body, String text, boolean bold) {
        Label label = text(body, text, false);
        label.setFont(bold ? JFaceResources.getFontRegistry().getBold(JFaceResources.TEXT_FONT) : JFaceResources.getTextFont());
        ((TableWrapData) label.getLayoutData()).indent = 16;
    }

    private void line(Composite body) {
        Label line = toolkit.createSeparator(body, SWT.HORIZONTAL);
        TableWrapData data = new TableWrapData(TableWrapData.FILL_GRAB);
        data.maxHeight = 2;
        line.setLayoutData(data);
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
    }

    @Override
    protected void forget() {
        shown = null;
    }

    /** The widget of the whole, for tests. */
    public Composite control() {
        return form;
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
