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
import org.roofspring.treatment.disinfection.BleachAgeing;
import org.roofspring.treatment.disinfection.ChlorineContact;
import org.roofspring.treatment.disinfection.ChlorineCredit;
import org.roofspring.treatment.disinfection.ChlorineDose;
import org.roofspring.treatment.disinfection.ChlorineProduct;
import org.roofspring.treatment.disinfection.DisinfectionCautions;
import org.roofspring.treatment.disinfection.GiardiaContactTable;
import org.roofspring.treatment.disinfection.VirusContactTable;

/** How much of a chlorine product to add, and what the contact earns, in words. */
public final class ChlorineAnswer {
    private static final Source DOSE = Source.definition("mass balance");
    private static final Source TANKS = KernelTerms.source(DisinfectionCautions.TANK_DOSE_SOURCE);
    /** No hypochlorite solution keeps more than about this [ratio]. */
    private static final double STRONGEST_LIQUID = 0.2;

    private ChlorineAnswer() {
    }

    /**
     * @param elementId     of the treatment step, or null
     * @param waterVolumeM3 to treat
     * @param doseMgPerL    available chlorine to add
     * @param product       as labelled
     * @param dropVolumeM3  of the dropper used
     * @param contact       how long the water stands; residual 0 where nobody measured one
     */
    public static Outcome.Completed of(String elementId, double waterVolumeM3, double doseMgPerL,
            ChlorineProduct product, double dropVolumeM3, ChlorineContact contact) {
        AnswerBuilder answer = new AnswerBuilder(elementId);
        product(answer, waterVolumeM3, doseMgPerL, product, dropVolumeM3);
        ChlorineCredit credit = ChlorineCredit.of(contact);
        credit(answer, contact, credit);
        cautions(answer, elementId, doseMgPerL, product, contact, credit);
        return answer.build();
    }

    private static void product(AnswerBuilder answer, double waterVolumeM3, double doseMgPerL, ChlorineProduct product,
            double dropVolumeM3) {
        ChlorineDose dose = ChlorineDose.of(waterVolumeM3, doseMgPerL, product, dropVolumeM3);
        Quantity active = grams(dose.activeMassKg());
        Step activeStep = Step.of("m", "available chlorine to add", "D V", active, DOSE,
                new Input("D", "dose", Quantity.of(doseMgPerL, Units.MG_PER_L)),
                new Input("V", "water", Quantity.ofSi(waterVolumeM3, Units.L)));
        Input chlorine = new Input("m", "available chlorine", active);
        Input strength = new Input("s", "strength by weight", Quantity.ofSi(product.strengthRatio(), Units.PERCENT));
        Input density = new Input("rho", "density of the product", Quantity.ofSi(product.densityKgPerM3(),
                Units.KG_PER_L));
        boolean byVolume = product.basis() == ChlorineProduct.Basis.WEIGHT_PER_VOLUME;
        dose.productMassKg().ifPresent(mass -> answer.number("productMass", "Product by weight", grams(mass),
                activeStep, Step.of("M", "product by weight", "m / s", grams(mass), DOSE, chlorine, strength)));
        dose.productVolumeM3().ifPresent(volumeM3 -> {
            Quantity volume = Quantity.ofSi(volumeM3, Units.ML);
            Input measured = new Input("v", "product by volume", volume);
            Step volumeStep = byVolume
                    ? Step.of("v", "product by volume", "m / c", volume, DOSE, chlorine,
                            new Input("c", "available chlorine in the product",
                                    Quantity.ofSi(1e6 * product.strengthRatio(), Units.G_PER_L)))
                    : Step.of("v", "product by volume", "m / (s rho)", volume, DOSE, chlorine, strength, density);
            answer.number("productVolume", "Product by volume", volume, activeStep, volumeStep);
            Quantity drops = Quantity.of(dose.drops().orElseThrow());
            answer.number("drops", "The same in drops", drops, Step.of("n", "drops", "v / vd", drops,
                    KernelTerms.source(ChlorineDose.DROP_SOURCE), measured,
                    new Input("vd", "volume of a drop", Quantity.ofSi(dropVolumeM3, Units.ML))));
            if (byVolume) {
                Quantity mass = grams(volumeM3 * product.densityKgPerM3());
                answer.number("productMass", "The same by weight, at the given density", mass,
                        Step.of("M", "product by weight", "v rho", mass, DOSE, measured, density));
            }
        });
    }

    private static void credit(AnswerBuilder answer, ChlorineContact contact, ChlorineCredit credit) {
        Quantity contactTime = Quantity.of(credit.contactMgMinPerL(), Units.MG_MIN_PER_L);
        Input temperature = new Input("T", "temperature", Quantity.of(contact.temperatureC(), Units.DEG_C));
        Input acidity = new Input("pH", "pH", Quantity.of(contact.ph()));
        Input reached = new Input("CT", "contact time", contactTime);
        answer.number("contactTime", "Contact time", contactTime,
                Step.of("CT", "residual times effective contact", "C t b", contactTime,
                        Source.definition("contact time of a disinfectant"),
                        new Input("C", "free chlorine residual", Quantity.of(contact.residualMgPerL(), Units.MG_PER_L)),
                        new Input("t", "contact", Quantity.ofSi(contact.durationS(), Units.MIN)),
                        new Input("b", "share that nearly all the water stays, " + contact.baffling().label(),
                                Quantity.of(contact.baffling().ratio()))));
        Quantity giardia = Quantity.of(credit.logGiardia());
        Source giardiaTable = KernelTerms.source(GiardiaContactTable.SOURCE);
        answer.number("logGiardia", "Log reduction of Giardia", giardia, credit.neededGiardiaMgMinPerL().isPresent()
                ? Step.of("LG", "log reduction, at most 3", "min(3, 3 CT / CT3)", giardia, giardiaTable, reached,
                        new Input("CT3", "contact time for 3 log, rounded to the row that asks for more",
                                Quantity.of(credit.neededGiardiaMgMinPerL().getAsDouble(), Units.MG_MIN_PER_L)),
                        acidity, temperature)
                : Step.of("LG", "no credit", "0", giardia, giardiaTable, reached, acidity, temperature));
        Quantity virus = Quantity.of(credit.logVirus());
        answer.number("logVirus", "Log reduction of viruses", virus, Step.of("LV",
                "largest tabulated credit (2, 3 or 4) that the contact time reaches, temperature rounded down",
                "credit for CT at T", virus, KernelTerms.source(VirusContactTable.SOURCE), reached, acidity,
                temperature));
        Quantity crypto = Quantity.of(ChlorineCredit.LOG_CRYPTOSPORIDIUM);
        answer.number("logCryptosporidium", "Log reduction of Cryptosporidium", crypto,
                Step.of("LC", "chlorine at drinkable strength does not reach it", "0", crypto, TANKS));
    }

    private static Quantity grams(double massKg) {
        return Quantity.ofSi(massKg, Units.G);
    }

    private static void cautions(AnswerBuilder answer, String elementId, double doseMgPerL, ChlorineProduct product,
            ChlorineContact contact, ChlorineCredit credit) {
        boolean measured = contact.residualMgPerL() > 0;
        DisinfectionCautions.chlorine(Math.max(doseMgPerL, contact.residualMgPerL()), measured)
                .forEach(caution -> answer.caution(KernelTerms.caution(elementId, caution, TANKS)));
        if (measured) {
            credit.notes().forEach(note -> answer.caution(new Caution("chlorine.no-credit", Severity.WARNING,
                    elementId, "{0}", List.of(note), "", KernelTerms.source(GiardiaContactTable.SOURCE))));
        }
        if (contact.residualMgPerL() > doseMgPerL) {
            answer.caution(new Caution("chlorine.residual-above-dose", Severity.WARNING, elementId,
                    "The residual, {0}, is above the dose, {1}; that holds only where the water carried chlorine "
                            + "before.", List.of(Quantity.of(contact.residualMgPerL(), Units.MG_PER_L),
                                    Quantity.of(doseMgPerL, Units.MG_PER_L)), "", DOSE));
        }
        if (product.form() == ChlorineProduct.Form.LIQUID) {
            liquidCautions(answer, elementId, product);
        }
        answer.caution(KernelTerms.testTheWater(elementId));
        answer.caution(new Caution("chlorine.verify", Severity.INFO, elementId,
                "The contact-time tables are from memory; verify them against {0}.",
                List.of(GiardiaContactTable.SOURCE.citation()), "",
                KernelTerms.source(GiardiaContactTable.SOURCE)));
    }

    private static void liquidCautions(AnswerBuilder answer, String elementId, ChlorineProduct product) {
        if (product.strengthRatio() > STRONGEST_LIQUID) {
            answer.caution(new Caution("chlorine.strength", Severity.WARNING, elementId,
                    "A liquid with {0} of available chlorine is not sold; read the label again, or name granules.",
                    List.of(Quantity.ofSi(product.strengthRatio(), Units.PERCENT)), "",
                    Source.commonPractice("liquid hypochlorite has up to about 15 %")));
        }
        answer.caution(new Caution("chlorine.ageing", Severity.WARNING, elementId,
                "Liquid loses strength in store, the faster the stronger and warmer it is: buy it fresh, keep it cool "
                        + "and dark, and measure the residual.", List.of(), "",
                KernelTerms.source(BleachAgeing.SOURCE)));
    }
}
