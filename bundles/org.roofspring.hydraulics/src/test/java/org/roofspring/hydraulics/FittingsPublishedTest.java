package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FittingsPublishedTest {
    /**
     * fT of schedule 40 steel by size: Crane TP 410 from memory, and what the open library "fluids" returns. Columns:
     * true bore in mm (ASME B36.10, from memory), Crane, library.
     */
    @ParameterizedTest
    @CsvSource({
        "15.80, 0.026, 0.0256", "20.93, 0.024, 0.0237", "26.64, 0.022, 0.0223", "35.05, 0.021, 0.0208",
        "40.89, 0.020, 0.0200", "52.50, 0.019, 0.0188", "62.71, 0.018, 0.0181", "77.93, 0.017, 0.0172",
        "102.26, 0.016, 0.0162"})
    void turbulentFactor(double boreMm, double crane, double library) {
        double factor = Fittings.turbulentFactor(boreMm / 1000);
        assertEquals(crane, factor, 0.0006);
        assertEquals(library, factor, 0.012 * library);
    }

    /**
     * Crane TP 410, Example 7.2, as quoted by the documentation of the open library "fluids": Kv 500 in 154 mm, f
     * 0.015, gives K 3.6, L/D 240 and 37.0 m of pipe.
     */
    @Test
    void craneValveCoefficient() {
        double k = Fittings.kFromKv(500, 0.154);
        assertEquals(3.6, k, 0.005);
        assertEquals(240, Fittings.equivalentLengthM(k, 1, 0.015), 0.3);
        assertEquals(37.0, Fittings.equivalentLengthM(k, 0.154, 0.015), 0.08);
    }

    /** Crane TP 410 (2009), as quoted by the source of the open library "fluids"; tees from memory. N, or K itself. */
    @ParameterizedTest
    @CsvSource({
        "GATE_VALVE, 8", "GLOBE_VALVE, 340", "ANGLE_VALVE, 150", "ANGLE_VALVE_STRAIGHTENED, 55", "BALL_VALVE, 3",
        "PLUG_VALVE_STRAIGHT, 18", "PLUG_VALVE_THREE_WAY_RUN, 30", "PLUG_VALVE_THREE_WAY_BRANCH, 90",
        "SWING_CHECK_ANGLED, 100", "SWING_CHECK_STRAIGHT, 50", "LIFT_CHECK_STRAIGHT, 600", "LIFT_CHECK_ANGLED, 55",
        "FOOT_VALVE_POPPET, 420", "FOOT_VALVE_HINGED, 75", "ELBOW_45, 16", "ELBOW_90, 30", "CLOSE_RETURN, 50",
        "TEE_RUN, 20", "TEE_BRANCH, 60", "ENTRANCE_SHARP, 0.5", "ENTRANCE_PROJECTING, 0.78", "EXIT, 1.0"})
    void coefficients(FittingType type, double number) {
        assertEquals(number, type.number());
        double expected = type.timesTurbulentFactor() ? number * 0.0172 : number;
        assertEquals(expected, type.k(0.07793), 0.012 * expected);
    }

    /** Crane TP 410 (2009), as quoted by the source of the open library "fluids": rounded entrances. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "0.02, 0.28", "0.04, 0.24", "0.06, 0.15", "0.10, 0.09", "0.15, 0.04", "0.5, 0.04",
        "0.08, 0.12"})
    void roundedEntrances(double radiusOverBore, double k) {
        assertEquals(k, Fittings.roundedEntranceK(radiusOverBore), 1e-12);
    }

    /** Borda-Carnot from the balance of momentum: (V1 - V2)^2 / 2g. */
    @Test
    void suddenChanges() {
        double v1 = 2;
        double v2 = v1 * 0.03 * 0.03 / (0.05 * 0.05);
        assertEquals((v1 - v2) * (v1 - v2) / (v1 * v1), Fittings.suddenWideningK(0.03, 0.05), 1e-15);
        assertEquals(1, Fittings.suddenWideningK(1e-4, 10), 1e-9, "into a tank: all velocity head");
        assertEquals(0.5, Fittings.suddenNarrowingK(10, 1e-4), 1e-9, "out of a tank: a sharp entrance");
        assertEquals(0, Fittings.suddenNarrowingK(0.05, 0.05));
    }

    @Test
    void restatingKeepsTheHead() {
        double flow = 0.003;
        double head = new PipeRun(0.05, 0, 0, 4).lossAt(flow, WaterProperties.at(15)).fittingLossM();
        double other = Fittings.restatedK(4, 0.05, 0.08);
        assertEquals(head, new PipeRun(0.08, 0, 0, other).lossAt(flow, WaterProperties.at(15)).fittingLossM(), 1e-14);
    }

    @Test
    void equivalentLengthTakesTheSameHead() {
        WaterProperties water = WaterProperties.at(20);
        PipeLoss loss = new PipeRun(0.04, 30, 1.5e-6, 7).lossAt(0.001, water);
        double lengthM = Fittings.equivalentLengthM(7, 0.04, loss.frictionFactor());
        assertEquals(loss.fittingLossM(), new PipeRun(0.04, lengthM, 1.5e-6, 0).lossAt(0.001, water).frictionLossM(),
                1e-14);
    }

    @Test
    void sumsUp() {
        double bore = 0.0409;
        double sum = Fittings.sumK(List.of(new FittingCount(FittingType.ELBOW_90, 3),
                new FittingCount(FittingType.EXIT, 1), new FittingCount(FittingType.GATE_VALVE, 0)), bore);
        assertEquals(90 * Fittings.turbulentFactor(bore) + 1, sum, 1e-14);
        assertEquals(0, Fittings.sumK(List.of(), bore));
    }

    @ParameterizedTest
    @EnumSource
    void everyKindIsDescribedAndRefusesNoBore(FittingType type) {
        assertTrue(type.description().length() > 5);
        assertEquals("bore of a fitting must be from 0.005 m to 1 m, not 0 m",
                assertThrows(IllegalArgumentException.class, () -> type.k(0)).getMessage());
    }
}
