package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.internal.io.LocalDisk;
import org.roofspring.site.internal.io.SiteSaver;

/** A save never loses what it did not know: the version before, another program's work, a newer program's file. */
class SavingTest {
    @TempDir
    Path folder;
    private Path file;
    private Path previous;

    @BeforeEach
    void nameFiles() {
        file = folder.resolve("house.site");
        previous = folder.resolve("house.site~");
    }

    private static Site site(String name) {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setId("site");
        site.setName(name);
        return site;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theVersionBeforeIsKept() throws IOException {
        SiteFiles.save(site("one"), file);
        assertFalse(Files.exists(previous), "there was none before");
        byte[] one = Files.readAllBytes(file);
        SiteFiles.save(site("two"), file);
        assertEquals(previous, SiteFiles.previousVersion(file));
        assertArrayEquals(one, Files.readAllBytes(previous));
        assertEquals("one", SiteFiles.load(previous).getName(), "it can be opened as it is");
        SiteFiles.save(site("two"), file);
        assertArrayEquals(one, Files.readAllBytes(previous), "saving the same again keeps the version that differs");
        assertEquals(List.of("house.site", "house.site~"), names());
    }

    @Test
    void aChangeByAnotherProgramIsNotReplaced() throws IOException {
        FileState written = SiteFiles.save(site("mine"), file).state();
        assertEquals(written, SiteFiles.open(file).state());
        String foreign = Files.readString(file).replace("mine", "hers");
        Files.writeString(file, foreign);
        SiteChangedException refused = assertThrows(SiteChangedException.class,
                () -> SiteFiles.save(site("mine again"), file, written));
        assertEquals(file + " was changed by another program since it was opened here; it was not replaced",
                refused.getMessage());
        assertEquals(foreign, Files.readString(file));
        assertFalse(Files.exists(previous), "a refused save writes nothing");
        SiteFiles.save(site("mine again"), file);
        assertEquals(foreign, Files.readString(previous), "told to replace it, it stays beside");
    }

    @Test
    void aChangeIsKnownByContentAndNotByTime() throws IOException {
        FileState written = SiteFiles.save(site("mine"), file).state();
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
        FileState second = SiteFiles.save(site("touched"), file, written).state();
        FileTime time = Files.getLastModifiedTime(file);
        Files.writeString(file, Files.readString(file).replace("touched", "TOUCHED"));
        Files.setLastModifiedTime(file, time);
        assertThrows(SiteChangedException.class, () -> SiteFiles.save(site("x"), file, second));
    }

    @Test
    void aFileThatIsGoneIsMadeAgainAndOneThatCameIsNotReplaced() throws IOException {
        FileState written = SiteFiles.save(site("mine"), file).state();
        Files.delete(file);
        SiteFiles.save(site("mine"), file, written);
        assertEquals("mine", SiteFiles.load(file).getName());
        assertEquals(file + " is there already; it was not replaced", assertThrows(SiteChangedException.class,
                () -> SiteFiles.save(site("new"), file, FileState.NONE)).getMessage());
    }

    @Test
    void aFileOfANewerSchemaIsNeverReplaced() throws IOException {
        SiteFiles.save(site("future"), file);
        for (String[] change : new String[][] {{"site/1", "site/2", "2"}, {"schemaVersion=\"1\"",
            "schemaVersion=\"7\"", "7"}}) {
            String newer = "\ufeff" + Files.readString(file).replace(change[0], change[1]).replace("/>", "><new>");
            Path target = Files.writeString(folder.resolve("newer.site"), newer);
            assertEquals(target + " was made by a newer Roofspring (schema " + change[2] + ") and is not replaced by "
                    + "this one, which writes 1; save under another name",
                    assertThrows(SiteFileException.class, () -> SiteFiles.save(site("x"), target)).getMessage());
            assertEquals(newer, Files.readString(target));
        }
    }

    @Test
    void theRootOfADriveIsAFolder() {
        Path root = folder.getRoot();
        assertTrue(assertThrows(SiteFileException.class, () -> SiteFiles.save(site("x"), root)).getMessage()
                .startsWith(root + " is a folder"));
    }

    @Test
    void otherFilesAreReplacedWhenToldAndKept() throws IOException {
        Files.write(file, new byte[] {1, 2, 3});
        SiteFiles.save(site("new"), file);
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(previous));
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength((64 << 20) + 1);
        }
        assertEquals(file + " is larger than 64 MB, so it is no site file and is not replaced; save under another name",
                assertThrows(SiteFileException.class, () -> SiteFiles.save(site("x"), file)).getMessage());
    }

    @Test
    void aDriveWithoutAtomicRenameIsSavedToAndNamed() throws IOException {
        SiteSaver saver = new SiteSaver(new LocalDisk() {
            @Override
            public void rename(Path from, Path to) throws IOException {
                throw new AtomicMoveNotSupportedException(from.toString(), to.toString(), "not on this drive");
            }
        });
        assertEquals(List.of(file + " was saved, but its drive cannot replace a file in one step: a power cut while "
                + "saving could leave no house.site"), saver.save(site("one"), file, null).messages());
        assertEquals(List.of(file + " was saved, but its drive cannot replace a file in one step: a power cut while "
                + "saving could leave no house.site, only the version before it, house.site~"),
                saver.save(site("two"), file, null).messages());
        assertEquals("two", SiteFiles.load(file).getName());
        assertEquals("one", SiteFiles.load(previous).getName());
        assertEquals(List.of(), SiteFiles.save(site("three"), file).messages(), "an ordinary drive is not named");
    }

    @Test
    void aDiskThatRefusesAtAnyStepBeforeTheRenameLeavesTheOldFile() throws IOException {
        SiteFiles.save(site("old"), file);
        byte[] old = Files.readAllBytes(file);
        int refused = 0;
        for (int failing = 0; ; failing++) {
            int last = failing;
            String[] failed = new String[1];
            SiteSaver saver = new SiteSaver(new StoppingDisk((step, what) -> {
                if (step == last) {
                    failed[0] = what;
                    throw new IOException("no space left");
                }
            }));
            try {
                saver.save(site("new"), file, null);
                break;
            } catch (SiteFileException e) {
                assertEquals(file + " could not be written: no space left", e.getMessage());
                refused++;
            }
            assertTrue(names().stream().noneMatch(name -> name.endsWith(".tmp")), () -> failed[0] + " left a file");
            if (Files.exists(previous)) {
                assertArrayEquals(old, Files.readAllBytes(previous), failed[0]);
            }
            if (!failed[0].equals("forceFolder") && !failed[0].equals("deleteLeftovers")) {
                assertArrayEquals(old, Files.readAllBytes(file), failed[0]);
            }
            Files.write(file, old);
        }
        assertEquals(16, refused);
    }
}
