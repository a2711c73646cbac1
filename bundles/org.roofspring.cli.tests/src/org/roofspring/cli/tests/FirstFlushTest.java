package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

class FirstFlushTest {
    /** Texas Manual on Rainwater Harvesting, 3rd edition 2005 (from memory): 10 to 50 US gallons from 1000 ft2. */
    @ParameterizedTest
    @CsvSource({"0.41,10", "2.04,50"})
    void depthsInUse(double depthMm, double gallons) {
        Answer flush = Asked.answer("firstflush --roof 1000ft2 --depth " + depthMm + "mm");
        assertEquals(gallons * 3.785411784, flush.number("volume", "L"), 0.01 * gallons * 3.785411784);
    }

    /** Martinson and Thomas 2005: contamination halves with each mm flushed. */
    @ParameterizedTest
    @CsvSource({"0,1", "1,0.5", "2,0.25", "3,0.125"})
    void halvesWithEachMillimetre(double depthMm, double share) {
        Answer flush = Asked.answer("firstflush --roof 60m2 --depth " + depthMm + "mm");
        assertEquals(60 * depthMm, flush.number("volume", "L"), 1e-9);
        assertEquals(share, flush.number("shareLeft"), 1e-12);
        Answer back = Asked.answer("firstflush --roof 60m2 --share " + share);
        assertEquals(depthMm, back.number("depth", "mm"), 1e-9);
        assertEquals(60 * depthMm, back.number("volume", "L"), 1e-7);
        assertEquals(2 * depthMm, Asked.answer("firstflush --roof 60m2 --half-depth 2mm --share " + share)
                .number("depth", "mm"), 1e-9);
    }

    /** What gets past against a sum over thin layers of the rain. */
    @Test
    void meanOfWhatGetsPast() {
        double sum = 0;
        int layers = 100_000;
        for (int i = 0; i < layers; i++) {
            sum += Math.pow(0.5, 1.5 + (i + 0.5) * (20 - 1.5) / layers) / layers;
        }
        assertEquals(sum, Asked.answer("firstflush --roof 60m2 --depth 1.5mm --storm 20mm").number("meanSharePast"),
                1e-8);
        assertEquals(0, Asked.answer("firstflush --roof 60m2 --depth 1.5mm --storm 1mm").number("meanSharePast"));
    }

    /** A 12.5 mm sharp-edged hole under 5 m, discharge coefficient 0.62 from memory: 0.7535 L/s (computed). */
    @Test
    void chamber() {
        double areaM2 = Math.PI / 4 * 0.1 * 0.1;
        Answer flush = Asked.answer("firstflush --depth 1mm --bore 100mm --hole 12.5mm --roof " + areaM2 * 5000 + "m2");
        assertEquals(5, flush.number("chamberHeight", "m"), 1e-9);
        assertEquals(0.7535 * 3600, flush.number("holeFlow", "L/h"), 0.2);
        assertEquals(drainedInSmallStepsS(areaM2, 5, 0.0125) / 3600, flush.number("drainDown", "h"), 1e-5);
        assertTrue(flush.cautionCodes().contains("firstflush.hole"));
    }

    /** Draining by the midpoint rule down to a hundredth of the height, then the rest, a tenth of the whole. */
    private static double drainedInSmallStepsS(double areaM2, double heightM, double holeM) {
        double hole = 0.62 * Math.PI / 4 * holeM * holeM;
        double depth = heightM;
        double time = 0;
        double step = 0.001;
        while (depth > heightM / 100) {
            double half = depth - step / 2 * hole * Math.sqrt(2 * 9.80665 * depth) / areaM2;
            depth -= step * hole * Math.sqrt(2 * 9.80665 * half) / areaM2;
            time += step;
        }
        return time / 0.9;
    }

    @Test
    void cautions() {
        assertTrue(Asked.answer("firstflush --roof 60m2 --depth 0.4mm").cautionCodes().contains("firstflush.small"));
        assertTrue(Asked.answer("firstflush --roof 60m2 --depth 2.1mm").cautionCodes().contains("firstflush.large"));
        Answer usual = Asked.answer("firstflush --roof 60m2 --depth 1mm");
        assertFalse(usual.cautionCodes().contains("firstflush.small"));
        assertFalse(usual.cautionCodes().contains("firstflush.large"));
        assertTrue(usual.caution("roof.birds-and-animals").contains("health authority"));
        assertFalse(usual.has("chamberHeight"));
        assertFalse(usual.has("meanSharePast"));
    }
}
