package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class WorkingRangePropertyTest {
    private static final PumpedLine LINE = new PumpedLine(2,
            List.of(new AgeingRun(new PipeRun(0.04, 6, 7e-6, 3), 1e-4)), HeadLoss.none(), flow -> 3e5 * flow * flow,
            List.of(new AgeingRun(new PipeRun(0.036, 60, 1.5e-4, 8), 9e-4)));
    private static final StateRange RANGE = new StateRange(new Band(-1, 1.5), new Band(12, 14), new Band(5, 30),
            new Band(80_000, 86_000), true);
    private static final PumpSet PUMP = PumpSet.single(Pumps.complete());

    @Property(tries = 200)
    void bandHoldsEveryStateBetweenItsCorners(@ForAll @Scale(6) @DoubleRange(min = -1, max = 1.5) double suctionM,
            @ForAll @Scale(6) @DoubleRange(min = 12, max = 14) double dischargeM,
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 30) double celsius,
            @ForAll @Scale(3) @DoubleRange(min = 80_000, max = 86_000) double pressurePa, @ForAll boolean worn) {
        WorkingRange range = WorkingRange.of(PUMP, LINE, RANGE.corners());
        SystemState state = new SystemState(suctionM, dischargeM, celsius, pressurePa, worn);
        DutyPoint duty = DutySolver.solve(PUMP, LINE.at(state)).working().orElseThrow();
        assertTrue(range.flowM3PerS().orElseThrow().covers(duty.flowM3PerS()));
        assertTrue(range.headM().orElseThrow().covers(duty.headM()));
        assertTrue(range.npshMarginM().orElseThrow().low() <= duty.npshMarginM().getAsDouble());
    }

    @Example
    void countsItsStates() {
        WorkingRange range = WorkingRange.of(PUMP, LINE, RANGE.corners());
        assertEquals(32, range.duties().size());
        assertTrue(range.worksThroughout());
        assertTrue(range.failures().isEmpty());
        assertTrue(range.efficiency().isPresent() && range.inputPowerW().isPresent()
                && range.specificEnergyJPerM3().isPresent());
        StateRange one = new StateRange(Band.at(0), Band.at(12), Band.at(20), Band.at(101_325), false);
        assertEquals(List.of(new SystemState(0, 12, 20, 101_325, false)), one.corners());
    }

    @Example
    void statesWithoutADutyAreNamed() {
        StateRange high = new StateRange(Band.at(0), new Band(12, 40), Band.at(20), Band.at(101_325), false);
        WorkingRange range = WorkingRange.of(PUMP, LINE, high.corners());
        assertFalse(range.worksThroughout());
        assertEquals(40, range.failures().get(0).state().dischargeLevelM());
        assertTrue(range.failures().get(0).outcome() instanceof DutyOutcome.StaticHeadAboveShutOff);
        assertTrue(WorkingRange.of(PUMP, LINE, List.of(high.corners().get(1))).flowM3PerS().isEmpty());
    }

    @Example
    void wearAndLevelsMoveTheHeadOfTheSystem() {
        SystemState fresh = new SystemState(0, 12, 20, 101_325, false);
        SystemState worn = new SystemState(0, 12, 20, 101_325, true);
        assertTrue(LINE.at(worn).headM(1e-3) > LINE.at(fresh).headM(1e-3));
        assertEquals(12, LINE.at(fresh).staticHeadM());
        assertEquals(2, LINE.at(fresh).suction().liftM());
        Band band = WorkingRange.systemHeadM(LINE, RANGE.corners(), 0);
        assertEquals(new Band(10.5, 15), band);
        assertThrows(IllegalArgumentException.class, () -> WorkingRange.systemHeadM(LINE, List.of(), 0));
        assertThrows(IllegalArgumentException.class, () -> new Band(2, 1));
        assertThrows(IllegalArgumentException.class, () -> Band.at(Double.NaN));
    }
}
