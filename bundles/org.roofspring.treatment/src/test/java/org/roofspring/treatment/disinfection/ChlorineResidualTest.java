package org.roofspring.treatment.disinfection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Demand, decay and ageing. */
class ChlorineResidualTest {
    private static final double HOUR = 3600;

    /** Journal of Water and Health 2018, 16(1), 112-125 (READ): 1.88 mg/L below 10 NTU, 3.75 above. */
    @Test
    void householdDoses() {
        assertEquals(1.88, ChlorineResidual.householdDoseMgPerL(9.9));
        assertEquals(3.75, ChlorineResidual.householdDoseMgPerL(10));
        assertTrue(new ChlorineResidual(1.88, 0.3, 0.08 / HOUR).meetsHouseholdTargets());
        assertFalse(new ChlorineResidual(1.88, 0.3, 0.1 / HOUR).meetsHouseholdTargets(), "0.14 mg/L after a day");
        assertFalse(new ChlorineResidual(3.75, 0.3, 0.05 / HOUR).meetsHouseholdTargets(), "3.3 mg/L after an hour");
    }

    /** The contact integral by small steps, a slow second way. */
    @Test
    void integratedContact() {
        ChlorineResidual residual = new ChlorineResidual(2, 0.5, 0.3 / HOUR);
        double sum = 0;
        int steps = 100_000;
        double stepS = 2 * HOUR / steps;
        for (int i = 0; i < steps; i++) {
            sum += residual.afterMgPerL((i + 0.5) * stepS) * stepS / 60;
        }
        assertEquals(sum, residual.integratedContactMgMinPerL(2 * HOUR), 1e-6);
        assertTrue(residual.afterMgPerL(2 * HOUR) * 120 <= sum, "the credited contact is never more");
        assertEquals(180, new ChlorineResidual(2, 0.5, 0).integratedContactMgMinPerL(2 * HOUR), 1e-12);
    }

    @Test
    void impossibleReadingsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> ChlorineResidual.fit(2, HOUR, 1.9, 2 * HOUR, 0.2));
        assertThrows(IllegalArgumentException.class, () -> ChlorineResidual.fit(2, HOUR, 1, 2 * HOUR, 1.1));
        assertThrows(IllegalArgumentException.class, () -> ChlorineResidual.doseForMgPerL(0.5, 1e6, 0, 1e-3));
        assertEquals(0, new ChlorineResidual(1, 2, 0).afterMgPerL(HOUR), "more demand than dose");
    }

    /** The stated rule (MEM): 12.5 % halves in 90 days at 25 degC; cooler keeps longer, weaker keeps longer. */
    @Test
    void ageing() {
        double days90 = 90 * 86_400.0;
        assertEquals(0.0625, BleachAgeing.DEFAULT.strengthRatio(0.125, days90, 25), 1e-12);
        assertEquals(0.125 / (1 + 1 / 3.5), BleachAgeing.DEFAULT.strengthRatio(0.125, days90, 15), 1e-12);
        assertEquals(0.05 / 1.4, BleachAgeing.DEFAULT.strengthRatio(0.05, days90, 25), 1e-12);
        assertEquals(0.125, BleachAgeing.DEFAULT.strengthRatio(0.125, 0, 40));
        // Slow second way: the rate law dS/dt = -k S^2 by small steps.
        double strength = 0.125;
        int steps = 200_000;
        double k = Math.pow(3.5, 0.7) / (0.125 * days90);
        for (int i = 0; i < steps; i++) {
            strength -= k * strength * strength * (60 * 86_400.0 / steps);
        }
        assertEquals(strength, BleachAgeing.DEFAULT.strengthRatio(0.125, 60 * 86_400.0, 32), 1e-6);
    }
}
