package org.roofspring.calc.standard.answer;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.treatment.disinfection.DisinfectionCautions;
import org.roofspring.treatment.disinfection.SolarDisinfection;
import org.roofspring.treatment.disinfection.SolarDisinfection.Sky;

/** How long bottles lie in the sun, and whether they may, in words. */
public final class SolarAnswer {
    private static final Source EXPOSURE = KernelTerms.source(SolarDisinfection.EXPOSURE_SOURCE);
    private static final Source TURBIDITY = KernelTerms.source(SolarDisinfection.TURBIDITY_SOURCE);

    private SolarAnswer() {
    }

    /**
     * @param elementId      of the treatment step, or null
     * @param bottleVolumeM3 of one bottle
     * @param sky            over it
     * @param turbidityNtu   of the water
     */
    public static Outcome.Completed of(String elementId, double bottleVolumeM3, Sky sky, double turbidityNtu) {
        SolarDisinfection solar = SolarDisinfection.of(bottleVolumeM3, sky, turbidityNtu);
        Quantity exposure = Quantity.ofSi(solar.durationS(), Units.H);
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .number("exposure", "Leave in the sun", exposure, Step.of("t", "exposure",
                        sky == Sky.CLEAR ? "6 h under a clear sky" : "two days under a cloudy sky", exposure, EXPOSURE,
                        new Input("V", "bottle", Quantity.ofSi(bottleVolumeM3, Units.L)),
                        new Input("tau", "turbidity", Quantity.of(turbidityNtu, Units.NTU))))
                .flag("suitable", "Bottle and water are suitable", solar.suitable());
        if (!solar.suitable()) {
            answer.caution(KernelTerms.unsuitable("solar.unsuitable", elementId,
                    "Do not rely on the sun for this water. " + String.join(" ", solar.reasons()),
                    turbidityNtu < SolarDisinfection.TURBIDITY_LIMIT_NTU ? EXPOSURE : TURBIDITY));
        }
        answer.caution(new Caution("solar.bottle", Severity.INFO, elementId,
                "Use clear, unscratched bottles without a label, laid flat in full sun; start again after a day of "
                        + "rain, and drink from the bottle.", List.of(), "",
                Source.commonPractice("use of bottles in the sun")));
        DisinfectionCautions.solar().forEach(caution -> answer.caution(
                KernelTerms.caution(elementId, caution, EXPOSURE)));
        answer.caution(KernelTerms.testTheWater(elementId));
        return answer.build();
    }
}
