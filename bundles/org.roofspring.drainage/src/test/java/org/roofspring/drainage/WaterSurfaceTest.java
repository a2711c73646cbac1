package org.roofspring.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roofspring.drainage.WaterSurface.Control;
import org.roofspring.drainage.WaterSurface.Station;

class WaterSurfaceTest {

    private static double depthAt(WaterSurface surface, double distanceM) {
        List<Station> stations = surface.stations();
        for (int i = 1; i < stations.size(); i++) {
            Station before = stations.get(i - 1);
            Station after = stations.get(i);
            if (after.distanceM() >= distanceM && after.distanceM() > before.distanceM()) {
                double share = (distanceM - before.distanceM()) / (after.distanceM() - before.distanceM());
                return before.depthM() + share * (after.depthM() - before.depthM());
            }
        }
        throw new AssertionError("no station beyond " + distanceM);
    }

    /** Slow flow against Runge-Kutta steps of the equation of the depth, which shares no code with the solver. */
    @ParameterizedTest
    @CsvSource({"true, 0.1, 10, 0, 0.012, 8e-4", "true, 0.1, 10, 0.003, 0.012, 8e-4",
        "true, 0.15, 20, 0.001, 0.01, 3e-3", "false, 0.1, 10, 0, 0.012, 1e-3", "false, 0.2, 30, 0.002, 0.015, 5e-3",
        "false, 0.08, 3, 0.005, 0.012, 5e-4"})
    void slowFlowAgreesWithRungeKutta(boolean round, double width, double length, double slope, double n, double flow) {
        SlowGutter slow = new SlowGutter(round, width, length, slope, n);
        double[] expected = slow.slowFlow(flow, 10);
        WaterSurface surface = WaterSurface.of(slow.gutter(width / 2), flow);
        assertEquals(Control.FREE_OUTFALL, surface.control());
        assertFalse(surface.runsSupercritical());
        assertEquals(slow.critical(flow), surface.stations().getLast().depthM(), 1e-9);
        assertEquals(expected[0], surface.stations().getFirst().depthM(), 3e-5 * expected[0]);
        for (int i = 1; i < 10; i++) {
            assertEquals(expected[i], depthAt(surface, length * i / 10), 2e-4 * expected[i]);
        }
    }

    /** Flow that turns fast within the gutter, and backs up behind a jump, against unsteady flow that has settled. */
    @ParameterizedTest
    @CsvSource({"true, 0.1, 10, 0.03, 0.012, 1.5e-3, 0", "false, 0.1, 10, 0.03, 0.012, 2e-3, 0",
        "false, 0.1, 10, 0.03, 0.012, 2e-3, 0.1", "false, 0.1, 10, 0.02, 0.01, 1e-3, 0.06",
        "false, 0.1, 10, 0.005, 0.012, 1e-3, 0.06"})
    void anyFlowAgreesWithSettledUnsteadyFlow(boolean round, double width, double length, double slope, double n,
            double flow, double outletDepth) {
        SlowGutter slow = new SlowGutter(round, width, length, slope, n);
        int cells = round ? 100 : 200;
        double[] expected = slow.settled(flow, outletDepth, cells, 90);
        WaterSurface surface = WaterSurface.of(slow.gutter(width / 2), flow, outletDepth);
        for (int i = 10; i < cells - 2; i += 4) {
            double distance = (i + 0.5) * length / cells;
            if (surface.jumpDistanceM().isPresent()
                    && Math.abs(surface.jumpDistanceM().getAsDouble() - distance) < 0.04 * length) {
                continue;
            }
            assertEquals(expected[i], depthAt(surface, distance), 0.025 * expected[i], "at " + distance);
        }
    }
}
