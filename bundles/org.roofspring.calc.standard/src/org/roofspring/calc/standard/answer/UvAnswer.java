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
import org.roofspring.treatment.disinfection.UvDoseTable;

/** What an ultraviolet dose earns, in words. */
public final class UvAnswer {
    private static final Source TABLE = KernelTerms.source(UvDoseTable.SOURCE);

    private UvAnswer() {
    }

    /**
     * @param elementId      of the lamp, or null
     * @param uvDoseMjPerCm2 validated dose
     */
    public static Outcome.Completed of(String elementId, double uvDoseMjPerCm2) {
        AnswerBuilder answer = new AnswerBuilder(elementId);
        credit(answer, "logCryptosporidium", "Cryptosporidium", UvDoseTable.CRYPTOSPORIDIUM, uvDoseMjPerCm2);
        credit(answer, "logGiardia", "Giardia", UvDoseTable.GIARDIA, uvDoseMjPerCm2);
        credit(answer, "logVirus", "viruses", UvDoseTable.VIRUS, uvDoseMjPerCm2);
        cautions(answer, elementId);
        return answer.build();
    }

    private static void credit(AnswerBuilder answer, String id, String group, UvDoseTable table, double dose) {
        Quantity credit = Quantity.of(table.credit(dose));
        answer.number(id, "Log reduction of " + group, credit, Step.of("L",
                "largest tabulated credit, in steps of a half, whose dose is reached", "credit for H", credit, TABLE,
                new Input("H", "dose", Quantity.of(dose, Units.MJ_PER_CM2))));
    }

    private static void cautions(AnswerBuilder answer, String elementId) {
        DisinfectionCautions.uv().forEach(caution -> answer.caution(KernelTerms.caution(elementId, caution, TABLE)));
        answer.caution(new Caution("uv.lamp", Severity.DANGER, elementId,
                "The light burns eyes and skin, and lamps hold mercury: switch off at the mains before opening, and "
                        + "never look at a lit lamp.", List.of(),
                "Follow the maker's instructions and have a licensed electrician connect it by the local code.",
                Source.commonPractice("work on ultraviolet lamps")));
        answer.caution(KernelTerms.testTheWater(elementId));
    }
}
