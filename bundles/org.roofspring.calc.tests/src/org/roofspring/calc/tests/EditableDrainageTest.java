package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.Siting;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What was assumed on the way from roof to tank can be entered instead, and answers move as their formulas say. */
class EditableDrainageTest {
    private static final String CISTERN = "cistern";

    /** The demo school without its gutters' long search: what is asked here lies behind them. */
    private static Outcome.Completed outcome(Consumer<Site> change) {
        Site site = DemoSites.site("hill-school");
        change.accept(site);
        SiteSnapshot snapshot = SiteSnapshot.of(site, 1, DemoSites.FOLDER);
        Inputs inputs = DemoSites.outcomes(snapshot, new RainRecordCalculation(), new RoofDrainageCalculation());
        return inputs.outcome("roof.drainage").orElseThrow();
    }

    private static Outcome.Completed outcome() {
        return outcome(site -> {
        });
    }

    private static double number(Outcome.Completed outcome, String id, String element) {
        return ((FindingValue.Number) outcome.finding(id, element).orElseThrow(() -> new AssertionError(id + "@" + element))
                .value()).quantity().si();
    }

    private static Siting siting(Site site) {
        return site.getTanks().stream().filter(tank -> tank.getId().equals(CISTERN)).findFirst().orElseThrow().getSiting();
    }

    @Test
    void theDayFactorScalesTheIntensity() {
        double usual = number(outcome(), "intensity", "rain");
        double plain = number(outcome(site -> site.getRain().setDayFactor(Quantity.of(1))), "intensity", "rain");
        assertEquals(1.13, usual / plain, 1e-12);
    }

    @Test
    void aHigherRimLetsMoreThroughTheScreen() {
        String screen = DemoSites.site("hill-school").getScreens().get(0).getId();
        double usual = number(outcome(), "capacity", screen);
        double higher = number(outcome(site -> site.getScreens().get(0).setRimHeight(Quantity.of(80, Units.MM))),
                "capacity", screen);
        assertEquals(Math.sqrt(80.0 / 20), higher / usual, 1e-12, "flow of an orifice goes with the root of the depth");
    }

    @Test
    void aTallerChamberIsNarrower() {
        Site plain = DemoSites.site("hill-school");
        String diverter = plain.getDiverters().get(0).getId();
        double usual = number(outcome(), "chamberBore", diverter);
        double taller = number(outcome(site -> site.getDiverters().get(0).setHeight(Quantity.of(4, Units.M))),
                "chamberBore", diverter);
        assertEquals(0.5, taller / usual, 1e-12);
    }

    /** Every quarter of an hour is tried by hand; the kernel tries a few durations only. */
    @Test
    void theSoakawayHoldsTheWorstOfTheStormsOfADay() {
        Outcome.Completed outcome = outcome();
        double intensity = number(outcome, "intensity", "rain");
        double needed = number(outcome, "soakawayNeeded", CISTERN);
        double area = outcome.workings().stream().filter(w -> w.findingId().equals("soakawayNeeded")).findFirst().orElseThrow()
                .steps().get(0).inputs().stream().filter(input -> input.symbol().equals("A")).findFirst().orElseThrow().value().si();
        Siting pit = siting(DemoSites.site("hill-school"));
        double sides = (pit.getSoakawayLength().si() + pit.getSoakawayWidth().si()) * pit.getSoakawayDepth().si();
        double soakM3PerS = sides * pit.getInfiltration().in(Units.MM_PER_H) * 1e-3 / 3600;
        double worst = 0;
        for (double time = 300; time <= 86400; time += 300) {
            double depthM = intensity * 300 / 3600 * 1e-3 * Math.cbrt(time / 300);
            worst = Math.max(worst, area * depthM - soakM3PerS * time);
        }
        assertTrue(needed <= worst * (1 + 1e-9), needed + " > " + worst);
        assertTrue(needed >= 0.93 * worst, needed + " < 0.93 of " + worst);
        assertEquals(needed / 2 / soakM3PerS, number(outcome, "soakawayHalfEmpty", CISTERN), 1e-6);
    }

    @Test
    void aSoakawayTooSmallIsACaution() {
        assertTrue(outcome().cautions().stream().noneMatch(caution -> caution.code().equals("siting.soakaway-small")));
        Outcome.Completed small = outcome(site -> siting(site).setSoakawayLength(Quantity.of(3, Units.M)));
        assertTrue(number(small, "soakawayUsed", CISTERN) > 1);
        assertEquals(1, small.cautions().stream().filter(caution -> caution.code().equals("siting.soakaway-small")).count());
    }

    @Test
    void anImpossiblePitIsNamed() {
        Outcome.Completed outcome = outcome(site -> siting(site).setSoakawayDepth(Quantity.of(0.01, Units.M)));
        assertTrue(outcome.finding("soakawayNeeded", CISTERN).isEmpty());
        assertTrue(outcome.cautions().stream().anyMatch(caution -> caution.code().equals("drainage.not-checked")
                && CISTERN.equals(caution.elementId())));
    }
}
