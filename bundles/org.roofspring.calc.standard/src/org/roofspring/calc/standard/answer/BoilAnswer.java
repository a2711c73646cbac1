package org.roofspring.calc.standard.answer;

import java.util.Arrays;
import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.disinfection.DisinfectionCautions;

/** How hot water boils and how long to keep it boiling, in words. */
public final class BoilAnswer {
    private BoilAnswer() {
    }

    /**
     * @param elementId of the treatment step, or null
     * @param altitudeM above sea level
     * @param agency    whose rule is followed
     */
    public static Outcome.Completed of(String elementId, double altitudeM, Boiling.Agency agency) {
        Boiling boiling = Boiling.at(altitudeM, agency);
        Input altitude = new Input("z", "altitude", Quantity.of(altitudeM, Units.M));
        Quantity point = Quantity.of(boiling.boilingPointC(), Units.DEG_C);
        Quantity time = Quantity.ofSi(boiling.durationS(), Units.MIN);
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .number("boilingPoint", "Boiling point", point,
                        Step.of("Tb", "temperature at which water's vapour pressure is the air's pressure",
                                "pv(Tb) = pa(z)", point, KernelTerms.source(Boiling.BOILING_POINT_SOURCE), altitude))
                .number("boilTime", "Keep at a rolling boil", time, Step.of("t", "rolling boil, by " + agency.name(),
                        "1 min; 3 min where z > zh", time, KernelTerms.source(agency.source()), altitude,
                        new Input("zh", "altitude of the longer time", Quantity.of(agency.thresholdM(), Units.M))));
        cautions(answer, elementId, altitudeM, agency, boiling);
        return answer.build();
    }

    private static void cautions(AnswerBuilder answer, String elementId, double altitudeM, Boiling.Agency agency,
            Boiling boiling) {
        Arrays.stream(Boiling.Agency.values())
                .filter(other -> other != agency && Boiling.at(altitudeM, other).durationS() > boiling.durationS())
                .forEach(other -> answer.caution(new Caution("boil.other-rule", Severity.WARNING, elementId,
                        "{0} asks for {1} at this altitude; boiling longer does no harm.",
                        List.of(other.name(), Quantity.ofSi(Boiling.at(altitudeM, other).durationS(), Units.MIN)), "",
                        KernelTerms.source(other.source()))));
        DisinfectionCautions.boil().forEach(caution -> answer.caution(
                KernelTerms.caution(elementId, caution, Source.commonPractice("use of boiled water"))));
        answer.caution(KernelTerms.testTheWater(elementId));
    }
}
