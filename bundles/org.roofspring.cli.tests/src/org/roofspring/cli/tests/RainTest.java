package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import org.roofspring.cli.tests.Asked.Answer;

class RainTest {
    @TempDir
    Path folder;

    /** Counted from the file by an independent script (computed, not published). */
    @Test
    void realRecord() {
        Answer rain = Asked.answer("rain " + DemoData.realRain());
        assertEquals(1461, rain.number("days"));
        assertEquals(0, rain.number("missingDays"));
        assertEquals((1226.0 + 828.0 + 1232.8 + 1139.2) / 4, rain.number("annualMean", "mm"), 1e-9);
        assertEquals(828.0, rain.number("driestYear", "mm"), 1e-9);
        assertEquals(55.9, rain.number("wettestDay", "mm"), 1e-12);
        assertEquals(48, rain.number("longestDrySpell", "d"));
        assertEquals(623, rain.number("wetDays"));
        assertEquals(204.0 / 837, rain.number("p01"), 1e-12);
        assertEquals(419.0 / 623, rain.number("p11"), 1e-12);
    }

    @Test
    void missingDaysAreCountedAndSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("gap.csv"),
                "date,precipitation[mm]\n2001-01-01,1.5\n2001-01-02,0\n2001-01-05,2\n2001-01-06,\n2001-01-07,3\n");
        Answer rain = Asked.answer("rain " + file);
        assertEquals(7, rain.number("days"));
        assertEquals(3, rain.number("missingDays"));
        assertEquals(3, rain.number("wetDays"));
        assertFalse(rain.caution("rain.missing-days").isEmpty());
    }

    /** A negative depth is no rain: the day is missing, and both the place and the value are told. */
    @Test
    void impossibleDepthsAreMissing() throws IOException {
        Path file = Files.writeString(folder.resolve("minus.csv"),
                "date,precipitation[mm]\n2001-02-26,4\n2001-02-27,0\n2001-02-28,-3\n");
        Answer rain = Asked.answer("rain " + file);
        assertEquals(1, rain.number("missingDays"));
        String quality = rain.figures().get("quality").toString();
        assertTrue(quality.contains("-3.0 mm, line 4"), quality);
    }

    @Test
    void columnsMayBeNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("named.csv"), "when;wet\n01/02/2001;1,5\n02/02/2001;0,25\n");
        Answer rain = Asked.answer("rain " + file
                + " --date-column when --depth-column wet --depth-unit in --date-pattern dd/MM/yyyy");
        assertEquals(1.5 * 25.4, rain.number("wettestDay", "mm"), 1e-9);
        assertEquals(2, rain.number("days"));
    }

    /** What a gap does to a balance is the user's choice, and refused until it is made. */
    @Test
    void storageRefusesGapsUntilToldHow() throws IOException {
        Path file = Files.writeString(folder.resolve("gap.csv"),
                "date,precipitation[mm]\n2001-01-01,10\n2001-01-02,0\n2001-01-04,10\n");
        String storage = "storage --rain " + file + " --roof 10m2 --runoff 1 --tank 1m3 --demand 10L/d";
        assertTrue(Asked.of(storage).refusal().contains("--gaps"));
        Answer filled = Asked.answer(storage + " --gaps zero");
        assertEquals(0.2, filled.number("inflow", "m3"), 1e-12);
        assertFalse(filled.caution("rain.filled-days").isEmpty());
    }

    /** Half the depths are half the rain; what was done is said, and the file written reads back to the same. */
    @Test
    void stressIsSaidAndCanBeWritten() throws IOException {
        Answer plain = Asked.answer("rain " + DemoData.realRain());
        Path out = folder.resolve("stressed.csv");
        Answer half = Asked.answer("rain " + DemoData.realRain() + " --depth-factor 0.5 --write " + out);
        assertEquals(plain.number("annualMean", "mm") / 2, half.number("annualMean", "mm"), 1e-9);
        assertEquals(plain.number("wetDays"), half.number("wetDays"));
        assertTrue(half.figures().get("origin").toString().contains("depths times 0.50"));
        Answer again = Asked.answer("rain " + out);
        assertEquals(half.number("annualMean", "mm"), again.number("annualMean", "mm"), 1e-9);
        assertEquals(plain.number("days"), again.number("days"));
        String before = Files.readString(out);
        assertTrue(Asked.of("rain " + DemoData.realRain() + " --write " + out).refusal().contains("--force"));
        assertEquals(before, Files.readString(out));
        Asked.answer("rain " + DemoData.realRain() + " --force --write " + out);
        assertFalse(before.equals(Files.readString(out)));
    }

    /** A dry season that ends later has no rain in the days that are added, and a longer dry spell. */
    @Test
    void longerDrySeason() {
        Answer plain = Asked.answer("rain " + DemoData.inventedRain());
        Answer longer = Asked.answer("rain " + DemoData.inventedRain() + " --dry-season-longer 20d");
        assertTrue(longer.number("longestDrySpell", "d") > plain.number("longestDrySpell", "d"));
        assertTrue(longer.number("annualMean", "mm") < plain.number("annualMean", "mm"));
        assertTrue(longer.figures().get("origin").toString().contains("the dry season ends 20 days later"));
        assertTrue(Asked.of("rain " + DemoData.inventedRain() + " --dry-season-longer 500d").refusal()
                .contains("--dry-season-longer"));
        assertTrue(Asked.of("rain " + DemoData.inventedRain() + " --depth-factor 7").refusal().contains("0 to 5"));
    }

    /** Missing days taken from the record itself under another name, with twice its depths: the ratio is a half. */
    @Test
    void donorFillsWhatIsMissing() throws IOException {
        List<String> lines = Files.readAllLines(DemoData.inventedRain());
        Path gaps = folder.resolve("gaps.csv");
        List<String> holed = new ArrayList<>(lines);
        for (int line = 5000; line < 5010; line++) {
            holed.set(line, holed.get(line).replaceFirst(",.*", ","));
        }
        Files.write(gaps, holed);
        Path donor = folder.resolve("donor.csv");
        Asked.answer("rain " + DemoData.inventedRain() + " --depth-factor 2 --write " + donor);
        assertEquals(10, Asked.answer("rain " + gaps).number("missingDays"));
        Answer filled = Asked.answer("rain " + gaps + " --donor " + donor);
        Answer whole = Asked.answer("rain " + DemoData.inventedRain());
        assertEquals(0, filled.number("missingDays"));
        assertEquals(whole.number("annualMean", "mm"), filled.number("annualMean", "mm"), 1e-6);
        assertTrue(filled.figures().get("origin").toString().contains("donor.csv"));
        Path empty = folder.resolve("short.csv");
        Files.write(empty, lines.subList(0, 100));
        assertTrue(Asked.of("rain " + gaps + " --donor " + empty).noAnswer().contains("cannot be filled"));
    }

    @Test
    void normalsScaleTheRecord() throws IOException {
        StringBuilder normals = new StringBuilder("month,precipitation[mm]\n");
        for (int month = 1; month <= 12; month++) {
            normals.append(month).append(",50\n");
        }
        Path file = Files.writeString(folder.resolve("normals.csv"), normals);
        Answer scaled = Asked.answer("rain " + DemoData.realRain() + " --normals " + file);
        assertEquals(600, scaled.number("annualMean", "mm"), 0.5, "29 February takes part in the mean of its month");
        assertTrue(scaled.figures().get("origin").toString().contains("scaled month by month"));
    }

    /** The comparison names what falls short, and says that synthetic rain never takes the record's place. */
    @Test
    void syntheticRainIsComparedWithTheRecord() {
        Answer rain = Asked.answer("rain " + DemoData.inventedRain() + " --synthetic 20 --seed 3");
        String table = rain.figures().get("synthesis").toString();
        for (String figure : List.of("yearly rain", "yearly spread", "wet-day share", "longest dry spell")) {
            assertTrue(table.contains(figure), table);
        }
        assertTrue(rain.figures().get("synthesisVerdict").toString().contains("never in place of it"));
        assertEquals(Asked.answer("rain " + DemoData.inventedRain()).number("annualMean", "mm"),
                rain.number("annualMean", "mm"), "the headline is the record's");
        assertEquals(table, Asked.answer("rain " + DemoData.inventedRain() + " --synthetic 20 --seed 3").figures()
                .get("synthesis").toString(), "the seed decides");
        assertTrue(Asked.of("rain " + DemoData.inventedRain() + " --synthetic 5").refusal().contains("20 to 10000"));
    }
}
