package org.roofspring.cli.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.PluginFault;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.UnitPreference;

/** All results of a site to read on a terminal: the answer first, then each calculation, then cautions and problems. */
final class AppraisalText {
    private final List<String> lines = new ArrayList<>();
    private final SiteResults results;
    private final QuantityFormat format;
    private final Map<String, String> names = new HashMap<>();

    private AppraisalText(Site site, SiteResults results) {
        this.results = results;
        this.format = new QuantityFormat(unitSystem(site.getPreferredUnits()), site.getCurrency() == null ? "cur" : site.getCurrency(), 4);
        site.eAllContents().forEachRemaining(object -> {
            if (object instanceof NamedElement element && element.getName() != null) {
                names.put(element.getId(), element.getName());
            }
        });
    }

    private String name(String elementId) {
        return names.getOrDefault(elementId, elementId);
    }

    static String write(Site site, SiteResults results) {
        AppraisalText text = new AppraisalText(site, results);
        text.headline(site);
        results.results().forEach(text::calculation);
        text.noAnswers();
        List<Caution> cautions = results.results().stream().flatMap(result -> result.cautions().stream())
                .sorted(Comparator.comparing(Caution::severity).reversed()).toList();
        AnswerTable.addCautions(text.lines, cautions, text.format);
        return String.join(System.lineSeparator(), text.lines);
    }

    static UnitSystem unitSystem(UnitPreference preference) {
        return switch (preference) {
            case METRIC -> UnitSystem.METRIC;
            case US_CUSTOMARY -> UnitSystem.US_CUSTOMARY;
            case IMPERIAL -> UnitSystem.IMPERIAL;
        };
    }

    private void headline(Site site) {
        lines.add(site.getName() + (site.getPlace() == null ? "" : ", " + site.getPlace()));
        lines.add("");
        number("fullDays").ifPresent(full -> lines.add("  Supply     " + format.number(full.value()) + " of "
                + number("demandDays").map(all -> format.number(all.value())).orElse("?") + " days with demand are met in full ("
                + number("timeReliability").map(share -> format.number(share.value() * 100) + " %").orElse("?") + ")"));
        number("worstDrySpellSurvived").ifPresent(days -> lines.add("  Dry spell  the worst one survived without a short day lasted "
                + format.format(days) + "; the longest shortage, " + number("longestShortage").map(format::format).orElse("?")));
        number("spilled").ifPresent(spilled -> lines.add("  Spilled    " + format.format(spilled) + " of " + number("inflow").map(format::format).orElse("?")
                + " that came off the roofs"));
        for (Pump pump : site.getPumps()) {
            results.finding("pump.duty", "flow", pump.getId()).map(Finding::value).ifPresent(flow -> lines.add("  Pump       " + pump.getName() + ": "
                    + format.format(((FindingValue.Number) flow).quantity().as(org.roofspring.quantity.Units.L_PER_S)) + " at "
                    + results.finding("pump.duty", "head", pump.getId()).map(f -> format.format(((FindingValue.Number) f.value()).quantity())).orElse("?")));
        }
        long dangers = count(Caution.Severity.DANGER);
        long warnings = count(Caution.Severity.WARNING);
        lines.add("  Cautions   " + dangers + (dangers == 1 ? " danger, " : " dangers, ") + warnings + (warnings == 1 ? " warning" : " warnings") + ", below");
    }

    private long count(Caution.Severity severity) {
        return results.results().stream().flatMap(result -> result.cautions().stream()).filter(caution -> caution.severity() == severity).count();
    }

    private java.util.Optional<Quantity> number(String id) {
        return results.finding("storage.balance", id).map(Finding::value).map(value -> ((FindingValue.Number) value).quantity());
    }

    private void calculation(CalculationResult result) {
        result.completed().ifPresent(outcome -> {
            if (!outcome.findings().isEmpty()) {
                lines.add("");
                lines.add(result.descriptor().title());
                AnswerTable.addFindings(lines, outcome, format, "  ", this::name);
            }
        });
    }

    private void noAnswers() {
        List<String> none = new ArrayList<>();
        results.results().stream().filter(result -> result.completed().isEmpty() && result.fault() == null)
                .forEach(result -> none.add("  " + result.descriptor().title() + ": " + String.join(" ", result.reasons())));
        results.allFaults().stream().map(PluginFault::text).forEach(text -> none.add("  " + text));
        if (!none.isEmpty()) {
            lines.add("");
            lines.add("Without an answer");
            lines.addAll(none);
        }
    }
}
