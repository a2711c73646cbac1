package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.DisinfectantProduct;
import org.roofspring.site.Hazard;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Purpose;
import org.roofspring.site.RatingBasis;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.StepKind;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankMaterial;
import org.roofspring.site.Tap;
import org.roofspring.site.TapKind;
import org.roofspring.site.TopUp;
import org.roofspring.site.TopUpSource;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.WaterParameter;
import org.roofspring.site.WaterTest;

/** How a site is read for its treatment, and what is concluded. */
class TreatmentVerdictTest {
    private static final String USE = TreatmentSites.USE;

    @Test
    void aSoundSiteIsSuitableOnStatedAssumptions() {
        FindingValue.Verdict verdict = TreatmentSites.verdict(TreatmentSites.sound());
        assertEquals(Level.GOOD, verdict.level(), verdict.toString());
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("from memory")), "sources are named");
        assertTrue(verdict.reasons().get(verdict.reasons().size() - 1).contains("health authority"));
    }

    /** 0.2 um absolute 2 log (credit of cartridges), UV 40 mJ/cm2: class 3 bacteria, table 0.5 virus, 4 protozoa. */
    @Test
    void reductionsAddUpStepByStep() {
        Outcome.Completed outcome = TreatmentSites.completed(TreatmentSites.sound());
        assertArrayEquals(new double[] {5, 0.5, 6, 6}, TreatmentSites.logs(outcome), 1e-12);
        FindingValue.Table table = TreatmentSites.table(outcome, "reduction", USE);
        assertEquals(List.of("Tank", "Sediment cartridge 5 um", "Cartridge 0.2 um absolute", "UV lamp", "Asked for"),
                table.rows().stream().map(row -> row.get(0)).toList());
        assertEquals(List.of("", "step-5um", "step-02um", "step-uv", ""),
                table.rows().stream().map(row -> row.get(6)).toList());
        assertEquals(Quantity.of(2), table.rows().get(2).get(1));
    }

    /** -log10(0.95 x 10^-3 + 0.05) = 1.2929: out for 5 % of the time caps any step at 1.301 log. */
    @Test
    void aLampOutForOneTwentiethOfTheTimeEarnsLittle() {
        Outcome.Completed outcome = TreatmentSites.completed(TreatmentSites.load("lamp-without-power"));
        double[] logs = TreatmentSites.logs(outcome);
        assertEquals(2 - Math.log10(0.95e-3 + 0.05), logs[0], 1e-12);
        assertEquals(2 - Math.log10(0.95e-4 + 0.05), logs[3], 1e-12);
        assertTrue(logs[3] - 2 < -Math.log10(0.05));
    }

    @TestFactory
    Stream<DynamicTest> coarseCartridgesEarnNothing() {
        return Stream.of("5 um", "20 um").flatMap(size -> Stream.of(RatingBasis.values())
                .map(basis -> DynamicTest.dynamicTest(size + " " + basis, () -> {
                    Site site = TreatmentSites.sound();
                    List<TreatmentStep> steps = site.getTrains().get(0).getSteps();
                    steps.removeIf(step -> !step.getId().equals("step-5um"));
                    steps.get(0).setRating(Quantity.valueOf(size));
                    steps.get(0).setRatingBasis(basis);
                    steps.get(0).setValidated(true);
                    assertArrayEquals(new double[4], TreatmentSites.logs(TreatmentSites.completed(site)));
                    assertEquals(Level.BAD, TreatmentSites.verdict(site).level());
                })));
    }

    /** Where people or sewage bring viruses in and no barrier of 3 log stands, the way is named and blocks. */
    @TestFactory
    Stream<DynamicTest> aWayInForVirusesIsNamedAndBlocks() {
        record Way(String name, java.util.function.Consumer<Site> open) {
        }
        return Stream.of(
                new Way("an open tank", site -> site.getTanks().get(0).setCover(TankCover.OPEN)),
                new Way("vessels dipped by many hands", site -> site.getUses().get(0).setContainers(true)),
                new Way("tanker top-up", site -> addTopUp(site, TopUpSource.TANKER)),
                new Way("surface or well water mixed in", site -> addTopUp(site, TopUpSource.BOREHOLE)),
                new Way("people living or working on the roof",
                        site -> site.getRoofs().get(0).getHazards().add(Hazard.PUBLIC_ACCESS)),
                new Way("a buried tank near a latrine, septic tank or sewer", site -> {
                    Tank tank = site.getTanks().get(0);
                    tank.setPlaceInGround(PlaceInGround.BURIED);
                    tank.setSiting(SiteFactory.eINSTANCE.createSiting());
                    tank.getSiting().setLatrineDistance(Quantity.of(12, Units.M));
                })).map(way -> DynamicTest.dynamicTest(way.name(), () -> {
                    Site site = TreatmentSites.sound();
                    way.open().accept(site);
                    FindingValue.Verdict verdict = TreatmentSites.verdict(site);
                    assertEquals(Level.BAD, verdict.level());
                    assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains(way.name())
                            && reason.contains("iruses")), verdict.toString());
                    // A lamp of 143 mJ/cm2 is credited with 3 log: then the way in no longer blocks.
                    TreatmentSites.step(site, "step-uv").setUvDose(Quantity.valueOf("143 mJ/cm2"));
                    verdict = TreatmentSites.verdict(site);
                    assertFalse(verdict.level() == Level.BAD, verdict.toString());
                }));
    }

    private static void addTopUp(Site site, TopUpSource source) {
        TopUp topUp = SiteFactory.eINSTANCE.createTopUp();
        topUp.setId("top-up");
        topUp.setSource(source);
        topUp.setTank(site.getTanks().get(0));
        site.getTopUps().add(topUp);
    }

    /** A certified lamp is credited by its dose, any other with whichever of two sources gives less; both are shown. */
    @Test
    void theChosenOfTwoSourcesIsNamed() {
        Site site = TreatmentSites.sound();
        FindingValue.Table credits = TreatmentSites.table(TreatmentSites.completed(site), "credits", USE);
        List<Object> viruses = credit(credits, "viruses");
        assertEquals(Quantity.of(0.5), viruses.get(2));
        assertTrue(viruses.get(4).toString().contains("Ultraviolet Disinfection Guidance Manual"), viruses.toString());
        assertTrue(viruses.get(5).toString().startsWith("2 log by WHO"), viruses.toString());
        TreatmentSites.step(site, "step-uv").setValidated(false);
        credits = TreatmentSites.table(TreatmentSites.completed(site), "credits", USE);
        List<Object> giardia = credit(credits, "Giardia");
        assertEquals(Quantity.of(3), giardia.get(2));
        assertTrue(giardia.get(5).toString().startsWith("4 log by US EPA 2006"), giardia.toString());
        assertEquals(Level.CONDITIONAL, TreatmentSites.verdict(site).level());
    }

    private static List<Object> credit(FindingValue.Table credits, String group) {
        return credits.rows().stream().filter(row -> row.get(0).equals("UV lamp") && row.get(1).equals(group))
                .findFirst().orElseThrow();
    }

    /** A step more never takes a reduction away, unless a condition is stated that now fails. */
    @Test
    void addingABarrierNeverLowersAReductionUnlessAStatedConditionBreaks() {
        Random random = new Random(20250115);
        List<StepKind> kinds = Stream.of(StepKind.values()).filter(kind -> kind != StepKind.UNSTATED).toList();
        int compared = 0;
        for (int round = 0; round < 150; round++) {
            Site site = TreatmentSites.sound();
            site.getTrains().get(0).getSteps().clear();
            int length = random.nextInt(4);
            for (int i = 0; i < length; i++) {
                randomStep(site, i, kinds.get(random.nextInt(kinds.size())), "step-" + i, random);
            }
            Outcome.Completed before = TreatmentSites.completed(site);
            randomStep(site, random.nextInt(length + 1), kinds.get(random.nextInt(kinds.size())), "step-new", random);
            Outcome.Completed after = TreatmentSites.completed(site);
            List<Object> broken = new ArrayList<>(failed(after));
            broken.removeAll(failed(before));
            if (broken.isEmpty()) {
                compared++;
                double[] had = TreatmentSites.logs(before);
                double[] has = TreatmentSites.logs(after);
                for (int group = 0; group < had.length; group++) {
                    assertTrue(has[group] >= had[group] - 1e-9, "round " + round + ", group " + group);
                }
            }
        }
        assertTrue(compared > 40, "compared " + compared);
    }

    private static void randomStep(Site site, int index, StepKind kind, String id, Random random) {
        TreatmentStep step = TreatmentSites.addStep(site, index, kind, id);
        step.setLastChanged(LocalDate.of(2024, 12, 20));
        step.setValidated(random.nextBoolean());
        step.setAvailability(Quantity.of(random.nextInt(4) == 0 ? 0.9 : 1));
        step.setMaxFlow(Quantity.of(9, Units.L_PER_MIN));
        step.setRating(Quantity.of(List.of(0.2, 1.0, 5.0).get(random.nextInt(3)), Units.UM));
        step.setRatingBasis(random.nextBoolean() ? RatingBasis.ABSOLUTE : RatingBasis.NOMINAL);
        step.setUvDose(Quantity.of(random.nextInt(200), Units.MJ_PER_CM2));
        if (random.nextBoolean()) {
            step.setResidual(Quantity.of(random.nextDouble() * 2, Units.MG_PER_L));
        }
        step.setContactTime(Quantity.of(random.nextInt(600), Units.MIN));
    }

    private static List<Object> failed(Outcome.Completed outcome) {
        return outcome.finding("conditions", USE).map(finding -> ((FindingValue.Table) finding.value()).rows().stream()
                .filter(row -> row.get(2).equals(false)).map(row -> (Object) List.of(row.get(3), row.get(1))).toList())
                .orElse(List.of());
    }

    /** Moving steps changes the order mistakes that are said, each a condition of drinking. */
    @Test
    void lightBeforeTheSedimentFilterIsSaid() {
        Site site = TreatmentSites.sound();
        site.getTrains().get(0).getSteps().move(0, 2);
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.CONDITIONAL, verdict.level(), "the cartridge alone still reaches the target");
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.startsWith("UV lamp earns no credit until")),
                "1.5 NTU reaches the lamp");
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("Light before the sediment filter")),
                verdict.toString());
        assertTrue(TreatmentSites.completed(site).cautions().stream()
                .anyMatch(caution -> caution.code().equals("order.uv-before-sediment")));
    }

    @Test
    void theSitesOwnTurbidityLimitCountsToo() {
        Site site = TreatmentSites.sound();
        TreatmentSites.step(site, "step-uv").setMaxTurbidity(Quantity.valueOf("0.1 NTU"));
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("at most 0.1 NTU")),
                verdict.toString());
        assertArrayEquals(new double[] {2, 0, 2, 2}, TreatmentSites.logs(TreatmentSites.completed(site)));
    }

    /** Two tanks: what stands on the garden's roof does not spoil the kitchen's water. */
    @Test
    void onlyTheRoofsThatReachATankCount() {
        Site site = TreatmentSites.sound();
        Tank barrel = SiteFactory.eINSTANCE.createTank();
        barrel.setId("barrel");
        barrel.setName("Barrel");
        barrel.setCapacity(Quantity.of(200, Units.L));
        barrel.setCover(TankCover.OPEN);
        site.getTanks().add(barrel);
        Roof shed = SiteFactory.eINSTANCE.createRoof();
        shed.setId("shed");
        shed.setMaterial(RoofMaterial.LEAD_SHEET);
        site.getRoofs().add(shed);
        shed.getDrains().add(SiteFactory.eINSTANCE.createRoofDrain());
        shed.getDrains().get(0).setTo(barrel);
        assertEquals(Level.GOOD, TreatmentSites.verdict(site).level(), TreatmentSites.verdict(site).toString());
        barrel.setOverflowsTo(site.getTanks().get(0));
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.BAD, verdict.level());
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("an open tank")), verdict.toString());
        assertTrue(TreatmentSites.completed(site).cautions().stream().anyMatch(
                caution -> caution.code().equals("hazard.lead-flashing") && "shed".equals(caution.elementId())));
    }

    @Test
    void aTapThatAPipeReachesPastTheTrainIsACondition() {
        Site site = TreatmentSites.sound();
        Tap second = SiteFactory.eINSTANCE.createTap();
        second.setId("tap-2");
        second.setName("Veranda tap");
        site.getTaps().add(second);
        PipeRun past = SiteFactory.eINSTANCE.createPipeRun();
        past.setId("run-past");
        past.setFrom(site.getTanks().get(0));
        past.setTo(second);
        site.getPipeRuns().add(past);
        site.getUses().get(0).getTaps().add(second);
        assertEquals(Level.BAD, TreatmentSites.verdict(site).level(), "the tap that passes no train decides");
        site.getUses().get(0).setTrain(site.getTrains().get(0));
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.CONDITIONAL, verdict.level());
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("Veranda tap")), verdict.toString());
    }

    /** A tank that only a treated pipe fills keeps treated water; a roof that drains into it ends that. */
    @Test
    void aTankBehindTheTrainIsAStoreOfTreatedWater() {
        Site site = TreatmentSites.sound();
        Tank header = SiteFactory.eINSTANCE.createTank();
        header.setId("header");
        header.setName("Header tank");
        header.setCapacity(Quantity.of(240, Units.L));
        header.setMaterial(TankMaterial.POLYETHYLENE);
        header.setCover(TankCover.SEALED);
        site.getTanks().add(header);
        site.getPipeRuns().get(1).setTo(header);
        PipeRun down = SiteFactory.eINSTANCE.createPipeRun();
        down.setId("run-down");
        down.setFrom(header);
        down.setTo(site.getTaps().get(0));
        site.getPipeRuns().add(down);
        Outcome.Completed outcome = TreatmentSites.completed(site);
        // 240 L over 4 x 3 L a day
        assertEquals(20, TreatmentSites.number(outcome, "storedDays", "train"), 1e-12);
        assertArrayEquals(new double[] {5, 0.5, 6, 6}, TreatmentSites.logs(outcome), 1e-12);
        assertEquals(Level.CONDITIONAL, TreatmentSites.verdict(site).level(), "stored without a residual");
        site.getRoofs().get(0).getDrains().add(SiteFactory.eINSTANCE.createRoofDrain());
        site.getRoofs().get(0).getDrains().get(1).setTo(header);
        assertArrayEquals(new double[4], TreatmentSites.logs(TreatmentSites.completed(site)));
        assertEquals(Level.BAD, TreatmentSites.verdict(site).level());
    }

    /** h = hr (Q / Qr)^n at the design flow, 8 L/min, which is the reference flow: 0.2 + 1 + 0.2 and 1 + 3 + 0.2 m. */
    @Test
    void headLossesAddUpAtTheDesignFlow() {
        Site site = TreatmentSites.sound();
        Outcome.Completed outcome = TreatmentSites.completed(site);
        assertEquals(1.4, TreatmentSites.number(outcome, "headLossClean", "train"), 1e-12);
        assertEquals(4.2, TreatmentSites.number(outcome, "headLossFouled", "train"), 1e-12);
        site.getTrains().get(0).setDesignFlow(Quantity.of(4, Units.L_PER_MIN));
        // cartridges with the power of 1.5, the lamp's housing with the power of 2
        assertEquals(1.2 * Math.pow(0.5, 1.5) + 0.2 * 0.25,
                TreatmentSites.number(TreatmentSites.completed(site), "headLossClean", "train"), 1e-12);
        assertEquals(10, TreatmentSites.number(outcome, "flowLimit", "train"), 1e-12);
    }

    /** Changed 2024-11-10, noted to 2025-01-15: 66 days of 12 L have passed of 30 m3, 114 of 180 days are left. */
    @Test
    void waterAndDaysUntilTheNextChange() {
        Outcome.Completed outcome = TreatmentSites.completed(TreatmentSites.sound());
        assertEquals(30_000 - 66 * 12, TreatmentSites.number(outcome, "volumeUntilChange", "step-02um"), 1e-9);
        assertEquals(114, TreatmentSites.number(outcome, "timeUntilChange", "step-02um"), 1e-9);
        assertEquals(299, TreatmentSites.number(outcome, "timeUntilChange", "step-uv"), 1e-9);
    }

    /** The dosing card: 40 mL of 12.5 % in 1000 L are 5.0 mg/L (enHealth, Guidance on Use of Rainwater Tanks). */
    @Test
    void dosingInMillilitresGramsAndDrops() {
        Site site = TreatmentSites.sound();
        site.getTanks().get(0).setCapacity(Quantity.of(1000, Units.L));
        TreatmentStep chlorine = TreatmentSites.addStep(site, 3, StepKind.CHLORINATION, "chlorine");
        chlorine.setProduct(DisinfectantProduct.LIQUID);
        chlorine.setStrength(Quantity.valueOf("12.5 %"));
        chlorine.setDose(Quantity.valueOf("5 mg/L"));
        FindingValue.Table card = TreatmentSites.table(TreatmentSites.completed(site), "dosingCard", "chlorine");
        List<Object> full = row(card, "House tank, full");
        assertEquals(40, ((Quantity) full.get(5)).in(Units.ML), 1e-9);
        assertEquals(48, ((Quantity) full.get(4)).in(Units.G), 1e-9, "at 1.2 kg/L");
        List<Object> bucket = row(card, "Bucket of 10 L");
        assertEquals(8, ((Quantity) bucket.get(6)).value(), 1e-9, "0.4 mL in drops of 0.05 mL");
        chlorine.setProduct(DisinfectantProduct.GRANULES);
        chlorine.setStrength(Quantity.valueOf("65 %"));
        card = TreatmentSites.table(TreatmentSites.completed(site), "dosingCard", "chlorine");
        full = row(card, "House tank, full");
        assertEquals(5 / 0.65, ((Quantity) full.get(4)).in(Units.G), 1e-9);
        assertEquals(null, full.get(5));
    }

    private static List<Object> row(FindingValue.Table table, String first) {
        return table.rows().stream().filter(row -> row.get(0).equals(first)).findFirst().orElseThrow();
    }

    /** A dose is not a residual: without a measured one chlorine earns nothing. */
    @Test
    void aDoseEarnsNothing() {
        Site site = TreatmentSites.load("carbon-after-chlorine");
        double[] with = TreatmentSites.logs(TreatmentSites.completed(site));
        TreatmentSites.step(site, "step-chlorine").setResidual(null);
        double[] without = TreatmentSites.logs(TreatmentSites.completed(site));
        assertArrayEquals(new double[] {2, 0, 2, 2}, without, 1e-12);
        assertTrue(with[0] == 5 && with[1] == 4, "3 log bacteria by class, 4 log viruses by the contact-time table");
    }

    @TestFactory
    Stream<DynamicTest> resultsAreReadInTheUnitsOfLaboratories() {
        record Lead(String unit, double value, boolean within) {
        }
        return Stream.of(new Lead("ug/L", 9, true), new Lead("ug/L", 11, false), new Lead("ppb", 11, false),
                new Lead("mg/L", 0.009, true), new Lead("mg/L", 0.011, false), new Lead("g/m3", 0.011, false))
                .map(lead -> DynamicTest.dynamicTest(lead.value() + " " + lead.unit(), () -> {
                    Site site = TreatmentSites.load("lead-flashing");
                    test(site, WaterParameter.LEAD, lead.value(), lead.unit());
                    FindingValue.Verdict verdict = TreatmentSites.verdict(site);
                    assertEquals(lead.within() ? Level.CONDITIONAL : Level.BAD, verdict.level(), verdict.toString());
                }));
    }

    @Test
    void aResultInAnUnknownUnitProvesNothingAndIsSaid() {
        Site site = TreatmentSites.load("lead-flashing");
        test(site, WaterParameter.LEAD, 0, "grains");
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.BAD, verdict.level());
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("\"grains\"")), verdict.toString());
    }

    /** 0.05 mg/L as limit of detection may hide five times the limit. */
    @Test
    void belowACoarseLimitOfDetectionIsNotWithinTheLimit() {
        Site site = TreatmentSites.load("lead-flashing");
        test(site, WaterParameter.LEAD, 0.05, "mg/L").setBelowDetection(true);
        assertEquals(Level.BAD, TreatmentSites.verdict(site).level());
    }

    private static WaterTest test(Site site, WaterParameter parameter, double value, String unit) {
        WaterTest test = SiteFactory.eINSTANCE.createWaterTest();
        test.setId("test-" + parameter.getLiteral());
        test.setParameter(parameter);
        test.setValue(Quantity.of(value));
        test.setUnit(unit);
        test.setDate(LocalDate.of(2025, 1, 15));
        test.setElement(site.getTanks().get(0));
        site.getWaterTests().add(test);
        return test;
    }

    @Test
    void anOldTestNoLongerCounts() {
        Site site = TreatmentSites.sound();
        site.getWaterTests().forEach(test -> {
            if (test.getParameter() == WaterParameter.ECOLI) {
                test.setDate(LocalDate.of(2024, 1, 10));
            }
        });
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.CONDITIONAL, verdict.level());
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("no result that still counts")));
    }

    @Test
    void treatedTimberAndUnstatedMaterialsAreSaid() {
        Site site = TreatmentSites.sound();
        site.getRoofs().get(0).getHazards().add(Hazard.TREATED_TIMBER);
        assertEquals(Level.BAD, TreatmentSites.verdict(site).level());
        test(site, WaterParameter.ARSENIC, 4, "ug/L");
        assertEquals(Level.CONDITIONAL, TreatmentSites.verdict(site).level());
        site = TreatmentSites.sound();
        site.getRoofs().get(0).setMaterial(RoofMaterial.UNSTATED);
        assertEquals(Level.CONDITIONAL, TreatmentSites.verdict(site).level());
    }

    /** Infants and ill people ask for the highest level; a shower sprays what people breathe. */
    @Test
    void vulnerableUsersAndShowers() {
        Site site = TreatmentSites.sound();
        site.getUses().get(0).setVulnerable(true);
        Outcome.Completed outcome = TreatmentSites.completed(site);
        assertArrayEquals(new double[] {4, 5, 4, 4}, TreatmentSites.target(outcome), 1e-12);
        assertEquals(Level.BAD, TreatmentSites.verdict(site).level());
        site = TreatmentSites.sound();
        site.getUses().get(0).setPurpose(Purpose.WASHING);
        site.getTaps().get(0).setKind(TapKind.SHOWER);
        site.setWaterTemperatureMax(Quantity.valueOf("29 degC"));
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.CONDITIONAL, verdict.level());
        assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("Legionella")), verdict.toString());
    }

    @Test
    void withoutAnyTreatmentTheLackIsNamed() {
        Site site = TreatmentSites.sound();
        site.getTrains().get(0).setInUse(false);
        FindingValue.Verdict verdict = TreatmentSites.verdict(site);
        assertEquals(Level.BAD, verdict.level());
        assertTrue(verdict.reasons().get(0).startsWith("No treatment stands between the tank and this use"));
        assertFalse(verdict.reasons().stream().anyMatch(reason -> reason.startsWith("The train takes out")));
    }

    /** Values that contradict each other are named with their step, not thrown. */
    @Test
    void contradictingValuesAreNamed() {
        Site site = TreatmentSites.sound();
        TreatmentSites.step(site, "step-02um").setHeadLossFouled(Quantity.valueOf("0.1 m(head)"));
        Outcome.NotComputable none = (Outcome.NotComputable) TreatmentSites.outcome(site);
        assertEquals("step-02um", none.problems().get(0).elementId());
        assertTrue(none.problems().get(0).text().startsWith("Cartridge 0.2 um absolute: fouled head loss"),
                none.toString());
    }

    @Test
    void theSchoolsInspectionTestsAndPlanAreShown() {
        Outcome.Completed outcome = TreatmentSites.completed(DemoSites.site("hill-school"));
        assertEquals(8, TreatmentSites.number(outcome, "inspectionScore", null), "2 faults and 6 open questions");
        FindingValue.Table plan = TreatmentSites.table(outcome, "safetyPlan", null);
        assertEquals("this site", plan.rows().get(0).get(6));
        assertTrue(plan.rows().size() > 10);
        FindingValue.Table tests = TreatmentSites.table(outcome, "waterTests", null);
        List<Object> raw = tests.rows().stream().filter(row -> row.get(2).equals("42 MPN/100 mL")).findFirst()
                .orElseThrow();
        assertEquals("no", raw.get(4));
        assertTrue(raw.get(6).toString().startsWith("Boil or disinfect"), raw.toString());
    }
}
