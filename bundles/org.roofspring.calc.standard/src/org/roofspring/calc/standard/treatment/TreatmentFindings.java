package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.site.Purpose;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.treatment.safety.WaterTests;

/** All that is found of the treatment of a site, use by use and train by train. */
public final class TreatmentFindings {
    private TreatmentFindings() {
    }

    /**
     * @param cancelled polled between uses
     * @throws UnreadableException where values of a step contradict each other
     */
    public static Outcome.Completed of(SiteReading site, BooleanSupplier cancelled) {
        AnswerBuilder answer = new AnswerBuilder(null);
        String asOf = asOf(site);
        List<UseAppraisal> appraisals = new ArrayList<>();
        for (Use use : site.judged()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            UseAppraisal appraisal = UseAppraisal.of(site, use);
            appraisals.add(appraisal);
            answer.include(UseFindings.of(appraisal, asOf));
        }
        for (TreatmentTrain train : site.trains()) {
            answer.include(TrainFindings.of(site, train));
        }
        answer.text("asOf", "As of", asOf);
        answer.include(PlanFindings.tests(site));
        answer.include(PlanFindings.inspection(site));
        answer.include(PlanFindings.plan(site, appraisals));
        answer.include(Cards.dosing(site));
        answer.include(Cards.cleaning(site));
        site.ways().keySet().stream().filter(use -> use.getPurpose() == Purpose.UNSTATED
                || use.getPurpose() == Purpose.OTHER).forEach(use -> answer.caution(new Caution("use.purpose",
                        Caution.Severity.WARNING, use.getId(), "No verdict is given on {0}: say what its water is "
                                + "for.", List.of(SiteTerms.name(use)), "",
                        Source.definition("a verdict is given for a purpose"))));
        return answer.build();
    }

    /** A calculation has no clock: this says to which day the ages of tests and filters were counted. */
    private static String asOf(SiteReading site) {
        return site.day().map(day -> "Ages are counted to " + day + ", the latest day noted in this site; a water "
                + "test counts for " + WaterTests.DEFAULT_VALID_DAYS + " days (common practice).")
                .orElse("Nothing in this site is dated, so no test counts and every filter is taken as new.");
    }
}
