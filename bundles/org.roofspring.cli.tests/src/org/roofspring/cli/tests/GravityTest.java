package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.cli.tests.Asked.Answer;

/** The taps of a site file. */
class GravityTest {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<site:Site xmi:version=\"2.0\""
            + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:site=\"http://www.roofspring.org/site/1\" id=\"site\" name=\"Test\""
            + " schemaVersion=\"1\">\n";
    private static final String TANK =
            "<tanks id=\"tank\" name=\"High tank\" baseLevel=\"5 m\" overflowHeight=\"2 m\" startHeight=\"0.5 m\"/>\n";
    private static final String TAP =
            "<taps id=\"tap\" name=\"Yard tap\" level=\"1 m\" designFlow=\"6 L/min\" minimumHead=\"1 m(head)\"/>\n";

    @TempDir
    Path folder;

    private Path site(String inside) throws IOException {
        return Files.writeString(folder.resolve("test.site"), HEAD + inside + "</site:Site>\n");
    }

    private static String run(String id, String from, String to, String bore) {
        return "<pipeRuns id=\"" + id + "\" name=\"Run " + id + "\" from=\"" + from + "\" to=\"" + to + "\" bore=\"" + bore
                + "\" length=\"1 m\" material=\"pvc\"/>\n";
    }

    /** 4.5 m over a tap that gives 6 L/min at 1 m, through a pipe that takes next to nothing: Torricelli. */
    @Test
    void aTapRunsByItsHead() throws IOException {
        Answer answer = Asked.answer("gravity " + site(TANK + run("drop", "tank", "tap", "500 mm") + TAP));
        assertEquals(6 * Math.sqrt(4.5), answer.number("flow@tap", "L/min"), 1e-6);
        assertEquals(4.5, answer.number("residualHead@tap", "m"), 1e-6);
        assertEquals("gravity", answer.json().get("calculation").getAsString());
        Asked table = Asked.of("gravity " + folder.resolve("test.site"));
        assertTrue(table.out().contains("Yard tap: head left at the tap"), table.out());
    }

    @Test
    void theDemoSitesAreServed() {
        Answer school = Asked.answer("gravity " + DemoData.site("hill-school"));
        for (String tap : new String[] {"tap-lower", "tap-upper", "tap-fountain", "tap-kitchen", "tap-caretaker"}) {
            assertTrue(school.number("flow@" + tap, "L/min") > 0, tap);
            assertTrue(school.number("flowFouled@" + tap, "L/min") > 0, tap);
        }
        assertTrue(school.has("leastStandHeight@overhead") && school.has("breaks"));
        assertEquals(0, Asked.of("gravity " + DemoData.site("household")).status());
    }

    @Test
    void whatIsWrongIsOneSentence() throws IOException {
        String loop = TANK + "<junctions id=\"tee\" name=\"Tee\" level=\"2 m\"/>\n" + run("a", "tank", "tee", "40 mm")
                + run("b", "tee", "tap", "20 mm") + run("c", "tank", "tap", "20 mm") + TAP;
        assertRefused(3, "closes a loop", loop);
        assertRefused(2, "must be above 0 mm", TANK + run("drop", "tank", "tap", "0 mm") + TAP);
        assertRefused(3, "No run of pipe leads", TANK + TAP);
        assertRefused(3, "The level of Yard tap is missing", TANK + run("drop", "tank", "tap", "20 mm")
                + TAP.replace(" level=\"1 m\"", ""));
        Asked gone = Asked.of("gravity " + folder.resolve("gone.site"));
        assertEquals(2, gone.status());
        assertTrue(gone.err().contains("gone.site"), gone.err());
    }

    private void assertRefused(int status, String part, String inside) throws IOException {
        Asked asked = Asked.of("gravity " + site(inside));
        assertEquals(status, asked.status(), asked.err());
        assertEquals("", asked.out());
        assertEquals(1, asked.err().lines().count(), asked.err());
        assertTrue(asked.err().replace('\u00a0', ' ').contains(part), asked.err());
    }
}
