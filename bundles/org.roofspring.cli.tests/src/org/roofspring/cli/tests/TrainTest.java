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

import com.google.gson.JsonObject;

/** The command that judges the treatment of a site. */
class TrainTest {
    private static final Path SCHOOL = DemoData.site("hill-school");
    private static final int TERMINAL_WIDTH = 110;

    @TempDir
    Path folder;

    @Test
    void judgesEveryUse() {
        Answer answer = Asked.answer("train " + SCHOOL);
        assertEquals("train", answer.json().get("calculation").getAsString());
        JsonObject drinking = answer.figures().getAsJsonObject("verdict@use-drinking");
        assertEquals("not suitable for drinking", drinking.get("value").getAsString());
        assertEquals("bad", drinking.get("level").getAsString());
        assertFalse(drinking.getAsJsonArray("reasons").isEmpty());
        for (String use : new String[] {"use-meals", "use-hands", "use-caretaker", "use-garden"}) {
            assertTrue(answer.has("verdict@" + use), use);
        }
        assertEquals(4.6, answer.number("headLossFouled@train", "m"), 1e-9);
        assertTrue(answer.has("safetyPlan"));
        assertTrue(answer.has("dosingCard"));
        assertTrue(answer.has("risk@use-drinking"));
        // 1.3 log of bacteria: 5 % out of work caps the lamp
        assertEquals(-Math.log10(0.95e-3 + 0.05), answer.number("logBacteria@use-drinking"), 1e-12);
        assertEquals(answer.figures().getAsJsonObject("logBacteria@use-drinking").get("value"),
                answer.lastStep("logBacteria").getAsJsonObject("result").get("value"));
    }

    @Test
    void oneUseByIdentifierOrName() {
        Answer answer = Asked.answer("train " + SCHOOL + " --use use-meals");
        assertTrue(answer.has("verdict@use-meals"));
        assertFalse(answer.has("verdict@use-drinking"));
        assertTrue(answer.has("headLossClean@train"));
        assertFalse(answer.has("safetyPlan"));
    }

    @Test
    void theTableReadsAndFits() {
        Asked asked = Asked.of("train " + SCHOOL);
        assertEquals(0, asked.status());
        assertEquals("", asked.err());
        assertTrue(asked.out().contains("Drinking water of pupils and staff: verdict"), asked.out());
        assertTrue(asked.out().contains("not suitable for drinking"));
        asked.out().lines().forEach(line -> assertTrue(line.length() <= TERMINAL_WIDTH, line));
    }

    /** A site last noted long ago says so: the calculation itself has no clock. */
    @Test
    void anOldSiteSaysSo() {
        assertTrue(Asked.answer("train " + SCHOOL).cautionCodes().contains("verdict.outdated"));
    }

    @Test
    void refusals() throws IOException {
        Asked none = Asked.of("train " + SCHOOL + " --use nobody");
        assertEquals(2, none.status());
        assertTrue(none.err().startsWith("--use: there is no use \"nobody\""), none.err());
        Asked flushing = Asked.of("train " + SCHOOL + " --use use-staff");
        assertEquals(3, flushing.status());
        assertTrue(flushing.err().contains("cleaning"), flushing.err());
        assertEquals(2, Asked.of("train " + folder.resolve("absent.site")).status());
        Path empty = Files.writeString(folder.resolve("empty.site"), """
                <?xml version="1.0" encoding="UTF-8"?>
                <site:Site xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
                  xmlns:site="http://www.roofspring.org/site/1" id="s" name="Empty" schemaVersion="1"/>
                """);
        Asked nothing = Asked.of("train " + empty);
        assertEquals(3, nothing.status());
        assertTrue(nothing.err().startsWith("There is neither a use"), nothing.err());
        Path contradicting = Files.writeString(folder.resolve("contradicting.site"), Files.readString(SCHOOL)
                .replace("headLossFouled=\"1.8 m(head)\"", "headLossFouled=\"0.1 m(head)\""));
        Asked refused = Asked.of("train " + contradicting);
        assertEquals(3, refused.status());
        assertTrue(refused.err().startsWith("Pleated cartridge 1 um absolute: fouled head loss"), refused.err());
    }
}
