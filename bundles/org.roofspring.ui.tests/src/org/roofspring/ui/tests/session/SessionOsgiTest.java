package org.roofspring.ui.tests.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.LiveSite;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Ids;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage;
import org.roofspring.site.io.SiteChangedException;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SessionService;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;

/** Sessions with calculations of the test's own, inside the framework. */
class SessionOsgiTest {
    @TempDir
    Path folder;
    private final CalculationRegistry registry = new CalculationRegistry();
    private final SessionService sessions = new SessionService(registry, Display.getCurrent()::asyncExec);

    @AfterEach
    void closeAll() {
        sessions.sessions().forEach(sessions::close);
        Spin.settle();
    }

    private Path file(String name) throws SiteFileException {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setName(name);
        Roof roof = SiteFactory.eINSTANCE.createRoof();
        roof.setName("Roof");
        roof.setPlanArea(Quantity.of(100, Units.M2));
        site.getRoofs().add(roof);
        Ids.assignMissing(site);
        Path file = folder.resolve(name + ".site");
        SiteFiles.save(site, file);
        return file;
    }

    private static void addTap(SiteSession session) {
        session.edits().add(session.site(), SitePackage.Literals.SITE__TAPS);
    }

    private static boolean upToDate(SiteSession session, String calculation) {
        return session.live().results().result(calculation).isPresent() && !session.live().anyOutOfDate();
    }

    @Test
    void editingOneSiteNeverRecalculatesTheOther() throws SiteFileException {
        CountingCalculation counting = new CountingCalculation();
        registry.add(counting);
        SiteSession one = sessions.open(file("one"));
        SiteSession other = sessions.open(file("other"));
        Spin.until("both have an answer", () -> upToDate(one, "test.counting") && upToDate(other, "test.counting"));
        int runsOfOther = counting.runs(other.site().getId());
        List<Aspect> heardOfOther = new ArrayList<>();
        sessions.addListener((session, aspect) -> {
            if (session == other) {
                heardOfOther.add(aspect);
            }
        });
        for (int i = 0; i < 5; i++) {
            int before = counting.runs(one.site().getId());
            addTap(one);
            assertTrue(one.live().outOfDate("test.counting"));
            assertFalse(other.live().outOfDate("test.counting"));
            Spin.until("the edited site was calculated anew", () -> counting.runs(one.site().getId()) > before && upToDate(one, "test.counting"));
        }
        Spin.during(200);
        assertEquals(runsOfOther, counting.runs(other.site().getId()));
        assertEquals(List.of(), heardOfOther);
        assertTrue(one.dirty());
        assertFalse(other.dirty());
        assertTrue(one.commands().canUndo());
        assertFalse(other.commands().canUndo());
    }

    @Test
    void closingCancelsTheWorkOfASite() throws Exception {
        EndlessCalculation endless = new EndlessCalculation();
        registry.add(endless);
        SiteSession session = sessions.open(file("endless"));
        Spin.until("the calculation has begun", () -> endless.started.getCount() == 0);
        sessions.close(session);
        assertTrue(session.closed());
        Spin.until("the calculation has stopped", () -> endless.stopped.getCount() == 0);
        LiveSite live = session.live();
        Spin.until("no job of the site is left", () -> Job.getJobManager().find(live).length == 0);
    }

    @Test
    void aClosedSessionIsSilentAndLetGo() throws Exception {
        registry.add(new CountingCalculation());
        WeakReference<SiteSession> closed = openEditAndClose();
        Spin.until("the closed session is collected", () -> {
            System.gc();
            return closed.get() == null;
        });
    }

    private WeakReference<SiteSession> openEditAndClose() throws SiteFileException {
        SiteSession session = sessions.open(file("closed"));
        Spin.until("there is an answer", () -> upToDate(session, "test.counting"));
        sessions.activate(session);
        addTap(session);
        sessions.close(session);
        assertTrue(sessions.active().isEmpty());
        List<Aspect> heard = new ArrayList<>();
        sessions.addListener((from, aspect) -> heard.add(aspect));
        addTap(session);
        Spin.during(100);
        assertEquals(List.of(), heard);
        return new WeakReference<>(session);
    }

    @Test
    void openingAFileTwiceGivesTheSameSession() throws Exception {
        Path file = file("twice");
        SiteSession session = sessions.open(file);
        assertSame(session, sessions.open(file));
        assertSame(session, sessions.open(folder.resolve("nowhere").resolve("..").resolve("twice.site")));
        Path link = Files.createSymbolicLink(folder.resolve("link.site"), file);
        assertSame(session, sessions.open(link));
        sessions.close(session);
        assertNotSame(session, sessions.open(file));
    }

    @Test
    void aFileThatCannotBeReadOpensNothing() throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.site"), "<site");
        assertThrows(SiteFileException.class, () -> sessions.open(broken));
        assertThrows(SiteFileException.class, () -> sessions.open(folder.resolve("missing.site")));
        assertTrue(sessions.sessions().isEmpty());
    }

    @Test
    void savingKeepsUndo() throws Exception {
        Path file = file("save");
        String before = Files.readString(file);
        SiteSession session = sessions.open(file);
        addTap(session);
        session.save();
        assertFalse(session.dirty());
        assertTrue(session.commands().canUndo());
        session.undo();
        assertTrue(session.dirty());
        session.save();
        assertEquals(before, Files.readString(file));
    }

    @Test
    void saveAsMovesTheSessionToTheNewFile() throws Exception {
        Path file = file("old");
        String before = Files.readString(file);
        SiteSession session = sessions.open(file);
        addTap(session);
        Path copy = Files.createDirectory(folder.resolve("elsewhere")).resolve("new.site");
        session.saveAs(copy);
        assertEquals(before, Files.readString(file));
        assertEquals(1, SiteFiles.load(copy).getTaps().size());
        assertEquals("new.site", session.title());
        assertSame(session, sessions.open(copy));
    }

    @Test
    void aFailedSaveChangesNothing() throws Exception {
        Path file = file("fails");
        SiteSession session = sessions.open(file);
        addTap(session);
        assertThrows(SiteFileException.class, () -> session.saveAs(folder.resolve("no-such-folder").resolve("x.site")));
        assertTrue(session.dirty());
        assertEquals(file.toAbsolutePath().normalize(), session.file().orElseThrow());
    }

    @Test
    void aFileThatAnotherProgramChangedIsReplacedOnlyWhenTold() throws Exception {
        Path file = file("changed");
        SiteSession session = sessions.open(file);
        addTap(session);
        String foreign = Files.readString(file).replace("Roof", "Barn");
        Files.writeString(file, foreign);
        String message = assertThrows(SiteChangedException.class, session::save).getMessage();
        assertTrue(message.contains("was changed by another program since it was opened here"), message);
        assertEquals(foreign, Files.readString(file));
        assertTrue(session.dirty());
        assertEquals(List.of(), session.saveOver());
        assertEquals(1, SiteFiles.load(file).getTaps().size());
        assertEquals(foreign, Files.readString(SiteFiles.previousVersion(file)));
        addTap(session);
        session.save();
        assertFalse(session.dirty(), "what was written here is no change by another program");
    }

    @Test
    void aSelectionThatIsRemovedMovesToTheSite() throws Exception {
        SiteSession session = sessions.open(file("selection"));
        Roof roof = session.site().getRoofs().get(0);
        session.select(session.selection().to(roof));
        session.edits().remove(List.of(roof));
        assertSame(session.site(), session.selection().element());
        session.undo();
        assertSame(roof, session.selection().element(), "undo shows what it brought back");
    }

    @Test
    void whatIsBeingTypedIsTakenOverBeforeUndoAndSave() throws Exception {
        SiteSession session = sessions.open(file("typing"));
        Roof roof = session.site().getRoofs().get(0);
        Runnable typed = () -> session.edits().set(roof, SitePackage.Literals.NAMED_ELEMENT__NAME, "Typed");
        session.addPendingInput(typed);
        session.save();
        assertEquals("Typed", SiteFiles.load(session.file().orElseThrow()).getRoofs().get(0).getName());
        session.removePendingInput(typed);
        session.undo();
        assertEquals("Roof", roof.getName());
    }

    @Test
    void aNewSiteHasNoFileUntilItIsSaved() throws Exception {
        SiteSession session = sessions.create();
        assertTrue(session.file().isEmpty());
        assertThrows(IllegalStateException.class, session::save);
        assertNull(session.site().getRain());
        session.saveAs(folder.resolve("fresh.site"));
        assertEquals("New site", SiteFiles.load(folder.resolve("fresh.site")).getName());
    }
}
