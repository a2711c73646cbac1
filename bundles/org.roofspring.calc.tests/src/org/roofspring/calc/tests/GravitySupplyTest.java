package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.roofspring.calc.tests.SmallSites.q;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.engine.CalculationResult.Status;
import org.roofspring.calc.standard.GravitySupplyCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Junction;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.ProfilePoint;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;

/** Taps of a site: what each gets, what moves it and which way, loops, grade lines, vessels. */
class GravitySupplyTest {
    private static final String SUPPLY = "gravity.supply";

    private static Asked asked(Site site) {
        return Asked.of(site, new GravitySupplyCalculation());
    }

    private static double flow(Site site, String tap) {
        return asked(site).number(SUPPLY, "flow", tap, Units.L_PER_MIN);
    }

    /** Without losses the tap has all 4.5 m: 6 L/min sqrt(4.5 / 1), Torricelli. */
    @Test
    void oneTapWithoutLossesRunsByItsHead() {
        Site site = SmallSites.oneTap();
        assertEquals(6 * Math.sqrt(4.5), flow(site, "tap"), 1e-6);
        assertEquals(4.5, asked(site).number(SUPPLY, "residualHead", "tap", Units.M), 1e-6);
        site.getTaps().get(0).setOrifice(q("6 mm"));
        double m3PerS = 0.61 * Math.PI / 4 * 0.006 * 0.006 * Math.sqrt(2 * 9.80665 * 4.5);
        assertEquals(m3PerS * 60_000, flow(site, "tap"), 1e-5);
    }

    private static Site branched(Random random) {
        Site site = SmallSites.oneTap();
        Junction tee = SmallSites.junction(site, "tee", "2 m");
        SmallSites.run(site, "main", site.getTanks().get(0), tee, 20 + 20 * random.nextDouble() + " mm", "30 m");
        for (int i = 0; i < 3; i++) {
            Tap tap = SmallSites.tap(site, "t" + i, 1 + 2 * random.nextDouble() + " m");
            SmallSites.run(site, "r" + i, tee, tap, 13 + 8 * random.nextDouble() + " mm", 5 + 20 * random.nextDouble() + " m");
        }
        return site;
    }

    @Test
    void aHigherTankGivesNoTapLessAndOneMoreOpenTapGivesNoOtherMore() {
        Random random = new Random(5);
        for (int i = 0; i < 15; i++) {
            Site site = branched(random);
            double[] before = {flow(site, "t0"), flow(site, "t1"), flow(site, "t2")};
            site.getTanks().get(0).setBaseLevel(q("5.5 m"));
            for (int t = 0; t < 3; t++) {
                assertTrue(flow(site, "t" + t) >= before[t] - 1e-7, "tank raised: tap " + t);
            }
            site.getTanks().get(0).setBaseLevel(q("5 m"));
            site.getTaps().get(3).setInUse(false);
            assertTrue(flow(site, "t0") >= before[0] - 1e-7 && flow(site, "t1") >= before[1] - 1e-7, "third tap closed");
        }
    }

    @Test
    void theLeastLevelServesTheWeakestTapExactly() {
        Site site = branched(new Random(8));
        double least = asked(site).number(SUPPLY, "leastFloorLevel", "tank", Units.M);
        site.getTanks().get(0).setBaseLevel(Quantity.of(least, Units.M));
        Asked served = asked(site);
        double worst = served.value(SUPPLY, "taps", "tank", FindingValue.Table.class).rows().stream()
                .mapToDouble(row -> ((Quantity) row.get(7)).si()).min().orElseThrow();
        assertEquals(1, worst, 1e-6);
        assertEquals(Level.GOOD, served.value(SUPPLY, "weakestTap", "tank", FindingValue.Verdict.class).level());
    }

    private static TreatmentTrain filter(Site site, String clean, String fouled) {
        TreatmentTrain train = SiteFactory.eINSTANCE.createTreatmentTrain();
        train.setId("train");
        train.setName("Train");
        train.setLevel(q("1 m"));
        TreatmentStep step = SiteFactory.eINSTANCE.createTreatmentStep();
        step.setId("step");
        step.setName("Cartridge");
        step.setHeadLossClean(q(clean));
        step.setHeadLossFouled(q(fouled));
        step.setReferenceFlow(q("6 L/min"));
        step.setMaxFlow(q("7 L/min"));
        train.getSteps().add(step);
        site.getTrains().add(train);
        site.getPipeRuns().clear();
        SmallSites.run(site, "in", site.getTanks().get(0), train, "500 mm", "1 m");
        SmallSites.run(site, "out", train, site.getTaps().get(0), "500 mm", "1 m");
        return train;
    }

    /** Tap 1 m and filter 1.25 m or 3.5 m at 6 L/min, all with the square of the flow: sqrt(4.5 / 2.25), sqrt(4.5 / 4.5). */
    @Test
    void filtersTakeTheirHeadCleanAndFouled() {
        Site site = SmallSites.oneTap();
        filter(site, "1.25 m(head)", "3.5 m(head)");
        Asked asked = asked(site);
        assertEquals(6 * Math.sqrt(2), asked.number(SUPPLY, "flow", "tap", Units.L_PER_MIN), 1e-5);
        assertEquals(6, asked.number(SUPPLY, "flowFouled", "tap", Units.L_PER_MIN), 1e-5);
        assertTrue(asked.cautionCodes(SUPPLY).contains("treatment.too-fast"), "8.5 L/min through a filter for 7");
        site.getTanks().get(0).setBaseLevel(q("4 m"));
        FindingValue.Verdict verdict = asked(site).value(SUPPLY, "weakestTap", "tank", FindingValue.Verdict.class);
        assertEquals(Level.CONDITIONAL, verdict.level());
        assertTrue(verdict.text().contains("Tap tap"), verdict.text());
    }

    @Test
    void loopsAreRefusedWithASentence() {
        Site site = branched(new Random(2));
        SmallSites.run(site, "ring", site.getJunctions().get(0), site.getTaps().get(0), "20 mm", "10 m");
        Asked asked = asked(site);
        assertEquals(Status.NO_ANSWER, asked.result(SUPPLY).status());
        assertTrue(asked.reasons(SUPPLY).contains("closes a loop"), asked.reasons(SUPPLY));
        site = SmallSites.oneTap();
        Tank other = SmallSites.tank(site, "other", "5 m");
        other.setOverflowHeight(q("2 m"));
        SmallSites.run(site, "second", other, site.getTaps().get(0), "20 mm", "10 m");
        assertTrue(asked(site).caution(SUPPLY, "gravity.no-answer").contains("makes a loop"));
    }

    @Test
    void aHumpOverTheGradeLineIsACaution() {
        Site site = SmallSites.oneTap();
        site.getPipeRuns().get(0).setBore(q("20 mm"));
        site.getPipeRuns().get(0).setLength(q("40 m"));
        assertFalse(asked(site).cautionCodes(SUPPLY).contains("gravity.below-pipe"));
        double[][] points = {{0, 5}, {20, 5.4}, {40, 1}};
        for (double[] at : points) {
            ProfilePoint point = SiteFactory.eINSTANCE.createProfilePoint();
            point.setDistance(Quantity.of(at[0], Units.M));
            point.setLevel(Quantity.of(at[1], Units.M));
            site.getPipeRuns().get(0).getProfile().add(point);
        }
        Asked asked = asked(site);
        assertTrue(asked.caution(SUPPLY, "gravity.below-pipe").contains("20 m from its start"),
                asked.caution(SUPPLY, "gravity.below-pipe"));
        FindingValue.Curve grade = asked.value(SUPPLY, "gradeLine", "tap", FindingValue.Curve.class);
        assertEquals(5.5, grade.y()[0], 1e-9);
        assertEquals(1 + asked.number(SUPPLY, "residualHeadFouled", "tap", Units.M), grade.y()[grade.y().length - 1], 1e-9);
        for (int i = 1; i < grade.y().length; i++) {
            assertTrue(grade.y()[i] <= grade.y()[i - 1], "the grade line never rises");
        }
    }

    /** 100 L, precharge 80, switch 100 and 180 kPa at sea level: 100 x 181.325 (1/201.325 - 1/281.325) = 25.6 L. */
    @Test
    void aVesselGivesItsDrawdownAndItsPressure() {
        Site site = SmallSites.pumped();
        site.getPipeRuns().get(1).setInUse(false);
        PressureVessel vessel = SmallSites.vessel(site, "1 m");
        SmallSites.run(site, "to-vessel", site.getPumps().get(0), vessel, "40 mm", "2 m");
        SmallSites.run(site, "to-tap", vessel, SmallSites.tap(site, "tap", "3 m"), "500 mm", "1 m");
        Asked asked = asked(site);
        double airKPa = 101.325 * Math.exp(-0.5 / 8434.5);
        double litres = 100 * (80 + airKPa) * (1 / (100 + airKPa) - 1 / (180 + airKPa));
        assertEquals(litres, asked.number(SUPPLY, "drawdown", "vessel", Units.L), 1e-3);
        double headM = 1 + 100_000 / (998.207 * 9.80665) - 3;
        assertEquals(6 * Math.sqrt(headM), asked.number(SUPPLY, "flow", "tap", Units.L_PER_MIN), 1e-4);
        double in = asked.number(SUPPLY, "flowAtCutIn", "vessel", Units.L_PER_S);
        double out = asked.number(SUPPLY, "flowAtCutOut", "vessel", Units.L_PER_S);
        assertTrue(in > out && out > 0);
        assertEquals((in + out) / 2 / (4 * litres) * 3600, asked.number(SUPPLY, "mostStarts", "vessel", Units.PER_H), 1e-2);
        vessel.setCutOut(q("260 kPa"));
        assertTrue(asked(site).cautionCodes(SUPPLY).contains("vessel.never-stops"), "26.6 m are beyond the pump");
    }

    @Test
    void whatIsMissingIsNamed() {
        Site site = SmallSites.oneTap();
        site.getTaps().get(0).setLevel(null);
        site.getTaps().get(0).setDesignFlow(null);
        site.getPipeRuns().get(0).setBore(null);
        String reasons = asked(site).reasons(SUPPLY);
        assertTrue(reasons.contains("The level of Tap tap is missing.") && reasons.contains("The bore of Run drop is missing.")
                && reasons.contains("The flow that people expect of Tap tap is missing."), reasons);
    }
}
