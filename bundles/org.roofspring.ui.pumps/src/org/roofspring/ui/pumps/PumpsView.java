package org.roofspring.ui.pumps;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.site.Element;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpKind;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSelection;
import org.roofspring.ui.session.SiteSession;

/**
 * The pump review board: every candidate for a pump in a grid, the curves of the selected ones on the band of the
 * system, and what reviewers say.
 */
public final class PumpsView extends SessionView {
    public static final String ID = "org.roofspring.ui.pumps";
    private static final int[] GRID_AND_BELOW = {52, 48};
    private static final int[] GRID_AND_BESIDE = {54, 46};
    /** Lower than this, grid and curves stand beside each other [pixels]. */
    private static final int LOW = 460;
    private static final int[] CURVES_AND_REVIEW = {56, 44};

    private final Map<SiteSession, LastGood> lastGood = new WeakHashMap<>();
    private Combo pumps;
    private SashForm halves;
    private SashForm below;
    private Action reviewing;
    private Label state;
    private CandidateGrid grid;
    private CurveChart chart;
    private ReviewPane review;
    private Action importing;
    private List<String> pumpIds = List.of();
    private String pumpId;
    private String filterProblem = "";
    private BoardModel model = BoardModel.EMPTY;

    public PumpsView() {
        super(Aspect.RESULTS, Aspect.MODEL, Aspect.SELECTION, Aspect.DRAFTS);
    }

    @Override
    protected void createContent(Composite parent) {
        Composite line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(8, 4).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        pumps = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        pumps.setToolTipText("Pump whose candidates are shown");
        pumps.addListener(SWT.Selection, event -> session().ifPresent(session -> {
            pumpId = pumpIds.get(pumps.getSelectionIndex());
            show(session);
        }));
        state = new Label(line, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(state);
        halves = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        grid = new CandidateGrid(halves, new CandidateGrid.Listener() {
            @Override
            public void selected(List<String> ids) {
                session().ifPresent(session -> follow(session, ids));
            }

            @Override
            public void filtered(String problem) {
                filterProblem = problem;
                session().ifPresent(PumpsView.this::say);
            }
        });
        below = new SashForm(halves, SWT.HORIZONTAL);
        chart = new CurveChart(below);
        review = new ReviewPane(below);
        halves.setWeights(GRID_AND_BELOW);
        below.setWeights(CURVES_AND_REVIEW);
        halves.addListener(SWT.Resize, event -> arrange());
        reviewing = new Action("Reviews", IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                arrange();
            }
        };
        reviewing.setImageDescriptor(Icons.descriptor("remark"));
        reviewing.setToolTipText("Show what reviewers say, in place of the curves where there is room for one only");
        reviewing.setChecked(false);
        getViewSite().getActionBars().getToolBarManager().add(reviewing);
        importing = new Action("Import candidates...", Icons.descriptor("open")) {
            @Override
            public void run() {
                session().ifPresent(PumpsView.this::chooseFiles);
            }
        };
        importing.setToolTipText("Import candidates from CSV files, such as flow[L/s],head[m],efficiency[%],npshr[m]");
        getViewSite().getActionBars().getToolBarManager().add(importing);
    }

    /** Below the grid there is room for curves and reviews; beside it, where the part is low, for one of them. */
    private void arrange() {
        boolean low = halves.getSize().y < LOW;
        int orientation = low ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (halves.getOrientation() != orientation) {
            halves.setOrientation(orientation);
            halves.setWeights(low ? GRID_AND_BESIDE : GRID_AND_BELOW);
        }
        below.setMaximizedControl(!low ? null : reviewing.isChecked() ? review.control() : chart.control());
    }

    /** What was selected in the grid is selected in the whole window, with the workings of its verdict. */
    private void follow(SiteSession session, List<String> ids) {
        if (!ids.isEmpty()) {
            String last = ids.get(ids.size() - 1);
            session.element(last).ifPresent(element -> session.select(new SiteSelection(element, null, null,
                    new FindingKey(ReviewAnswer.CALCULATION, ReviewAnswer.VERDICT, last))));
        }
        details(session);
    }

    private void chooseFiles(SiteSession session) {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText("Import candidates");
        dialog.setFilterNames(new String[] {"Pump files (*.csv)", "All files"});
        dialog.setFilterExtensions(new String[] {"*.csv", "*"});
        session.file().ifPresent(file -> dialog.setFilterPath(file.getParent().toString()));
        if (dialog.open() != null) {
            Path folder = Path.of(dialog.getFilterPath());
            try {
                importFiles(Arrays.stream(dialog.getFileNames()).map(folder::resolve).toList());
            } catch (IOException e) {
                MessageDialog.openError(getSite().getShell(), "This file cannot be read", e.toString());
            } catch (IllegalArgumentException e) {
                MessageDialog.openError(getSite().getShell(), "These pumps cannot be imported", e.getMessage());
            }
        }
    }

    /**
     * Imports files as candidates for the pump that is shown.
     *
     * @throws IOException              when a file cannot be read
     * @throws IllegalArgumentException when a file is no table of pumps
     */
    public List<PumpCandidate> importFiles(List<Path> files) throws IOException {
        SiteSession session = session().orElseThrow();
        return PumpEdits.importFiles(session, (Pump) session.element(pumpId).orElseThrow(), files);
    }

    @Override
    protected void summarise(SiteSession session) {
        // also while the view is hidden, so that good figures are there when bad input comes
        lastGood(session).take(session.live().results());
    }

    private LastGood lastGood(SiteSession session) {
        return lastGood.computeIfAbsent(session, key -> new LastGood());
    }

    @Override
    protected void show(SiteSession session) {
        fillPumps(session);
        Pump pump = session.element(pumpId).filter(Pump.class::isInstance).map(Pump.class::cast).orElse(null);
        model = BoardReader.read(session, pump, lastGood(session));
        importing.setEnabled(pump != null);
        grid.show(model, DisplayUnits.system(session.site()), session.format());
        selectInGrid(session);
        say(session);
        details(session);
    }

    private void fillPumps(SiteSession session) {
        List<Pump> all = session.site().getPumps();
        pump(session.selection().element()).ifPresent(selected -> pumpId = selected.getId());
        if (all.stream().noneMatch(pump -> pump.getId().equals(pumpId))) {
            pumpId = all.stream().filter(pump -> !pump.getCandidates().isEmpty()).findFirst()
                    .or(() -> all.stream().filter(pump -> pump.getKind() != PumpKind.HAND_PUMP).findFirst())
                    .or(() -> all.stream().findFirst()).map(Element::getId).orElse(null);
        }
        pumpIds = all.stream().map(Element::getId).toList();
        String[] names = all.stream().map(Words::name).toArray(String[]::new);
        if (!Arrays.equals(names, pumps.getItems())) {
            pumps.setItems(names);
            pumps.getParent().layout();
        }
        pumps.select(pumpIds.indexOf(pumpId));
        pumps.setEnabled(names.length > 1);
        pumps.setVisible(names.length > 0);
    }

    private static Optional<Pump> pump(Object element) {
        return element instanceof Pump pump ? Optional.of(pump)
                : element instanceof PumpCandidate candidate && candidate.eContainer() instanceof Pump pump
                ? Optional.of(pump) : Optional.empty();
    }

    /** A pump or candidate that is selected elsewhere is selected in the grid. */
    private void selectInGrid(SiteSession session) {
        if (session.selection().element() instanceof NamedElement element && model.row(element.getId()).isPresent()
                && !grid.selectedIds().contains(element.getId())) {
            grid.select(List.of(element.getId()));
        }
    }

    private void say(SiteSession session) {
        String text = filterProblem.isEmpty() ? model.state() : "\u26a0 " + capital(filterProblem) + ".";
        state.setText(text.replace("&", "&&"));
        state.setToolTipText(text);
        state.setForeground(model.stale() || !filterProblem.isEmpty() ? Palette.of(state).warning()
                : Palette.of(state).muted());
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** Curves of what is selected, and what is said of the row that was clicked last. */
    private void details(SiteSession session) {
        List<BoardRow> selected = new ArrayList<>();
        grid.selectedIds().forEach(id -> model.row(id).ifPresent(selected::add));
        UnitSystem system = DisplayUnits.system(session.site());
        QuantityFormat format = session.format();
        chart.show(model, selected, system, format);
        BoardRow last = selected.isEmpty() ? null : selected.get(selected.size() - 1);
        NamedElement about = last == null ? null : (NamedElement) session.element(last.id()).orElse(null);
        review.show(session, about, last == null ? "" : verdict(last),
                lastGood(session).take(session.live().results()));
    }

    /** The reasons for a verdict, which the grid has no room for. */
    private static String verdict(BoardRow row) {
        String verdict = row.text(Column.VERDICT);
        String reasons = row.text(Column.REASONS);
        return row.name() + ": " + (verdict.isEmpty() ? "not yet known" : verdict.toLowerCase(Locale.ROOT))
                + (reasons.isEmpty() ? "" : "; " + reasons) + (row.verdictStale() ? " (out of date)" : "") + ".";
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        if (aspect != Aspect.SELECTION) {
            show(session);
            return;
        }
        if (pump(session.selection().element()).filter(pump -> !pump.getId().equals(pumpId)).isPresent()) {
            show(session);
        } else if (!grid.selectedIds().contains(id(session.selection().element()))) {
            selectInGrid(session);
            details(session);
        }
    }

    private static String id(Object element) {
        return element instanceof Element identified ? identified.getId() : "";
    }

    @Override
    protected void forget() {
        pumpId = null;
        model = BoardModel.EMPTY;
    }

    /** The grid, for tests. */
    public CandidateGrid grid() {
        return grid;
    }

    /** The curves, for tests. */
    public CurveChart chart() {
        return chart;
    }

    /** What reviewers say, for tests. */
    public ReviewPane review() {
        return review;
    }

    /** What the board shows, for tests. */
    public BoardModel model() {
        return model;
    }

    /** The sentence above the grid, for tests. */
    public String state() {
        return state.getText();
    }

    @Override
    public void setFocus() {
        grid.control().setFocus();
    }
}
