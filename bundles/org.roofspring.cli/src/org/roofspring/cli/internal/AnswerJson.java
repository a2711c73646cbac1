package org.roofspring.cli.internal;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Working;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

/** Answers as JSON: figures with value and unit at full precision, cautions, workings. */
final class AnswerJson {
    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

    private AnswerJson() {
    }

    static String write(String calculation, Outcome.Completed outcome) {
        JsonObject object = new JsonObject();
        object.addProperty("calculation", calculation);
        addOutcome(object, outcome);
        return GSON.toJson(object);
    }

    static String write(JsonElement element) {
        return GSON.toJson(element);
    }

    /** Adds figures, cautions and workings to an object. */
    static void addOutcome(JsonObject object, Outcome.Completed outcome) {
        JsonObject figures = new JsonObject();
        for (Finding finding : outcome.findings()) {
            String key = finding.elementId() == null ? finding.id() : finding.id() + "@" + finding.elementId();
            JsonObject figure = figure(finding.value());
            figure.addProperty("title", finding.title());
            figures.add(key, figure);
        }
        object.add("figures", figures);
        object.add("cautions", cautions(outcome.cautions()));
        JsonArray workings = new JsonArray();
        outcome.workings().forEach(working -> workings.add(working(working)));
        object.add("workings", workings);
    }

    private static JsonObject figure(FindingValue value) {
        JsonObject figure = new JsonObject();
        switch (value) {
            case FindingValue.Number number -> addQuantity(figure, number.quantity());
            case FindingValue.Flag flag -> figure.addProperty("value", flag.value());
            case FindingValue.Text text -> figure.addProperty("value", text.text());
            case FindingValue.Verdict verdict -> {
                figure.addProperty("value", verdict.text());
                figure.addProperty("level", verdict.level().name().toLowerCase(java.util.Locale.ROOT));
                figure.add("reasons", strings(verdict.reasons()));
            }
            case FindingValue.Daily daily -> {
                figure.addProperty("firstDay", daily.firstDay().toString());
                figure.addProperty("unit", daily.unit().symbol());
                figure.add("values", numbers(daily.values()));
            }
            case FindingValue.Curve curve -> {
                figure.addProperty("xTitle", curve.xTitle());
                figure.addProperty("xUnit", curve.xUnit().symbol());
                figure.addProperty("unit", curve.yUnit().symbol());
                figure.add("x", numbers(curve.x()));
                figure.add("y", numbers(curve.y()));
            }
            case FindingValue.Table table -> {
                figure.add("columns", strings(table.columns()));
                JsonArray rows = new JsonArray();
                table.rows().forEach(row -> {
                    JsonArray cells = new JsonArray();
                    row.forEach(cell -> cells.add(cell(cell)));
                    rows.add(cells);
                });
                figure.add("rows", rows);
            }
        }
        return figure;
    }

    private static JsonElement cell(Object cell) {
        return switch (cell) {
            case Quantity quantity -> {
                JsonObject object = new JsonObject();
                addQuantity(object, quantity);
                yield object;
            }
            case String text -> new JsonPrimitive(text);
            case Boolean flag -> new JsonPrimitive(flag);
            case null, default -> JsonNull.INSTANCE;
        };
    }

    private static void addQuantity(JsonObject object, Quantity quantity) {
        Quantity written = PlainShare.of(quantity);
        object.addProperty("value", written.value());
        object.addProperty("unit", written.unit().symbol());
    }

    static JsonArray cautions(Iterable<Caution> cautions) {
        JsonArray array = new JsonArray();
        for (Caution caution : cautions) {
            JsonObject object = new JsonObject();
            object.addProperty("code", caution.code());
            object.addProperty("severity", caution.severity().word());
            object.addProperty("text", caution.text(QuantityFormat.metric()));
            if (caution.elementId() != null) {
                object.addProperty("element", caution.elementId());
            }
            object.addProperty("source", caution.source().toString());
            array.add(object);
        }
        return array;
    }

    private static JsonObject working(Working working) {
        JsonObject object = new JsonObject();
        object.addProperty("figure", working.findingId());
        if (working.elementId() != null) {
            object.addProperty("element", working.elementId());
        }
        object.addProperty("title", working.title());
        JsonArray steps = new JsonArray();
        for (Working.Step step : working.steps()) {
            JsonObject line = new JsonObject();
            line.addProperty("symbol", step.symbol());
            line.addProperty("meaning", step.meaning());
            line.addProperty("formula", step.formula());
            JsonArray inputs = new JsonArray();
            step.inputs().forEach(input -> {
                JsonObject value = new JsonObject();
                value.addProperty("symbol", input.symbol());
                value.addProperty("meaning", input.meaning());
                addQuantity(value, input.value());
                inputs.add(value);
            });
            line.add("inputs", inputs);
            line.addProperty("substituted", step.substituted());
            if (step.result() != null) {
                JsonObject result = new JsonObject();
                addQuantity(result, step.result());
                line.add("result", result);
            }
            line.addProperty("source", step.source().toString());
            steps.add(line);
        }
        object.add("steps", steps);
        return object;
    }

    private static JsonArray strings(Iterable<String> texts) {
        JsonArray array = new JsonArray();
        texts.forEach(array::add);
        return array;
    }

    private static JsonArray numbers(double[] values) {
        JsonArray array = new JsonArray(values.length);
        for (double value : values) {
            array.add(value);
        }
        return array;
    }
}
