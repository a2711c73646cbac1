package org.roofspring.ui.tests.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.site.RatingBasis;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.part.Sites;
import org.roofspring.ui.parts.cautions.CautionsView;
import org.roofspring.ui.parts.form.SiteEditor;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;
import org.roofspring.ui.treatment.BoardModel;
import org.roofspring.ui.treatment.TrainBoard;
import org.roofspring.ui.treatment.TrainEdits;
import org.roofspring.ui.treatment.TreatmentView;

/** The treatment editor in a real window: built from the palette, moved by mouse and keys, read, undone. */
class TreatmentUiTest {
    private static final String VERDICT = "treatment.verdict";

    @TempDir
    Path folder;
    private SiteEditor editor;
    private SiteSession session;
    private TreatmentView view;
    private TrainBoard board;

    /** A cottage whose train stands there, while the pipe leads past it to the tap. */
    private void openCottage() throws IOException {
        Path file = Window.demoSite(folder, "cases/treatment/lamp-without-power.site");
        String site = Files.readString(file);
        String past = site.replaceFirst("(<pipeRuns id=\"run-in\"[^>]*) to=\"train\"", "$1 to=\"tap\"")
                .replaceFirst("<pipeRuns id=\"run-out\"[^>]*/>", "");
        assertNotEquals(site, past, "the case has changed");
        open(Files.writeString(file, past));
    }

    private void open(Path file) {
        Sites.open(Window.page(), file);
        editor = (SiteEditor) Window.page().getActiveEditor();
        session = editor.session();
        view = Window.view(TreatmentView.ID);
        board = view.board();
        judged();
    }

    /** Waits for the verdict. */
    private void judged() {
        Spin.until("the verdict is up to date", () -> session.live().results().completed(VERDICT).isPresent()
                && !session.live().outOfDate(VERDICT));
    }

    @AfterEach
    void close() {
        Window.page().hideView(view);
        Window.closeAll();
    }

    private void select(EObject element) {
        session.select(session.selection().to(element));
        Spin.settle();
    }

    private Use use(String id) {
        return (Use) session.element(id).orElseThrow();
    }

    /** Picks a kind from the palette as Enter does. */
    private TreatmentStep add(String kind) {
        Table palette = view.palette().table();
        for (TableItem item : palette.getItems()) {
            if (item.getText().equals(kind)) {
                palette.setSelection(item);
                Event enter = new Event();
                enter.item = item;
                palette.notifyListeners(SWT.DefaultSelection, enter);
                Spin.settle();
                return (TreatmentStep) session.selection().element();
            }
        }
        throw new AssertionError("the palette has no " + kind);
    }

    private void key(int code, int modifiers) {
        Event press = new Event();
        press.keyCode = code;
        press.stateMask = modifiers;
        board.canvas().notifyListeners(SWT.KeyDown, press);
        Spin.settle();
    }

    private void drag(Rectangle from, int toX, int toY) {
        Point start = new Point(from.x + from.width / 2, from.y + from.height / 2);
        mouse(SWT.MouseDown, start.x, start.y);
        mouse(SWT.MouseMove, start.x + 10, start.y);
        mouse(SWT.MouseMove, toX, toY);
        mouse(SWT.MouseUp, toX, toY);
        Spin.settle();
    }

    private void mouse(int type, int x, int y) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.button = type == SWT.MouseMove ? 0 : 1;
        board.canvas().notifyListeners(type, event);
    }

    private BoardModel.Lane lane(TreatmentTrain train) {
        return board.model().lanes().stream().filter(lane -> train.getId().equals(lane.trainId())).findFirst()
                .orElseThrow();
    }

    private static List<String> names(TreatmentTrain train) {
        return train.getSteps().stream().map(TreatmentStep::getName).toList();
    }

    private boolean cautioned(String words) {
        CautionsView cautions = Window.view(PartIds.CAUTIONS);
        Spin.settle();
        return cautions.cards().stream().map(Card::text).anyMatch(text -> text.contains(words));
    }

    @Test
    void buildFromThePaletteReorderBreakAConditionReadItAndUndo() throws IOException {
        openCottage();
        Use drinking = use("use-drinking");
        assertEquals(Level.BAD, useBox(drinking).level(), "untreated water is not suitable for drinking");
        TreatmentTrain train = TrainEdits.addTrain(session, null);
        Spin.settle();
        TreatmentStep filter = add("Sediment cartridge");
        TreatmentStep lamp = add("UV lamp");
        assertEquals(List.of("Sediment cartridge", "UV lamp"), names(train));
        assertTrue(lane(train).uses().isEmpty());

        // The use is dragged from the lane without treatment to the new train.
        Rectangle home = board.stepBounds(filter.getId()).orElseThrow();
        drag(board.useBounds(drinking.getId()).orElseThrow(), home.x, home.y + 5);
        assertSame(train, drinking.getTrain());
        judged();
        assertEquals(List.of("use-drinking"), lane(train).uses().stream().map(BoardModel.Use::id).toList());

        // Entered in the form of the window: a fine absolute cartridge and the lamp's dose.
        select(filter);
        Window.type(Window.field(editor, "rating"), "1 um");
        session.edits().set(filter, Literals.TREATMENT_STEP__RATING_BASIS, RatingBasis.ABSOLUTE);
        select(lamp);
        Window.type(Window.field(editor, "uvDose"), "40 mJ/cm2");
        judged();
        assertEquals(List.of(3.0, 0.5, 5.0, 5.0), lane(train).steps().get(1).logs());
        assertFalse(lane(train).steps().get(1).fails(), lane(train).steps().get(1).says());
        assertFalse(cautioned("Light before the sediment filter"));

        // Alt+Left puts the lamp first: 1.5 NTU reach it.
        select(lamp);
        key(SWT.ARROW_LEFT, SWT.ALT);
        assertEquals(List.of("UV lamp", "Sediment cartridge"), names(train));
        judged();
        BoardModel.Step broken = lane(train).steps().get(0);
        assertTrue(broken.fails());
        assertTrue(broken.says().contains("No credit: The water that enters has at most 1 NTU (not met: 1.5 NTU)."),
                broken.says());
        assertEquals(0.0, broken.logs().get(0));
        assertTrue(lane(train).mind().get(0).startsWith("Caution: Light before the sediment filter"));
        assertTrue(cautioned("Light before the sediment filter"));
        assertTrue(view.cards().get(0).text().contains("UV lamp earns no credit until this holds"),
                view.cards().get(0).text());

        Window.command("org.eclipse.ui.edit.undo");
        judged();
        assertEquals(List.of("Sediment cartridge", "UV lamp"), names(train));
        assertFalse(lane(train).steps().get(1).fails());
        assertFalse(cautioned("Light before the sediment filter"));
    }

    private BoardModel.Use useBox(Use use) {
        return board.model().lanes().stream().flatMap(lane -> lane.uses().stream())
                .filter(box -> box.id().equals(use.getId())).findFirst().orElseThrow();
    }

    @Test
    void stepsAreDraggedSetAsideAndRemovedEachOneUndo() throws IOException {
        openCottage();
        TreatmentTrain train = session.site().getTrains().get(0);
        List<String> before = names(train);
        Rectangle first = board.stepBounds(train.getSteps().get(0).getId()).orElseThrow();
        Rectangle lamp = board.stepBounds("step-uv").orElseThrow();
        drag(lamp, first.x - 10, first.y + 10);
        assertEquals("step-uv", train.getSteps().get(0).getId());
        Window.command("org.eclipse.ui.edit.undo");
        assertEquals(before, names(train));
        assertFalse(editor.isDirty());

        drag(board.stepBounds("step-uv").orElseThrow(), lamp.x + 3, lamp.y + 3);
        assertFalse(editor.isDirty(), "dropped where it was: no edit");

        select(train.getSteps().get(2));
        key(' ', 0);
        assertFalse(train.getSteps().get(2).isActive());
        judged();
        assertTrue(lane(train).steps().get(2).says().contains("does not count"));
        key(' ', 0);
        assertTrue(train.getSteps().get(2).isActive());

        key(SWT.DEL, 0);
        assertEquals(2, train.getSteps().size());
        assertEquals("step-02um", ((TreatmentStep) session.selection().element()).getId());
        Window.command("org.eclipse.ui.edit.undo");
        assertEquals(before, names(train));
    }

    /** What colour says, words say: the board names the group that is short and what is asked for. */
    @Test
    void theBoardSaysWhatIsAskedForAndReached() {
        open(Window.demoSite(folder, "hill-school.site"));
        select(use("use-drinking"));
        BoardModel.Lane lane = lane(session.site().getTrains().get(0));
        assertEquals("use-drinking", lane.target().useId());
        assertEquals(List.of(4.0, 5.0, 4.0, 4.0), lane.target().logs());
        assertEquals(4 - 1.29285581, lane.target().shortBy(0), 1e-8);
        assertTrue(lane.facts().contains("4.6\u00a0m fouled"), lane.facts());
        select(use("use-meals"));
        assertEquals(List.of(2.0, 0.0, 2.0, 2.0), lane(session.site().getTrains().get(0)).target().logs());
        Card verdict = view.cards().get(0);
        assertTrue(verdict.heading().contains("not suitable for cooking"), verdict.heading());
        assertTrue(verdict.text().contains("health authority"));
        Card sources = view.cards().get(1);
        assertTrue(sources.footnotes().stream().anyMatch(line -> line.contains("from memory, verify")
                && line.startsWith("UV lamp, bacteria: 3 log while it works")), sources.toString());
        Card work = view.cards().get(2);
        assertTrue(work.heading().contains("10 min in a week"), work.heading());
        assertTrue(work.text().contains("Look at the lamp's light and alarm"), work.text());
    }

    @Test
    void theKeysWalkTheBoard() throws IOException {
        openCottage();
        TreatmentTrain train = session.site().getTrains().get(0);
        select(train);
        key(SWT.ARROW_RIGHT, 0);
        assertSame(train.getSteps().get(0), session.selection().element());
        key(SWT.ARROW_RIGHT, 0);
        assertSame(train.getSteps().get(1), session.selection().element());
        key(SWT.ARROW_LEFT, 0);
        assertSame(train.getSteps().get(0), session.selection().element());
        key(SWT.ARROW_LEFT, SWT.ALT);
        assertSame(train.getSteps().get(0), session.selection().element(), "at the end there is no move");
        assertFalse(editor.isDirty());
        key(SWT.ARROW_DOWN, 0);
        assertTrue(session.selection().element() instanceof Use, "the lane without treatment holds uses only");
    }
}
