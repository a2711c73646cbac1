package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import org.roofspring.cli.tests.Asked.Answer;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** The names, units and shape that scripts rely on. */
class ContractTest {
    private static final int TERMINAL_WIDTH = 110;

    @TempDir
    static Path folder;

    @BeforeAll
    static void writePump() throws IOException {
        Files.writeString(folder.resolve("pump.csv"), """
                flow[L/s],head[m],efficiency[%],npshr[m]
                0,25,0,1.0
                1,21,45,1.5
                2,10,40,2.4
                """);
    }

    /** A command, and every figure it must give, with its unit; {@code -} where it is not a number. */
    static Stream<Arguments> commands() {
        String rain = DemoData.realRain().toString();
        String catchment = " --rain " + rain + " --roof 100m2 --runoff 80% --demand 200L/d";
        return Stream.of(
                Arguments.of("pipe", "--flow 1.2L/s --bore 41.8mm --length 60m", "velocity m/s, reynolds 1, "
                        + "frictionFactor 1, frictionLoss m, fittingLoss m, totalLoss m"),
                Arguments.of("duty", "--pump " + folder.resolve("pump.csv") + " --static-head 15m --bore 41.8mm "
                        + "--length 60m", "flow m3/s, head m, efficiency 1, hydraulicPower W, shaftPower W, "
                                + "npshAvailable m, npshRequired m, specificEnergy Wh/m3"),
                Arguments.of("rain", rain, "days 1, missingDays 1, annualMean mm, driestYear mm, wettestDay mm, "
                        + "longestDrySpell d, wetDays 1, p01 1, p11 1"),
                Arguments.of("storage", catchment + " --tank 5000L", "inflow m3, supplied m3, spilled m3, "
                        + "endVolume m3, volumetricReliability 1, timeReliability 1, emptyDays d, longestShortage d"),
                Arguments.of("size", catchment + " --target 95%", "requiredVolume m3, sequentPeakVolume m3"),
                Arguments.of("gutter", "--profile half-round --width 125mm --length 8m --slope 0.5% --roof 60m2 "
                        + "--intensity 150mm/h", "capacity L/s, runoff L/s, utilisation 1"),
                Arguments.of("firstflush", "--roof 60m2 --depth 1mm --storm 20mm --bore 150mm --hole 3mm",
                        "depth mm, volume L, shareLeft 1, meanSharePast 1, chamberHeight m, drainDown h, holeFlow L/h"),
                Arguments.of("intensity", "--rain " + DemoData.inventedRain() + " --return-period 10yr",
                        "intensity mm/h, depth mm, dayDepth mm, intensityLow mm/h, intensityHigh mm/h, "
                                + "intensityOtherLaw mm/h, years 1"),
                Arguments.of("intensity", "--relation talbot --a 7500 --b 20", "intensity mm/h, depth mm"),
                Arguments.of("disinfect chlorine", "--volume 1000L --dose 5mg/L --strength 12.5% --residual 0.5mg/L",
                        "productMass g, productVolume mL, drops 1, contactTime mg.min/L, logGiardia 1, logVirus 1"),
                Arguments.of("disinfect uv", "--dose 40mJ/cm2", "logCryptosporidium 1, logGiardia 1, logVirus 1"),
                Arguments.of("disinfect boil", "--altitude 1800m", "boilingPoint degC, boilTime min"),
                Arguments.of("disinfect solar", "--volume 1.5L --sky clear --turbidity 5NTU",
                        "exposure h, suitable -"));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void figuresAndUnits(String command, String options, String figures) {
        Answer answer = Asked.answer(command + " " + options);
        assertEquals(command, answer.json().get("calculation").getAsString());
        for (String figure : figures.split(", ")) {
            String id = figure.substring(0, figure.indexOf(' '));
            String unit = figure.substring(figure.indexOf(' ') + 1);
            if (unit.equals("-")) {
                answer.flag(id);
            } else {
                assertTrue(Double.isFinite(answer.number(id, unit)), id);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void shape(String command, String options, String figures) {
        JsonObject json = Asked.answer(command + " " + options).json();
        assertEquals(Set.of("calculation", "figures", "cautions", "workings"), json.keySet());
        json.getAsJsonObject("figures").asMap().forEach((id, figure) -> {
            JsonElement value = figure.getAsJsonObject().get("value");
            if (value != null) {
                boolean number = value.getAsJsonPrimitive().isNumber();
                assertEquals(number, figure.getAsJsonObject().has("unit"), id + ": a number has a unit, and only one");
            }
        });
        for (JsonElement element : json.getAsJsonArray("cautions")) {
            JsonObject caution = element.getAsJsonObject();
            assertTrue(caution.get("code").getAsString().matches("[a-z]+(\\.[a-z-]+)+"), caution.toString());
            assertTrue(Set.of("info", "warning", "danger").contains(caution.get("severity").getAsString()));
            assertFalse(caution.get("text").getAsString().isBlank());
            assertFalse(caution.get("text").getAsString().contains("{"), "every argument is filled in");
            assertFalse(caution.get("source").getAsString().isBlank());
        }
    }

    /** Every number can show where it comes from. */
    @ParameterizedTest
    @MethodSource("commands")
    void everyNumberHasWorkings(String command, String options, String figures) {
        Answer answer = Asked.answer(command + " " + options);
        for (String figure : figures.split(", ")) {
            String id = figure.substring(0, figure.indexOf(' '));
            if (!figure.endsWith(" -")) {
                JsonObject last = answer.lastStep(id);
                assertFalse(last.get("source").getAsString().isBlank(), id);
                if (last.has("result")) {
                    assertEquals(answer.figures().getAsJsonObject(id).get("value"),
                            last.getAsJsonObject("result").get("value"), id + " is what its workings end with");
                }
            }
        }
    }

    /** The readable table says the same, a figure a line, in lines that fit a terminal. */
    @ParameterizedTest
    @MethodSource("commands")
    void table(String command, String options, String figures) {
        Answer answer = Asked.answer(command + " " + options);
        Asked asked = Asked.of(command + " " + options);
        assertEquals(0, asked.status());
        assertEquals("", asked.err());
        answer.figures().asMap().values().forEach(figure -> {
            String title = figure.getAsJsonObject().get("title").getAsString();
            assertTrue(asked.out().lines().anyMatch(line -> line.equals(title) || line.startsWith(title + " ")),
                    () -> title + " in\n" + asked.out());
        });
        asked.out().lines().forEach(line -> assertTrue(line.length() <= TERMINAL_WIDTH, line));
        asked.out().lines().forEach(line -> assertEquals(line.stripTrailing(), line));
        assertFalse(asked.out().contains("NaN"), asked.out());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void help(String command, String options, String figures) {
        Asked help = Asked.of(command + " --help");
        assertEquals(0, help.status());
        assertEquals("", help.err());
        assertTrue(help.out().startsWith("Usage: roofspring " + command), help.out());
        Stream.of(options.split("\\s+")).filter(word -> word.startsWith("--"))
                .forEach(option -> assertTrue(help.out().contains(option), option));
        assertTrue(help.out().contains("--json"));
    }

    @Test
    void helpNamesEveryCommand() {
        for (String help : new String[] {"--help", "-h"}) {
            Asked asked = Asked.of(help);
            assertEquals(0, asked.status());
            commands().map(arguments -> ((String) arguments.get()[0]).split(" ")[0])
                    .forEach(command -> assertTrue(asked.out().contains("\n  " + command + " "), command));
        }
        String methods = Asked.of("disinfect --help").out();
        Stream.of("chlorine", "uv", "boil", "solar").forEach(name -> assertTrue(methods.contains("\n  " + name), name));
    }

    @Test
    void theSameQuestionGetsTheSameBytes() {
        commands().forEach(arguments -> {
            String command = arguments.get()[0] + " " + arguments.get()[1] + " --json";
            assertEquals(Asked.of(command), Asked.of(command));
        });
    }
}
