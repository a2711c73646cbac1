package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.internal.io.Disk;
import org.roofspring.site.internal.io.SiteSaver;
import org.roofspring.site.internal.io.SiteWriter;

/**
 * What a power cut leaves: on a disk that has kept, of what was not forced, nothing, half or all of each file and any
 * of the changes of names, the site is a whole old or a whole new one. Killing a program cannot show this, since what
 * it has written lives on in the system's memory.
 */
class PowerCutTest {
    private static final Path FILE = Path.of("/power/cut/house.site");
    private static final Path PREVIOUS = Path.of("/power/cut/house.site~");

    /** A disk in memory that knows what of it would last. */
    private static class FragileDisk implements Disk {
        /** What a file holds now and what of that has been forced. */
        private static final class Content {
            byte[] now = new byte[0];
            byte[] forced;
        }

        /** A name that came, or went where the content is null. */
        private record Renaming(Path name, Content content, Path gone) {
        }

        final Map<Path, Content> names = new HashMap<>();
        private final Map<Path, Content> forcedNames = new HashMap<>();
        private final List<Renaming> pending = new ArrayList<>();
        private final Runnable afterStep;
        private int created;

        FragileDisk(Runnable afterStep) {
            this.afterStep = afterStep;
        }

        void put(Path file, byte[] bytes) {
            Content content = new Content();
            content.now = bytes;
            content.forced = bytes;
            names.put(file, content);
            forcedNames.put(file, content);
        }

        private void happen(Renaming renaming) {
            apply(renaming, names);
            pending.add(renaming);
            afterStep.run();
        }

        private static void apply(Renaming renaming, Map<Path, Content> to) {
            to.remove(renaming.gone());
            if (renaming.content() != null) {
                to.put(renaming.name(), renaming.content());
            }
        }

        /** Everything that a file could hold after a power cut now; "none" where it could be missing. */
        Set<String> couldHold(Path file) {
            Set<String> all = new HashSet<>();
            for (int kept = 0; kept < 1 << pending.size(); kept++) {
                Map<Path, Content> left = new HashMap<>(forcedNames);
                for (int i = 0; i < pending.size(); i++) {
                    if ((kept >> i & 1) == 1) {
                        apply(pending.get(i), left);
                    }
                }
                Content content = left.get(file);
                if (content == null) {
                    all.add("none");
                } else if (Arrays.equals(content.now, content.forced)) {
                    all.add(text(content.now));
                } else {
                    all.add(text(content.now));
                    all.add(text(Arrays.copyOf(content.now, content.now.length / 2)));
                    all.add("");
                }
            }
            return all;
        }

        @Override
        public byte[] read(Path file, int limit) {
            return names.containsKey(file) ? names.get(file).now : null;
        }

        @Override
        public Path create(Path folder, String prefix) {
            Path file = folder.resolve(prefix + created++);
            happen(new Renaming(file, new Content(), null));
            return file;
        }

        @Override
        public void write(Path file, byte[] bytes) {
            names.get(file).now = bytes;
            afterStep.run();
        }

        @Override
        public void copyPermissions(Path model, Path file) {
            // a memory has none
        }

        @Override
        public void force(Path file) {
            names.get(file).forced = names.get(file).now;
            afterStep.run();
        }

        @Override
        public void rename(Path from, Path to) throws IOException {
            happen(new Renaming(to, names.get(from), from));
        }

        @Override
        public void replace(Path from, Path to) {
            throw new AssertionError("this disk renames");
        }

        @Override
        public void forceFolder(Path folder) {
            pending.forEach(renaming -> apply(renaming, forcedNames));
            pending.clear();
            afterStep.run();
        }

        @Override
        public void delete(Path file) {
            throw new AssertionError("nothing has failed");
        }

        @Override
        public void deleteLeftovers(Path folder, String prefix) {
            // there are none
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static Site site(String name) {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setId("site");
        site.setName(name);
        return site;
    }

    private static byte[] bytes(String name) throws SiteFileException {
        return SiteWriter.toBytes(site(name), "house.site");
    }

    @Test
    void whateverLastedTheSiteIsWhole() throws IOException {
        Set<String> whole = Set.of(text(bytes("old")), text(bytes("new")));
        Set<String> versions = Set.of(text(bytes("older")), text(bytes("old")));
        FragileDisk[] disk = new FragileDisk[1];
        List<Set<String>> seen = new ArrayList<>();
        disk[0] = new FragileDisk(() -> {
            Set<String> now = disk[0].couldHold(FILE);
            assertTrue(whole.containsAll(now), () -> "after a power cut the site could be " + now);
            assertTrue(versions.containsAll(disk[0].couldHold(PREVIOUS)), "the previous version could be lost");
            seen.add(now);
        });
        disk[0].put(FILE, bytes("old"));
        disk[0].put(PREVIOUS, bytes("older"));
        new SiteSaver(disk[0]).save(site("new"), FILE, null);
        assertEquals(Set.of(text(bytes("new"))), disk[0].couldHold(FILE), "saved means that it lasts");
        assertEquals(Set.of(text(bytes("old"))), disk[0].couldHold(PREVIOUS));
        assertEquals(10, seen.size(), "steps of two files: create, write, force, rename, force the folder");
        assertTrue(seen.stream().anyMatch(set -> set.equals(whole)), "at some time it could be either");
    }
}
