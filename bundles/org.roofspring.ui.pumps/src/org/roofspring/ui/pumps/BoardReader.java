package org.roofspring.ui.pumps;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.site.Element;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.Drafts;
import org.roofspring.ui.session.SiteSession;

/** Puts together what the board shows from the site and the findings of the pump review. */
final class BoardReader {
    private final SiteSession session;
    private final Pump pump;
    private final LastGood lastGood;
    private final Optional<ReviewAnswer> answer;
    private final boolean stale;
    private final Set<String> drafted = new LinkedHashSet<>();
    private String draftOfLine;

    private BoardReader(SiteSession session, Pump pump, LastGood lastGood) {
        this.session = session;
        this.pump = pump;
        this.lastGood = lastGood;
        answer = lastGood.take(session.live().results());
        readDrafts();
        stale = answer.isEmpty() || session.live().outOfDate(ReviewAnswer.CALCULATION) || draftOfLine != null;
    }

    /** @param pump whose candidates are shown, or null where the site has none */
    static BoardModel read(SiteSession session, Pump pump, LastGood lastGood) {
        return pump == null
                ? new BoardModel(null, List.of(), null, null, "This site has no pump. Add one, then its candidates.",
                        false)
                : new BoardReader(session, pump, lastGood).board();
    }

    /** A text that was not taken over leaves the findings as they were; it greys those that it was meant to change. */
    private void readDrafts() {
        List<String> reads = session.live().results().result(ReviewAnswer.CALCULATION)
                .map(result -> result.descriptor().reads()).orElse(List.of());
        for (Drafts.Draft draft : session.drafts().all()) {
            if (!session.contains(draft.element())) {
                continue;
            }
            Optional<PumpCandidate> candidate = candidate(draft.element());
            if (candidate.isPresent()) {
                drafted.add(candidate.get().getId());
            } else if (isRead(draft, reads)) {
                draftOfLine = Words.feature(draft.feature()) + " of " + Words.name(draft.element()) + ": "
                        + draft.problem();
            }
        }
    }

    private static Optional<PumpCandidate> candidate(EObject object) {
        for (EObject up = object; up != null; up = up.eContainer()) {
            if (up instanceof PumpCandidate candidate) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }

    private static boolean isRead(Drafts.Draft draft, List<String> reads) {
        List<EClass> classes = new ArrayList<>(draft.element().eClass().getEAllSuperTypes());
        classes.add(draft.element().eClass());
        return classes.stream().anyMatch(type -> reads.contains(type.getName())
                || reads.contains(type.getName() + "." + draft.feature().getName()));
    }

    private BoardModel board() {
        List<BoardRow> rows = new ArrayList<>();
        if (answer.flatMap(found -> found.about(pump.getId())).isPresent()
                || !pump.getPoints().isEmpty() && !pump.getCandidates().isEmpty()) {
            rows.add(row(pump, Words.name(pump) + ", as designed"));
        }
        pump.getCandidates().forEach(candidate -> rows.add(row(candidate, Words.name(candidate))));
        Optional<ReviewAnswer.Band> now = answer.flatMap(found -> found.band(pump.getId()));
        Optional<ReviewAnswer.Band> band = now.or(() -> lastGood.band(pump.getId()));
        return new BoardModel(pump.getId(), rows, band.map(ReviewAnswer.Band::lowest).orElse(null),
                band.map(ReviewAnswer.Band::highest).orElse(null), state(rows, now.isPresent()),
                stale || now.isEmpty());
    }

    private BoardRow row(Element element, String name) {
        String id = element.getId();
        Optional<ReviewAnswer.About> now = answer.flatMap(found -> found.about(id));
        Optional<ReviewAnswer.About> good = lastGood.figures(id);
        boolean works = now.filter(ReviewAnswer.About::works).isPresent();
        ReviewAnswer.About figures = works ? now.get() : good.orElse(now.orElse(null));
        ReviewAnswer.About judged = now.orElse(figures);
        Map<Column, Object> cells = new EnumMap<>(Column.class);
        if (figures != null) {
            cells.putAll(figures.cells());
            cells.remove(Column.VERDICT);
            cells.remove(Column.REASONS);
        }
        if (judged != null) {
            List.of(Column.VERDICT, Column.REASONS)
                    .forEach(column -> Optional.ofNullable(judged.cells().get(column))
                            .ifPresent(text -> cells.put(column, text)));
        }
        cells.put(Column.PUMP, name);
        cells.put(Column.REVIEW, review(element));
        boolean own = stale || drafted.contains(id);
        Level level = judged == null || judged.verdict() == null ? null : judged.verdict().level();
        return new BoardRow(id, cells, level, own || !works, own || now.isEmpty(),
                figures == null ? null : figures.head());
    }

    /** What reviewers have said, in a few words. */
    private String review(Element element) {
        List<String> said = new ArrayList<>();
        int questions = 0;
        int objections = 0;
        for (Remark remark : session.site().getRemarks()) {
            if (remark.getElement() != element) {
                continue;
            }
            if (remark.getKind() == RemarkKind.ACCEPTED) {
                said.add(signOff(remark));
            } else if (!remark.isSettled()) {
                questions += remark.getKind() == RemarkKind.QUESTION ? 1 : 0;
                objections += remark.getKind() == RemarkKind.OBJECTION ? 1 : 0;
            }
        }
        open(said, objections, "objection");
        open(said, questions, "question");
        if (element instanceof PumpCandidate candidate && candidate.isChosen()) {
            said.add("chosen");
        }
        return String.join(", ", said);
    }

    private static void open(List<String> said, int count, String what) {
        if (count > 0) {
            said.add(count + " open " + what + (count == 1 ? "" : "s"));
        }
    }

    private String signOff(Remark remark) {
        return answer.flatMap(found -> found.signOff(remark.getId()))
                .map(verdict -> verdict.level() == Level.GOOD
                        ? "signed off by " + (remark.getAuthor() == null ? "an unnamed reviewer" : remark.getAuthor())
                        : "sign-off out of date")
                .orElse("sign-off being checked");
    }

    private String state(List<BoardRow> rows, boolean found) {
        Optional<CalculationResult> result = session.live().results().result(ReviewAnswer.CALCULATION);
        if (pump.getCandidates().isEmpty()) {
            return !pump.isInUse() || pump.getKind() == PumpKind.HAND_PUMP
                    ? "A hand pump, or one that is not in use, is not weighed against others."
                    : "There are no candidates for " + Words.name(pump) + " yet. Import them, or add them in its form.";
        }
        if (draftOfLine != null) {
            return "Greyed, for the value before: " + draftOfLine + ".";
        }
        if (session.live().outOfDate(ReviewAnswer.CALCULATION)) {
            return "Out of date, being calculated anew.";
        }
        if (answer.isEmpty()) {
            return "Out of date: " + result.map(r -> String.join(" ", r.reasons())).orElse("it is being calculated.");
        }
        if (!found) {
            return "Out of date: " + session.live().results().completed(ReviewAnswer.CALCULATION).orElseThrow()
                    .cautions().stream().filter(caution -> pump.getId().equals(caution.elementId()))
                    .map((Caution caution) -> caution.text(session.format())).findFirst().orElse("there is no answer.");
        }
        return rows.size() + (rows.size() == 1 ? " pump" : " pumps") + " on the line of " + Words.name(pump)
                + ". " + (rows.stream().anyMatch(row -> row.figuresStale() && row.number(Column.FLOW).isPresent())
                ? "Grey figures are the last that could be computed."
                : "The curves of selected rows are drawn; Ctrl+click adds one.");
    }
}
