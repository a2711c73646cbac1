package org.roofspring.cli.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.roofspring.calc.Caution;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.PluginFault;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.site.Site;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** All results of a site as one JSON object. */
final class AppraisalJson {
    private AppraisalJson() {
    }

    static String write(Site site, SiteResults results) {
        JsonObject root = new JsonObject();
        root.addProperty("calculation", "appraise");
        root.addProperty("site", site.getName());
        root.add("figures", new JsonObject());
        List<Caution> cautions = new ArrayList<>();
        JsonArray calculations = new JsonArray();
        for (CalculationResult result : results.results()) {
            cautions.addAll(result.cautions());
            calculations.add(calculation(result, root.getAsJsonObject("figures")));
        }
        root.add("cautions", AnswerJson.cautions(cautions));
        root.add("workings", new JsonArray());
        root.add("calculations", calculations);
        JsonArray faults = new JsonArray();
        results.allFaults().stream().map(PluginFault::text).forEach(faults::add);
        root.add("faults", faults);
        return AnswerJson.write(root);
    }

    /** The calculation on its own; its single figures also stand at the top, as calculation id and figure id. */
    private static JsonObject calculation(CalculationResult result, JsonObject allFigures) {
        JsonObject object = new JsonObject();
        object.addProperty("calculation", result.descriptor().id());
        object.addProperty("title", result.descriptor().title());
        object.addProperty("version", result.descriptor().version());
        object.addProperty("provider", result.descriptor().provider());
        object.addProperty("status", result.status().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        object.addProperty("fingerprint", result.fingerprint());
        JsonArray reasons = new JsonArray();
        result.reasons().forEach(reasons::add);
        object.add("reasons", reasons);
        result.completed().ifPresent(outcome -> {
            AnswerJson.addOutcome(object, outcome);
            object.getAsJsonObject("figures").asMap().forEach((id, figure) -> {
                JsonObject value = figure.getAsJsonObject();
                if (value.has("value")) {
                    allFigures.add(result.descriptor().id() + "/" + id, value);
                }
            });
        });
        return object;
    }
}
