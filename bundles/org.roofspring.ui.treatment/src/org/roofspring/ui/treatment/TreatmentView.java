package org.roofspring.ui.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Element;
import org.roofspring.site.Use;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.look.CardList;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/**
 * The treatment editor: a palette of steps, the trains as rows of steps from tank to use with what they take out, and
 * below them the verdict on the use in focus and the work of each week.
 */
public final class TreatmentView extends SessionView {
    public static final String ID = "org.roofspring.ui.treatment";
    private static final int[] PALETTE_AND_BOARD = {21, 79};
    private static final int[] BOARD_AND_VERDICT = {64, 36};

    private TrainBoard board;
    private StepPalette palette;
    private CardList verdict;
    private String focusUse;

    public TreatmentView() {
        super(Aspect.RESULTS, Aspect.MODEL, Aspect.SELECTION);
    }

    @Override
    protected void createContent(Composite parent) {
        SashForm halves = new SashForm(parent, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        palette = new StepPalette(halves, kind -> board.add(kind));
        SashForm right = new SashForm(halves, SWT.VERTICAL);
        Composite top = new Composite(right, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(top);
        Label hint = new Label(top, SWT.WRAP);
        hint.setText("Drag a step, or press Alt and an arrow key, to move it. A bar is full where the target is reached.");
        hint.setToolTipText("Space sets a step aside, Delete removes it. Drag a use to another train to draw its water there.");
        hint.setForeground(Palette.of(hint).muted());
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 4).applyTo(hint);
        board = new TrainBoard(top, this::session);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(board.control());
        verdict = new CardList(right, target -> session().ifPresent(session -> follow(session, target)));
        right.setWeights(BOARD_AND_VERDICT);
        halves.setWeights(PALETTE_AND_BOARD);
        Action train = new Action("New train", Icons.descriptor("add")) {
            @Override
            public void run() {
                session().ifPresent(session -> TrainEdits.addTrain(session, null));
            }
        };
        train.setToolTipText("New train");
        getViewSite().getActionBars().getToolBarManager().add(train);
    }

    private static void follow(SiteSession session, Object target) {
        if (target instanceof FindingKey finding) {
            session.select(session.selection().to(finding));
        } else {
            session.element((String) target).ifPresent(element -> session.select(session.selection().to(element)));
        }
    }

    @Override
    protected void show(SiteSession session) {
        if (session.selection().element() instanceof Use use) {
            focusUse = use.getId();
        }
        BoardModel model = BoardReader.read(session, focusUse);
        board.show(model);
        verdict.show(introduction(model), cards(session, model));
    }

    private static String introduction(BoardModel model) {
        return model.lanes().isEmpty() ? "This site has neither a train nor a use. Add a step to begin a train."
                : "No verdict is more than its conditions: have the water tested, and follow your local health "
                        + "authority.";
    }

    private List<Card> cards(SiteSession session, BoardModel model) {
        List<Card> cards = new ArrayList<>();
        focus(session, model).ifPresent(use -> BoardReader.verdict(session.live().results(), use)
                .ifPresent(said -> {
                    cards.add(verdictCard(session, use, said));
                    creditsCard(session, use).ifPresent(cards::add);
                }));
        model.lanes().stream().filter(lane -> lane.trainId() != null).forEach(lane -> {
            workCard(session, lane).ifPresent(cards::add);
            assumedCard(session, lane).ifPresent(cards::add);
        });
        return cards;
    }

    /** The use whose verdict is told: the one selected last, else one that is drunk, else any with a verdict. */
    private Optional<String> focus(SiteSession session, BoardModel model) {
        List<String> judged = model.lanes().stream().flatMap(lane -> lane.uses().stream())
                .filter(use -> use.level() != null).map(BoardModel.Use::id).toList();
        return Optional.ofNullable(focusUse).filter(judged::contains)
                .or(() -> laneOfSelection(session, model).flatMap(TreatmentView::target))
                .or(() -> model.lanes().stream().flatMap(lane -> target(lane).stream()).findFirst())
                .or(() -> judged.stream().findFirst());
    }

    private static Optional<String> target(BoardModel.Lane lane) {
        return Optional.ofNullable(lane.target()).map(BoardModel.Target::useId);
    }

    private static Optional<BoardModel.Lane> laneOfSelection(SiteSession session, BoardModel model) {
        String id = session.selection().element() instanceof Element element ? element.getId() : "";
        return model.lanes().stream().filter(lane -> id.equals(lane.trainId())
                || lane.steps().stream().anyMatch(step -> step.id().equals(id))).findFirst();
    }

    private static Card verdictCard(SiteSession session, String useId, Verdict said) {
        boolean stale = session.live().outOfDate(BoardReader.CALCULATION);
        Card.Tone tone = stale ? Card.Tone.STALE : switch (said.level()) {
            case GOOD -> Card.Tone.GOOD;
            case CONDITIONAL -> Card.Tone.WARNING;
            case BAD -> Card.Tone.DANGER;
        };
        String icon = switch (said.level()) {
            case GOOD -> "shield";
            case CONDITIONAL -> "warning";
            case BAD -> "danger";
        };
        String name = session.element(useId).map(Words::name).orElse(useId);
        return new Card(icon, tone, name + ": " + said.text() + (stale ? " (out of date)" : ""),
                String.join("\n", said.reasons()), List.of(), List.of(new Card.Link("Use", useId),
                        new Card.Link("Workings", new FindingKey(BoardReader.CALCULATION, "logBacteria", useId))));
    }

    /** Which source credits what, and what another source would have given: none of it may be taken on trust. */
    private static Optional<Card> creditsCard(SiteSession session, String useId) {
        return session.live().results().finding(BoardReader.CALCULATION, "credits", useId).map(Finding::value)
                .map(Table.class::cast).map(table -> {
                    List<String> lines = new ArrayList<>();
                    for (List<Object> row : table.rows()) {
                        String log = row.get(2) == null ? "" : ": " + session.format().format((Quantity) row.get(2))
                                + " log while it works";
                        String other = row.get(5).toString().isEmpty() ? "" : "; not used: " + row.get(5);
                        lines.add(row.get(0) + ", " + row.get(1) + log + ". " + row.get(4) + other);
                    }
                    return new Card("info", Card.Tone.PLAIN, "Where credits and target come from", "", lines,
                            List.of());
                });
    }

    /** What the site does not say, and what was taken instead. */
    private static Optional<Card> assumedCard(SiteSession session, BoardModel.Lane lane) {
        return session.live().results().finding(BoardReader.CALCULATION, "assumed", lane.trainId())
                .map(finding -> ((Table) finding.value()).rows()).filter(rows -> !rows.isEmpty())
                .map(rows -> new Card("info", Card.Tone.PLAIN, "Taken for want of a value: " + lane.name(), "",
                        rows.stream().map(row -> row.get(0) + ", " + row.get(1) + ": " + row.get(2) + ". "
                                + row.get(3)).toList(), List.of()));
    }

    /** What has to be done each week, and what comes round less often. */
    private static Optional<Card> workCard(SiteSession session, BoardModel.Lane lane) {
        var results = session.live().results();
        Optional<Table> work = results.finding(BoardReader.CALCULATION, "work", lane.trainId()).map(Finding::value)
                .map(Table.class::cast);
        Optional<String> total = results.finding(BoardReader.CALCULATION, "weeklyWork", lane.trainId())
                .map(finding -> BoardReader.minutes(((FindingValue.Number) finding.value()).quantity()));
        return work.flatMap(table -> total.map(minutes -> {
            List<String> weekly = new ArrayList<>();
            List<String> seldom = new ArrayList<>();
            int often = table.columns().indexOf("At least weekly");
            for (List<Object> row : table.rows()) {
                String line = row.get(0) + ": " + row.get(1) + ", every "
                        + session.format().format((Quantity) row.get(2)) + ", "
                        + session.format().format((Quantity) row.get(3));
                (Boolean.TRUE.equals(row.get(often)) ? weekly : seldom).add(line);
            }
            return new Card("upkeep", Card.Tone.PLAIN, "Work for " + lane.name() + ": " + minutes + " in a week",
                    weekly.isEmpty() ? "Nothing comes round every week." : String.join("\n", weekly),
                    seldom, List.of(new Card.Link("Workings", new FindingKey(BoardReader.CALCULATION, "weeklyWork",
                            lane.trainId()))));
        }));
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
        if (aspect == Aspect.SELECTION) {
            board.reveal();
        }
    }

    @Override
    protected void forget() {
        focusUse = null;
        board.show(new BoardModel(List.of()));
        verdict.show("", List.of());
    }

    /** The board, for tests. */
    public TrainBoard board() {
        return board;
    }

    /** The palette, for tests. */
    public StepPalette palette() {
        return palette;
    }

    /** The verdict and the work as shown, for tests. */
    public List<Card> cards() {
        return verdict.cards();
    }

    @Override
    public void setFocus() {
        board.setFocus();
    }
}
