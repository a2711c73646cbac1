package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.cli.tests.Asked.Answer;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;

/** Many pumps on one line: each as {@code duty} has it, and refusals that name the file. */
class PumpsTest {
    private static final String LINE = " --static-head 10m --bore 41.8mm --length 60m --fittings 4 --altitude 1420m";

    @TempDir
    Path folder;

    @BeforeEach
    void writePumps() throws IOException {
        Files.writeString(folder.resolve("b.csv"), "flow[L/s],head[m],efficiency[%],npshr[m]\n0,16,0,1\n1,14,45,1.5\n2,9,50,2\n3,1,30,4\n");
        Files.writeString(folder.resolve("a.csv"),
                "pump,flow[L/s],head[m]\nhigh,0,20\nhigh,1,17\nhigh,2,8\nlow,0,9\nlow,1,8\nlow,2,5\n");
        Files.writeString(folder.resolve("notes.txt"), "no pump");
    }

    private static List<String> column(Answer answer, String title) {
        var table = answer.figures().getAsJsonObject("candidates");
        int at = -1;
        JsonArray columns = table.getAsJsonArray("columns");
        for (int i = 0; i < columns.size(); i++) {
            at = columns.get(i).getAsString().equals(title) ? i : at;
        }
        List<String> cells = new ArrayList<>();
        for (JsonElement row : table.getAsJsonArray("rows")) {
            JsonElement cell = row.getAsJsonArray().get(at);
            cells.add(cell.isJsonNull() ? "" : cell.isJsonObject() ? cell.getAsJsonObject().get("value").getAsString() : cell.getAsString());
        }
        return cells;
    }

    @Test
    void everyPumpOfTheFolderIsAsDutyHasIt() {
        Answer answer = Asked.answer("pumps " + folder + LINE);
        assertEquals(List.of("high", "low", "b"), column(answer, "Pump"), "files by name, pumps in their order");
        Answer duty = Asked.answer("duty --pump " + folder.resolve("b.csv") + LINE);
        assertEquals(duty.number("flow", "m3/s") * 1000, Double.parseDouble(column(answer, "Flow").get(2)), 1e-12);
        assertEquals(duty.number("head", "m"), Double.parseDouble(column(answer, "Head").get(2)), 1e-12);
        assertEquals(duty.number("npshAvailable", "m") - duty.number("npshRequired", "m"),
                Double.parseDouble(column(answer, "NPSH margin").get(2)), 1e-12);
        assertEquals(duty.number("specificEnergy", "Wh/m3"), Double.parseDouble(column(answer, "Energy").get(2)), 1e-9);
        assertEquals(List.of("With reserve", "Not suited", "Suited"), column(answer, "Verdict"));
        assertTrue(column(answer, "Reasons").get(1).contains("shut-off head"), column(answer, "Reasons").get(1));
        assertEquals(3, answer.number("compared"));
        assertEquals(2, answer.number("suited"));
    }

    @Test
    void arrangementHoldsForEach() {
        String low = "pumps " + folder.resolve("a.csv") + LINE;
        assertEquals("", column(Asked.answer(low), "Flow").get(1), "9 m are not enough for 10 m of lift");
        assertTrue(Double.parseDouble(column(Asked.answer(low + " --series 2"), "Flow").get(1)) > 0, "18 m are");
    }

    @Test
    void theInventedCandidatesCanBeCompared() {
        Path demo = DemoData.site("hill-school").resolveSibling("pumps");
        Answer answer = Asked.answer("pumps " + demo + " --static-head 13.65m --bore 51.4mm --length 95m");
        assertTrue(answer.number("compared") >= 11, "ten candidates and the pump of the school");
        assertTrue(column(answer, "Pump").stream().filter(name -> name.endsWith("(invented)")).count() >= 10);
    }

    @Test
    void refusalsNameTheFileAndTheLine() throws IOException {
        Path bad = Files.writeString(folder.resolve("c.csv"), "flow[L/s],head[m],efficiency[%]\n0,12,0\n1,10,130\n2,5,40\n");
        Asked asked = Asked.of("pumps " + folder + LINE);
        assertEquals(2, asked.status());
        assertTrue(asked.err().contains("c.csv, line 3, column 3") && asked.err().contains("130 %"), asked.err());
        Files.writeString(bad, "flow[L/s],head[m]\n0,12\n2,5\n1,10\n");
        assertTrue(Asked.of("pumps " + folder + LINE).err().contains("c.csv, line 4"));
        Files.writeString(bad, "flow[L/s],head[m]\n0,12\n2,5\n");
        assertTrue(Asked.of("pumps " + folder + LINE).err().contains("at least 3 points"));
        Files.delete(bad);
        asked = Asked.of("pumps " + Files.createDirectory(folder.resolve("empty")) + LINE);
        assertEquals(2, asked.status());
        assertTrue(asked.err().contains("holds no file that ends in .csv"), asked.err());
        assertEquals(2, Asked.of("pumps " + folder.resolve("gone.csv") + LINE).status());
        assertEquals(2, Asked.of("pumps " + folder + LINE.replace("41.8mm", "0mm")).status());
    }

    @Test
    void whereNoneGetsThereThereIsNoAnswer() {
        Asked asked = Asked.of("pumps " + folder + LINE.replace("10m ", "21m "));
        assertEquals(3, asked.status());
        assertEquals("", asked.out());
        assertTrue(asked.err().startsWith("None of the 3 pumps has a duty point; high, the highest: "), asked.err());
        assertEquals(1, asked.err().lines().count());
    }
}
