package org.roofspring.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roofspring.drainage.RoofPlane.Wind;
import org.roofspring.drainage.intensity.CollectionEfficiency;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.drainage.intensity.WithinDayRain;
import org.roofspring.drainage.siting.TankLoad;
import org.roofspring.drainage.tank.Diverter;
import org.roofspring.drainage.tank.FirstFlush;

/** Roof, outlet, downpipe and first flush against published figures; each says where its figure was seen. */
class RoofToTankPublishedTest {
    private static final double LITRES = 1000;

    /** READ-2: {@code A = L (W + H/2)}, BS EN 12056-3 as quoted by a gutter supplier; numbers by hand. */
    @Test
    void effectiveArea() {
        RoofPlane plane = new RoofPlane(10, 4, 2);
        assertEquals(50, plane.effectiveAreaM2(Wind.DRIVEN), 1e-12);
        assertEquals(40, plane.effectiveAreaM2(Wind.NONE), 1e-12);
        assertEquals(10 * Math.sqrt(20), plane.effectiveAreaM2(Wind.SQUARE_ON), 1e-12);
    }

    /** MEM: UK Approved Document H, table 1, design areas of pitched roofs: plan area times a factor. */
    @ParameterizedTest
    @CsvSource({"0, 1.0, 1e-12", "30, 1.29, 5e-3", "45, 1.50, 1e-12", "60, 1.87, 5e-3"})
    void pitchFactors(double pitchDegrees, double factor, double tolerance) {
        RoofPlane plane = RoofPlane.pitched(10, 4, pitchDegrees);
        assertEquals(factor, plane.effectiveAreaM2(Wind.DRIVEN) / plane.planAreaM2(), tolerance);
    }

    /** READ-2: runoff table of a trainers' manual, as quoted by the India Water Portal. */
    @ParameterizedTest
    @CsvSource({"tiles, 0.8, 0.9", "corrugated-metal, 0.7, 0.9", "concrete, 0.6, 0.8", "brick, 0.5, 0.6",
        "soil, 0.1, 0.3", "rock, 0.2, 0.5"})
    void runoffTable(String id, double least, double greatest) {
        CatchmentMaterial material = CatchmentMaterial.table().stream().filter(m -> m.id().equals(id)).findFirst()
                .orElseThrow();
        assertEquals(least, material.leastRatio());
        assertEquals(greatest, material.greatestRatio());
        assertEquals(Source.Standing.AS_QUOTED, material.source().standing());
    }

    /** READ: enHealth, Guidance on use of rainwater tanks, appendix B: 200 m2, 750 mm, A 0.80, B 24 mm. */
    @Test
    void yearlyYield() {
        assertEquals(116_160, CatchmentMaterial.yearlyYieldM3(200, 750, 0.80, 24) * LITRES, 1e-6);
    }

    /** MEM: EN 12056-3:2000, table 6; both rules give 1.485 L/s for a 63 mm outlet under 31.5 mm (CALC). */
    @Test
    void outletAsWeirAndOrifice() {
        GutterOutlet outlet = new GutterOutlet(0.063, false);
        assertEquals(1.485, outlet.flowM3PerS(0.0315) * LITRES, 5e-4);
        assertEquals(1.485, outlet.flowM3PerS(0.0315 + 1e-12) * LITRES, 5e-4);
        assertEquals(63 * Math.pow(20, 1.5) / 7500, outlet.flowM3PerS(0.020) * LITRES, 1e-9);
        assertEquals(63.0 * 63 * Math.sqrt(60) / 15000, outlet.flowM3PerS(0.060) * LITRES, 1e-9);
        assertEquals(1.485 / 2, new GutterOutlet(0.063, true).flowM3PerS(0.0315) * LITRES, 5e-4);
    }

    /** CALC from the Wyly-Eaton formula of EN 12056-3 (MEM); the standard's table, from memory, has 1.7, 5.0, 10.7. */
    @ParameterizedTest
    @CsvSource({"0.050, 1.69, 0.73", "0.075, 4.97, 2.16", "0.100, 10.71, 4.65", "0.150, 31.59, 13.71"})
    void downpipe(double diameterM, double thirdFull, double fifthFull) {
        assertEquals(thirdFull, new Downpipe(diameterM).capacityM3PerS() * LITRES, 6e-3);
        assertEquals(fifthFull, new Downpipe(diameterM, 0.20, 0.25).capacityM3PerS() * LITRES, 6e-3);
    }

    /** MEM: NBS Monograph 31 (1961), {@code 27.8 r^(5/3) d^(8/3)} in US gallons a minute and inches. */
    @Test
    void downpipeAgainstTheOriginalFormula() {
        double fourInches = 27.8 * Math.pow(1 / 3.0, 5 / 3.0) * Math.pow(4, 8 / 3.0);
        assertEquals(179.6, fourInches, 0.1);
        double original = 27.8 * Math.pow(0.33, 5 / 3.0) * Math.pow(4, 8 / 3.0) * 3.785411784 / 60;
        assertEquals(original, new Downpipe(0.1016).capacityM3PerS() * LITRES, 0.005 * original);
    }

    /** READ: contamination halves with each mm flushed (Martinson and Thomas 2005). */
    @Test
    void firstFlushHalvesWithEachMillimetre() {
        assertEquals(0.125, FirstFlush.shareLeft(3, FirstFlush.DEFAULT_HALF_DEPTH_MM), 1e-12);
        assertEquals(3, FirstFlush.depthForShareMm(0.125, FirstFlush.DEFAULT_HALF_DEPTH_MM), 1e-12);
    }

    /** MEM: The Texas Manual, 10 to 50 US gallons from 1000 square feet; in mm CALC. */
    @Test
    void firstFlushDepthsOfTexas() {
        double squareFeet = 1000 * 0.3048 * 0.3048;
        assertEquals(FirstFlush.LEAST_DEPTH_MM, FirstFlush.depthMm(squareFeet, 10 * 3.785411784e-3), 5e-3);
        assertEquals(FirstFlush.GREATEST_DEPTH_MM, FirstFlush.depthMm(squareFeet, 50 * 3.785411784e-3), 5e-3);
        assertEquals(50 * 3.785411784e-3, FirstFlush.volumeM3(squareFeet, 2.0372), 1e-5);
    }

    /** MEM: enHealth, 20 to 25 L for an average roof: 0.1 to 0.5 mm off 50 to 200 m2. */
    @Test
    void firstFlushVolumeOfAHouse() {
        assertEquals(20, FirstFlush.LEAST_HOUSE_VOLUME_M3 * LITRES, 1e-12);
        assertEquals(25, FirstFlush.GREATEST_HOUSE_VOLUME_M3 * LITRES, 1e-12);
        assertEquals(0.5, FirstFlush.depthMm(50, FirstFlush.GREATEST_HOUSE_VOLUME_M3), 1e-12);
        assertEquals(0.1, FirstFlush.depthMm(200, FirstFlush.LEAST_HOUSE_VOLUME_M3), 1e-12);
    }

    /**
     * READ: a 70 mm U-shaped gutter is enough for most tropical house roofs, and the best gutter intercepts 90 to 95 %
     * of the rain (Still and Thomas 2002, Warwick working paper 56). Here on 60 m2 of roof and an invented wet tropical
     * year of 150 wet days with a mean of 12 mm.
     */
    @Test
    void smallGutterCatchesMostOfATropicalYear() {
        double[] year = new double[365];
        for (int wetDay = 0; wetDay < 150; wetDay++) {
            year[2 * wetDay] = -12 * Math.log((wetDay + 0.5) / 150);
        }
        Gutter gutter = new Gutter(new HalfRoundSection(0.07, 0.07), 6, 0.005);
        double limit = CollectionEfficiency.limitMmPerH(GutterCapacity.of(gutter).capacityM3PerS(), 60, 1);
        WithinDayRain spread = new WithinDayRain.NestedBursts(DurationRatios.thirdPower());
        double ratio = CollectionEfficiency.of(year, limit, spread, () -> false).ratio();
        assertTrue(ratio > 0.95 && ratio < 1, () -> "caught " + ratio + " at " + limit + " mm/h");
        CollectionEfficiency overloaded = CollectionEfficiency.of(year, limit / 4, spread, () -> false);
        assertTrue(overloaded.ratio() > 0.85 && overloaded.ratio() < ratio, () -> "caught " + overloaded.ratio());
    }

    /** CALC from the orifice formula (Cd 0.62 MEM): 12.5 mm under 5 m; regression. */
    @Test
    void orifice() {
        assertEquals(0.7535, new Diverter(1, 5, 0.0125, 0.62).holeFlowM3PerS(5) * LITRES, 5e-4);
    }

    /** CALC: a cubic metre of water at 20 degrees weighs 998 kg, 9.79 kN. */
    @Test
    void tankWeight() {
        TankLoad load = new TankLoad(1, 0, 0, 1);
        assertEquals(998, load.massKg(), 0.5);
        assertEquals(9790, load.weightN(), 5);
        assertEquals(9790, load.pressurePa(), 5);
    }
}
