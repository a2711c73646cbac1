package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.SafetyCalculation;
import org.roofspring.calc.standard.TankSitingCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Hazard;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.Site;
import org.roofspring.site.Siting;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What is said of roofs that spoil water and of the ground that tanks stand on. */
class SafetyOfRoofsTest {
    /** The fourteen cautions that go with roofs, gutters and tanks. */
    private static final Set<String> ROOF_CAUTIONS = Set.of("roof.lead-paint", "roof.lead-flashing",
            "roof.asbestos-cement", "roof.birds-and-animals", "tank.mosquito-mesh", "gutter.standing-water",
            "roof.overhanging-trees", "tank.cover-and-clean", "roof.polluted-air", "roof.ladder-work",
            "tank.overflow-at-foundation", "tank.weight", "tank.buried", "tank.confined-space");

    private static Outcome.Completed run(Calculation calculation, Site site) {
        return (Outcome.Completed) calculation.calculate(SiteSnapshot.of(site, 1, DemoSites.FOLDER), Inputs.none(),
                new CalculationContext() {
                    @Override
                    public BooleanSupplier cancelled() {
                        return () -> false;
                    }

                    @Override
                    public long randomSeed() {
                        return 1;
                    }
                });
    }

    private static Set<String> codes(Outcome outcome) {
        return outcome.cautions().stream().map(Caution::code).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyRoofCautionIsSaidWhereItIsCalledFor() {
        Site site = DemoSites.site("hill-school");
        Roof roof = site.getRoofs().getFirst();
        roof.getHazards().addAll(Arrays.asList(Hazard.LEAD_PAINT, Hazard.LEAD_FLASHING, Hazard.TRAFFIC,
                Hazard.OVERHANGING_TREES));
        roof.setMaterial(RoofMaterial.ASBESTOS_CEMENT);
        site.getGutters().getFirst().setSlope(Quantity.of(0));
        Tank overhead = site.getTanks().get(1);
        overhead.setCover(TankCover.LOOSE);
        overhead.setOverflowsTo(null);
        Outcome outcome = run(new SafetyCalculation(), site);
        assertTrue(codes(outcome).containsAll(ROOF_CAUTIONS), codes(outcome).toString());
        for (Caution caution : outcome.cautions()) {
            assertFalse(caution.source().toString().isBlank(), caution.code());
        }
    }

    @Test
    void aCleanRoofGetsNoneOfThem() {
        Site site = DemoSites.site("hill-school");
        site.getRoofs().forEach(roof -> roof.getHazards().clear());
        Set<String> said = codes(run(new SafetyCalculation(), site));
        said.retainAll(ROOF_CAUTIONS);
        assertEquals(Set.of("roof.ladder-work", "tank.buried", "tank.confined-space", "tank.weight"), said);
    }

    private static Site sited(Siting[] out) {
        Site site = DemoSites.site("hill-school");
        out[0] = site.getTanks().getFirst().getSiting();
        return site;
    }

    @Test
    void nearAndUphillLatrinesAreDangers() {
        Siting[] siting = new Siting[1];
        Site site = sited(siting);
        assertFalse(codes(run(new TankSitingCalculation(), site)).contains("siting.latrine"), "62 m is far enough");
        siting[0].setLatrineUphill(true);
        assertTrue(codes(run(new TankSitingCalculation(), site)).contains("siting.latrine"), "uphill");
        siting[0].setLatrineUphill(false);
        siting[0].setLatrineDistance(Quantity.of(29, Units.M));
        assertTrue(codes(run(new TankSitingCalculation(), site)).contains("siting.latrine"), "nearer than 30 m");
    }

    @Test
    void pressureOfTheFullTankOnItsGround() {
        Siting[] siting = new Siting[1];
        Site site = sited(siting);
        Outcome.Completed answer = run(new TankSitingCalculation(), site);
        // by hand: (120 m3 * 998.2 kg/m3 + 46000 kg) * 9.80665 / 43 m2 = 37808.9 Pa
        assertEquals((120 * 998.2 + 46000) * 9.80665 / 43, pressure(answer), 1e-6);
        siting[0].setAllowedBearing(Quantity.of(37, Units.KPA));
        assertTrue(codes(run(new TankSitingCalculation(), site)).contains("siting.bearing"));
        siting[0].setAllowedBearing(null);
        Outcome unknown = run(new TankSitingCalculation(), site);
        Caution caution = unknown.cautions().stream().filter(c -> c.code().equals("siting.bearing-unknown")).findFirst()
                .orElseThrow();
        assertTrue(caution.askWhom().contains("engineer"), caution.askWhom());
    }

    private static double pressure(Outcome.Completed answer) {
        return ((FindingValue.Number) answer.finding("bearingPressure", "cistern").orElseThrow().value()).quantity()
                .in(Units.PA);
    }

    @Test
    void anEmptyTankInGroundWaterFloats() {
        Siting[] siting = new Siting[1];
        Site site = sited(siting);
        assertFalse(codes(run(new TankSitingCalculation(), site)).contains("siting.flotation"), "ground water at 9 m");
        // by hand: 46000 kg over 998.2 * 43 m2 * (1.6 - 0.6) m = 1.0717, less than 1.2
        siting[0].setGroundwaterDepth(Quantity.of(0.6, Units.M));
        Outcome.Completed answer = run(new TankSitingCalculation(), site);
        assertEquals(46000 / (998.2 * 43), ((FindingValue.Number) answer.finding("upliftSafety",
                "cistern").orElseThrow()
                .value()).quantity().value(), 1e-12);
        assertTrue(codes(answer).contains("siting.flotation"));
        siting[0].setGroundwaterDepth(null);
        assertTrue(codes(run(new TankSitingCalculation(), site)).contains("siting.flotation-unknown"));
        site.getTanks().getFirst().setPlaceInGround(PlaceInGround.ON_GROUND);
        assertFalse(codes(run(new TankSitingCalculation(), site)).contains("siting.flotation-unknown"));
    }

    @Test
    void everyDangerSaysWhomToAsk() {
        for (String name : List.of("hill-school", "household")) {
            run(new SafetyCalculation(), DemoSites.site(name)).cautions().stream()
                    .filter(c -> c.severity() == Caution.Severity.DANGER)
                    .forEach(c -> assertFalse(c.askWhom().isBlank(), c.code()));
        }
    }
}
