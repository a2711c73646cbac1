package org.roofspring.drainage.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.roofspring.drainage.NoAnswerException;

class TankTest {
    private static final double G = 9.80665;

    /** Drain-down against small steps of time. */
    @Property(tries = 20)
    void drainDownAgreesWithSmallSteps(@ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.5) double bore,
            @ForAll @Scale(3) @DoubleRange(min = 0.2, max = 3) double height,
            @ForAll @Scale(4) @DoubleRange(min = 0.002, max = 0.01) double hole) {
        Diverter diverter = Diverter.ofPipe(bore, height, hole);
        double total = diverter.drainDownS();
        double step = total / 20000;
        double depth = height;
        for (int i = 1; i <= 15000; i++) {
            // midpoint rule
            double half = depth - step / 2 * diverter.holeFlowM3PerS(depth) / diverter.chamberAreaM2();
            depth -= step * diverter.holeFlowM3PerS(half) / diverter.chamberAreaM2();
            if (i % 5000 == 0) {
                assertEquals(depth, diverter.depthAfterM(i * step), 1e-5 * height);
            }
        }
        assertEquals(0, diverter.depthAfterM(total * 1.5));
        assertEquals(height, diverter.depthAfterM(0), 1e-12);
        double wanted = total / 2;
        double found = diverter.holeForDrainDownM(wanted);
        assertEquals(wanted, Diverter.ofPipe(bore, height, found).drainDownS(), 1e-6 * wanted);
    }

    /** What gets past a diverter against a sum over thin layers of rain. */
    @Property(tries = 50)
    void meanShareAgreesWithThinLayers(@ForAll @Scale(3) @DoubleRange(min = 0, max = 5) double flushed,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 60) double rain,
            @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 3) double half) {
        double mean = FirstFlush.meanSharePast(flushed, rain, half);
        if (rain <= flushed) {
            assertEquals(0, mean);
            return;
        }
        int layers = 4000;
        double thick = (rain - flushed) / layers;
        double sum = 0;
        for (int i = 0; i < layers; i++) {
            sum += Math.pow(0.5, (flushed + (i + 0.5) * thick) / half) / layers;
        }
        assertEquals(sum, mean, 1e-4 * sum);
        assertTrue(mean <= FirstFlush.shareLeft(flushed, half));
    }

    /** The pipe's critical flow against the most that any depth in the mouth lets through. */
    @Property(tries = 50)
    void overflowAgreesWithTheMostAnyDepthPasses(@ForAll @Scale(3) @DoubleRange(min = 0.03, max = 0.3) double bore,
            @ForAll @Scale(3) @DoubleRange(min = 0.1, max = 0.99) double share,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 1) double loss) {
        double head = share * bore;
        double most = 0;
        for (int i = 1; i < 20000; i++) {
            double y = head * i / 20000;
            double angle = Math.acos(1 - 2 * y / bore);
            double area = bore * bore / 4 * (angle - Math.sin(angle) * Math.cos(angle));
            most = Math.max(most, area * Math.sqrt(2 * G * (head - y) / (1 + loss)));
        }
        // with a loss at the mouth the critical depth is not quite the depth of the greatest flow
        double flow = new OverflowPipe(bore, loss).flowM3PerS(head);
        assertTrue(flow <= most * (1 + 1e-6));
        assertEquals(most, flow, (1e-6 + 0.1 * loss) * most);
    }

    @Property(tries = 100)
    void overflowGrowsSmoothlyWithHead(@ForAll @Scale(3) @DoubleRange(min = 0.03, max = 0.3) double bore,
            @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 5) double share,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 1) double loss) {
        OverflowPipe pipe = new OverflowPipe(bore, loss);
        double low = pipe.flowM3PerS(share * bore);
        double high = pipe.flowM3PerS(share * bore * 1.001);
        assertTrue(high > low && high < 1.005 * low);
        double atTop = pipe.flowM3PerS(bore * (1 - 1e-9));
        assertEquals(atTop, pipe.flowM3PerS(bore * (1 + 1e-9)), 1e-6 * atTop);
    }

    @Example
    void tinyHeadsPassNextToNothing() {
        OverflowPipe pipe = new OverflowPipe(0.1);
        for (double head : new double[] {0, Double.MIN_VALUE, 1e-300, 1e-20, 1e-12}) {
            double flow = pipe.flowM3PerS(head);
            assertTrue(flow >= 0 && flow < 1e-9, () -> "flow " + flow);
        }
    }

    @Property(tries = 30)
    void leastBoreIsSafeAndTight(@ForAll @Scale(5) @DoubleRange(min = 0.0005, max = 0.005) double inflow,
            @ForAll @Scale(3) @DoubleRange(min = 0.08, max = 0.3) double head) {
        List<Double> inlets = List.of(inflow, inflow / 2);
        double bore = OverflowCheck.leastBoreM(inlets, 3, head);
        OverflowCheck check = OverflowCheck.of(inlets, new OverflowPipe(bore * 1.0001), 3, head);
        assertTrue(check.safe());
        assertEquals(1.5 * inflow, check.inflowM3PerS(), 1e-12);
        assertEquals(check.openM3PerS() * 2 / 3, check.oneBlockedM3PerS(), 1e-12);
        if (bore > 0.02) {
            assertFalse(OverflowCheck.of(inlets, new OverflowPipe(Math.max(0.02, bore * 0.999)), 3, head).safe());
        }
    }

    @Example
    void oneOverflowBlockedLeavesNothing() {
        assertFalse(OverflowCheck.of(List.of(0.001), new OverflowPipe(0.15), 1, 0.1).safe());
        assertEquals(0, OverflowCheck.of(List.of(0.001), new OverflowPipe(0.15), 1, 0.1).oneBlockedM3PerS());
        assertThrows(IllegalArgumentException.class, () -> OverflowCheck.leastBoreM(List.of(0.001), 1, 0.1));
        assertThrows(NoAnswerException.class, () -> OverflowCheck.leastBoreM(List.of(50.0), 2, 0.1));
    }

    /** By hand: 0.01 m2, half open, half blocked, 20 mm of water, Cd 0.62. */
    @Example
    void screenByHand() {
        InletScreen screen = new InletScreen(0.01, 0.5, 0.02);
        assertEquals(0.62 * 0.0025 * Math.sqrt(2 * G * 0.02), screen.capacityM3PerS(), 1e-12);
        assertEquals(0.02, screen.areaForM2(2 * screen.capacityM3PerS()), 1e-12);
    }

    /** By hand: 2 L/s of air under 100 Pa runs at 12.91 m/s through a sharp-edged hole. */
    @Example
    void ventByHand() {
        assertEquals(0.002 / (0.62 * Math.sqrt(200 / 1.2)), Vent.areaM2(0.002, 100, 1), 1e-12);
        assertEquals(2 * Vent.areaM2(0.002, 100, 1), Vent.areaM2(0.002, 100, 0.5), 1e-12);
        assertEquals(Vent.areaM2(0.002, 100, 1), Math.PI / 4 * Math.pow(Vent.diameterM(0.002, 100, 1), 2), 1e-12);
    }

    /** By hand: 0.5 L/s through 25 mm is 1.0186 m/s, Froude 2.057. */
    @Example
    void intakeAndInletByHand() {
        FloatingIntake intake = new FloatingIntake(5e-4, 0.025, 0.1);
        assertEquals(1.01859, intake.velocityMPerS(), 1e-5);
        assertEquals(0.025 * (1 + 2.3 * 1.01859 / Math.sqrt(G * 0.025)), intake.submergenceM(), 1e-6);
        assertEquals(2 * (0.1 + intake.submergenceM()), intake.deadVolumeM3(2), 1e-12);
        assertEquals(0.05, new CalmedInlet(0.002, 0.04).velocityMPerS(), 1e-12);
        assertEquals(0.02, CalmedInlet.mouthForM2(0.002, 0.1), 1e-12);
    }
}
