package org.roofspring.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gutters against published figures; each says where its figure was seen. */
class GutterPublishedTest {
    private static final double LITRES = 1000;

    /** READ-2: 75 mm/h is 0.021 L/s a square metre, 150 mm/h is 0.042 (MGMA guidance document GD03), three decimals. */
    @ParameterizedTest
    @CsvSource({"75, 0.021", "150, 0.042"})
    void intensityAsFlowPerArea(double intensityMmPerH, double litresPerS) {
        assertEquals(litresPerS, RoofRunoff.flowM3PerS(1, intensityMmPerH) * LITRES, 5e-4);
    }

    /** CALC, by definition of the rational method: 100 m2, C 0.9, 150 mm/h. */
    @Test
    void rationalMethod() {
        assertEquals(3.75, RoofRunoff.flowM3PerS(100, 150, 0.9) * LITRES, 1e-12);
    }

    /** MEM: UK Approved Document H, table 2, flow capacity of true half-round gutters; agrees within 1 %. */
    @ParameterizedTest
    @CsvSource({"0.075, 0.38", "0.100, 0.78", "0.115, 1.11", "0.125, 1.37", "0.150, 2.16"})
    void levelHalfRoundAsTabulated(double widthM, double litresPerS) {
        HalfRoundSection section = new HalfRoundSection(widthM);
        double capacity = GutterCapacity.of(new Gutter(section, 50 * section.depthM(), 0)).capacityM3PerS() * LITRES;
        assertEquals(litresPerS, capacity, 0.01 * litresPerS);
    }

    /** CALC from the formula of EN 12056-3:2000 (MEM); regression. */
    @ParameterizedTest
    @CsvSource({"0.075, 0.379", "0.100, 0.778", "0.112, 1.033", "0.125, 1.359", "0.150, 2.143"})
    void levelHalfRoundByFormula(double widthM, double litresPerS) {
        Gutter gutter = new Gutter(new HalfRoundSection(widthM), 1, 0);
        assertEquals(litresPerS, StandardGutter.capacityM3PerS(gutter) * LITRES, 5e-4);
    }

    /**
     * MEM: EN 12056-3:2000, {@code 3.48e-5 A^1.25} for a rectangle before depth and shape factors, here at a depth of
     * the width. CALC: like {@code 2.78e-5 A^1.25} for a half-round, it is 0.80 of the frictionless flow.
     */
    @Test
    void levelRectangleByFormula() {
        RectangularSection square = new RectangularSection(0.1, 0.1);
        assertEquals(3.48, StandardGutter.nominalM3PerS(square) * LITRES, 1e-9);
        assertEquals(0.80, StandardGutter.nominalM3PerS(square) / StandardGutter.frictionlessM3PerS(square), 2e-3);
        HalfRoundSection round = new HalfRoundSection(0.1);
        assertEquals(0.80, StandardGutter.nominalM3PerS(round) / StandardGutter.frictionlessM3PerS(round), 2e-3);
    }

    /** READ-2: "100 mm half-round, 37 m2", at the 75 mm/h of Approved Document H (in a book chapter's abstract). */
    @Test
    void hundredMillimetreHalfRoundServes37SquareMetres() {
        double flow = RoofRunoff.flowM3PerS(37, 75);
        double utilisation = GutterCapacity.of(new Gutter(new HalfRoundSection(0.1), 2.5, 0)).utilisation(flow);
        assertEquals(1, utilisation, 0.01);
    }

    /** READ-2: length factors of a gutter supplier's page that cites EN 12056-3. */
    @ParameterizedTest
    @CsvSource({"10, 1", "50, 1", "100, 0.93", "150, 0.86", "200, 0.80"})
    void lengthFactor(double lengthInDepths, double factor) {
        assertEquals(factor, StandardGutter.lengthFactor(lengthInDepths, 0), 1e-12);
        assertEquals(factor, StandardGutter.lengthFactor(lengthInDepths, 0.003), 1e-12);
    }

    /** READ-2: corner factors of the same page. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.8", "1.99, 0.8", "2, 0.9", "4, 0.9", "4.01, 1"})
    void cornerFactor(double distanceM, double factor) {
        assertEquals(factor, StandardGutter.cornerRatio(distanceM), 0);
    }

    /** CALC from Manning's formula: a 100 mm half-round running full, n 0.012; regression. */
    @ParameterizedTest
    @CsvSource({"0.003, 1.53", "0.005, 1.98", "0.010, 2.80"})
    void uniformFlow(double slopeRatio, double litresPerS) {
        Gutter gutter = new Gutter(new HalfRoundSection(0.1), 10, slopeRatio, 0.012);
        assertEquals(litresPerS, GutterCapacity.of(gutter).uniformFullM3PerS().orElseThrow() * LITRES, 5e-3);
    }

    /**
     * MEM: upstream depth is the square root of 3 times the critical depth at the outfall of a level frictionless
     * rectangular gutter (V. T. Chow, Open-Channel Hydraulics, 1959; F. M. Henderson, Open Channel Flow, 1966).
     * The flow is CALC: 0.1 m wide, 0.05 m deep at the closed end.
     */
    @Test
    void levelFrictionlessRectangle() {
        assertEquals(1.536, StandardGutter.frictionlessM3PerS(new RectangularSection(0.1, 0.05)) * LITRES, 5e-4);
    }
}
