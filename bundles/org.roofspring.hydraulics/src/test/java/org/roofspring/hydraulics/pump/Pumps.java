package org.roofspring.hydraulics.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Invented pumps for the tests. */
final class Pumps {
    private Pumps() {
    }

    /** A pump from formulas of flow [m3/s], measured at equal steps from nil flow to {@code lastFlowM3PerS}. */
    static PumpCurve sampled(int points, double lastFlowM3PerS, DoubleUnaryOperator headM) {
        List<PumpPoint> list = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double flow = lastFlowM3PerS * i / (points - 1);
            list.add(PumpPoint.of(flow, headM.applyAsDouble(flow)));
        }
        return PumpCurve.of("invented", list);
    }

    /** Twenty metres falling by a parabola to nil at 100 L/min. */
    static PumpCurve parabola(int points) {
        return sampled(points, 0.1 / 60, flow -> 20 * (1 - Math.pow(flow * 60_000 / 100, 2)));
    }

    /** Head rises from 20 m at rest to 22 m at 0.4 L/s and falls to 2 m at 1.2 L/s. */
    static PumpCurve humped() {
        return PumpCurve.of("humped", List.of(PumpPoint.of(0, 20), PumpPoint.of(0.2e-3, 21.5), PumpPoint.of(0.4e-3, 22),
                PumpPoint.of(0.6e-3, 20.5), PumpPoint.of(0.9e-3, 14), PumpPoint.of(1.2e-3, 2)));
    }

    /** A pump with all that can be measured. */
    static PumpCurve complete() {
        return PumpCurve.of("complete", List.of(point(0, 30, 0, 1.5, 500), point(0.5e-3, 29, 0.35, 1.6, 620),
                point(1e-3, 26, 0.55, 2.0, 720), point(1.5e-3, 20, 0.50, 2.8, 800), point(2e-3, 11, 0.30, 4.2, 850)));
    }

    private static PumpPoint point(double flowM3PerS, double headM, double efficiency, double npshM, double powerW) {
        return new PumpPoint(flowM3PerS, headM, OptionalDouble.of(efficiency), OptionalDouble.of(npshM),
                OptionalDouble.of(powerW));
    }
}
