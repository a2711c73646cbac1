package org.roofspring.ui.pumps;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue.Curve;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.Outcome;

/** The findings of the pump review, by what they are about. */
final class ReviewAnswer {
    static final String CALCULATION = "pump.review";
    static final String VERDICT = "verdict";

    /**
     * What was found about a pump or candidate.
     *
     * @param verdict on it, or null
     * @param head    its curve, or null
     */
    record About(Map<Column, Object> cells, Verdict verdict, Curve head) {
        /** Whether it has a duty point. */
        boolean works() {
            return cells.containsKey(Column.FLOW);
        }
    }

    /** What the system of a pump needs, lowest and highest over all states. */
    record Band(Curve lowest, Curve highest) {
    }

    private record Key(String finding, String element) {
    }

    private final Map<Key, Finding> findings = new HashMap<>();
    private final Map<String, About> abouts = new HashMap<>();

    ReviewAnswer(Outcome.Completed completed) {
        for (Finding finding : completed.findings()) {
            findings.put(new Key(finding.id(), finding.elementId()), finding);
        }
        for (Finding finding : completed.findings()) {
            if (finding.id().equals("candidates") && finding.value() instanceof Table table) {
                read(table);
            }
        }
    }

    private void read(Table table) {
        int element = table.columns().indexOf("Element");
        Map<Column, Integer> places = new EnumMap<>(Column.class);
        for (Column column : Column.values()) {
            column.finding().map(table.columns()::indexOf).filter(place -> place >= 0)
                    .ifPresent(place -> places.put(column, place));
        }
        for (List<Object> row : table.rows()) {
            Map<Column, Object> cells = new EnumMap<>(Column.class);
            places.forEach((column, place) -> {
                if (row.get(place) != null) {
                    cells.put(column, row.get(place));
                }
            });
            String id = (String) row.get(element);
            abouts.put(id, new About(cells, value(VERDICT, id, Verdict.class).orElse(null),
                    value("headCurve", id, Curve.class).orElse(null)));
        }
    }

    private <V> Optional<V> value(String finding, String element, Class<V> type) {
        return Optional.ofNullable(findings.get(new Key(finding, element))).map(Finding::value).map(type::cast);
    }

    /** What was found about a pump or candidate. */
    Optional<About> about(String element) {
        return Optional.ofNullable(abouts.get(element));
    }

    /** All that is known about pumps and candidates. */
    Map<String, About> abouts() {
        return abouts;
    }

    /** What the system of a pump needs. */
    Optional<Band> band(String pump) {
        return value("systemLowest", pump, Curve.class)
                .flatMap(low -> value("systemHighest", pump, Curve.class).map(high -> new Band(low, high)));
    }

    /** Pumps whose system was found. */
    List<String> pumpsWithBand() {
        List<String> pumps = new ArrayList<>();
        for (Key key : findings.keySet()) {
            if (key.finding().equals("systemLowest")) {
                pumps.add(key.element());
            }
        }
        return pumps;
    }

    /** Whether the sign-off that a remark makes stands. */
    Optional<Verdict> signOff(String remark) {
        return value("signOff", remark, Verdict.class);
    }
}
