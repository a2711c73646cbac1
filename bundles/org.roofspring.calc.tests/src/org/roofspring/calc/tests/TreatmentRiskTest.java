package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.TreatmentRiskCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.PathogenGroup;
import org.roofspring.site.PathogenLevel;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.snapshot.SiteSnapshot;

class TreatmentRiskTest {
    private static final String USE = TreatmentSites.USE;

    private static Site site(PathogenGroup group, double perLitre) {
        Site site = TreatmentSites.sound();
        PathogenLevel level = SiteFactory.eINSTANCE.createPathogenLevel();
        level.setGroup(group);
        level.setPerLitre(Quantity.of(perLitre));
        site.getRawWater().getPathogens().add(level);
        return site;
    }

    private static Outcome.Completed run(Site site, long seed, BooleanSupplier cancelled) {
        return (Outcome.Completed) new TreatmentRiskCalculation().calculate(SiteSnapshot.of(site, 1, null),
                Inputs.none(), new CalculationContext() {
                    @Override
                    public BooleanSupplier cancelled() {
                        return cancelled;
                    }

                    @Override
                    public long randomSeed() {
                        return seed;
                    }
                });
    }

    private static double number(Outcome.Completed outcome, String id) {
        return ((FindingValue.Number) outcome.finding(id, USE).orElseThrow().value()).quantity().si();
    }

    /**
     * Cryptosporidium 10 in a litre, no treatment: only the litres vary, triangular from 0.5 by 1 to 2, whose median is
     * 2 - sqrt(0.5 x 1.5 x 1) = 1.13397. P = 1 - exp(-0.004 x 10 x 1.13397), and 365 such days (WHO Guidelines, 3rd
     * ed., chain, from memory).
     */
    @Test
    void theMiddleOfTheRangeIsTheChainAtTheMedian() {
        Site site = site(PathogenGroup.CRYPTOSPORIDIUM, 10);
        site.getTrains().get(0).setInUse(false);
        double daily = -Math.expm1(-0.004 * 10 * (2 - Math.sqrt(0.75)));
        double yearly = 1 - Math.pow(1 - daily, 365);
        Outcome.Completed outcome = run(site, 1, () -> false);
        assertEquals(yearly, number(outcome, "yearlyInfection"), 1e-7);
        assertEquals(0, number(outcome, "drawsWithinTarget"));
    }

    /** 6 log by the low ends (2 of the cartridge, 4 of the lamp), more at best: the range lies below that of 6 log. */
    @Test
    void aTrainLowersTheRange() {
        Outcome.Completed outcome = run(site(PathogenGroup.CRYPTOSPORIDIUM, 10), 1, () -> false);
        double dailyAtSix = -Math.expm1(-0.004 * 10e-6 * 2);
        assertTrue(number(outcome, "yearlyInfectionHigh") < 1 - Math.pow(1 - dailyAtSix, 365));
        assertTrue(number(outcome, "yearlyInfection") > 0);
        assertTrue(number(outcome, "yearlyInfectionHigh") > number(outcome, "yearlyInfection"));
    }

    @Test
    void theSameSeedGivesTheSameRangeAndAnotherSeedAnother() {
        Site site = site(PathogenGroup.BACTERIA, 300);
        assertEquals(run(site, 7, () -> false), run(site, 7, () -> false));
        assertFalse(number(run(site, 7, () -> false), "yearlyInfection") == number(run(site, 8, () -> false),
                "yearlyInfection"));
    }

    @Test
    void stopsInTheMiddleOfTheDraws() {
        AtomicInteger asked = new AtomicInteger();
        Site site = site(PathogenGroup.BACTERIA, 300);
        assertThrows(CancellationException.class, () -> run(site, 7, () -> asked.incrementAndGet() > 10));
        assertEquals(11, asked.get());
    }

    @Test
    void aLevelWithoutANumberIsNamed() {
        Site site = site(PathogenGroup.BACTERIA, 300);
        site.getRawWater().getPathogens().get(0).setPerLitre(null);
        Outcome outcome = new TreatmentRiskCalculation().calculate(SiteSnapshot.of(site, 1, null), Inputs.none(),
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
        assertTrue(outcome instanceof Outcome.NotComputable none
                && none.problems().get(0).text().startsWith("bacteria: a number in a litre"), outcome.toString());
    }
}
