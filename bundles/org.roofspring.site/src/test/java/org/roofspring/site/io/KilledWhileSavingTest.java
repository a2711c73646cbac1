package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.site.internal.io.SiteWriter;

/**
 * A program that saves is killed at each step in turn; the file is a whole old or a whole new one every time.
 *
 * <p>How often is the system property {@code roofspring.kills}; {@code releng/killtest} sets it to 200.
 */
class KilledWhileSavingTest {
    private static final int KILLS = Integer.getInteger("roofspring.kills", 18);

    @TempDir
    Path folder;

    @Test
    void theFileIsWholeHoweverSavingEnds() throws Exception {
        Path file = folder.resolve("house.site");
        Path previous = SiteFiles.previousVersion(file);
        SiteFiles.save(KilledWhileSaving.site("first"), file);
        SiteFiles.save(KilledWhileSaving.site("second"), file);
        Map<String, Integer> kills = new LinkedHashMap<>();
        int step = 0;
        int done = 0;
        int replaced = 0;
        for (int count = 0; done < KILLS; count++) {
            byte[] old = Files.readAllBytes(file);
            byte[] older = Files.readAllBytes(previous);
            String name = "site of run " + count;
            byte[] fresh = SiteWriter.toBytes(KilledWhileSaving.site(name), "house.site");
            Path content = Files.write(folder.resolve("content"), fresh);
            String ended = saveAndKill(file, content, step);
            byte[] now = Files.readAllBytes(file);
            byte[] kept = Files.readAllBytes(previous);
            assertTrue(Arrays.equals(now, old) || Arrays.equals(now, fresh), "the file is torn, killed " + ended);
            assertTrue(Arrays.equals(kept, older) || Arrays.equals(kept, old), "the previous is torn, killed " + ended);
            assertTrue(Arrays.equals(now, old) || Arrays.equals(kept, old), "the old version is lost, killed " + ended);
            if (ended.equals(KilledWhileSaving.SAVED)) {
                assertArrayEquals(fresh, now);
                assertArrayEquals(old, kept);
                step = 0;
            } else {
                kills.merge(step + " " + ended.substring(KilledWhileSaving.HERE.length()), 1, Integer::sum);
                done++;
                replaced += Arrays.equals(now, fresh) ? 1 : 0;
                step++;
            }
        }
        System.out.println(done + " kills; " + (done - replaced) + " left the old file, " + replaced
                + " the new one; by step: " + kills);
        assertTrue(kills.size() >= 16, () -> "only these steps were reached: " + kills);
        assertNotEquals(0, replaced, "never killed after the rename");
        sweepAfterwards(file);
    }

    /** What the killed ones left behind goes with the next save, once it is old enough to be nobody's work. */
    private void sweepAfterwards(Path file) throws IOException {
        List<Path> leftovers = temporaryFiles();
        assertNotEquals(List.of(), leftovers);
        for (Path leftover : leftovers) {
            Files.setLastModifiedTime(leftover, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
        }
        SiteFiles.save(KilledWhileSaving.site("last"), file);
        assertEquals(List.of(), temporaryFiles());
    }

    private List<Path> temporaryFiles() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(entry -> entry.getFileName().toString().startsWith(".house.site.")).toList();
        }
    }

    private static String saveAndKill(Path file, Path content, int step) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx64m", "-cp",
                System.getProperty("java.class.path"), KilledWhileSaving.class.getName(), file.toString(),
                content.toString(), Integer.toString(step)).redirectErrorStream(true).start();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(),
                StandardCharsets.UTF_8))) {
            String line = out.readLine();
            assertTrue(line != null && (line.equals(KilledWhileSaving.SAVED) || line.startsWith(KilledWhileSaving.HERE)),
                    () -> "the program said " + line);
            return line;
        } finally {
            process.destroyForcibly().waitFor();
        }
    }
}
