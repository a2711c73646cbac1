package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class PumpCurveTest {
    @Example
    void readsItsPointsBack() {
        PumpCurve pump = Pumps.complete();
        for (PumpPoint point : pump.points()) {
            assertEquals(point.headM(), pump.headM(point.flowM3PerS()), 0);
            assertEquals(point.efficiency(), pump.efficiency(point.flowM3PerS()));
            assertEquals(point.npshRequiredM(), pump.npshRequiredM(point.flowM3PerS()));
            assertEquals(point.inputPowerW(), pump.inputPowerW(point.flowM3PerS()));
        }
        assertEquals(OptionalDouble.of(30), pump.shutOffHeadM());
        assertEquals(OptionalDouble.of(1e-3), pump.bestEfficiencyFlowM3PerS());
        assertEquals(30, pump.highestHeadM());
        assertEquals(Pumps.complete(), pump);
        assertEquals(Pumps.complete().hashCode(), pump.hashCode());
    }

    @Example
    void isUnknownOutsideItsPoints() {
        PumpCurve pump = Pumps.complete();
        assertThrows(IllegalArgumentException.class, () -> pump.headM(2.001e-3));
        assertThrows(IllegalArgumentException.class, () -> pump.headM(Double.NaN));
        assertTrue(pump.efficiency(2.001e-3).isEmpty());
        PumpCurve noShutOff = PumpCurve.of("p", List.of(PumpPoint.of(1e-3, 9), PumpPoint.of(2e-3, 8),
                PumpPoint.of(3e-3, 5)));
        assertTrue(noShutOff.shutOffHeadM().isEmpty());
        assertTrue(noShutOff.bestEfficiencyFlowM3PerS().isEmpty());
        assertTrue(noShutOff.npshRequiredM(2e-3).isEmpty());
    }

    @Example
    void npshMayBeMissingAtSinglePoints() {
        List<PumpPoint> points = new ArrayList<>(Pumps.complete().points());
        points.set(0, PumpPoint.of(0, 30));
        PumpCurve pump = PumpCurve.of("p", points);
        assertTrue(pump.npshRequiredM(0.4e-3).isEmpty());
        assertEquals(2.0, pump.npshRequiredM(1e-3).getAsDouble());
    }

    @Example
    void refusesBadPoints() {
        List<PumpPoint> good = Pumps.complete().points();
        assertRefused("a pump curve must have at least 3 points, not 2", good.subList(0, 2));
        List<PumpPoint> turned = new ArrayList<>(good);
        Collections.swap(turned, 1, 2);
        assertRefused("points of a pump curve must be in order of rising flow, but point 3 at 0.0005 m3/s follows 0.001"
                + " m3/s", turned);
        assertRefused("points of a pump curve must be in order", List.of(good.get(0), good.get(1), good.get(1)));
        assertRefused("efficiency must be measured at 3 points or more, or at none, not at 2",
                List.of(PumpPoint.of(0, 9), good.get(1), good.get(2)));
        assertRefused("a pump must have a head above 0 m",
                List.of(PumpPoint.of(0, 0), PumpPoint.of(1, 0), PumpPoint.of(2, 0)));
        assertThrows(IllegalArgumentException.class, () -> PumpCurve.of(" ", good));
        assertThrows(IllegalArgumentException.class, () -> PumpCurve.of("p", null));
        assertThrows(IllegalArgumentException.class, () -> PumpCurve.of("p", Collections.nCopies(3, null)));
    }

    private static void assertRefused(String message, List<PumpPoint> points) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> PumpCurve.of("p", points));
        assertTrue(refused.getMessage().startsWith(message), refused.getMessage());
    }

    @Example
    void refusesImpossibleEfficiency() {
        OptionalDouble none = OptionalDouble.empty();
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> new PumpPoint(1, 1, OptionalDouble.of(1.01), none, none));
        assertEquals("efficiency of a pump point must be from 0 % to 100 %, not 101 %", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new PumpPoint(1, 1, OptionalDouble.of(0), none, none));
        assertThrows(IllegalArgumentException.class,
                () -> new PumpPoint(1, 1, OptionalDouble.of(Double.NaN), none, none));
    }

    @Property
    void seriesAddsHeadsAndParallelAddsFlows(@ForAll @Scale(9) @DoubleRange(min = 0, max = 2e-3) double flowM3PerS,
            @ForAll @IntRange(min = 1, max = 9) int number) {
        PumpSet one = PumpSet.single(Pumps.complete());
        assertEquals(number * one.headM(flowM3PerS), one.inSeries(number).headM(flowM3PerS), 1e-12);
        assertEquals(one.headM(flowM3PerS), one.inParallel(number).headM(flowM3PerS * number), 1e-9);
        assertEquals(number * one.inputPowerW(flowM3PerS).getAsDouble(),
                one.inSeries(number).inputPowerW(flowM3PerS).getAsDouble(), 1e-9);
        assertEquals(one.npshRequiredM(flowM3PerS), one.inSeries(number).npshRequiredM(flowM3PerS));
    }

    @Property
    void speedFollowsTheAffinityLaws(@ForAll @Scale(9) @DoubleRange(min = 0, max = 2e-3) double flowM3PerS,
            @ForAll @Scale(9) @DoubleRange(min = 0.2, max = 1.5) double speed) {
        PumpSet one = PumpSet.single(Pumps.complete());
        PumpSet other = one.atSpeed(speed);
        double flow = flowM3PerS * speed;
        assertEquals(one.headM(flowM3PerS) * speed * speed, other.headM(flow), 1e-9);
        assertEquals(one.npshRequiredM(flowM3PerS).getAsDouble() * speed * speed,
                other.npshRequiredM(flow).getAsDouble(), 1e-9);
        assertEquals(one.inputPowerW(flowM3PerS).getAsDouble() * speed * speed * speed,
                other.inputPowerW(flow).getAsDouble(), 1e-6);
        assertEquals(one.efficiency(flowM3PerS).getAsDouble(), other.efficiency(flow).getAsDouble(), 1e-9);
        other.headM(other.highestFlowM3PerS());
        other.headM(other.lowestFlowM3PerS());
    }

    @Example
    void refusesImpossibleSets() {
        PumpSet one = PumpSet.single(Pumps.complete());
        assertThrows(IllegalArgumentException.class, () -> one.inSeries(0));
        assertThrows(IllegalArgumentException.class, () -> one.inParallel(101));
        assertThrows(IllegalArgumentException.class, () -> one.atSpeed(0.1));
        assertThrows(IllegalArgumentException.class, () -> one.atSpeed(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> one.withMotorEfficiency(1.1));
        assertEquals(6, one.inSeries(2).inParallel(3).pumps());
    }
}
