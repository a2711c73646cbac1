package org.roofspring.storage.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.roofspring.storage.YieldRule;

class SystemForwardTest {

    private static final int DAYS = 400;

    private static StorageSystem system(double cisternM3, double overheadM3) {
        return new StorageSystem(
                List.of(Stage.of(new Tank("cistern", 20, 2, cisternM3, 3, new Leak(0.01, 0.02, 1))),
                        Stage.of(new Tank("overhead", 4, 0.5, overheadM3, 0, Leak.NONE))),
                List.of(new Transfer(2.5, 0, true)),
                List.of(new Use("garden", 1, 3, 1, false, List.of(new RationStep(5, 0.5))), Use.plain("tap", 1)),
                Optional.of(new TopUp(0, 5, 3, 4, 2, 60)), YieldRule.YAS);
    }

    private static SystemSeries series() {
        Random random = new Random(4);
        double[] inflow = new double[DAYS];
        double[] garden = new double[DAYS];
        double[] tap = new double[DAYS];
        double[] evaporation = new double[DAYS];
        for (int day = 0; day < DAYS; day++) {
            inflow[day] = random.nextInt(6) == 0 ? random.nextDouble() * 8 : 0;
            garden[day] = random.nextDouble();
            tap[day] = random.nextInt(4) / 3.0;
            evaporation[day] = random.nextDouble() * 6;
        }
        return new SystemSeries(List.of(inflow, new double[DAYS]), List.of(garden, tap), evaporation);
    }

    /** Day by day from volumes of one's choice is the whole run of a system that begins with them, run after run. */
    @Test
    void dayByDayIsTheWholeRun() {
        SystemForward forward = new SystemForward(system(0, 0), series());
        for (double[] start : new double[][] {{13, 2}, {20, 4}, {0, 0}, {13, 2}}) {
            SystemResult whole = SystemBalance.run(system(start[0], start[1]), series(), List.of(), () -> false);
            double[] cistern = whole.stageVolumesM3(0);
            double[] overhead = whole.stageVolumesM3(1);
            forward.restart(start);
            double[] supplied = new double[2];
            int[] met = new int[2];
            for (int day = 0; day < DAYS; day++) {
                assertTrue(forward.hasNext());
                forward.next();
                assertEquals(cistern[day], forward.stageVolumeM3(0));
                assertEquals(overhead[day], forward.stageVolumeM3(1));
                assertEquals(Math.max(0, cistern[day] - 2) + Math.max(0, overhead[day] - 0.5), forward.usableM3(),
                        1e-8);
                for (int use = 0; use < 2; use++) {
                    supplied[use] += forward.suppliedM3(use);
                    met[use] += forward.met(use) && series().demandM3().get(use)[day] > 0 ? 1 : 0;
                }
            }
            assertFalse(forward.hasNext());
            for (int use = 0; use < 2; use++) {
                assertEquals(whole.uses().get(use).suppliedM3(), supplied[use], 1e-9);
                assertEquals(whole.uses().get(use).fullDays(), met[use]);
            }
        }
    }

    @Test
    void refusesVolumesThatDoNotFit() {
        SystemForward forward = new SystemForward(system(0, 0), series());
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 20.001}) {
            assertThrows(IllegalArgumentException.class, () -> forward.restart(new double[] {bad, 0}));
        }
        assertEquals("stageVolumeM3 of stage 1 is 4.5 m3; accepted is 0 to its capacity of 4.0 m3",
                assertThrows(IllegalArgumentException.class,
                        () -> forward.restart(new double[] {1, 4.5})).getMessage());
        assertThrows(IllegalArgumentException.class, () -> forward.restart(new double[] {1}));
    }
}
