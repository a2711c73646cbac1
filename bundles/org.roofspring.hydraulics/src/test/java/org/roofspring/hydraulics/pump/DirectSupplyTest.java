package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;

class DirectSupplyTest {
    private static final WaterProperties WATER = WaterProperties.at(20);
    private static final SystemCurve TO_VESSEL = SystemCurve.of(2, new PipeRun(0.032, 3, 7e-6, 4).carrying(WATER),
            WATER);

    /** Boyle's law written out: 100 L at 1.3 bar, drawn from 2.5 down to 1.5 bar, air at 1.01325 bar. */
    @Test
    void drawdown() {
        PressureVessel vessel = PressureVessel.forCutIn(0.1, 150_000);
        assertEquals(130_000, vessel.prechargePa());
        double airAtCutIn = 0.1 * 231_325 / 251_325;
        double airAtCutOut = 0.1 * 231_325 / 351_325;
        assertEquals(airAtCutIn - airAtCutOut, vessel.drawdownM3(new PressureSwitch(150_000, 250_000), 101_325), 1e-15);
        assertEquals(0, vessel.waterM3(130_000, 101_325));
        assertEquals(0, vessel.waterM3(0, 101_325));
        assertTrue(vessel.drawdownM3(new PressureSwitch(150_000, 250_000), 80_000)
                > vessel.drawdownM3(new PressureSwitch(150_000, 250_000), 101_325), "higher up the air gives more");
    }

    @Test
    void aPumpThatReachesCutOutStops() {
        PressureSwitch setting = new PressureSwitch(150_000, 250_000);
        DirectSupply supply = DirectSupply.of(PumpSet.single(Pumps.complete()), TO_VESSEL,
                PressureVessel.forCutIn(0.1, 150_000), setting);
        assertTrue(supply.stops());
        assertTrue(supply.prechargeFits());
        DutyPoint atCutIn = supply.atCutIn().working().orElseThrow();
        assertEquals(2 + WATER.headM(150_000) + TO_VESSEL.delivery().headM(atCutIn.flowM3PerS()), atCutIn.headM(),
                1e-9);
        double mean = (atCutIn.flowM3PerS() + supply.atCutOut().working().orElseThrow().flowM3PerS()) / 2;
        assertEquals(mean / 4 / supply.drawdownM3(), supply.mostStartsPerS().getAsDouble(), 1e-15);
    }

    @Test
    void aPumpTooWeakForCutOutNeverStops() {
        DirectSupply supply = DirectSupply.of(PumpSet.single(Pumps.complete()), TO_VESSEL,
                new PressureVessel(0.1, 160_000), new PressureSwitch(150_000, 300_000));
        assertFalse(supply.stops());
        assertFalse(supply.prechargeFits());
        assertTrue(supply.mostStartsPerS().isEmpty());
        assertTrue(supply.atCutOut() instanceof DutyOutcome.StaticHeadAboveShutOff);
    }

    @Test
    void dryRunStopIsTheHigherOfIntakeAndLift() {
        assertEquals(0.5, DirectSupply.dryRunStopLevelM(0.3, 0.2, 3, 5), 1e-12);
        assertEquals(1, DirectSupply.dryRunStopLevelM(0.3, 0.2, 6, 5), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> DirectSupply.dryRunStopLevelM(0, Double.NaN, 6, 5));
    }

    @Test
    void refusesImpossibleSettings() {
        assertThrows(IllegalArgumentException.class, () -> new PressureSwitch(150_000, 150_000));
        assertThrows(IllegalArgumentException.class, () -> new PressureVessel(0, 150_000));
        assertThrows(IllegalArgumentException.class, () -> PressureVessel.forCutIn(0.1, Double.NaN));
    }
}
