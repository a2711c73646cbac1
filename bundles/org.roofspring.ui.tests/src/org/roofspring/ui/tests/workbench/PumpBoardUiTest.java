package org.roofspring.ui.tests.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.ui.field.FeatureText;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.part.Sites;
import org.roofspring.ui.parts.form.SiteEditor;
import org.roofspring.ui.pumps.BoardRow;
import org.roofspring.ui.pumps.Column;
import org.roofspring.ui.pumps.PumpEdits;
import org.roofspring.ui.pumps.PumpsView;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;

/** The pump review board in a real window: ten candidates imported, compared, remarked upon and signed off. */
class PumpBoardUiTest {
    private static final String REVIEW = "pump.review";
    private static final List<Column> FIGURES = List.of(Column.FLOW, Column.FLOW_LOWEST, Column.FLOW_HIGHEST,
            Column.HEAD, Column.EFFICIENCY, Column.OFF_BEST, Column.NPSH_MARGIN, Column.POWER, Column.ENERGY,
            Column.YEARLY_ENERGY, Column.YEARLY_COST, Column.TIME_TO_FILL, Column.STARTS);

    @TempDir
    Path folder;
    private Path file;
    private SiteEditor editor;
    private SiteSession session;
    private PumpsView view;
    private Pump pump;

    @BeforeEach
    void openBoard() {
        file = Window.demoSite(folder, "hill-school.site");
        Sites.open(Window.page(), file);
        editor = (SiteEditor) Window.page().getActiveEditor();
        session = editor.session();
        pump = session.site().getPumps().get(0);
        view = Window.view(PumpsView.ID);
        reviewed();
    }

    @AfterEach
    void close() {
        maximise(IWorkbenchPage.STATE_RESTORED);
        Window.page().hideView(view);
        Window.closeAll();
    }

    private void reviewed() {
        Spin.until("the pump review is up to date",
                () -> session.live().results().result(REVIEW).isPresent() && !session.live().outOfDate(REVIEW));
    }

    private void maximise(int state) {
        IWorkbenchPartReference part = Window.page().getReference(view);
        if (part != null) {
            Window.page().setPartState(part, state);
            Spin.during(200);
        }
    }

    private List<PumpCandidate> importTen() throws IOException {
        List<PumpCandidate> added = view.importFiles(List.of(folder.resolve("pumps/candidates.csv")));
        reviewed();
        return added;
    }

    private void click(Point at, int modifiers) {
        for (int type : new int[] {SWT.MouseDown, SWT.MouseUp}) {
            Event event = new Event();
            event.x = at.x;
            event.y = at.y;
            event.button = 1;
            event.count = 1;
            event.stateMask = modifiers | (type == SWT.MouseUp ? SWT.BUTTON1 : 0);
            view.grid().control().notifyListeners(type, event);
        }
        // a second click soon after would be a double click
        Spin.during(50 + view.grid().control().getDisplay().getDoubleClickTime());
    }

    private void clickHeading(Column column) {
        click(view.grid().headingAt(column).orElseThrow(), 0);
    }

    private void clickRow(String id, int modifiers) {
        click(view.grid().rowAt(id).orElseThrow(), modifiers);
    }

    private List<String> shownIds() {
        return view.grid().shownRows().stream().map(BoardRow::id).toList();
    }

    private BoardRow row(String id) {
        return view.model().row(id).orElseThrow();
    }

    private void select(EObject element) {
        session.select(session.selection().to(element));
        Spin.settle();
    }

    /** Every figure on the board is a cell of the finding, to the last digit. */
    private void showsTheFindings() {
        FindingValue.Table table = (FindingValue.Table) session.live().results()
                .finding(REVIEW, "candidates", pump.getId()).orElseThrow().value();
        List<String> titles = List.of("Flow", "Flow, lowest", "Flow, highest", "Head", "Efficiency", "Off best flow",
                "NPSH margin, worst", "Power", "Energy", "Energy a year", "Cost a year", "Time to fill",
                "Starts a day");
        for (List<Object> found : table.rows()) {
            BoardRow row = row((String) found.get(table.columns().indexOf("Element")));
            for (int i = 0; i < FIGURES.size(); i++) {
                assertEquals(found.get(table.columns().indexOf(titles.get(i))), row.cells().get(FIGURES.get(i)),
                        row.name() + ", " + titles.get(i));
            }
            assertEquals(found.get(table.columns().indexOf("Verdict")), row.text(Column.VERDICT));
            assertFalse(row.stale(Column.FLOW) || row.stale(Column.VERDICT), row.name());
        }
        assertEquals(table.rows().size(), view.model().rows().size());
    }

    @Test
    void tenCandidatesAreImportedComparedRemarkedUponAndSignedOff() throws Exception {
        assertEquals(4, view.model().rows().size(), "the pump as designed and three candidates");
        List<PumpCandidate> added = importTen();
        assertEquals(10, added.size());
        assertEquals(13, pump.getCandidates().size());
        assertEquals("Alder 2 (invented)", added.get(0).getName());
        assertEquals(Quantity.parse("0.47 L/s", Dimension.FLOW),
                added.get(0).getPoints().get(1).getFlow(), "as the file has it");
        showsTheFindings();
        Window.command("org.eclipse.ui.edit.undo");
        assertEquals(3, pump.getCandidates().size(), "the import is one step");
        Window.command("org.eclipse.ui.edit.redo");
        reviewed();
        assertEquals(13, pump.getCandidates().size());
        showsTheFindings();
        String alder2 = added.get(0).getId();
        String alder3 = added.get(1).getId();

        maximise(IWorkbenchPage.STATE_MAXIMIZED);
        clickHeading(Column.FLOW);
        List<Double> flows = view.grid().shownRows().stream()
                .map(row -> row.number(Column.FLOW).orElseThrow().si()).toList();
        assertEquals(14, flows.size());
        assertEquals(flows.stream().sorted().toList(), flows, "ascending");
        clickHeading(Column.FLOW);
        assertEquals(flows.stream().sorted(Comparator.reverseOrder()).toList(), view.grid().shownRows().stream()
                .map(row -> row.number(Column.FLOW).orElseThrow().si()).toList(), "descending");

        view.grid().filter(Column.PUMP, "alder");
        Spin.settle();
        assertEquals(List.of(alder3, alder2), shownIds(), "both pumps of a name, the larger flow first");
        view.grid().filter(Column.PUMP, "");
        view.grid().filter(Column.HEAD, ">16.5");
        Spin.settle();
        assertTrue(shownIds().contains(alder3) && !shownIds().contains(alder2), shownIds().toString());
        assertTrue(view.grid().shownRows().stream().allMatch(row -> row.number(Column.HEAD).get().si() > 16.5));
        view.grid().filter(Column.HEAD, "high");
        assertTrue(view.state().contains("filter \"high\" over Head is not understood"), view.state());
        assertEquals(14, shownIds().size(), "what is not understood hides nothing");
        view.grid().filter(Column.HEAD, "");
        Spin.settle();

        clickRow(alder2, 0);
        assertEquals(alder2, ((PumpCandidate) session.selection().element()).getId());
        assertEquals("verdict", session.selection().finding().findingId(), "its workings are at hand");
        clickRow(alder3, SWT.MOD1);
        assertEquals(List.of(alder2, alder3), view.grid().selectedIds());
        assertEquals(List.of("System, lowest need", "System, highest need", "Alder 2 (invented)", "Alder 3 (invented)"),
                view.chart().legend());
        assertEquals(28, view.chart().drawn("Alder 3 (invented)")[0], 1e-12, "the head against a closed valve");

        clickRow(alder3, 0);
        view.review().say("Question", "", "Is the seal fit for sand?");
        assertEquals("\u26a0 Give the name of who says it.", view.review().told());
        view.review().say("Question", "R. Viewer", "Is the seal fit for sand?");
        Spin.settle();
        assertEquals("1 open question", row(alder3).text(Column.REVIEW));
        Remark question = remark(0);
        assertEquals(RemarkKind.QUESTION, question.getKind());
        view.review().answerTo(question);
        view.review().say("", "M. Arden", "Yes, with the strainer of 1 mm.");
        Spin.settle();
        assertEquals("Yes, with the strainer of 1 mm.", question.getReplies().get(0).getText());
        assertEquals(RemarkKind.ANSWER, question.getReplies().get(0).getKind());
        assertTrue(view.review().cards().get(0).footnotes().get(0).startsWith("Answer by M. Arden"));
        session.undo();
        assertTrue(question.getReplies().isEmpty(), "an answer is one step");
        session.redo();
        reviewed();

        view.review().say("Sign-off", "R. Viewer", "");
        reviewed();
        Remark signOff = remark(1);
        assertEquals(RemarkKind.ACCEPTED, signOff.getKind());
        assertFalse(signOff.getRestsOn().isEmpty());
        assertEquals("signed off by R. Viewer, 1 open question", row(alder3).text(Column.REVIEW));
        assertTrue(card("Signed off").heading().endsWith(": in force"), card("Signed off").heading());

        // The overhead tank is raised: the static head is another one.
        maximise(IWorkbenchPage.STATE_RESTORED);
        Quantity flow = row(alder3).number(Column.FLOW).orElseThrow();
        select(session.element("overhead").orElseThrow());
        Window.type(Window.field(editor, "baseLevel"), "11.6 m");
        reviewed();
        assertEquals("sign-off out of date, 1 open question", row(alder3).text(Column.REVIEW));
        assertTrue(row(alder3).number(Column.FLOW).orElseThrow().si() < flow.si(), "it lifts higher, so less");
        select(session.element(alder3).orElseThrow());
        assertTrue(card("Signed off").heading().endsWith(": out of date"), card("Signed off").heading());
        assertEquals(Card.Tone.DANGER, card("Signed off").tone());
        assertEquals(List.of("Base level of Overhead tank was 10.6 m and is 11.6 m."), card("Signed off").footnotes());

        Window.command("org.eclipse.ui.edit.undo");
        reviewed();
        assertEquals("signed off by R. Viewer, 1 open question", row(alder3).text(Column.REVIEW));
        assertEquals(flow, row(alder3).number(Column.FLOW).orElseThrow());
        select(session.element(alder3).orElseThrow());
        assertTrue(card("Signed off").heading().endsWith(": in force"), card("Signed off").heading());

        session.save();
        assertEquals(signOff.getFingerprint(), SiteFiles.load(file).getRemarks().stream()
                .filter(remark -> remark.getKind() == RemarkKind.ACCEPTED).findFirst().orElseThrow().getFingerprint());
    }

    /** The remarks about pumps, in the order they were made. */
    private Remark remark(int index) {
        return session.site().getRemarks().stream().filter(remark -> remark.getElement() instanceof PumpCandidate)
                .toList().get(index);
    }

    private Card card(String heading) {
        return view.review().cards().stream().filter(card -> card.heading().startsWith(heading)).findFirst()
                .orElseThrow();
    }

    /** What stands below the fields of the form, such as a caution. */
    private boolean formSays(String words) {
        return Window.controls(editor.form().control(), Label.class).stream()
                .anyMatch(label -> label.isVisible() && label.getText().contains(words));
    }

    private void figuresAreThoseOf(BoardRow good, BoardRow now) {
        for (Column column : FIGURES) {
            assertEquals(good.cells().get(column), now.cells().get(column), column.title());
            assertTrue(now.stale(column), column.title() + " is greyed");
        }
        assertFalse(good.stale(Column.FLOW));
    }

    @Test
    void badPointsAreCautionedAtTheFieldAndLeaveTheLastGoodFiguresGreyed() {
        PumpCandidate candidate = pump.getCandidates().get(0);
        String id = candidate.getId();
        BoardRow good = row(id);
        select(candidate);

        session.edits().set(candidate.getPoints().get(1), Literals.PUMP_POINT__FLOW,
                Quantity.parse("2 L/s", Dimension.FLOW));
        reviewed();
        figuresAreThoseOf(good, row(id));
        assertEquals("No curve", row(id).text(Column.VERDICT));
        assertEquals(Level.BAD, row(id).level());
        assertFalse(row(id).stale(Column.VERDICT), "the verdict is of now");
        assertTrue(row(id).text(Column.REASONS).contains("order of rising flow"), row(id).text(Column.REASONS));
        assertTrue(formSays("Pump curve of Pump A (invented): points must come by rising flow,"
                + " but 1.2 L/s follows 2 L/s"));
        assertFalse(row(pump.getCandidates().get(1).getId()).stale(Column.FLOW), "the others are as they were");
        session.undo();
        reviewed();
        assertEquals(good, row(id));
        assertFalse(formSays("Pump curve of Pump A"));

        session.edits().remove(List.copyOf(candidate.getPoints().subList(2, candidate.getPoints().size())));
        reviewed();
        figuresAreThoseOf(good, row(id));
        assertTrue(row(id).text(Column.REASONS).contains("at least 3 points"), row(id).text(Column.REASONS));
        assertTrue(formSays("at least 3 points with flow and head are needed, not 2"));
        session.undo();
        reviewed();

        // What is typed into a cell and refused is kept as a draft; without a window manager no cell takes the focus.
        PumpPoint point = candidate.getPoints().get(2);
        FeatureText efficiency = FeatureText.of(Literals.PUMP_POINT__EFFICIENCY, session.site());
        String refusal = assertThrows(IllegalArgumentException.class, () -> efficiency.read("120 %")).getMessage();
        session.drafts().put(point, Literals.PUMP_POINT__EFFICIENCY, "120 %", "Efficiency: " + refusal);
        Spin.settle();
        assertTrue(formSays("Efficiency: 120 % must be at most 100"), "the caution stands at the table");
        figuresAreThoseOf(good, row(id));
        assertTrue(row(id).stale(Column.VERDICT));
        session.drafts().remove(point, Literals.PUMP_POINT__EFFICIENCY);
        Spin.settle();
        assertEquals(good, row(id));
        Text motor = Window.field(editor, "motorEfficiency");
        String before = motor.getText();
        Window.type(motor, "120 %");
        assertTrue(formSays("120 % must be at most 100"), "the caution stands at the field");
        figuresAreThoseOf(good, row(id));
        assertFalse(row(pump.getCandidates().get(1).getId()).stale(Column.FLOW), "the others are as they were");
        Window.type(motor, before);
        reviewed();
        assertEquals(good, row(id));
    }

    @Test
    void aLineThatCannotBeLeavesTheLastGoodBoardGreyed() {
        List<BoardRow> good = view.model().rows();
        select(session.element("run-rising").orElseThrow());
        Text bore = Window.field(editor, "bore");
        String before = bore.getText();
        Window.type(bore, "0 mm");
        assertTrue(formSays("must be above 0"), "the caution stands at the field");
        assertTrue(view.state().startsWith("Greyed, for the value before: Bore of Rising main"), view.state());
        for (BoardRow row : good) {
            figuresAreThoseOf(row, row(row.id()));
        }
        assertThrows(IllegalStateException.class, () -> {
            session.edits().set(session.element("run-rising").orElseThrow(), Literals.PIPE_RUN__LENGTH, null);
            PumpEdits.signOff(session, pump.getCandidates().get(0),
                    new PumpEdits.Reviewer("R. Viewer", ""), "");
        }, "nobody signs for what does not hold");
        reviewed();
        session.undo();
        Window.type(bore, before);
        reviewed();
        assertEquals(good, view.model().rows());

        // No pump lifts water so high.
        session.edits().set(session.element("overhead").orElseThrow(), Literals.TANK__BASE_LEVEL,
                Quantity.parse("90 m", Dimension.LENGTH));
        reviewed();
        for (BoardRow row : good) {
            figuresAreThoseOf(row, row(row.id()));
            String reasons = row(row.id()).text(Column.REASONS);
            assertTrue(reasons.contains("shut-off head"), reasons);
        }
        assertTrue(view.state().endsWith("Grey figures are the last that could be computed."), view.state());
        session.undo();
        reviewed();
        assertEquals(good, view.model().rows());
    }

    @Test
    void aFileThatIsNoTableChangesNothing() throws IOException {
        Path bad = folder.resolve("bad.csv");
        Files.writeString(bad, "flow[L/s],head[m],efficiency[%]\n0,20,0\n1,15,140\n2,5,20\n");
        IllegalArgumentException wrong = assertThrows(IllegalArgumentException.class,
                () -> view.importFiles(List.of(folder.resolve("pumps/candidates.csv"), bad)));
        assertTrue(wrong.getMessage().contains("bad.csv") && wrong.getMessage().contains("line 3"), wrong.getMessage());
        assertEquals(3, pump.getCandidates().size());
        assertFalse(editor.isDirty());
    }
}
