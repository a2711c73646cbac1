package org.roofspring.calc.tests;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Working;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What some calculations, run as the program runs them, say about a site. */
record Asked(SiteResults results) {
    static Asked of(Site site, Calculation... calculations) {
        CalculationRegistry registry = new CalculationRegistry();
        List.of(calculations).forEach(registry::add);
        return new Asked(new CalculationRunner(registry).run(SiteSnapshot.of(site, 1, DemoSites.FOLDER)));
    }

    double number(String calculation, String finding, String element, Unit unit) {
        return value(calculation, finding, element, FindingValue.Number.class).quantity().in(unit);
    }

    <V extends FindingValue> V value(String calculation, String finding, String element, Class<V> kind) {
        return kind.cast(results.finding(calculation, finding, element)
                .orElseThrow(() -> new AssertionError("no " + finding + " of " + element + ": " + reasons(calculation))).value());
    }

    boolean has(String calculation, String finding, String element) {
        return results.finding(calculation, finding, element).isPresent();
    }

    /** The last step behind a finding. */
    Working.Step lastStep(String calculation, String finding, String element) {
        return result(calculation).completed().orElseThrow().workings().stream()
                .filter(working -> working.findingId().equals(finding) && element.equals(working.elementId()))
                .map(working -> working.steps().get(working.steps().size() - 1)).findFirst().orElseThrow();
    }

    CalculationResult result(String calculation) {
        return results.result(calculation).orElseThrow();
    }

    String reasons(String calculation) {
        return String.join(" ", result(calculation).reasons());
    }

    Set<String> cautionCodes(String calculation) {
        Set<String> codes = new TreeSet<>();
        result(calculation).cautions().forEach(caution -> codes.add(caution.code()));
        return codes;
    }

    String caution(String calculation, String code) {
        return result(calculation).cautions().stream().filter(caution -> caution.code().equals(code))
                .map((Caution caution) -> caution.text(QuantityFormat.metric()).replace('\u00a0', ' ')).findFirst()
                .orElseThrow(() -> new AssertionError("no caution " + code + " among " + cautionCodes(calculation)));
    }
}
