package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

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
}
