package org.roofspring.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.roofspring.drainage.WaterSurface.Control;
import org.roofspring.drainage.WaterSurface.Station;

class GutterPropertyTest {

    @Provide
    Arbitrary<GutterSection> sections() {
        Arbitrary<Double> widths = Arbitraries.doubles().between(0.05, 0.4).ofScale(6);
        Arbitrary<Double> shares = Arbitraries.doubles().between(0, 1).ofScale(6);
        Arbitrary<Double> aspects = Arbitraries.doubles().between(0.25, 1.2).ofScale(6);
        return Combinators.combine(Arbitraries.integers().between(0, 2), widths, shares, aspects)
                .as((kind, width, share, aspect) -> switch (kind) {
                    case 0 -> new HalfRoundSection(width, width * aspect);
                    case 1 -> new RectangularSection(width, width * aspect);
                    default -> new TrapezoidalSection(width, width * share, width * aspect);
                });
    }

    @Property(tries = 200)
    void sectionFunctionsAreDerivativesOfEachOther(@ForAll("sections") GutterSection section,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.999) double share) {
        double depth = share * section.depthM();
        double step = depth * 1e-5;
        double low = Math.max(0, depth - step);
        double high = Math.min(section.depthM(), depth + step);
        double width = section.surfaceWidthM(depth);
        double area = section.areaM2(depth);
        assertEquals(width, (section.areaM2(high) - section.areaM2(low)) / (high - low), 1e-4 * width);
        assertEquals(area, (section.firstMomentM3(high) - section.firstMomentM3(low)) / (high - low), 1e-4 * area);
        double edge = (section.surfaceWidthM(high) - section.surfaceWidthM(low)) / (high - low) / 2;
        double slant = (section.wettedPerimeterM(high) - section.wettedPerimeterM(low)) / (high - low) / 2;
        assertEquals(Math.hypot(1, edge), slant, 1e-3 * slant);
    }

    /** The series for shallow water joins the closed form. */
    @Example
    void shallowHalfRoundIsContinuous() {
        HalfRoundSection section = new HalfRoundSection(0.1);
        double join = 0.05 * (1 - Math.cos(0.2));
        double below = join * (1 - 1e-12);
        double above = join * (1 + 1e-12);
        assertEquals(section.areaM2(above), section.areaM2(below), 1e-11 * section.areaM2(above));
        assertEquals(section.firstMomentM3(above), section.firstMomentM3(below), 1e-11 * section.firstMomentM3(above));
    }

    /** Whatever the gutter and the flow there is one surface, in flow order, that obeys momentum as a whole. */
    @Property(tries = 150)
    void surfaceObeysMomentum(@ForAll("sections") GutterSection section,
            @ForAll @Scale(6) @DoubleRange(min = 20, max = 800) double lengthInDepths,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.1) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 0.03) double n,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 3) double load,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 2) double outlet) {
        double lengthM = lengthInDepths * section.depthM();
        Gutter gutter = new Gutter(section, lengthM, slope, n);
        double flow = load * StandardGutter.frictionlessM3PerS(section);
        WaterSurface surface = WaterSurface.of(gutter, flow, outlet * section.depthM());
        List<Station> stations = surface.stations();
        assertEquals(0, stations.getFirst().distanceM());
        assertEquals(lengthM, stations.getLast().distanceM());
        double pushed = 0;
        double scale = 0;
        for (int i = 1; i < stations.size(); i++) {
            Station before = stations.get(i - 1);
            Station after = stations.get(i);
            assertTrue(after.distanceM() >= before.distanceM());
            assertTrue(after.depthM() > 0 && after.depthM() < 20);
            double step = after.distanceM() - before.distanceM();
            pushed += step * (drive(gutter, before) + drive(gutter, after)) / 2;
            scale = Math.max(scale, force(section, after));
        }
        double change = force(section, stations.getLast()) - force(section, stations.getFirst());
        assertEquals(change, pushed, 2e-3 * scale);
    }

    private static double area(GutterSection section, double depth) {
        double brim = section.depthM();
        return depth <= brim ? section.areaM2(depth) : section.fullAreaM2() + (depth - brim) * section.widthM();
    }

    private static double force(GutterSection section, Station station) {
        double brim = section.depthM();
        double above = Math.max(0, station.depthM() - brim);
        double still = section.firstMomentM3(Math.min(brim, station.depthM()))
                + above * (section.fullAreaM2() + above * section.widthM() / 2) * (above > 0 ? 1 : 0);
        return still + station.flowM3PerS() * station.flowM3PerS() / (9.80665 * area(section, station.depthM()));
    }

    private static double drive(Gutter gutter, Station station) {
        GutterSection section = gutter.section();
        double depth = station.depthM();
        double area = area(section, depth);
        double perimeter = section.wettedPerimeterM(Math.min(depth, section.depthM()))
                + 2 * Math.max(0, depth - section.depthM());
        double friction = Math.pow(gutter.manningN() * station.flowM3PerS() / area, 2)
                * Math.pow(area / perimeter, -4.0 / 3);
        return area * (gutter.slopeRatio() - friction);
    }

    /** Fast flow is followed by slow flow only through a jump, and never the other way round downstream of it. */
    @Property(tries = 60)
    void slowFollowsFastOnlyAtAJump(@ForAll("sections") GutterSection section,
            @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 0.1) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 3) double outlet) {
        Gutter gutter = new Gutter(section, 15, slope);
        double flow = 0.7 * StandardGutter.frictionlessM3PerS(section);
        WaterSurface surface = WaterSurface.of(gutter, flow, outlet * section.depthM());
        for (Station station : surface.stations()) {
            boolean beforeControl = station.distanceM() < surface.controlDistanceM() - 1e-9;
            boolean afterJump = station.distanceM() > surface.jumpDistanceM().orElse(1e9) + 1e-9;
            if (beforeControl || afterJump) {
                assertTrue(station.froude() <= 1 + 1e-5, station::toString);
            } else if (surface.control() == Control.WITHIN
                    && station.distanceM() < surface.jumpDistanceM().orElse(1e9) - 1e-9) {
                assertTrue(station.froude() >= 1 - 1e-5, station::toString);
            }
        }
    }

    /** Without friction a level rectangle is the square root of 3 times as deep at its closed end as at its outlet. */
    @Property(tries = 30)
    void smoothLevelRectangleTendsToTheClosedForm(@ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.3) double widthM,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 3) double lengthM,
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 1) double load) {
        RectangularSection section = new RectangularSection(widthM, widthM / 2);
        double flow = load * StandardGutter.frictionlessM3PerS(section);
        assertEquals(Math.sqrt(3), smoothDepthRatio(section, lengthM, flow), 1e-4);
        assertEquals(Math.pow(1 / Math.sqrt(3), 1.5) * widthM * Math.sqrt(9.80665 * Math.pow(widthM / 2, 3)),
                StandardGutter.frictionlessM3PerS(section), 1e-12);
    }

    /** The factor of a brim-full half-round, from momentum: A^2/B + A z at critical depth = 2 r^3 / 3. */
    @Property(tries = 30)
    void smoothLevelHalfRoundTendsToItsFactor(@ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.3) double widthM,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 3) double lengthM) {
        HalfRoundSection section = new HalfRoundSection(widthM);
        double flow = StandardGutter.frictionlessM3PerS(section);
        assertEquals(halfRoundFactor(), smoothDepthRatio(section, lengthM, flow), 1e-4);
        assertEquals(1.5289, halfRoundFactor(), 5e-5);
    }

    /** By bisection on the half-angle, apart from the product's code. */
    private static double halfRoundFactor() {
        double low = 0.1;
        double high = Math.PI / 2 - 1e-9;
        for (int i = 0; i < 80; i++) {
            double a = (low + high) / 2;
            double area = a - Math.sin(a) * Math.cos(a);
            double force = area * area / (2 * Math.sin(a)) + 2.0 / 3 * Math.pow(Math.sin(a), 3) - area * Math.cos(a);
            if (force < 2.0 / 3) {
                low = a;
            } else {
                high = a;
            }
        }
        return 1 / (1 - Math.cos(low));
    }

    /** Closed-end over outlet depth with friction extrapolated away: its effect goes with the square of roughness. */
    private static double smoothDepthRatio(GutterSection section, double lengthM, double flow) {
        double rough = depthRatio(section, lengthM, flow, 0.002);
        double smooth = depthRatio(section, lengthM, flow, 0.001);
        assertTrue(rough > smooth);
        return smooth - (rough - smooth) / 3;
    }

    private static double depthRatio(GutterSection section, double lengthM, double flow, double n) {
        List<Station> stations = WaterSurface.of(new Gutter(section, lengthM, 0, n), flow).stations();
        return stations.getFirst().depthM() / stations.getLast().depthM();
    }

    /** A long steep gutter carries what Manning's formula says, short of a loss that goes with one over its length. */
    @Property(tries = 10)
    void longSteepGutterTendsToManning(@ForAll("sections") GutterSection section,
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.1) double slope) {
        double depths = section.depthM();
        GutterCapacity half = GutterCapacity.of(new Gutter(section, 500 * depths, slope));
        GutterCapacity whole = GutterCapacity.of(new Gutter(section, 1000 * depths, slope));
        double uniform = whole.uniformFullM3PerS().orElseThrow();
        assertTrue(Math.abs(whole.variedFlowM3PerS() - uniform) < Math.abs(half.variedFlowM3PerS() - uniform));
        assertEquals(uniform, 2 * whole.variedFlowM3PerS() - half.variedFlowM3PerS(), 0.03 * uniform);
    }

    @Example
    void hundredMillimetreHalfRoundAtOnePercentCanRunSupercritical() {
        Gutter gutter = new Gutter(new HalfRoundSection(0.1), 30, 0.01);
        WaterSurface surface = WaterSurface.of(gutter, 1.5e-3);
        assertEquals(Control.WITHIN, surface.control());
        assertTrue(surface.runsSupercritical());
        assertTrue(surface.controlDistanceM() > 0 && surface.controlDistanceM() < 30);
        Gutter level = new Gutter(new HalfRoundSection(0.1), 30, 0);
        assertEquals(Control.FREE_OUTFALL, WaterSurface.of(level, 5e-4).control());
        assertFalse(WaterSurface.of(level, 5e-4).runsSupercritical());
    }

    @Property(tries = 12)
    void capacityGrowsWithSlopeAndSmoothness(@ForAll("sections") GutterSection section,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 40) double lengthM,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double slope) {
        GutterCapacity base = GutterCapacity.of(new Gutter(section, lengthM, slope));
        GutterCapacity steeper = GutterCapacity.of(new Gutter(section, lengthM, slope + 0.002));
        GutterCapacity rougher = GutterCapacity.of(new Gutter(section, lengthM, slope, 0.015));
        assertTrue(steeper.variedFlowM3PerS() > base.variedFlowM3PerS());
        assertTrue(steeper.capacityM3PerS() >= base.capacityM3PerS() * (1 - 1e-9));
        assertTrue(rougher.variedFlowM3PerS() < base.variedFlowM3PerS());
        double brim = section.depthM();
        assertEquals(brim, base.brimFullSurface().deepest().depthM(), 1e-6 * brim);
    }

    /** The headline never leaps as the slope passes from level to sloping. */
    @Property(tries = 8)
    void headlineIsContinuousInSlope(@ForAll("sections") GutterSection section,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 40) double lengthM) {
        for (double slope : new double[] {0.003, 0.01}) {
            double below = GutterCapacity.of(new Gutter(section, lengthM, slope - 1e-7)).capacityM3PerS();
            double above = GutterCapacity.of(new Gutter(section, lengthM, slope + 1e-7)).capacityM3PerS();
            assertEquals(below, above, 1e-3 * above);
        }
        GutterCapacity level = GutterCapacity.of(new Gutter(section, lengthM, 0.003));
        GutterCapacity sloping = GutterCapacity.of(new Gutter(section, lengthM, 0.01));
        assertEquals(level.standardM3PerS(), level.capacityM3PerS(), 1e-15);
        assertEquals(sloping.variedFlowM3PerS(), sloping.capacityM3PerS(), 1e-15);
    }

    @Property(tries = 50)
    void lengthFactorOnlyFallsWhenLevelAndOnlyRisesWithSlope(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 900) double length,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.02) double slope) {
        assertTrue(StandardGutter.lengthFactor(length + 20, 0) <= StandardGutter.lengthFactor(length, 0));
        assertTrue(StandardGutter.lengthFactor(length, slope + 0.001) >= StandardGutter.lengthFactor(length, slope));
    }
}
