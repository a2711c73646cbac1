package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roofspring.hydraulics.Atmosphere;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;

class SuctionTest {
    private static final double FLOW = 1e-3;
    private static final PipeRun PIPE = new PipeRun(0.04, 6, 7e-6, 3);
    private static final SuctionConditions USUAL = new SuctionConditions(2, List.of(PIPE),
            flow -> 1e5 * flow * flow, 15, Atmosphere.pressurePa(1500));
    private static final SuctionConditions WORST = new SuctionConditions(4, List.of(PIPE.withRoughnessM(1e-4)),
            flow -> 8e5 * flow * flow, 30, Atmosphere.pressurePa(1500) - SuctionLift.LOW_BAROMETER_DROP_PA);

    /** Table for practitioners (The Engineering ToolBox, suction head and altitude), read; an advisory band. */
    @ParameterizedTest
    @CsvSource({"0, 6.7", "402, 6.4", "805, 6.1", "1207, 5.5", "1609, 5.2", "2012, 4.9", "2414, 4.6", "3219, 4.3",
        "-300, 6.7"})
    void practicalLift(double altitudeM, double liftM) {
        assertEquals(liftM, SuctionLift.practicalLimitM(altitudeM), 1e-12);
    }

    @Test
    void practicalLiftGoesOnFallingAboveTheTable() {
        assertEquals(4.3, SuctionLift.practicalLimitM(3219.001), 1e-5);
        assertTrue(SuctionLift.practicalLimitM(5000) < 4.3);
        assertThrows(IllegalArgumentException.class, () -> SuctionLift.practicalLimitM(9001));
    }

    /**
     * KSB Centrifugal Pump Lexicon, "geodetic suction lift", read: a centrifugal pump cavitates from about 8 m of lift;
     * with the 2 m of NPSH that small pumps usually require, the formula says the same.
     */
    @Test
    void greatestLiftAtSeaLevelIsAboutEightMetres() {
        SuctionConditions bare = new SuctionConditions(0, List.of(), HeadLoss.none(), 20, 101_325);
        assertEquals(8, SuctionLift.greatestM(bare, FLOW, 2), 0.15);
    }

    @Test
    void atTheGreatestLiftNothingIsLeft() {
        double lift = SuctionLift.greatestM(USUAL, FLOW, 3);
        assertEquals(3, USUAL.withLiftM(lift).npshAvailableM(FLOW), 1e-12);
        assertEquals(lift, SuctionLift.greatestM(WORST.withPipes(USUAL.pipes()).withStrainer(USUAL.strainer())
                .withTemperatureC(15).withAirPressurePa(USUAL.airPressurePa()), FLOW, 3), 1e-12);
    }

    @Test
    void eachHardshipCostsNpsh() {
        SuctionReview review = SuctionReview.of(USUAL, WORST, FLOW, 2, NpshMargin.USUAL);
        assertEquals(2, review.lowestLevelM(), 1e-12);
        assertEquals(0.7, review.fouledStrainerM(), 1e-12);
        assertTrue(review.agedPipeM() > 0);
        assertEquals(4000 / (999.1 * 9.80665), review.lowBarometerM(), 1e-4);
        assertTrue(review.hottestWaterM() > 0.1 && review.hottestWaterM() < 0.3, "2.5 kPa of vapour: " + review);
        double together = review.lowestLevelM() + review.fouledStrainerM() + review.agedPipeM() + review.lowBarometerM()
                + review.hottestWaterM();
        assertEquals(review.usualM() - review.worstM(), together, 0.05, "nearly independent of each other");
        assertEquals(2.6, review.neededM(), 1e-12);
        assertEquals(review.worstM() - 2, review.marginM());
        assertTrue(review.holds());
        assertFalse(SuctionReview.of(USUAL, WORST, FLOW, 6, NpshMargin.USUAL).holds());
    }

    @Test
    void marginIsRatioOrLeastWhicheverIsMore() {
        assertEquals(1.1, new NpshMargin(1.3, 0.6).neededM(0.5), 1e-12);
        assertEquals(3.9, new NpshMargin(1.3, 0.6).neededM(3), 1e-12);
    }

    /** Definition written out: 63 mm mouth at 2 L/s. */
    @Test
    void submergence() {
        double velocity = 0.002 / (Math.PI * 0.063 * 0.063 / 4);
        assertEquals(0.063 + 2.3 * velocity * Math.sqrt(0.063 / 9.80665), Submergence.leastM(0.002, 0.063), 1e-12);
        assertEquals(0.1, Submergence.leastM(0, 0.1));
    }
}
