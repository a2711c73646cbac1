package org.roofspring.treatment;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.BleachAgeing;
import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.disinfection.ChlorineContact;
import org.roofspring.treatment.disinfection.ChlorineCredit;
import org.roofspring.treatment.disinfection.ChlorineDose;
import org.roofspring.treatment.disinfection.ChlorineProduct;
import org.roofspring.treatment.disinfection.ChlorineResidual;
import org.roofspring.treatment.disinfection.GiardiaContactTable;
import org.roofspring.treatment.disinfection.GiardiaFormula;
import org.roofspring.treatment.disinfection.SolarDisinfection;
import org.roofspring.treatment.disinfection.UvDoseTable;
import org.roofspring.treatment.disinfection.VirusContactTable;
import org.roofspring.treatment.risk.DoseResponse;
import org.roofspring.treatment.risk.Pathogen;
import org.roofspring.treatment.risk.RiskChain;
import org.roofspring.treatment.risk.Spread;
import org.roofspring.treatment.train.Availability;
import org.roofspring.treatment.train.HeadLoss;
import org.roofspring.treatment.train.Running;
import org.roofspring.treatment.train.StepLibrary;
import org.roofspring.treatment.train.TrainEvaluator;
import org.roofspring.treatment.train.TrainFlow;
import org.roofspring.treatment.train.TrainStep;
import org.roofspring.treatment.train.WaterState;

/** Whatever number comes in, an answer is finite and a refusal is one sentence. */
class BadNumbersTest {
    private static final double[] NUMBERS = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, -0.0,
        0, Double.MIN_VALUE, -Double.MIN_VALUE, 1e-300, 1e-9, 0.5, 1, 7, 42, 1e6, 1e9, 1e300, Double.MAX_VALUE,
        -Double.MAX_VALUE};
    private static final ChlorineProduct BLEACH = ChlorineProduct.of(ChlorineProduct.Form.LIQUID, 0.05);
    private static final Source TEST = Source.assumed("test");

    static Stream<Map.Entry<String, DoubleFunction<Object>>> entries() {
        Map<String, DoubleFunction<Object>> calls = new LinkedHashMap<>();
        calls.put("dose", x -> ChlorineDose.of(x, 5, BLEACH));
        calls.put("dose strength", x -> ChlorineDose.of(1, x, ChlorineProduct.of(ChlorineProduct.Form.GRANULES, 0.65)));
        calls.put("strength", x -> ChlorineDose.of(1, 5, ChlorineProduct.of(ChlorineProduct.Form.LIQUID, x)));
        calls.put("drop", x -> ChlorineDose.of(1e6, 1000, BLEACH, x));
        calls.put("from liquid", x -> ChlorineDose.fromLiquid(x, x, BLEACH));
        calls.put("from mass", x -> ChlorineDose.fromMass(x, x, 0.5));
        calls.put("tablets", x -> ChlorineDose.of(1, 5, ChlorineProduct.of(ChlorineProduct.Form.TABLETS, 0.5))
                .tablets(x));
        calls.put("contact residual", x -> ChlorineCredit.of(ChlorineContact.standing(x, 1800, 7, 20)));
        calls.put("contact time", x -> ChlorineCredit.of(ChlorineContact.standing(1, x, 7, 20)));
        calls.put("contact pH", x -> ChlorineCredit.of(ChlorineContact.standing(1, 1800, x, 20)));
        calls.put("contact temperature", x -> ChlorineCredit.of(ChlorineContact.standing(1, 1800, 7, x)));
        calls.put("Giardia table", x -> GiardiaContactTable.interpolated(x, x, x));
        calls.put("Giardia rounded", x -> GiardiaContactTable.rounded(x, x, x));
        calls.put("Giardia formula", x -> GiardiaFormula.REGRESSION_1995.contactMgMinPerL(3, x, 7, 20));
        calls.put("virus table", x -> VirusContactTable.interpolated(x, 20) + VirusContactTable.rounded(x, 20));
        calls.put("UV", x -> UvDoseTable.VIRUS.credit(x));
        calls.put("UV needed", x -> UvDoseTable.VIRUS.neededMjPerCm2(x));
        calls.put("boil", x -> Boiling.at(x, Boiling.Agency.EPA));
        calls.put("solar", x -> SolarDisinfection.of(x, SolarDisinfection.Sky.CLEAR, x));
        calls.put("residual", x -> new ChlorineResidual(x, x, x).afterMgPerL(x));
        calls.put("residual contact", x -> new ChlorineResidual(1, 0, x).integratedContactMgMinPerL(1e6));
        calls.put("dose for", x -> ChlorineResidual.doseForMgPerL(x, x, x, x));
        calls.put("fit", x -> ChlorineResidual.fit(2, x, 1, 1e9, 0.5));
        calls.put("ageing", x -> BleachAgeing.DEFAULT.strengthRatio(0.1, x, 25));
        calls.put("ageing warmth", x -> BleachAgeing.DEFAULT.strengthRatio(0.1, 1e9, x));
        calls.put("ageing model", x -> new BleachAgeing(x, x, 3).strengthRatio(0.1, 1e9, 30));
        calls.put("exponential", x -> new DoseResponse.Exponential(x).infection(1) + new DoseResponse.Exponential(x)
                .dose(0.9));
        calls.put("beta-Poisson", x -> new DoseResponse.BetaPoisson(x, x).infection(1) + new DoseResponse.BetaPoisson(x,
                x).dose(0.9));
        calls.put("median dose", x -> DoseResponse.BetaPoisson.fromMedianDose(x, x));
        calls.put("infection", x -> Pathogen.CAMPYLOBACTER_CURVE.infection(x));
        calls.put("infecting dose", x -> Pathogen.CAMPYLOBACTER_CURVE.dose(x));
        calls.put("chain", x -> RiskChain.forward(Pathogen.ROTAVIRUS, x, 2, 1, 365));
        calls.put("chain litres", x -> RiskChain.forward(Pathogen.ROTAVIRUS, 1, 2, x, 365));
        calls.put("backwards", x -> RiskChain.neededLog(Pathogen.ROTAVIRUS, x, 1, 365, 1e-6));
        calls.put("backwards target", x -> RiskChain.neededLog(Pathogen.ROTAVIRUS, 1, 1, 365, x));
        calls.put("lognormal", x -> new Spread.LogNormal(x, 2 * x).quantile(0));
        calls.put("availability", x -> Availability.effectiveLog(x, 0.5) + Availability.effectiveLog(3, x));
        calls.put("head loss", x -> new HeadLoss(x, 1, 2, 2, TEST).cleanHeadM(0.5));
        calls.put("head loss flow", x -> new HeadLoss(1e-4, 1, 2, 2, TEST).fouledHeadM(x));
        calls.put("train water", x -> evaluate(WaterState.of(x, 7, 20, 0.9), 1e-4, 0.02));
        calls.put("train pH", x -> evaluate(WaterState.of(1, x, 20, 0.9), 1e-4, 0.02));
        calls.put("train temperature", x -> evaluate(WaterState.of(1, 7, x, 0.9), 1e-4, 0.02));
        calls.put("train flow", x -> evaluate(WaterState.of(1, 7, 20, 0.9), x, 0.02));
        calls.put("train volume", x -> evaluate(WaterState.of(1, 7, 20, 0.9), 1e-4, x));
        calls.put("running", x -> new Running(x, x, x, OptionalDouble.of(x)));
        calls.put("log range", x -> new LogRange(x, x, TEST));
        return calls.entrySet().stream();
    }

    private static Object evaluate(WaterState water, double flowM3PerS, double dailyM3) {
        List<TrainStep> steps = new ArrayList<>(StepLibrary.palette());
        steps.add(StepLibrary.chlorination(OptionalDouble.of(1), 3600, Baffling.POOR).withId("chlorine-2"));
        return TrainEvaluator.evaluate(steps, water, new TrainFlow(flowM3PerS, dailyM3, 1, OptionalDouble.of(10)));
    }

    @ParameterizedTest
    @MethodSource("entries")
    void aFiniteAnswerOrOneSentence(Map.Entry<String, DoubleFunction<Object>> entry) {
        int answers = 0;
        for (double number : NUMBERS) {
            try {
                String answer = entry.getValue().apply(number).toString();
                assertFalse(answer.contains("NaN") || answer.contains("Infinity"), entry.getKey() + " of " + number);
                answers++;
            } catch (IllegalArgumentException refused) {
                assertTrue(refused.getMessage().matches("(?s)[^\\n]{20,240}"), refused.getMessage());
            }
        }
        assertTrue(answers > 0, "every number was refused");
    }
}
