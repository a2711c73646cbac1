package org.roofspring.hydraulics.pump;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

import org.roofspring.hydraulics.internal.MonotoneCubic;
import org.roofspring.hydraulics.internal.Require;

/**
 * A pump at its measured speed: head, and where measured efficiency, NPSH required and input power, by flow.
 *
 * <p>Between the points runs a smooth curve that never leaves the range of its two neighbours (shape-preserving
 * piecewise cubic, after Fritsch and Carlson 1980); outside them the pump is unknown, nothing is extrapolated.
 */
public final class PumpCurve {
    /** Fewest points of any curve of a pump. */
    public static final int FEWEST_POINTS = 3;

    private final String name;
    private final List<PumpPoint> points;
    private final MonotoneCubic head;
    private final boolean falls;
    private final MonotoneCubic efficiency;
    private final MonotoneCubic npshRequired;
    private final MonotoneCubic inputPower;

    private PumpCurve(String name, List<PumpPoint> points) {
        this.name = Require.text("name of the pump", name);
        this.points = Require.list("points of the pump", points);
        requireOrder(this.points);
        head = fit("head", point -> OptionalDouble.of(point.headM()));
        falls = IntStream.range(1, head.size()).allMatch(i -> head.y(i) < head.y(i - 1));
        efficiency = fit("efficiency", PumpPoint::efficiency);
        npshRequired = fit("NPSH required", PumpPoint::npshRequiredM);
        inputPower = fit("input power", PumpPoint::inputPowerW);
        if (head.y(head.peak()) <= 0) {
            throw new IllegalArgumentException("a pump must have a head above 0 m at some flow, not 0 m at all");
        }
    }

    /**
     * A pump from its measured points.
     *
     * @param name   shown in results and messages
     * @param points at least three, by rising flow; efficiency, NPSH required and input power each at none or at three
     *               points or more
     * @throws IllegalArgumentException with one sentence that says which point is wrong
     */
    public static PumpCurve of(String name, List<PumpPoint> points) {
        return new PumpCurve(name, points);
    }

    private static void requireOrder(List<PumpPoint> points) {
        if (points.size() < FEWEST_POINTS) {
            throw new IllegalArgumentException("a pump curve must have at least " + FEWEST_POINTS + " points, not "
                    + points.size());
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).flowM3PerS() > points.get(i - 1).flowM3PerS())) {
                throw new IllegalArgumentException("points of a pump curve must be in order of rising flow, but point "
                        + (i + 1) + " at " + Require.show(points.get(i).flowM3PerS(), "m3/s") + " follows "
                        + Require.show(points.get(i - 1).flowM3PerS(), "m3/s"));
            }
        }
    }

    private MonotoneCubic fit(String what, Function<PumpPoint, OptionalDouble> value) {
        List<PumpPoint> measured = points.stream().filter(point -> value.apply(point).isPresent()).toList();
        if (measured.isEmpty()) {
            return null;
        }
        if (measured.size() < FEWEST_POINTS) {
            throw new IllegalArgumentException(what + " must be measured at " + FEWEST_POINTS
                    + " points or more, or at none, not at " + measured.size());
        }
        return new MonotoneCubic(measured.stream().mapToDouble(PumpPoint::flowM3PerS).toArray(),
                measured.stream().mapToDouble(point -> value.apply(point).getAsDouble()).toArray());
    }

    public String name() {
        return name;
    }

    /** The measured points in order of flow. */
    public List<PumpPoint> points() {
        return points;
    }

    /** Lowest measured flow [m3/s]. */
    public double lowestFlowM3PerS() {
        return head.low();
    }

    /** Highest measured flow [m3/s]. */
    public double highestFlowM3PerS() {
        return head.high();
    }

    /** Head against a closed valve [m]; absent where the lowest measured flow is not nil. */
    public OptionalDouble shutOffHeadM() {
        return head.low() == 0 ? OptionalDouble.of(head.y(0)) : OptionalDouble.empty();
    }

    /** Highest measured head [m]. */
    public double highestHeadM() {
        return head.y(head.peak());
    }

    /** Whether the head falls from each measured point to the next, so that no flow can be unstable. */
    public boolean falls() {
        return falls;
    }

    /** Whether the head was measured on both sides of this flow. */
    public boolean covers(double flowM3PerS) {
        return head.covers(flowM3PerS);
    }

    /**
     * Total head [m].
     *
     * @param flowM3PerS within the measured flows
     * @throws IllegalArgumentException outside the measured flows
     */
    public double headM(double flowM3PerS) {
        return head.value(flowM3PerS);
    }

    /** Efficiency, 0 to 1; absent where not measured on both sides of this flow. */
    public OptionalDouble efficiency(double flowM3PerS) {
        return read(efficiency, flowM3PerS);
    }

    /** Net positive suction head required [m]; absent where not measured on both sides of this flow. */
    public OptionalDouble npshRequiredM(double flowM3PerS) {
        return read(npshRequired, flowM3PerS);
    }

    /** Power that the motor takes [W]; absent where not measured on both sides of this flow. */
    public OptionalDouble inputPowerW(double flowM3PerS) {
        return read(inputPower, flowM3PerS);
    }

    /**
     * Flow of the best measured efficiency [m3/s]; the curve peaks at a measured point. Absent without efficiencies.
     */
    public OptionalDouble bestEfficiencyFlowM3PerS() {
        return efficiency == null ? OptionalDouble.empty() : OptionalDouble.of(efficiency.x(efficiency.peak()));
    }

    private static OptionalDouble read(MonotoneCubic curve, double flowM3PerS) {
        return curve == null || !curve.covers(flowM3PerS) ? OptionalDouble.empty()
                : OptionalDouble.of(curve.value(flowM3PerS));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PumpCurve that && name.equals(that.name) && points.equals(that.points);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + points.hashCode();
    }

    @Override
    public String toString() {
        return name + " (" + points.size() + " points)";
    }
}
