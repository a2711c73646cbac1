package org.roofspring.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Hazard;
import org.roofspring.site.Roof;
import org.roofspring.site.SitePackage;
import org.roofspring.site.edit.SiteCommandStack;
import org.roofspring.site.edit.SiteEdits;
import org.roofspring.site.snapshot.Fingerprint;

/** Every edit: what it does, that undo restores exactly what was there, and that redo does it again. */
class SiteEditsCommandTest {
    private final SampleSite sample = new SampleSite();
    private final SiteCommandStack commands = new SiteCommandStack();
    private final SiteEdits edits = new SiteEdits(sample.site, commands);

    /** Runs an edit, then undo, redo and undo, comparing whole sites. */
    private void check(Runnable edit, Runnable afterwards) {
        String before = Fingerprint.of(sample.site);
        edit.run();
        afterwards.run();
        String after = Fingerprint.of(sample.site);
        assertNotEquals(before, after);
        commands.undo();
        assertEquals(before, Fingerprint.of(sample.site), "undo");
        assertFalse(commands.canUndo(), "one edit is one step");
        commands.redo();
        assertEquals(after, Fingerprint.of(sample.site), "redo");
        afterwards.run();
        commands.undo();
        assertEquals(before, Fingerprint.of(sample.site), "undo after redo");
    }

    @Test
    void setsAValue() {
        Quantity area = Quantity.of(2000, Units.FT2);
        check(() -> assertTrue(edits.set(sample.north, SitePackage.Literals.ROOF__PLAN_AREA, area)),
                () -> assertSame(area, sample.north.getPlanArea()));
    }

    @Test
    void takesAValueAway() {
        check(() -> edits.set(sample.north, SitePackage.Literals.ROOF__PLAN_AREA, null), () -> assertNull(sample.north.getPlanArea()));
    }

    @Test
    void setsManyValues() {
        check(() -> edits.set(sample.north, SitePackage.Literals.ROOF__HAZARDS, List.of(Hazard.BIRDS, Hazard.SEA)),
                () -> assertEquals(List.of(Hazard.BIRDS, Hazard.SEA), sample.north.getHazards()));
    }

    @Test
    void setsAReference() {
        check(() -> edits.set(sample.main, SitePackage.Literals.PIPE_RUN__FROM, sample.overhead),
                () -> assertSame(sample.overhead, sample.main.getFrom()));
    }

    @Test
    void settingWhatIsThereIsNoEdit() {
        assertFalse(edits.set(sample.north, SitePackage.Literals.ROOF__PLAN_AREA, Quantity.of(100, Units.M2)));
        assertFalse(edits.set(sample.north, SitePackage.Literals.ROOF__PITCH, null));
        assertFalse(commands.canUndo());
    }

    @Test
    void addsAnElementWithIdentifierAndName() {
        check(() -> edits.add(sample.site, SitePackage.Literals.SITE__ROOFS), () -> {
            Roof added = sample.site.getRoofs().get(2);
            assertEquals("Roof 1", added.getName());
            assertTrue(added.getId().startsWith("roof-"), added.getId());
        });
    }

    @Test
    void addsARow() {
        check(() -> edits.add(sample.north, SitePackage.Literals.ROOF__DRAINS), () -> assertEquals(2, sample.north.getDrains().size()));
    }

    @Test
    void addsASinglePart() {
        check(() -> edits.add(sample.site, SitePackage.Literals.SITE__RAIN), () -> assertNotNull(sample.site.getRain()));
    }

    @Test
    void removesAnElementAndEveryReferenceToIt() {
        check(() -> edits.remove(List.of(sample.cistern)), () -> {
            assertEquals(List.of(sample.overhead), sample.site.getTanks());
            assertTrue(sample.north.getDrains().isEmpty(), "a drain must lead somewhere");
            assertTrue(sample.site.getTankLinks().isEmpty(), "a link must have two ends");
            assertNull(sample.main.getFrom(), "a run of pipe may end in the air");
            assertSame(sample.overhead, sample.main.getTo());
            assertEquals(List.of(sample.north), sample.cleaning.getElements());
        });
    }

    @Test
    void removesSeveralAtOnce() {
        check(() -> edits.remove(List.of(sample.north, sample.south)), () -> assertTrue(sample.site.getRoofs().isEmpty()));
    }

    @Test
    void removesARow() {
        check(() -> edits.remove(List.of(sample.drain)), () -> assertTrue(sample.north.getDrains().isEmpty()));
    }

    @Test
    void theSiteItselfStays() {
        edits.remove(List.of(sample.site));
        assertFalse(commands.canUndo());
    }

    @Test
    void movesUpAndDown() {
        assertTrue(edits.canMove(sample.south, -1));
        assertFalse(edits.canMove(sample.south, 1));
        assertFalse(edits.canMove(sample.site, 1));
        check(() -> edits.move(sample.south, -1), () -> assertEquals(List.of(sample.south, sample.north), sample.site.getRoofs()));
        check(() -> edits.move(sample.north, 1), () -> assertEquals(List.of(sample.south, sample.north), sample.site.getRoofs()));
    }

    @Test
    void duplicatesWithIdentifiersOfItsOwnAndTheSameReferences() {
        check(() -> edits.duplicate(sample.north), () -> {
            assertEquals(3, sample.site.getRoofs().size());
            Roof copy = sample.site.getRoofs().get(1);
            assertEquals("North (copy)", copy.getName());
            assertNotEquals(sample.north.getId(), copy.getId());
            assertSame(sample.cistern, copy.getDrains().get(0).getTo());
        });
    }

    @Test
    void aCompoundIsOneStep() {
        check(() -> edits.compound("Two roofs", sample.north, () -> {
            edits.set(sample.north, SitePackage.Literals.NAMED_ELEMENT__NAME, "A");
            edits.compound("inner", sample.south, () -> edits.set(sample.south, SitePackage.Literals.NAMED_ELEMENT__NAME, "B"));
            edits.add(sample.site, SitePackage.Literals.SITE__TAPS);
        }), () -> {
            assertEquals("A", sample.north.getName());
            assertEquals("B", sample.south.getName());
            assertEquals(1, sample.site.getTaps().size());
        });
    }

    @Test
    void anEditThatFailsLeavesNoTrace() {
        String before = Fingerprint.of(sample.site);
        assertThrows(IllegalStateException.class, () -> edits.compound("Fails", sample.north, () -> {
            edits.set(sample.north, SitePackage.Literals.NAMED_ELEMENT__NAME, "A");
            edits.remove(List.of(sample.cistern));
            throw new IllegalStateException("half-way");
        }));
        assertEquals(before, Fingerprint.of(sample.site));
        assertFalse(commands.canUndo());
        edits.set(sample.north, SitePackage.Literals.NAMED_ELEMENT__NAME, "B");
        assertTrue(commands.canUndo(), "the next edit is a step of its own");
    }

    @Test
    void savingKeepsUndoAndUndoPastItIsAChange() {
        edits.set(sample.north, SitePackage.Literals.NAMED_ELEMENT__NAME, "A");
        assertTrue(commands.isSaveNeeded());
        commands.saveIsDone();
        assertFalse(commands.isSaveNeeded());
        assertTrue(commands.canUndo());
        commands.undo();
        assertTrue(commands.isSaveNeeded());
        commands.redo();
        assertFalse(commands.isSaveNeeded());
    }

    @Test
    void labelsSayWhatIsDone() {
        edits.set(sample.north, SitePackage.Literals.ROOF__PLAN_AREA, Quantity.of(1, Units.M2));
        assertEquals("Set plan area of North", commands.getUndoCommand().getLabel());
        edits.remove(List.of(sample.south));
        assertEquals("Remove South", commands.getUndoCommand().getLabel());
    }
}
