package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.roofspring.calc.tests.SmallSites.q;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.engine.CalculationResult.Status;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.PumpRunningCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.EnergySource;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpArrangement;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SupplyTime;
import org.roofspring.site.Use;

/** Pumps of a site: duty, suction, surge and running, with what must hold whatever the numbers, and with bad input. */
class PumpSiteTest {
    private static final String DUTY = "pump.duty";
    private static final String RUNNING = "pump.running";

    private static Asked duty(Site site) {
        return Asked.of(site, new PumpDutyCalculation());
    }

    private static Asked running(Site site) {
        return Asked.of(site, new PumpDutyCalculation(), new PumpRunningCalculation());
    }

    private static double flow(Site site) {
        return duty(site).number(DUTY, "flow", "pump", Units.L_PER_S);
    }

    private static double head(Site site) {
        return duty(site).number(DUTY, "head", "pump", Units.M);
    }

    /** Over many lines: more lift means less flow and more head; a wider pipe never less flow nor more head. */
    @Test
    void levelsAndBoresMoveTheDutyPointTheRightWay() {
        Random random = new Random(11);
        for (int i = 0; i < 40; i++) {
            Site site = SmallSites.pumped();
            double boreMm = 28 + 30 * random.nextDouble();
            double lengthM = 20 + 150 * random.nextDouble();
            double baseM = 4 + 9 * random.nextDouble();
            site.getPipeRuns().get(1).setBore(Quantity.of(boreMm, Units.MM));
            site.getPipeRuns().get(1).setLength(Quantity.of(lengthM, Units.M));
            site.getTanks().get(1).setBaseLevel(Quantity.of(baseM, Units.M));
            double flow = flow(site);
            double head = head(site);
            site.getTanks().get(1).setBaseLevel(Quantity.of(baseM + 0.3, Units.M));
            assertTrue(flow(site) < flow && head(site) > head, "overhead tank raised from " + baseM);
            site.getTanks().get(1).setBaseLevel(Quantity.of(baseM, Units.M));
            site.getTanks().get(0).setBaseLevel(q("0.2 m"));
            assertTrue(flow(site) > flow && head(site) < head, "water drawn from stands higher");
            site.getTanks().get(0).setBaseLevel(q("0 m"));
            site.getPipeRuns().get(1).setBore(Quantity.of(boreMm + 1, Units.MM));
            assertTrue(flow(site) >= flow && head(site) <= head, "wider than " + boreMm);
        }
    }

    /** Energy along the run closes: static head and the losses of both pipes make up the head of the pump. */
    @Test
    void theEnergyBalanceCloses() {
        Asked asked = duty(SmallSites.pumped());
        var step = asked.lastStep(DUTY, "head", "pump");
        double sum = step.inputs().stream().filter(input -> input.value().unit() == Units.M)
                .mapToDouble(input -> input.value().value()).sum();
        assertEquals(asked.number(DUTY, "head", "pump", Units.M), sum, 1e-9);
        assertEquals(12, asked.number(DUTY, "staticHead", "pump", Units.M), 1e-12, "from the floor of the cistern to the inlet");
    }

    @Test
    void pumpsInSeriesReachHigherAndInParallelCarryMore() {
        Site site = SmallSites.pumped();
        double single = flow(site);
        Pump pump = site.getPumps().get(0);
        pump.setCount(2);
        pump.setArrangement(PumpArrangement.PARALLEL);
        assertTrue(flow(site) > single);
        pump.setArrangement(PumpArrangement.SERIES);
        site.getTanks().get(1).setBaseLevel(q("30 m"));
        assertTrue(flow(site) > 0, "32 m of lift are beyond one pump of 24 m and within two");
    }

    /** Nothing is lost in the suction of 4 m but friction; the barometer, 4 kPa low, takes 4000 / (rho g) = 0.409 m. */
    @Test
    void theWorstDayTakesWhatItMust() {
        Site site = SmallSites.pumped();
        Asked asked = duty(site);
        var rows = asked.value(DUTY, "suctionReview", "pump", org.roofspring.calc.FindingValue.Table.class).rows();
        assertEquals(2, ((Quantity) rows.get(0).get(1)).value(), 1e-12, "2 m between full and empty cistern");
        assertEquals(4000 / (998.207 * 9.80665), ((Quantity) rows.get(4).get(1)).value(), 1e-5);
        assertEquals(0, ((Quantity) rows.get(2).get(1)).value(), 0, "there is no strainer");
        double needed = asked.number(DUTY, "npshNeeded", "pump", Units.M);
        assertEquals(2.6, needed, 1e-12, "1.3 x 2 m and 2 m + 0.6 m are the same");
        double worst = asked.number(DUTY, "npshWorst", "pump", Units.M);
        assertEquals(0.5 + worst - needed, asked.number(DUTY, "greatestLift", "pump", Units.M), 1e-9);
    }

    @Test
    void aPumpTooHighIsTold() {
        Site site = SmallSites.pumped();
        Pump pump = site.getPumps().get(0);
        pump.setLevel(q("7.2 m"));
        pump.setFootValve(false);
        Asked asked = duty(site);
        assertTrue(asked.cautionCodes(DUTY).containsAll(java.util.Set.of("pump.lift", "pump.priming", "pump.npsh-worst", "pump.dry-run")),
                asked.cautionCodes(DUTY).toString());
        assertTrue(asked.caution(DUTY, "pump.lift").contains("7.2 m"), asked.caution(DUTY, "pump.lift"));
        pump.setKind(PumpKind.SUBMERSIBLE);
        pump.setLevel(q("0.3 m"));
        pump.setMinSubmergence(q("0.4 m"));
        Asked below = duty(site);
        assertFalse(below.has(DUTY, "suctionLift", "pump"), "a submersible has no suction lift");
        assertEquals(0.4, below.number(DUTY, "submergenceNeeded", "pump", Units.M), 1e-12);
        assertEquals(0.7, below.number(DUTY, "dryRunStopHeight", "pump", Units.M), 1e-12);
    }

    /** PE of 40 mm bore with a wall of 5 mm: a = sqrt(K/rho) / sqrt(1 + 0.7975 (K/E) (D/e)), about 300 m/s. */
    @Test
    void aQuickStopSurgesByJoukowskyAndASlowOneLess() {
        Site site = SmallSites.pumped();
        site.getPipeRuns().get(1).setWallThickness(q("5 mm"));
        site.getPipeRuns().get(1).setPressureClass(q("200 kPa"));
        Asked quick = duty(site);
        double rho = 998.207;
        double give = (1 - 0.45 * 0.45) * 2.19e9 / 1.1e9 * 40 / 5;
        double waveMPerS = Math.sqrt(2.19e9 / rho / (1 + give));
        double velocityMPerS = flow(site) / 1000 / (Math.PI / 4 * 0.04 * 0.04);
        assertEquals(rho * waveMPerS * velocityMPerS / 1000, quick.number(DUTY, "surgePressure", "pump", Units.KPA), 0.01);
        assertTrue(quick.cautionCodes(DUTY).contains("pipe.surge"));
        site.getPipeRuns().get(1).setClosureTime(q("10 s"));
        Asked slow = duty(site);
        assertEquals(2 * rho * 40 * velocityMPerS / 10 / 1000, slow.number(DUTY, "surgePressure", "pump", Units.KPA), 0.001);
    }

    @Test
    void runningFollowsFromVolumeFlowAndEnergy() {
        Site site = SmallSites.pumped();
        Use use = SiteFactory.eINSTANCE.createUse();
        use.setId("use");
        use.setName("Use");
        use.setCount(Quantity.of(10));
        use.setAmountEach(q("50 L/d"));
        site.getUses().add(use);
        site.setEconomy(SiteFactory.eINSTANCE.createEconomy());
        site.getEconomy().setEnergyPrice(q("0.25 cur/kWh"));
        Pump pump = site.getPumps().get(0);
        pump.setMotorEfficiency(q("80 %"));
        Asked asked = running(site);
        double flowM3PerS = asked.number(DUTY, "flow", "pump", Units.M3_PER_S);
        assertEquals(0.5 * 365.2425, asked.number(RUNNING, "yearlyVolume", "pump", Units.M3), 1e-9);
        assertEquals(0.5 / flowM3PerS / 3600, asked.number(RUNNING, "runningTime", "pump", Units.H), 1e-12);
        double switchM3 = 2 * 1.0 / 1.9;
        assertEquals(switchM3 / flowM3PerS / 60, asked.number(RUNNING, "timeToFill", "pump", Units.MIN), 1e-9);
        assertEquals(0.5 / switchM3, asked.number(RUNNING, "startsPerDay", "pump", Units.PER_D), 1e-12);
        double kWh = asked.number(DUTY, "specificEnergy", "pump", Units.KWH_PER_M3) * 0.5 * 365.2425;
        assertEquals(kWh, asked.number(RUNNING, "yearlyEnergy", "pump", Units.KWH), 1e-9);
        assertEquals(0.25 * kWh, asked.number(RUNNING, "yearlyEnergyCost", "pump", Units.MONEY), 1e-9);
        assertEquals(2 / 0.5, asked.number(RUNNING, "outageBridged", "pump", Units.D), 1e-12);
        assertFalse(asked.has(RUNNING, "bucketTrips", "pump"), "a use of the usual priority is not carried by bucket");
        use.setPriority(1);
        assertEquals(25, running(site).number(RUNNING, "bucketTrips", "pump", Units.ONE), 0, "0.5 m3 in buckets of 20 L");
    }

    @Test
    void shortHoursManyStartsAndSunAreTold() {
        Site site = SmallSites.pumped();
        Use use = SiteFactory.eINSTANCE.createUse();
        use.setId("use");
        use.setName("Use");
        use.setAmountEach(q("9 m3/d"));
        site.getUses().add(use);
        site.getTanks().get(1).setStopHeight(q("0.51 m"));
        Pump pump = site.getPumps().get(0);
        pump.setMaxStarts(q("20 1/h"));
        pump.setEnergySource(EnergySource.SOLAR);
        SupplyTime noon = SiteFactory.eINSTANCE.createSupplyTime();
        noon.setFrom(java.time.LocalTime.of(11, 0));
        noon.setTo(java.time.LocalTime.of(12, 0));
        pump.getSupplyTimes().add(noon);
        Asked asked = running(site);
        assertTrue(asked.cautionCodes(RUNNING).containsAll(java.util.Set.of("pump.hours", "pump.starts")),
                asked.cautionCodes(RUNNING).toString());
        double dayWh = asked.number(DUTY, "specificEnergy", "pump", Units.WH_PER_M3) * 9;
        assertEquals(dayWh / (4 * 0.7), asked.number(RUNNING, "panelPower", "pump", Units.W), 1e-9);
    }

    @Test
    void aHandPumpGivesItsStrokes() {
        Site site = SmallSites.pumped();
        Pump pump = site.getPumps().get(0);
        pump.setKind(PumpKind.HAND_PUMP);
        assertTrue(running(site).reasons(RUNNING).contains("stroke volume"), running(site).reasons(RUNNING));
        pump.setStrokeVolume(q("0.4 L"));
        pump.setStrokesPerMinute(Quantity.of(40));
        assertEquals(16, running(site).number(RUNNING, "handPumpFlow", "pump", Units.L_PER_MIN), 1e-9);
    }

    @Test
    void badPointsAreNamedInOneSentence() {
        Site site = SmallSites.pumped();
        Pump pump = site.getPumps().get(0);
        SmallSites.points(pump, 0, 24, 1, 18, 0.5, 22);
        assertSentence(duty(site), "in order of rising flow");
        SmallSites.points(pump, 0, 24, 1, 18);
        assertSentence(duty(site), "at least 3 points");
        SmallSites.points(pump, 0, 11, 0.5, 9, 1, 4);
        assertSentence(duty(site), "static head of 12.00 m is not below the shut-off head of the pump, 11.00 m");
    }

    private static void assertSentence(Asked asked, String part) {
        assertEquals(Status.NO_ANSWER, asked.result(DUTY).status());
        String reasons = asked.reasons(DUTY);
        assertTrue(reasons.contains(part) && reasons.endsWith(".") && !reasons.contains("\n"), reasons);
    }

    @Test
    void valuesOutOfRangeGiveNoAnswerButASentence() {
        Site site = SmallSites.pumped();
        site.getPumps().get(0).getPoints().get(1).setEfficiency(q("120 %"));
        Asked asked = duty(site);
        assertNotEquals(Status.COMPLETED, asked.result(DUTY).status());
        assertTrue(asked.reasons(DUTY).contains("120 %"), asked.reasons(DUTY));
        site = SmallSites.pumped();
        site.getPipeRuns().get(1).setBore(q("0 mm"));
        asked = duty(site);
        assertNotEquals(Status.COMPLETED, asked.result(DUTY).status());
        assertTrue(asked.reasons(DUTY).startsWith("Bore of PipeRun"), asked.reasons(DUTY));
    }

    @Test
    void theInletUnderWaterIsARangeAndACaution() {
        Site site = SmallSites.pumped();
        site.getTanks().get(1).setInletHeight(q("0.2 m"));
        Asked asked = duty(site);
        assertEquals(11.5, asked.number(DUTY, "staticHead", "pump", Units.M), 1e-12, "to the stop height, which covers it");
        assertTrue(asked.number(DUTY, "flowHighest", "pump", Units.L_PER_S) > asked.number(DUTY, "flow", "pump", Units.L_PER_S));
        assertTrue(asked.caution(DUTY, "tank.air-gap").contains("under water"), asked.caution(DUTY, "tank.air-gap"));
    }
}
