package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Set;
import java.util.TreeSet;

import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.cli.RoofspringCommandLine;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;

/** What came back from one command. */
record Asked(int status, String out, String err) {

    /** Runs a command written as on a terminal. Words are parted by spaces; none of them can hold one. */
    static Asked of(String command) {
        return of(new CalculationRegistry(), command);
    }

    /** The same, with calculations for whole sites. */
    static Asked of(CalculationRegistry registry, String command) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] arguments = command.isBlank() ? new String[0] : command.trim().split("\\s+");
        int status = new RoofspringCommandLine(registry).run(arguments, new PrintWriter(out), new PrintWriter(err));
        return new Asked(status, out.toString(), err.toString());
    }

    /** Runs a command with {@code --json}; it must answer with one JSON object and nothing else. */
    static Answer answer(String command) {
        return answer(new CalculationRegistry(), command);
    }

    /** The same, with calculations for whole sites. */
    static Answer answer(CalculationRegistry registry, String command) {
        Asked asked = of(registry, command + " --json");
        assertEquals("", asked.err, command);
        assertEquals(0, asked.status, command);
        return new Answer(asked.onlyObject());
    }

    /** Wrong input: exit 2, nothing on standard output, one line on standard error, which is returned. */
    String refusal() {
        assertEquals("", out);
        assertEquals(2, status, err);
        assertOneLine();
        return err;
    }

    /** Sound input without an answer: exit 3, nothing on standard output, one line, which is returned. */
    String noAnswer() {
        assertEquals("", out);
        assertEquals(3, status, err);
        assertOneLine();
        return err;
    }

    private void assertOneLine() {
        assertTrue(err.endsWith(System.lineSeparator()), err);
        assertEquals(1, err.lines().count(), err);
        assertTrue(!err.isBlank() && !err.contains("Exception"), err);
    }

    private JsonObject onlyObject() {
        try (JsonReader reader = new JsonReader(new StringReader(out))) {
            reader.setStrictness(Strictness.STRICT);
            JsonObject object = JsonParser.parseReader(reader).getAsJsonObject();
            assertEquals(JsonToken.END_DOCUMENT, reader.peek(), "something follows the JSON object");
            return object;
        } catch (IOException e) {
            throw new AssertionError("not one JSON object: " + out, e);
        }
    }

    /** A JSON answer. */
    record Answer(JsonObject json) {
        JsonObject figures() {
            return json.getAsJsonObject("figures");
        }

        private JsonObject figure(String id) {
            JsonObject figure = figures().getAsJsonObject(id);
            assertNotNull(figure, () -> "there is no figure " + id + " among " + figures().keySet());
            return figure;
        }

        /** A number, which must be in this unit. */
        double number(String id, String unit) {
            assertEquals(unit, figure(id).get("unit").getAsString(), id);
            return figure(id).get("value").getAsDouble();
        }

        /** A pure number. */
        double number(String id) {
            return number(id, "1");
        }

        boolean flag(String id) {
            assertTrue(!figure(id).has("unit"), "a flag has no unit");
            return figure(id).get("value").getAsBoolean();
        }

        boolean has(String id) {
            return figures().has(id);
        }

        Set<String> cautionCodes() {
            Set<String> codes = new TreeSet<>();
            json.getAsJsonArray("cautions").forEach(c -> codes.add(c.getAsJsonObject().get("code").getAsString()));
            return codes;
        }

        /** Text of the caution with this code. */
        String caution(String code) {
            for (JsonElement caution : json.getAsJsonArray("cautions")) {
                if (caution.getAsJsonObject().get("code").getAsString().equals(code)) {
                    return caution.getAsJsonObject().get("text").getAsString();
                }
            }
            throw new AssertionError("there is no caution " + code + " among " + cautionCodes());
        }

        /** The last step of the workings of a figure. */
        JsonObject lastStep(String figure) {
            for (JsonElement working : json.getAsJsonArray("workings")) {
                if (working.getAsJsonObject().get("figure").getAsString().equals(figure)) {
                    var steps = working.getAsJsonObject().getAsJsonArray("steps");
                    return steps.get(steps.size() - 1).getAsJsonObject();
                }
            }
            throw new AssertionError("there are no workings of " + figure);
        }
    }
}
