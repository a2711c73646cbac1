package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.roofspring.site.CheckAnswer;
import org.roofspring.site.Inspection;
import org.roofspring.site.InspectionAnswer;
import org.roofspring.site.Site;
import org.roofspring.treatment.safety.InspectionQuestion;
import org.roofspring.treatment.safety.InspectionScore;

/**
 * The latest sanitary inspection of a site, scored.
 *
 * @param inspection the latest
 * @param score      of its answers
 * @param unscored   answers to questions that are not part of the score
 */
record SiteInspection(Inspection inspection, InspectionScore score, List<InspectionAnswer> unscored) {
    /** Other codes under which answers to a question are stored; each is a part of it or the same in other words. */
    private static final Map<String, InspectionQuestion> OTHER_CODES = Map.ofEntries(
            Map.entry("roof-dirty", InspectionQuestion.DROPPINGS),
            Map.entry("gutters-dirty", InspectionQuestion.DROPPINGS),
            Map.entry("animals-on-roof", InspectionQuestion.OVERHANGING_TREES),
            Map.entry("gutters-sag", InspectionQuestion.GUTTERS),
            Map.entry("inlet-unscreened", InspectionQuestion.NO_SCREEN),
            Map.entry("latrine-uphill", InspectionQuestion.TANK_CRACKED),
            Map.entry("openings-unscreened", InspectionQuestion.OVERFLOW_UNSCREENED),
            Map.entry("tap-leaking", InspectionQuestion.TAP_DIRTY));

    static Optional<SiteInspection> latest(Site site) {
        return site.getInspections().stream().filter(inspection -> inspection.getDate() != null)
                .max(Comparator.comparing(Inspection::getDate)).map(SiteInspection::of);
    }

    private static SiteInspection of(Inspection inspection) {
        Map<InspectionQuestion, Boolean> faults = new EnumMap<>(InspectionQuestion.class);
        List<InspectionAnswer> unscored = new ArrayList<>();
        for (InspectionAnswer answer : inspection.getAnswers()) {
            Optional<InspectionQuestion> question = question(answer.getQuestion());
            if (question.isEmpty()) {
                unscored.add(answer);
            } else if (answer.getAnswer() != CheckAnswer.UNKNOWN) {
                faults.merge(question.get(), answer.getAnswer() == CheckAnswer.YES, Boolean::logicalOr);
            }
        }
        return new SiteInspection(inspection, InspectionScore.of(faults), unscored);
    }

    /** The code under which the answer to a question is stored. */
    static String code(InspectionQuestion question) {
        return question.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Optional<InspectionQuestion> question(String code) {
        if (code == null) {
            return Optional.empty();
        }
        for (InspectionQuestion question : InspectionQuestion.values()) {
            if (code(question).equals(code)) {
                return Optional.of(question);
            }
        }
        return Optional.ofNullable(OTHER_CODES.get(code));
    }

    /** What was seen, for a question; empty where nothing was written down. */
    String remark(InspectionQuestion question) {
        return inspection.getAnswers().stream().filter(answer -> question(answer.getQuestion()).orElse(null) == question
                && answer.getRemark() != null).map(InspectionAnswer::getRemark).findFirst().orElse("");
    }
}
