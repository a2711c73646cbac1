package org.roofspring.ui.tests.workbench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Dictionary;
import java.util.Hashtable;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceRegistration;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.ValueWords;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.snapshot.SiteSnapshot;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.part.SelectionActions;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.part.Sites;
import org.roofspring.ui.parts.cautions.CautionsView;
import org.roofspring.ui.parts.form.SiteEditor;
import org.roofspring.ui.parts.outline.OutlineView;
import org.roofspring.ui.parts.problems.ProblemsView;
import org.roofspring.ui.parts.workings.WorkingsView;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;

/** The workbench on the demo school, in a real window. */
class WorkbenchUiTest {
    @TempDir
    Path folder;
    private Path file;
    private SiteEditor editor;
    private SiteSession session;
    private Roof hall;

    @BeforeEach
    void openDemoSchool() {
        file = Window.demoSite(folder, "hill-school.site");
        editor = Window.open(file);
        session = editor.session();
        hall = session.site().getRoofs().get(0);
    }

    @AfterEach
    void close() {
        DisplayUnits.preferences().remove(DisplayUnits.PREFERENCE);
        Window.closeAll();
    }

    private void select(Roof roof) {
        session.select(session.selection().to(roof));
        Spin.settle();
    }

    @Test
    void editSeeTheAnswerMoveUndoSaveReopen() throws Exception {
        String onDisk = Files.readString(file);
        assertTrue(onDisk.contains("planArea=\"260 m2\""), "the demo school has changed");
        select(hall);
        Text area = Window.field(editor, "planArea");
        assertEquals("260\u00a0m\u00b2", area.getText());
        String suppliedBefore = Window.finding("storage.balance", "supplied").value();
        double[] traceBefore = Window.chart().chart().drawnValues();
        assertTrue(traceBefore.length > 100);

        Window.type(area, "5000 ft2");
        assertEquals("464.515\u00a0m\u00b2", area.getText());
        assertTrue(editor.isDirty());
        assertEquals("*hill-school.site - Roofspring", Window.page().getWorkbenchWindow().getShell().getText());
        Window.answered(session);
        String suppliedAfter = Window.finding("storage.balance", "supplied").value();
        double[] traceAfter = Window.chart().chart().drawnValues();
        assertNotEquals(suppliedBefore, suppliedAfter);
        assertFalse(Arrays.equals(traceBefore, traceAfter));
        assertEquals(suppliedFresh(464.5152), suppliedAfter, "the live answer is that of a fresh calculation");

        Window.command("org.eclipse.ui.edit.undo");
        assertEquals("260\u00a0m\u00b2", area.getText());
        assertFalse(editor.isDirty());
        Window.answered(session);
        assertEquals(suppliedBefore, Window.finding("storage.balance", "supplied").value());
        assertArrayEquals(traceBefore, Window.chart().chart().drawnValues());
        assertFalse(Window.chart().chart().isStale());

        Window.command("org.eclipse.ui.edit.redo");
        Window.answered(session);
        assertEquals(suppliedAfter, Window.finding("storage.balance", "supplied").value());
        Window.page().activate(editor);
        Window.command("org.eclipse.ui.file.save");
        assertFalse(editor.isDirty());
        assertTrue(session.commands().canUndo(), "saving keeps undo");
        assertEquals(onDisk.replace("planArea=\"260 m2\"", "planArea=\"5000 ft2\""), Files.readString(file));

        Window.closeAll();
        assertTrue(Sessions.service().sessions().isEmpty());
        SiteEditor again = Window.open(file);
        assertNotSame(session, again.session());
        again.session().select(again.session().selection().to(again.session().site().getRoofs().get(0)));
        Spin.settle();
        assertEquals("464.515\u00a0m\u00b2", Window.field(again, "planArea").getText());
        assertEquals(suppliedAfter, Window.finding("storage.balance", "supplied").value());
    }

    private String suppliedFresh(double areaM2) throws Exception {
        Site site = SiteFiles.load(file);
        site.getRoofs().get(0).setPlanArea(Quantity.of(areaM2, Units.M2));
        var context = FrameworkUtil.getBundle(getClass()).getBundleContext();
        CalculationRegistry registry = context.getService(context.getServiceReference(CalculationRegistry.class));
        return ValueWords.of(new CalculationRunner(registry).run(SiteSnapshot.of(site, 1, folder))
                .finding("storage.balance", "supplied").orElseThrow().value(), session.format());
    }

    @Test
    void savingWithoutAnEditWritesTheSameBytes() throws Exception {
        byte[] before = Files.readAllBytes(file);
        session.save();
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void wrongInputIsMarkedAndKeptAsTyped() {
        select(hall);
        Text area = Window.field(editor, "planArea");
        Window.type(area, "300 litres");
        assertEquals("300 litres", area.getText());
        assertFalse(editor.isDirty());
        String sentence = "\u26a0 \"litres\" is not a known unit; an area is needed (m2, cm2, ha, ft2).";
        assertTrue(labels().contains(sentence), labels().toString());
        assertTrue(problems().stream().anyMatch(card -> card.heading().equals("Not taken over") && card.text().contains("Assembly hall")));

        select(session.site().getRoofs().get(1));
        assertFalse(labels().contains(sentence));
        select(hall);
        area = Window.field(editor, "planArea");
        assertEquals("300 litres", area.getText());
        assertTrue(labels().contains(sentence));

        Window.type(area, "300 m2");
        assertEquals(Quantity.of(300, Units.M2), hall.getPlanArea());
        assertFalse(labels().contains(sentence));
        assertTrue(problems().stream().noneMatch(card -> card.heading().equals("Not taken over")));
    }

    @Test
    void escapeWithdrawsWhatWasTyped() {
        select(hall);
        Text area = Window.field(editor, "planArea");
        Window.type(area, "-1 m2");
        assertEquals("-1 m2", area.getText());
        Event escape = new Event();
        escape.detail = SWT.TRAVERSE_ESCAPE;
        escape.doit = true;
        area.notifyListeners(SWT.Traverse, escape);
        assertEquals("260\u00a0m\u00b2", area.getText());
        assertTrue(session.drafts().all().isEmpty());
    }

    private List<String> labels() {
        return Window.controls(editor.form().control(), Label.class).stream().map(Label::getText).filter(text -> !text.isEmpty()).toList();
    }

    private static List<Card> problems() {
        ProblemsView problems = Window.view(PartIds.PROBLEMS);
        Spin.settle();
        return problems.cards();
    }

    @Test
    void aMissingValueIsNamedAndItsLinkLeadsToTheField() {
        session.edits().set(hall, SitePackage.Literals.ROOF__PLAN_AREA, null);
        Spin.settle();
        assertTrue(problems().stream().anyMatch(card -> card.text().equals("Plan area of Assembly hall must be given.")), problems().toString());
        ProblemsView view = Window.view(PartIds.PROBLEMS);
        session.reveal(hall, SitePackage.Literals.ROOF__PLAN_AREA);
        Spin.settle();
        assertSame(hall, session.selection().element());
        assertTrue(labels().contains("\u26a0 Plan area of Assembly hall must be given."), labels().toString());
        assertFalse(view.cards().isEmpty());
    }

    @Test
    void aFailingPluginIsNamedInAPartAndNotInADialog() {
        int shells = Window.shells();
        Dictionary<String, Object> properties = new Hashtable<>();
        properties.put(CalculationInfo.PREFIX_ + "id", "test.failing");
        properties.put(CalculationInfo.PREFIX_ + "version", "1");
        properties.put(CalculationInfo.PREFIX_ + "title", "Failing");
        properties.put(CalculationInfo.PREFIX_ + "reads", "*");
        ServiceRegistration<Calculation> registration = FrameworkUtil.getBundle(getClass()).getBundleContext()
                .registerService(Calculation.class, new FailingCalculation(), properties);
        try {
            Spin.until("the failure is named", () -> problems().stream()
                    .anyMatch(card -> card.heading().equals("Plug-in failed") && card.text().contains("test.failing")
                            && card.text().contains("org.roofspring.ui.tests")));
            assertEquals(shells, Window.shells());
            Window.answered(session);
            assertEquals("failed", session.live().results().result("test.failing")
                    .filter(result -> result.status() == CalculationResult.Status.FAULT).map(result -> "failed").orElse("not failed"));
        } finally {
            registration.unregister();
        }
        Spin.until("the failure is gone with its plug-in", () -> problems().stream().noneMatch(card -> card.heading().equals("Plug-in failed")));
    }

    @Test
    void aSecondOpenBringsUpTheSameEditorAndTwoSitesAreIndependent() {
        SiteEditor household = Window.open(folder.resolve("household.site"));
        assertNotSame(editor, household);
        assertSame(household.session(), Window.active());
        Sites.open(Window.page(), file);
        Spin.settle();
        assertSame(editor, Window.page().getActiveEditor());
        assertSame(session, Window.active());
        assertEquals(2, Window.page().getEditorReferences().length);
        session.edits().set(hall, SitePackage.Literals.NAMED_ELEMENT__NAME, "Other name");
        assertTrue(editor.isDirty());
        assertFalse(household.isDirty());
        Window.page().closeEditor(household, false);
        Spin.settle();
        assertEquals(List.of(session), Sessions.service().sessions());
    }

    @Test
    void unitsOfThePreferenceAreShownEverywhere() {
        select(hall);
        DisplayUnits.preferences().put(DisplayUnits.PREFERENCE, UnitSystem.US_CUSTOMARY.name());
        Sessions.service().unitsChanged();
        Spin.settle();
        assertEquals("2\u202f798.62\u00a0ft\u00b2", Window.field(editor, "planArea").getText());
        assertTrue(Window.finding("storage.balance", "supplied").value().endsWith("galUS"));
        assertFalse(editor.isDirty(), "showing other units is no edit");
        assertEquals(Quantity.of(260, Units.M2), hall.getPlanArea());
    }

    @Test
    void elementsAreAddedMovedDuplicatedAndRemovedFromTheOutline() {
        OutlineView outline = Window.view(PartIds.OUTLINE);
        SelectionActions actions = new SelectionActions(() -> Sessions.service().active());
        select(hall);
        int roofs = session.site().getRoofs().size();
        actions.all().get(0).run();
        assertEquals(roofs + 1, session.site().getRoofs().size());
        assertSame(session.site().getRoofs().get(roofs), session.selection().element(), "what was added is selected");
        Spin.settle();
        assertEquals("Roof 1", Window.field(editor, "name").getText());
        actions.all().get(2).run();
        assertEquals("Roof 1", session.site().getRoofs().get(roofs - 1).getName());
        actions.all().get(1).run();
        assertEquals("Roof 1 (copy)", session.site().getRoofs().get(roofs).getName());
        actions.all().get(4).run();
        assertEquals(roofs + 1, session.site().getRoofs().size());
        Spin.settle();
        assertFalse(outline.tree().getStructuredSelection().isEmpty());
        for (int i = 0; i < 4; i++) {
            Window.command("org.eclipse.ui.edit.undo");
        }
        assertEquals(roofs, session.site().getRoofs().size());
        assertFalse(editor.isDirty());
    }

    @Test
    void workingsFollowTheFindingAndAnInputLeadsToItsField() {
        session.select(session.selection().to(new FindingKey("storage.balance", "inflow", null)));
        WorkingsView workings = Window.view(PartIds.WORKINGS);
        Spin.settle();
        List<String> texts = Window.controls(workings.control(), Label.class).stream().map(Label::getText).toList();
        String inflow = Window.finding("storage.balance", "inflow").value();
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("Inflow") && text.contains(inflow)), texts.toString());
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("Source: ")), texts.toString());
        Hyperlink area = Window.controls(workings.control(), Hyperlink.class).stream().filter(link -> link.getText().equals("260\u00a0m\u00b2"))
                .findFirst().orElseThrow();
        Event enter = new Event();
        enter.character = '\r';
        area.notifyListeners(SWT.Selection, enter);
        area.notifyListeners(SWT.DefaultSelection, enter);
        area.notifyListeners(SWT.KeyDown, enter);
        Spin.settle();
        assertSame(hall, session.selection().element());
        assertSame(SitePackage.Literals.ROOF__PLAN_AREA, session.selection().feature());
    }

    @Test
    void cautionsNameWhomToAskAndTheGravestComeFirst() {
        CautionsView cautions = Window.view(PartIds.CAUTIONS);
        Spin.settle();
        List<Card> cards = cautions.cards();
        assertEquals("Danger", cards.getFirst().heading());
        for (Card card : cards) {
            assertEquals(card.heading().equals("Danger"), card.icon().equals("danger"), card.toString());
            assertTrue(!card.heading().equals("Danger") || card.footnotes().getFirst().startsWith("Whom to ask: "), card.toString());
        }
    }

    @Test
    void theOldTraceStaysMarkedWhileTheDesignHasNoAnswer() {
        double[] trace = Window.chart().chart().drawnValues();
        session.site().getUses().forEach(use -> assertTrue(use.isInUse()));
        session.edits().compound("No uses", session.site(), () -> session.site().getUses()
                .forEach(use -> session.edits().set(use, SitePackage.Literals.COMPONENT__IN_USE, false)));
        Spin.until("there is no answer", () -> session.live().results().result("storage.balance")
                .filter(result -> result.completed().isEmpty()).isPresent() && !session.live().anyOutOfDate());
        assertTrue(Window.chart().chart().isStale());
        assertArrayEquals(trace, Window.chart().chart().drawnValues());
        assertTrue(problems().stream().anyMatch(card -> card.heading().contains("Storage balance")), problems().toString());
        Window.command("org.eclipse.ui.edit.undo");
        Window.answered(session);
        assertFalse(Window.chart().chart().isStale());
    }

    @Test
    void savingTakesOverWhatIsBeingTyped() throws Exception {
        select(hall);
        Window.field(editor, "name").setText("Great hall");
        editor.doSave(new NullProgressMonitor());
        assertEquals("Great hall", SiteFiles.load(file).getRoofs().get(0).getName());
        assertFalse(editor.isDirty());
    }
}
