package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed records are what their READMEs say. */
class DemoRecordTest {
    private static final Path FOLDER = Path.of("../../demo-data/rain");
    private static final Path UPLAND = FOLDER.resolve("upland-40y.csv");

    @Test
    void generatorMakesTheCommittedFile(@TempDir Path folder) throws Exception {
        Path made = folder.resolve("made.csv");
        Process java = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                FOLDER.resolve("UplandRain.java").toString()).redirectOutput(made.toFile())
                .redirectError(folder.resolve("errors").toFile()).start();
        assertEquals(0, java.waitFor(), () -> "the generator failed, see " + folder);
        assertArrayEquals(Files.readAllBytes(UPLAND), Files.readAllBytes(made));
    }

    @Test
    void upland() throws IOException {
        RainReading reading = RainReader.read(UPLAND);
        RainStatistics statistics = RainStatistics.of(reading.record());
        assertEquals(LocalDate.of(1985, 1, 1), reading.record().firstDay());
        assertEquals(LocalDate.of(2024, 12, 31), reading.record().lastDay());
        assertEquals(14_610, statistics.days());
        assertEquals(0, statistics.missingDays());
        assertEquals(1018, statistics.annualMeanMm().orElseThrow(), 0.5);
        assertEquals(383, statistics.driestYear().orElseThrow().totalMm(), 0.5);
        assertEquals(1594, statistics.wettestYear().orElseThrow().totalMm(), 0.5);
        assertEquals(178, statistics.longestDrySpell().orElseThrow().days());
        assertEquals(Month.NOVEMBER, HydrologicalYear.startMonth(reading.record()));
        double[] monthsMm = statistics.monthlyMeansMm();
        for (int month = Month.MAY.getValue(); month <= Month.SEPTEMBER.getValue(); month++) {
            assertTrue(monthsMm[month - 1] < 20, "month " + month + " is dry: " + monthsMm[month - 1] + " mm");
        }
        assertEquals(1, reading.quality().sentences().size(), () -> reading.quality().sentences().toString());
    }

    @Test
    void seattleIsTheFileThatItsReadmeNames() throws Exception {
        byte[] digest = java.security.MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(
                TestFiles.SEATTLE));
        String hash = HexFormat.of().formatHex(digest);
        assertTrue(Files.readString(TestFiles.SEATTLE.resolveSibling("README.md")).contains(hash), hash);
    }
}
