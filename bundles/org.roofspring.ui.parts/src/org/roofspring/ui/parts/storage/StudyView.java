package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PartInitException;
import org.roofspring.calc.Outcome;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/**
 * A part that shows findings of storage as plots, each with a table twin. While newer findings are being computed the
 * old ones stay in grey, marked as out of date; they also stay, so marked, when the edited design has no answer.
 */
public abstract class StudyView extends SessionView {
    private static final int MARGIN = 8;
    private static final int SPACING = 8;
    private static final String HINT = "Point at a value to read it; click it for its workings.";
    private static final String TABLE_HINT = "Select a row for the workings; double-click to bring them up.";

    /**
     * What can be chosen to be seen.
     *
     * @param title in the list of pages
     * @param plot  null where there is a table only
     * @param sheet the same values as a table
     */
    public record Page(String title, Plot plot, Sheet sheet) {
    }

    private final String calculation;
    private final List<Object> basis = new ArrayList<>();
    private Combo choice;
    private Label state;
    private Label reading;
    private Composite stack;
    private PlotCanvas canvas;
    private SheetTable table;
    private Action asTable;
    private Action copyPicture;
    private List<Page> pages = List.of();
    private String chosen;
    private boolean stale;
    private SiteSession shownSession;

    /** @param calculation whose findings are shown */
    protected StudyView(String calculation) {
        super(Aspect.RESULTS);
        this.calculation = calculation;
    }

    /**
     * The pages of an answer.
     *
     * @param outcome of the calculation
     */
    abstract List<Page> pages(SiteSession session, Outcome.Completed outcome, Figures figures);

    /** What the answer comes to, in one line. */
    abstract String summary(SiteSession session, Outcome.Completed outcome, Figures figures);

    @Override
    protected void createContent(Composite parent) {
        Composite line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(MARGIN, 3).spacing(SPACING, 0).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        choice = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        choice.setToolTipText("What is shown");
        choice.addListener(SWT.Selection, event -> choose(choice.getText()));
        GridDataFactory.swtDefaults().exclude(true).applyTo(choice);
        choice.setVisible(false);
        state = new Label(line, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(100, SWT.DEFAULT)
                .applyTo(state);
        parent.addListener(SWT.Resize, event -> fit());
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(new StackLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(stack);
        canvas = new PlotCanvas(stack, this::read, this::select, this::openWorkings);
        table = new SheetTable(stack, this::select, this::openWorkings);
        ((StackLayout) stack.getLayout()).topControl = canvas.control();
        reading = new Label(parent, SWT.NONE);
        reading.setForeground(Palette.of(reading).muted());
        GridDataFactory.fillDefaults().grab(true, false).indent(10, 2).applyTo(reading);
        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        asTable = action("Show as a table", "table", IAction.AS_CHECK_BOX, this::showPage);
        copyPicture = action("Copy as a picture", "copy-picture", IAction.AS_PUSH_BUTTON, this::copyPicture);
        bar.add(asTable);
        bar.add(copyPicture);
        bar.add(action("Copy as comma-separated values", "copy-table", IAction.AS_PUSH_BUTTON, this::copyCsv));
        read(null);
    }

    private static Action action(String text, String icon, int style, Runnable run) {
        Action action = new Action(text, style) {
            @Override
            public void run() {
                run.run();
            }
        };
        action.setImageDescriptor(Icons.descriptor(icon));
        action.setToolTipText(text);
        return action;
    }

    @Override
    protected void show(SiteSession session) {
        if (session != shownSession) {
            forget();
            shownSession = session;
        }
        Optional<Outcome.Completed> outcome = session.live().results().completed(calculation);
        stale = outcome.isEmpty() || session.live().outOfDate(calculation);
        Figures figures = new Figures(DisplayUnits.system(session.site()), session.format());
        // what is out of date is left as it is, lest old and new findings stand in one picture
        boolean fixed = stale && !pages.isEmpty();
        if (outcome.isPresent() && !fixed && isNew(session, outcome.get(), figures)) {
            pages = pages(session, outcome.get(), figures);
            showChoice();
        }
        String words = outcome.map(found -> summary(session, found, figures)).orElse("");
        if (outcome.isEmpty()) {
            String why = session.live().results().result(calculation)
                    .map(result -> String.join(" ", result.reasons())).orElse("It is being calculated.");
            words = (pages.isEmpty() ? "Nothing to show yet. " : "Out of date: the design has no answer now. ") + why;
        } else if (stale) {
            words = "Out of date, being calculated anew.  " + words;
        }
        say(words);
        showPage();
    }

    /** Whether anything that the pages are made of is another than before. */
    private boolean isNew(SiteSession session, Outcome.Completed outcome, Figures figures) {
        List<Object> now = new ArrayList<>(List.of(outcome, figures.system(), session.format().symbol(
                org.roofspring.quantity.Units.MONEY)));
        now.addAll(others(session));
        boolean same = now.size() == basis.size();
        for (int i = 0; same && i < now.size(); i++) {
            // findings never change, so the same object holds the same values, and comparing it value by value is dear
            same = now.get(i) == basis.get(i) || now.get(i) instanceof String && Objects.equals(now.get(i), basis.get(i));
        }
        basis.clear();
        basis.addAll(now);
        return !same;
    }

    /** Findings of other calculations that are shown too. */
    List<Object> others(SiteSession session) {
        return List.of();
    }

    private void showChoice() {
        List<String> titles = pages.stream().map(Page::title).toList();
        if (!titles.equals(List.of(choice.getItems()))) {
            choice.setItems(titles.toArray(String[]::new));
            ((GridData) choice.getLayoutData()).exclude = titles.size() < 2;
            choice.setVisible(titles.size() >= 2);
            fit();
        }
        if (!titles.contains(chosen)) {
            chosen = titles.isEmpty() ? null : titles.getFirst();
        }
        choice.setText(chosen == null ? "" : chosen);
    }

    private Optional<Page> page() {
        return pages.stream().filter(page -> page.title().equals(chosen)).findFirst();
    }

    /** Shows another page. */
    public void choose(String title) {
        chosen = title;
        choice.setText(title);
        showPage();
    }

    private void showPage() {
        Optional<Page> page = page();
        boolean tableOnly = page.isPresent() && page.get().plot() == null;
        boolean showTable = page.isPresent() && (tableOnly || asTable.isChecked());
        asTable.setEnabled(!tableOnly);
        copyPicture.setEnabled(!tableOnly);
        canvas.show(page.map(Page::plot).orElse(null), stale);
        if (showTable) {
            table.show(page.get().sheet(), stale);
        }
        StackLayout layout = (StackLayout) stack.getLayout();
        Control top = showTable ? table.control() : canvas.control();
        if (layout.topControl != top) {
            layout.topControl = top;
            stack.layout();
            read(null);
        }
    }

    private void say(String words) {
        String text = words.replace("&", "&&");
        if (!text.equals(state.getText())) {
            state.setText(text);
            fit();
        }
        state.setForeground(stale ? Palette.of(state).warning() : Palette.of(state).muted());
    }

    /** Gives the summary as many lines as it needs in the width there is. */
    private void fit() {
        Composite line = state.getParent();
        Composite parent = line.getParent();
        int beside = choice.getVisible() ? choice.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + SPACING : 0;
        ((GridData) state.getLayoutData()).widthHint = Math.max(100,
                parent.getClientArea().width - 2 * MARGIN - beside);
        line.requestLayout();
        parent.layout(new Control[] { state, choice });
    }

    private void read(String words) {
        String text = words == null ? tableShown() ? TABLE_HINT : HINT : words.replace("&", "&&");
        if (!text.equals(reading.getText())) {
            reading.setText(text);
            reading.setToolTipText(text);
            canvas.control().setToolTipText(words);
        }
    }

    private boolean tableShown() {
        return ((StackLayout) stack.getLayout()).topControl == table.control();
    }

    private void select(FindingKey finding) {
        session().ifPresent(session -> session.select(session.selection().to(finding)));
    }

    private void openWorkings() {
        try {
            getSite().getPage().showView(PartIds.WORKINGS);
        } catch (PartInitException e) {
            throw new IllegalStateException("the workings part is missing", e);
        }
    }

    /** Puts the plot on the clipboard as a picture. */
    public void copyPicture() {
        if (page().isPresent()) {
            Image picture = canvas.picture();
            copy(picture.getImageData(), ImageTransfer.getInstance());
            picture.dispose();
        }
    }

    /** Puts the table twin on the clipboard as comma-separated values. */
    public void copyCsv() {
        page().ifPresent(page -> copy(page.sheet().csv(), TextTransfer.getInstance()));
    }

    private void copy(Object content, Transfer as) {
        Clipboard clipboard = new Clipboard(stack.getDisplay());
        clipboard.setContents(new Object[] { content }, new Transfer[] { as });
        clipboard.dispose();
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
    }

    @Override
    protected void forget() {
        shownSession = null;
        basis.clear();
        pages = List.of();
        canvas.show(null, false);
        table.clear();
    }

    /** The pages there are, for tests. */
    public List<Page> pages() {
        return pages;
    }

    /** Whether what is shown is out of date, for tests. */
    public boolean isStale() {
        return stale;
    }

    /** The line above the plot, for tests. */
    public String summary() {
        return state.getText();
    }

    /** The canvas of the plot, for tests. */
    public Control plotControl() {
        return canvas.control();
    }

    /** The widget of the table twin, for tests. */
    public Table tableControl() {
        return table.control();
    }

    /** Shows the table twin, or the plot again. */
    public void showTable(boolean shown) {
        asTable.setChecked(shown);
        showPage();
    }

    @Override
    public void setFocus() {
        ((StackLayout) stack.getLayout()).topControl.setFocus();
    }
}
