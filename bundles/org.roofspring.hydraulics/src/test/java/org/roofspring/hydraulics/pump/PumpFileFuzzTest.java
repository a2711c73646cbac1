package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.kernel.testkit.Fuzz;

/** Files that are broken, strange or meant to harm. */
class PumpFileFuzzTest {
    private static final String GOOD = "flow[L/s],head[m]\n0,40\n1,38\n2,32\n3,22\n";

    @TempDir
    Path folder;

    private List<PumpCurve> read(byte[] content) throws IOException {
        return PumpFile.readAll(Files.write(folder.resolve("pump.csv"), content));
    }

    private String refusal(String content) {
        return assertThrows(PumpFileException.class, () -> read(content.getBytes(StandardCharsets.UTF_8))).getMessage();
    }

    @Test
    void damagedFilesAreReadOrRefused() throws IOException {
        new Fuzz("pump.csv", PumpFileException.class, this::read).run(List.of(GOOD.getBytes(StandardCharsets.UTF_8),
                Files.readAllBytes(Path.of("../../demo-data/pumps/lift-pump.csv")),
                Files.readAllBytes(Path.of("../../demo-data/pumps/candidates.csv"))));
    }

    @Test
    void everyLineEndAndAByteOrderMarkAreRead() throws IOException {
        assertEquals(4, read(("\ufeffflow[L/s],head[m]\r\n0,40\r1,38\n2,32\r\n3,22").getBytes(StandardCharsets.UTF_8))
                .getFirst().points().size());
    }

    @Test
    void otherEncodingsAreRefused() {
        for (var encoding : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16)) {
            String message = assertThrows(PumpFileException.class, () -> read(GOOD.getBytes(encoding))).getMessage();
            assertEquals(1, message.lines().count(), message);
        }
        assertEquals("pump.csv: this is not UTF-8 text; a table of comma-separated values is needed",
                assertThrows(PumpFileException.class,
                        () -> read("#Dr\u00fcck\n".getBytes(StandardCharsets.ISO_8859_1))).getMessage());
    }

    @Test
    void decimalCommasAreRefused() {
        assertEquals("pump.csv, line 3: 2 columns are needed as in the header, not 3",
                refusal(GOOD.replace("1,38", "1,5,38")));
        assertTrue(refusal("flow[L/s],head[m]\n0;40\n").contains("2 columns are needed"));
    }

    @Test
    void namesWithoutEndAreRefused() {
        assertEquals("pump.csv, line 2, column 3: the name of the pump has 5000 characters; at most 100 are accepted",
                refusal("flow[L/s],head[m],pump\n0,40," + "n".repeat(5000)));
    }

    @Test
    void filesWithoutEndAreRefused() throws IOException {
        Path endless = Path.of("/dev/zero");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(endless));
        assertEquals("zero: a pump file of at most 10000000 bytes is accepted, this one has more",
                assertThrows(PumpFileException.class, () -> PumpFile.readAll(endless)).getMessage());
    }
}
