package org.roofspring.ui.tests.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.FindingValue;
import org.roofspring.site.Gutter;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.ui.parts.drainage.RoofToTankView;
import org.roofspring.ui.parts.drainage.WayLine;
import org.roofspring.ui.parts.form.SiteEditor;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;

/** Each roof's way to the tank, with what the design storm uses of it, in a real window. */
class RoofToTankUiTest {
    @TempDir
    Path folder;
    private SiteEditor editor;
    private SiteSession session;
    private RoofToTankView way;
    private Gutter gutter;

    @BeforeEach
    void openDemoSchool() {
        editor = Window.open(Window.demoSite(folder, "hill-school.site"));
        session = editor.session();
        way = Window.view(RoofToTankView.ID);
        gutter = session.site().getGutters().get(0);
        drained();
    }

    @AfterEach
    void close() {
        Window.closeAll();
    }

    private void drained() {
        Spin.until("the way of the water is up to date", () -> session.live().results().completed("roof.drainage").isPresent()
                && !session.live().outOfDate("roof.drainage") && !way.lines().isEmpty()
                && way.lines().stream().noneMatch(WayLine::stale));
    }

    private static Stream<WayLine> all(List<WayLine> lines) {
        return lines.stream().flatMap(line -> Stream.concat(Stream.of(line), all(line.onward())));
    }

    private WayLine line(String elementId) {
        return all(way.lines()).filter(line -> line.elementId().equals(elementId)).findFirst().orElseThrow();
    }

    @Test
    void everyRoofShowsItsGutterOutletDownpipeDiverterScreenAndTank() {
        assertEquals(session.site().getRoofs().size(), way.lines().size());
        WayLine roof = way.lines().get(0);
        List<EClass> types = all(List.of(roof)).map(WayLine::type).distinct().toList();
        assertEquals(List.of(Literals.ROOF, Literals.GUTTER, Literals.GUTTER_OUTLET, Literals.DOWNPIPE, Literals.FIRST_FLUSH_DIVERTER,
                Literals.SCREEN, Literals.TANK), types);
        WayLine shown = line(gutter.getId());
        double ratio = ((FindingValue.Number) session.live().results().finding("roof.drainage", "utilisation", gutter.getId())
                .orElseThrow().value()).quantity().si();
        assertEquals(ratio, shown.utilisation().orElseThrow(), 1e-12);
        assertTrue(ratio > 1 && shown.words().contains("spills"), shown.words());
        assertFalse(shown.arrives().isEmpty() || shown.carries().isEmpty() || shown.used().isEmpty());
    }

    @Test
    void aWiderGutterIsUsedLessAndUndoBringsTheOldFigureBack() {
        WayLine before = line(gutter.getId());
        session.select(session.selection().to(gutter));
        Spin.settle();
        Window.type(Window.field(editor, "width"), "300 mm");
        drained();
        WayLine after = line(gutter.getId());
        assertEquals(before.arrives(), after.arrives(), "the storm stays the same");
        assertNotEquals(before.carries(), after.carries());
        assertTrue(after.utilisation().orElseThrow() < before.utilisation().orElseThrow() / 2, after.used());

        Window.command("org.eclipse.ui.edit.undo");
        drained();
        assertEquals(before, line(gutter.getId()));
    }

    @Test
    void theDayFactorEnteredInTheFormMovesTheStorm() {
        String arrives = line(gutter.getId()).arrives();
        session.select(session.selection().to(session.site().getRain()));
        Spin.settle();
        Window.type(Window.field(editor, "dayFactor"), "1");
        drained();
        assertNotEquals(arrives, line(gutter.getId()).arrives());
        Window.command("org.eclipse.ui.edit.undo");
        drained();
        assertEquals(arrives, line(gutter.getId()).arrives());
    }
}
