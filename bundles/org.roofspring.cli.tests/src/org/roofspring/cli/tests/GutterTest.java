package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

class GutterTest {
    private static final String STORM = " --roof 50m2 --intensity 75mm/h";

    private static Answer halfRound(double widthMm, double lengthM, double slope) {
        return Asked.answer("gutter --profile half-round --width " + widthMm + "mm --length " + lengthM + "m --slope "
                + slope + STORM);
    }

    /** QL = 0.9 x 2.78e-5 A^1.25 of a true half-round (EN 12056-3:2000 from memory; values computed). */
    @ParameterizedTest
    @CsvSource({"75,0.379", "100,0.778", "112,1.033", "125,1.359", "150,2.143"})
    void levelHalfRound(double widthMm, double capacity) {
        assertEquals(capacity, halfRound(widthMm, 1.5, 0).number("capacity", "L/s"), 0.0006);
    }

    /** UK Approved Document H, Table 2 (from memory): flow capacity by gutter size, and the roof drained at 75 mm/h. */
    @ParameterizedTest
    @CsvSource({"75,0.38,18", "100,0.78,37", "115,1.11,53", "125,1.37,65", "150,2.16,103"})
    void levelHalfRoundAsTabulated(double widthMm, double capacity, double roofM2) {
        Answer gutter = halfRound(widthMm, 1.5, 0);
        assertEquals(capacity, gutter.number("capacity", "L/s"), 0.01 * capacity + 0.005);
        assertEquals(roofM2, gutter.number("largestRoof", "m2"), 0.01 * roofM2 + 0.5);
    }

    /** Rational method by its definition: 100 m2, C 0.9, 150 mm/h give 3.75 L/s. */
    @Test
    void runoffByTheRationalMethod() {
        Answer gutter = Asked.answer("gutter --profile half-round --width 150mm --length 10m --slope 0.5%"
                + " --roof 100m2 --intensity 150mm/h --runoff 0.9");
        assertEquals(3.75, gutter.number("runoff", "L/s"), 1e-12);
        assertEquals(gutter.number("runoff", "L/s") / gutter.number("capacity", "L/s"), gutter.number("utilisation"),
                1e-12);
        assertTrue(gutter.cautionCodes().contains("gutter.spills"));
    }

    /** Manning, brim-full 100 mm half-round at n 0.012 (computed): 1.53, 1.98 and 2.80 L/s. */
    @ParameterizedTest
    @CsvSource({"0.003,1.53", "0.005,1.98", "0.01,2.80"})
    void evenDepthForComparison(double slope, double flow) {
        assertEquals(flow, halfRound(100, 10, slope).number("uniformFullFlow", "L/s"), 0.005);
    }

    /**
     * A short, smooth, level box tends to the frictionless closed form, upstream depth sqrt(3) times critical (Chow
     * 1959 and Henderson 1966 from memory): 0.1 m wide, 0.05 m deep gives 1.536 L/s (computed).
     */
    @Test
    void frictionlessLevelBox() {
        Answer gutter = Asked.answer("gutter --profile rectangular --width 100mm --depth 50mm --length 0.5m --slope 0"
                + " --manning 0.001" + STORM);
        assertEquals(1.536, gutter.number("variedFlowCapacity", "L/s"), 0.002);
    }

    /** The headline passes from the standard's formula to the solved flow without a leap. */
    @Test
    void headlineBetweenTheTwoWays() {
        Answer level = halfRound(100, 8, 0.003);
        assertEquals(level.number("standardCapacity", "L/s"), level.number("capacity", "L/s"), 1e-12);
        Answer steep = halfRound(100, 8, 0.01);
        assertEquals(steep.number("variedFlowCapacity", "L/s"), steep.number("capacity", "L/s"), 1e-12);
        Answer between = halfRound(100, 8, 0.0065);
        assertEquals((between.number("standardCapacity", "L/s") + between.number("variedFlowCapacity", "L/s")) / 2,
                between.number("capacity", "L/s"), 1e-9);
    }

    /** What the workings print multiplies out to the figure, for every shape. */
    @ParameterizedTest
    @CsvSource({"half-round --width 125mm,2.78e-5", "half-round --width 125mm --depth 40mm,2.78e-5",
        "rectangular --width 100mm --depth 100mm,3.48e-5", "rectangular --width 125mm --depth 75mm,3.48e-5"})
    void workingsMultiplyOut(String profile, double constant) {
        Answer gutter = Asked.answer("gutter --profile " + profile + " --length 12m --slope 0.004" + STORM);
        JsonObject nominal = step(gutter, "standardCapacity", "QN");
        assertTrue(nominal.get("formula").getAsString().startsWith(Double.toString(constant).replace("E", "e")),
                nominal.get("formula").getAsString());
        double capacity = constant * Math.pow(input(nominal, "A"), 1.25) * input(nominal, "Fs");
        JsonObject last = gutter.lastStep("standardCapacity");
        assertEquals(capacity, input(last, "QN"), 1e-9);
        assertEquals(0.9 * capacity * input(last, "FL"), gutter.number("standardCapacity", "L/s"), 1e-9);
        assertTrue(last.get("source").getAsString().contains("EN 12056-3:2000"));
        assertTrue(last.get("source").getAsString().contains("from memory, verify"));
    }

    private static JsonObject step(Answer answer, String figure, String symbol) {
        for (JsonElement working : answer.json().getAsJsonArray("workings")) {
            if (working.getAsJsonObject().get("figure").getAsString().equals(figure)) {
                for (JsonElement step : working.getAsJsonObject().getAsJsonArray("steps")) {
                    if (step.getAsJsonObject().get("symbol").getAsString().equals(symbol)) {
                        return step.getAsJsonObject();
                    }
                }
            }
        }
        throw new AssertionError("no step " + symbol + " of " + figure);
    }

    private static double input(JsonObject step, String symbol) {
        for (JsonElement input : step.getAsJsonArray("inputs")) {
            if (input.getAsJsonObject().get("symbol").getAsString().equals(symbol)) {
                return input.getAsJsonObject().get("value").getAsDouble();
            }
        }
        throw new AssertionError("no input " + symbol);
    }

    /** Standing gutter water breeds mosquitoes; fit the full slope (Warwick, web pages on guttering). */
    @Test
    void cautions() {
        Answer level = halfRound(150, 5, 0);
        assertTrue(level.caution("gutter.standing-water").contains("mosquitoes"));
        assertTrue(level.caution("gutter.verify").contains("from memory"));
        assertTrue(level.caution("roof.ladder-work").contains("Ask a licensed roofer"), "a danger says whom to ask");
        assertFalse(level.has("uniformFullFlow"), "a level gutter has no flow of even depth");
        assertFalse(level.cautionCodes().contains("gutter.spills"));
        assertFalse(halfRound(150, 5, 0.008).cautionCodes().contains("gutter.standing-water"));
    }

    @Test
    void noStormNoLargestRoof() {
        Answer dry = Asked.answer("gutter --profile half-round --width 100mm --length 5m --slope 0.5% --roof 50m2"
                + " --intensity 0mm/h");
        assertEquals(0, dry.number("runoff", "L/s"));
        assertEquals(0, dry.number("utilisation"));
        assertFalse(dry.has("largestRoof"));
    }

    /** Both ends of every range are taken, and what lies beyond is refused by the option's name. */
    @ParameterizedTest
    @CsvSource({"--width,20mm,19.9mm,2m,2.01m", "--depth,10mm,9.9mm,1m,1.01m", "--length,0.1m,0.09m,500m,501m",
        "--slope,0,-0.001,10%,10.1%", "--manning,0.001,0.0009,0.1,0.11", "--roof,0m2,-1m2,1000000m2,1000001m2",
        "--intensity,0mm/h,-1mm/h,3000mm/h,3001mm/h", "--runoff,0,-0.1,1,1.1"})
    void ranges(String option, String least, String tooSmall, String most, String tooLarge) {
        for (String accepted : new String[] {least, most}) {
            assertEquals(0, Asked.of(with(option, accepted)).status(), option + " " + accepted);
        }
        for (String refused : new String[] {tooSmall, tooLarge}) {
            String line = Asked.of(with(option, refused)).refusal();
            assertTrue(line.startsWith(option + " is "), line);
        }
    }

    private static String with(String option, String value) {
        String[][] usual = {{"--width", "200mm"}, {"--depth", "100mm"}, {"--length", "10m"}, {"--slope", "0.005"},
            {"--manning", "0.012"}, {"--roof", "50m2"}, {"--intensity", "75mm/h"}, {"--runoff", "1"}};
        StringBuilder command = new StringBuilder("gutter --profile rectangular");
        for (String[] pair : usual) {
            command.append(' ').append(pair[0]).append(' ').append(pair[0].equals(option) ? value : pair[1]);
        }
        return command.toString();
    }
}
