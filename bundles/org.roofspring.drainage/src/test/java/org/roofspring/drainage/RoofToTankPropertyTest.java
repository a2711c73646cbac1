package org.roofspring.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.roofspring.drainage.GutterRun.Limit;

class RoofToTankPropertyTest {
    private static final GutterSection SECTION = new HalfRoundSection(0.15);

    @Property(tries = 200)
    void outletHeadAndFlowAreInverse(@ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.5) double diameterM,
            @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 1) double headM, @ForAll boolean strained) {
        GutterOutlet outlet = new GutterOutlet(diameterM, strained);
        assertEquals(headM, outlet.headM(outlet.flowM3PerS(headM)), 1e-9 * headM);
        assertTrue(outlet.flowM3PerS(headM * 1.01) > outlet.flowM3PerS(headM));
    }

    @Property(tries = 100)
    void downpipeGrowsWithBoreAndFill(@ForAll @Scale(4) @DoubleRange(min = 0.03, max = 0.3) double bore,
            @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 0.32) double fill) {
        double base = new Downpipe(bore, fill, 0.25).capacityM3PerS();
        assertTrue(new Downpipe(bore * 1.01, fill, 0.25).capacityM3PerS() > base);
        assertTrue(new Downpipe(bore, fill + 0.01, 0.25).capacityM3PerS() > base);
        assertTrue(new Downpipe(bore, fill, 0.5).capacityM3PerS() < base);
    }

    /** A wide outlet leaves the gutter its free capacity; narrowing it takes capacity away. */
    @Example
    void outletLimitsTheGutterOnlyWhenSmall() {
        Gutter gutter = new Gutter(SECTION, 6, 0);
        Downpipe wide = new Downpipe(0.2);
        GutterRun.Capacity free = new GutterRun(gutter, new GutterOutlet(0.4, false), wide, 1).capacity();
        assertEquals(free.gutter().variedFlowM3PerS(), free.outletM3PerS(), 1e-6 * free.outletM3PerS());
        assertEquals(Limit.GUTTER, free.limit());
        double before = free.outletM3PerS();
        for (double bore : new double[] {0.1, 0.08, 0.06, 0.04, 0.02}) {
            GutterRun.Capacity capacity = new GutterRun(gutter, new GutterOutlet(bore, false), wide, 1).capacity();
            assertTrue(capacity.outletM3PerS() <= before * (1 + 1e-7));
            before = capacity.outletM3PerS();
        }
        GutterRun narrow = new GutterRun(gutter, new GutterOutlet(0.04, false), wide, 1);
        assertEquals(Limit.OUTLET, narrow.capacity().limit());
        WaterSurface surface = narrow.surface(narrow.capacity().outletM3PerS());
        assertEquals(SECTION.depthM(), surface.deepest().depthM(), 1e-6);
        assertEquals(WaterSurface.Control.OUTLET, surface.control());
        assertEquals(Limit.DOWNPIPE,
                new GutterRun(gutter, new GutterOutlet(0.4, false), new Downpipe(0.03), 1).capacity().limit());
    }

    /** An outlet that serves two sides holds each of them to what a single side gets from half the outlet's flow. */
    @Example
    void twoSidesShareTheDownpipe() {
        Gutter gutter = new Gutter(SECTION, 6, 0);
        GutterOutlet outlet = new GutterOutlet(0.06, false);
        GutterRun.Capacity one = new GutterRun(gutter, outlet, new Downpipe(0.075), 1).capacity();
        GutterRun.Capacity two = new GutterRun(gutter, outlet, new Downpipe(0.075), 2).capacity();
        assertEquals(one.downpipeM3PerS() / 2, two.downpipeM3PerS(), 1e-15);
        assertTrue(two.outletM3PerS() < one.outletM3PerS());
        assertTrue(2 * two.outletM3PerS() > one.outletM3PerS());
    }

    @Property(tries = 10)
    void fewestOutletsIsTheFewest(@ForAll @Scale(2) @DoubleRange(min = 5, max = 40) double eaveM,
            @ForAll @Scale(2) @DoubleRange(min = 2, max = 8) double widthM,
            @ForAll @Scale(0) @DoubleRange(min = 50, max = 200) double intensity) {
        GutterRun like = new GutterRun(new Gutter(SECTION, 1, 0.002), new GutterOutlet(0.09, false),
                new Downpipe(0.075), 2);
        double flow = RoofRunoff.flowM3PerS(eaveM * widthM, intensity);
        OutletLayout best = OutletLayout.fewest(eaveM, flow, 0.9, like);
        assertTrue(best.utilisation() <= 0.9);
        assertEquals(eaveM, best.spacingM() * best.outlets(), 1e-9);
        assertEquals(flow, best.flowM3PerS() * 2 * best.outlets(), 1e-12);
        if (best.outlets() > 1) {
            assertTrue(OutletLayout.of(best.outlets() - 1, eaveM, flow, like).utilisation() > 0.9);
        }
    }

    @Example
    void tooMuchWaterForAnyLayoutIsSaid() {
        GutterRun like = new GutterRun(new Gutter(new HalfRoundSection(0.05), 1, 0), new GutterOutlet(0.02, true),
                new Downpipe(0.02), 2);
        assertThrows(NoAnswerException.class, () -> OutletLayout.fewest(2, 5, 1, like));
        assertEquals(1, OutletLayout.fewest(2, 0, 1, like).outlets());
    }

    @Property(tries = 100)
    void effectiveAreasAreOrdered(@ForAll @Scale(3) @DoubleRange(min = 1, max = 50) double lengthM,
            @ForAll @Scale(3) @DoubleRange(min = 1, max = 20) double widthM,
            @ForAll @IntRange(min = 0, max = 70) int pitch) {
        RoofPlane plane = RoofPlane.pitched(lengthM, widthM, pitch);
        assertTrue(plane.effectiveAreaM2(RoofPlane.Wind.DRIVEN) >= plane.planAreaM2() * (1 - 1e-12));
        assertEquals(plane.planAreaM2() / Math.cos(Math.toRadians(pitch)),
                plane.effectiveAreaM2(RoofPlane.Wind.SQUARE_ON), 1e-9 * plane.planAreaM2() * 4);
        assertEquals(12.5, RoofPlane.drivenWallM2(25), 0);
    }
}
