package org.roofspring.ui.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Purpose;
import org.roofspring.site.Site;
import org.roofspring.site.StepKind;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.treatment.BoardModel.Lane;
import org.roofspring.ui.treatment.BoardModel.Step;
import org.roofspring.ui.treatment.BoardModel.Target;

/** Puts together what the board shows from the site and the findings about it. */
final class BoardReader {
    static final String CALCULATION = "treatment.verdict";

    private final SiteSession session;
    private final Site site;
    private final SiteResults results;
    private final boolean stale;
    private final String wantedUse;

    private BoardReader(SiteSession session, String wantedUse) {
        this.session = session;
        this.site = session.site();
        this.results = session.live().results();
        this.stale = session.live().outOfDate(CALCULATION);
        this.wantedUse = wantedUse;
    }

    /** @param wantedUse the use whose target is shown where it draws through a train; null for any */
    static BoardModel read(SiteSession session, String wantedUse) {
        BoardReader reader = new BoardReader(session, wantedUse);
        List<Lane> lanes = new ArrayList<>();
        List<Use> left = new ArrayList<>(reader.site.getUses().stream().filter(Use::isInUse).toList());
        for (TreatmentTrain train : reader.site.getTrains()) {
            List<Use> uses = left.stream().filter(use -> reader.lastTrain(use) == train).toList();
            left.removeAll(uses);
            lanes.add(reader.lane(train, uses));
        }
        if (!left.isEmpty()) {
            lanes.add(new Lane(null, "Without treatment", reader.from(left), "", List.of(),
                    left.stream().map(reader::use).toList(), null, List.of(), reader.stale));
        }
        return new BoardModel(lanes);
    }

    /** The train that the water of a use passes last: as it was found, or as the use says while nothing is found. */
    private TreatmentTrain lastTrain(Use use) {
        Optional<Table> way = table("way", use.getId());
        if (way.isEmpty() || stale && use.getTrain() != null) {
            return use.getTrain();
        }
        TreatmentTrain last = null;
        int element = way.get().columns().indexOf("Element");
        for (List<Object> row : way.get().rows()) {
            for (TreatmentTrain train : site.getTrains()) {
                last = train.getId().equals(row.get(element)) ? train : last;
            }
        }
        return last;
    }

    private Lane lane(TreatmentTrain train, List<Use> uses) {
        Optional<Use> focus = uses.stream().filter(use -> use.getId().equals(wantedUse)).findFirst()
                .or(() -> uses.stream().filter(use -> use.getPurpose() == Purpose.DRINKING).findFirst())
                .or(() -> uses.stream().filter(use -> table("reduction", use.getId()).isPresent()).findFirst());
        Optional<Table> reduction = focus.flatMap(use -> table("reduction", use.getId()));
        return new Lane(train.getId(), Words.name(train) + (train.isInUse() ? "" : " (not in use)"),
                from(uses), facts(train), train.getSteps().stream().map(step -> step(step, reduction)).toList(),
                uses.stream().map(this::use).toList(),
                focus.flatMap(use -> reduction.map(table -> target(use, table))).orElse(null),
                focus.map(use -> mind(use.getId())).orElse(List.of()), stale);
    }

    private String from(List<Use> uses) {
        List<String> tanks = uses.stream().flatMap(use -> table("way", use.getId()).stream())
                .flatMap(table -> table.rows().stream()).filter(row -> row.get(1).equals("tank"))
                .map(row -> (String) row.get(0)).distinct().toList();
        return tanks.isEmpty() ? "Tank" : String.join(", ", tanks);
    }

    private String facts(TreatmentTrain train) {
        List<String> facts = new ArrayList<>();
        if (train.isBatch()) {
            facts.add("in batches, away from the pipes");
        } else if (train.getDesignFlow() != null) {
            facts.add("for " + session.format().format(train.getDesignFlow()));
        }
        Optional<String> clean = number("headLossClean", train.getId());
        Optional<String> fouled = number("headLossFouled", train.getId());
        if (!train.isBatch() && clean.isPresent() && fouled.isPresent()) {
            facts.add("takes " + clean.get() + " of head clean, " + fouled.get() + " fouled");
        }
        value("weeklyWork", train.getId()).ifPresent(work -> facts.add(minutes(work) + " of work a week"));
        number("storedDays", train.getId()).ifPresent(days -> facts.add(days + " of treated water in store"));
        return String.join(" \u00b7 ", facts);
    }

    private Step step(TreatmentStep step, Optional<Table> reduction) {
        String kind = step.getKind() == StepKind.UNSTATED ? "kind not stated" : Words.choice(step.getKind());
        String name = Words.name(step);
        String said = name.toLowerCase(Locale.ROOT);
        boolean nameSaysIt = Arrays.stream(kind.toLowerCase(Locale.ROOT).split(" ")).anyMatch(said::contains);
        String shownKind = nameSaysIt ? "" : kind;
        if (!step.isActive()) {
            return new Step(step.getId(), name, shownKind, false, List.of(), "Not in place: it does not count.", false);
        }
        if (reduction.isEmpty()) {
            return new Step(step.getId(), name, shownKind, true, List.of(), "", false);
        }
        Table table = reduction.get();
        int id = table.columns().indexOf("Step");
        int says = table.columns().indexOf("Says");
        return table.rows().stream().filter(row -> step.getId().equals(row.get(id))).findFirst()
                .map(row -> new Step(step.getId(), name, shownKind, true, logs(table, row), (String) row.get(says),
                        fails((String) row.get(says))))
                .orElseGet(() -> new Step(step.getId(), name, shownKind, true, List.of(), "", false));
    }

    private static boolean fails(String says) {
        return says.contains("No credit") || says.contains("Not as it should be") || says.contains("Out for");
    }

    private static List<Double> logs(Table table, List<Object> row) {
        return BoardModel.GROUPS.stream().map(group -> ((Quantity) row.get(table.columns().indexOf(group))).value())
                .toList();
    }

    private static Target target(Use use, Table table) {
        List<Object> asked = table.rows().get(table.rows().size() - 1);
        List<Object> reached = table.rows().get(table.rows().size() - 2);
        return new Target(use.getId(), Words.name(use), logs(table, asked), logs(table, reached));
    }

    private BoardModel.Use use(Use use) {
        Optional<Verdict> verdict = verdict(results, use.getId());
        String why = use.getPurpose() == Purpose.UNSTATED ? "no verdict: its purpose is not stated"
                : "no verdict is given on " + Words.choice(use.getPurpose());
        return new BoardModel.Use(use.getId(), Words.name(use), verdict.map(Verdict::level).orElse(null),
                verdict.map(Verdict::text).orElse(results.completed(CALCULATION).isPresent() ? why : "not yet known"));
    }

    private List<String> mind(String useId) {
        return results.completed(CALCULATION).map(Outcome.Completed::cautions).orElse(List.of()).stream()
                .filter(caution -> caution.code().startsWith("order.") && useId.equals(caution.elementId()))
                .map(caution -> "Caution: " + caution.text(session.format())).toList();
    }

    /** The verdict on a use, where there is one. */
    static Optional<Verdict> verdict(SiteResults results, String useId) {
        return results.finding(CALCULATION, "verdict", useId).map(Finding::value).map(Verdict.class::cast);
    }

    private Optional<Table> table(String finding, String elementId) {
        return results.finding(CALCULATION, finding, elementId).map(Finding::value).map(Table.class::cast);
    }

    private Optional<String> number(String finding, String elementId) {
        return value(finding, elementId).map(session.format()::format);
    }

    private Optional<Quantity> value(String finding, String elementId) {
        return results.finding(CALCULATION, finding, elementId)
                .map(found -> ((FindingValue.Number) found.value()).quantity());
    }

    /** Minutes of work: nobody works to the second. */
    static String minutes(Quantity work) {
        return Math.round(work.in(Units.MIN)) + " min";
    }
}
