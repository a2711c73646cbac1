package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.hydraulics.Atmosphere;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class DutySolverTest {
    private static final WaterProperties WATER = WaterProperties.at(20);

    private static SystemCurve system(double staticM, HeadLoss loss) {
        return SystemCurve.of(staticM, loss, WATER);
    }

    private static DutyPoint only(DutyOutcome outcome) {
        List<DutyPoint> points = assertInstanceOf(DutyOutcome.Meets.class, outcome).points();
        assertEquals(1, points.size());
        return points.get(0);
    }

    /**
     * A pump of 20 [1 - (Q/100)^2] on a system of 5 + 0.002 Q^2 (m, L/min). The problem was read in an exercise
     * collection on the web, whose printed answer is wrong; the roots are exact by algebra: Q^2 = 15/0.004 for one, and
     * by the same for two in series and in parallel.
     */
    @Example
    void textbookProblem() {
        for (int points : new int[] {3, 4, 6, 11, 30}) {
            assertTextbookProblem(points);
        }
    }

    private static void assertTextbookProblem(int points) {
        PumpSet one = PumpSet.single(Pumps.parabola(points));
        SystemCurve system = system(5, flow -> 0.002 * Math.pow(flow * 60_000, 2));
        assertDuty(61.237, Math.sqrt(3750), 12.5, one, system);
        assertDuty(76.376, Math.sqrt(35 / 0.006), 16.667, one.inSeries(2), system);
        assertDuty(77.460, Math.sqrt(6000), 17.0, one.inParallel(2), system);
    }

    private static void assertDuty(double printed, double exact, double headM, PumpSet pumps, SystemCurve system) {
        DutyPoint duty = only(DutySolver.solve(pumps, system));
        assertEquals(printed, duty.flowM3PerS() * 60_000, 5e-4);
        assertEquals(exact, duty.flowM3PerS() * 60_000, 1e-11);
        assertEquals(headM, duty.headM(), 5e-4);
        assertTrue(duty.stable());
    }

    /** Independent: fine scan of the whole curve and plain bisection, on real pipe. */
    @Property(tries = 200)
    void findsWhatAFineScanFinds(@ForAll @Scale(6) @DoubleRange(min = 0, max = 26) double staticM,
            @ForAll @Scale(6) @DoubleRange(min = 0.012, max = 0.05) double boreM,
            @ForAll @Scale(6) @DoubleRange(min = 0.7, max = 1.2) double speed,
            @ForAll @IntRange(min = 1, max = 3) int parallel, @ForAll boolean humped) {
        PumpSet pumps = PumpSet.single(humped ? Pumps.humped() : Pumps.complete()).atSpeed(speed).inParallel(parallel);
        SystemCurve system = system(staticM, new PipeRun(boreM, 40, 1.5e-6, 4).carrying(WATER));
        List<Double> scanned = scan(pumps, system);
        DutyOutcome outcome = DutySolver.solve(pumps, system);
        List<DutyPoint> found = outcome instanceof DutyOutcome.Meets meets ? meets.points() : List.of();
        assertEquals(scanned.size(), found.size(), () -> scanned + " but " + found);
        for (int i = 0; i < scanned.size(); i++) {
            DutyPoint duty = found.get(i);
            assertEquals(scanned.get(i), duty.flowM3PerS(), 1e-13);
            double step = 1e-9;
            boolean falls = surplus(pumps, system, duty.flowM3PerS() - step) > 0;
            assertEquals(falls, duty.stable());
        }
    }

    private static double surplus(PumpSet pumps, SystemCurve system, double flow) {
        return pumps.headM(flow) - system.headM(flow);
    }

    private static List<Double> scan(PumpSet pumps, SystemCurve system) {
        List<Double> roots = new ArrayList<>();
        int steps = 5000;
        double last = pumps.highestFlowM3PerS();
        for (int i = 0; i < steps; i++) {
            double low = last * i / steps;
            double high = i == steps - 1 ? last : last * (i + 1) / steps;
            boolean above = surplus(pumps, system, low) > 0;
            if (above != surplus(pumps, system, high) > 0) {
                for (int k = 0; k < 60; k++) {
                    double middle = (low + high) / 2;
                    if (surplus(pumps, system, middle) > 0 == above) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                roots.add(low);
            }
        }
        return roots;
    }

    @Example
    void humpedPumpMeetsASteepStaticHeadTwice() {
        SystemCurve system = system(21, flow -> 1e5 * flow * flow);
        DutyOutcome.Meets meets = assertInstanceOf(DutyOutcome.Meets.class,
                DutySolver.solve(PumpSet.single(Pumps.humped()), system));
        assertEquals(2, meets.points().size());
        assertFalse(meets.points().get(0).stable());
        assertTrue(meets.points().get(1).stable());
        assertFalse(meets.starts());
        assertFalse(meets.runsBeyond());
        assertEquals(Optional.of(meets.points().get(1)), meets.working());
        assertTrue(meets.reason().contains("2 intersections") && meets.reason().contains("from rest"), meets.reason());
    }

    @Example
    void staticHeadAboveShutOffIsSaid() {
        for (double staticM : new double[] {20, 20.5, 500}) {
            DutyOutcome outcome = DutySolver.solve(PumpSet.single(Pumps.parabola(5)), system(staticM, HeadLoss.none()));
            assertEquals(new DutyOutcome.StaticHeadAboveShutOff(staticM, 20), outcome);
            assertTrue(outcome.working().isEmpty());
        }
        assertEquals("the static head of 500.00 m is not below the shut-off head of the pump, 20.00 m: no water comes",
                new DutyOutcome.StaticHeadAboveShutOff(500, 20).reason());
    }

    @Example
    void runOutIsSaid() {
        PumpCurve pump = PumpCurve.of("p",
                List.of(PumpPoint.of(0, 20), PumpPoint.of(1e-3, 18), PumpPoint.of(2e-3, 12)));
        DutyOutcome outcome = DutySolver.solve(PumpSet.single(pump), system(3, HeadLoss.none()));
        assertEquals(new DutyOutcome.RunsOut(2e-3, 12, 3), outcome);
        assertTrue(outcome.reason().startsWith("the pump runs out beyond its last measured point: at 2.000 L/s"),
                outcome.reason());
        assertTrue(outcome.working().isEmpty());
    }

    @Example
    void aCurveThatDoesNotReachDownIsSaid() {
        PumpCurve pump = PumpCurve.of("p", List.of(PumpPoint.of(1e-3, 20), PumpPoint.of(2e-3, 18),
                PumpPoint.of(3e-3, 12)));
        DutyOutcome outcome = DutySolver.solve(PumpSet.single(pump), system(21, HeadLoss.none()));
        assertEquals(new DutyOutcome.BelowFirstPoint(1e-3, 20, 21), outcome);
        assertTrue(outcome.reason().contains("lowest measured flow"));
        assertTrue(outcome.working().isEmpty());
    }

    @Example
    void anIntersectionAtAMeasuredPointIsFoundOnce() {
        PumpCurve pump = PumpCurve.of("p",
                List.of(PumpPoint.of(0, 20), PumpPoint.of(1e-3, 18), PumpPoint.of(2e-3, 12)));
        assertEquals(1e-3, only(DutySolver.solve(PumpSet.single(pump), system(18, HeadLoss.none()))).flowM3PerS());
        assertEquals(2e-3, only(DutySolver.solve(PumpSet.single(pump), system(12, HeadLoss.none()))).flowM3PerS());
    }

    @Example
    void anUnstableIntersectionAloneHasNoWorkingPoint() {
        PumpCurve rising = PumpCurve.of("p", List.of(PumpPoint.of(0, 5), PumpPoint.of(1e-3, 8), PumpPoint.of(2e-3, 9)));
        DutyOutcome.Meets meets = assertInstanceOf(DutyOutcome.Meets.class,
                DutySolver.solve(PumpSet.single(rising), system(7, HeadLoss.none())));
        assertTrue(meets.working().isEmpty());
        assertTrue(meets.runsBeyond());
        assertFalse(meets.starts());
    }

    /** Power of the water = lift of the water + heat of each loss, rho g Q summed round the run. */
    @Property(tries = 200)
    void energyBalanceCloses(@ForAll @Scale(6) @DoubleRange(min = 0, max = 25) double staticM,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 60) double temperatureC) {
        WaterProperties water = WaterProperties.at(temperatureC);
        PipeRun delivery = new PipeRun(0.026, 60, 7e-6, 6);
        PipeRun suction = new PipeRun(0.032, 8, 7e-6, 3);
        DutyPoint duty = DutySolver.solve(PumpSet.single(Pumps.complete()), new SystemCurve(staticM,
                delivery.carrying(water), new Suction(2, suction.carrying(water)), water, 101_325)).working()
                .orElseThrow();
        double weightPerS = water.densityKgPerM3() * 9.80665 * duty.flowM3PerS();
        double lifted = weightPerS * staticM;
        double heat = weightPerS * (delivery.lossAt(duty.flowM3PerS(), water).totalLossM()
                + suction.lossAt(duty.flowM3PerS(), water).totalLossM());
        assertEquals(duty.hydraulicPowerW(), lifted + heat, 1e-12 * duty.hydraulicPowerW());
    }

    @Property(tries = 200)
    void higherTankMeansLessFlowAndFullerCisternMeansMore(
            @ForAll @Scale(6) @DoubleRange(min = 2, max = 20) double staticM,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double rise) {
        HeadLoss loss = new PipeRun(0.024, 40, 1.5e-6, 4).carrying(WATER);
        PumpSet pumps = PumpSet.single(Pumps.complete());
        DutyPoint low = DutySolver.solve(pumps, system(staticM, loss)).working().orElseThrow();
        DutyPoint high = DutySolver.solve(pumps, system(staticM + rise, loss)).working().orElseThrow();
        assertTrue(high.flowM3PerS() < low.flowM3PerS());
        assertTrue(high.headM() > low.headM());
    }

    @Example
    void figuresOfADutyPoint() {
        PipeRun suctionRun = new PipeRun(0.032, 5, 7e-6, 2);
        SystemCurve system = new SystemCurve(20, new PipeRun(0.04, 50, 1.5e-6, 5).carrying(WATER),
                new Suction(3, suctionRun.carrying(WATER)), WATER, Atmosphere.pressurePa(1500));
        PumpSet one = PumpSet.single(Pumps.complete());
        DutyPoint duty = DutySolver.solve(one, system).working().orElseThrow();
        double flow = duty.flowM3PerS();
        assertEquals(system.headM(flow), duty.headM(), 1e-12);
        assertEquals(Pumps.complete().efficiency(flow), duty.efficiency());
        assertEquals(duty.hydraulicPowerW() / duty.efficiency().getAsDouble(), duty.shaftPowerW().getAsDouble(), 1e-12);
        assertEquals(8.399 - 3 - suctionRun.lossAt(flow, WATER).totalLossM(), duty.npshAvailableM(), 6e-4);
        assertEquals(duty.npshAvailableM() - duty.npshRequiredM().getAsDouble(), duty.npshMarginM().getAsDouble());
        assertEquals(Optional.of(EnergyBasis.MEASURED_INPUT), duty.energyBasis());
        assertEquals(Pumps.complete().inputPowerW(flow).getAsDouble() / flow,
                duty.specificEnergyJPerM3().getAsDouble(), 1e-9);
        assertEquals(flow / 1e-3, duty.flowOverBest().getAsDouble(), 1e-15);
    }

    @Example
    void energyIsTakenWhereItIsKnownBest() {
        List<PumpPoint> noPower = Pumps.complete().points().stream().map(point -> new PumpPoint(point.flowM3PerS(),
                point.headM(), point.efficiency(), point.npshRequiredM(), OptionalDouble.empty())).toList();
        PumpSet shaft = PumpSet.single(PumpCurve.of("p", noPower));
        SystemCurve system = system(20, new PipeRun(0.04, 50, 1.5e-6, 5).carrying(WATER));
        DutyPoint atShaft = DutySolver.solve(shaft, system).working().orElseThrow();
        assertEquals(Optional.of(EnergyBasis.SHAFT), atShaft.energyBasis());
        assertTrue(atShaft.inputPowerW().isEmpty());
        assertEquals(atShaft.shaftPowerW().getAsDouble() / atShaft.flowM3PerS(),
                atShaft.specificEnergyJPerM3().getAsDouble());
        DutyPoint atMotor = DutySolver.solve(shaft.withMotorEfficiency(0.8), system).working().orElseThrow();
        assertEquals(Optional.of(EnergyBasis.MOTOR_EFFICIENCY), atMotor.energyBasis());
        assertEquals(atShaft.specificEnergyJPerM3().getAsDouble() / 0.8, atMotor.specificEnergyJPerM3().getAsDouble(),
                1e-6);
        DutyPoint bare = DutySolver.solve(PumpSet.single(Pumps.parabola(5)), system(5, flow -> 1e6 * flow * flow))
                .working().orElseThrow();
        assertTrue(bare.energyBasis().isEmpty() && bare.specificEnergyJPerM3().isEmpty()
                && bare.shaftPowerW().isEmpty() && bare.npshMarginM().isEmpty() && bare.flowOverBest().isEmpty());
    }
}
