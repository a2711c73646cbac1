package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples from print, and regression rows that were computed from the same formulas by other means. */
class TankBalancePublishedTest {

    // Fair, Geyer and Okun, Water and Wastewater Engineering, 3rd ed., p. 36, Example 2.1, Table 2.2 (read there).
    // Million US gallons a square mile, month by month; any volume unit serves.
    private static final double[] FGO_INFLOW = {94, 122, 45, 5, 5, 2, 0, 2, 16, 7, 72, 92};
    private static final double[] FGO_DEMAND = {27, 27, 30, 30, 33, 30, 27, 27, 30, 36, 33, 30};
    private static final double[] FGO_STORE = {67, 162, 176, 151, 123, 95, 68, 43, 29, 0, 39, 101, 168, 176, 176, 151,
        123, 95, 68, 43, 29, 0, 39, 101};
    private static final double[] FGO_WASTE = {0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 87, 15, 0, 0, 0, 0, 0, 0, 0, 0,
        0};

    @Test
    void fairGeyerOkunStorageRequiredIs176() {
        assertEquals(176, SequentPeak.of(FGO_INFLOW, FGO_DEMAND, 1).volumeM3());
        SequentPeak twice = SequentPeak.of(FGO_INFLOW, FGO_DEMAND, 2);
        assertEquals(176, twice.volumeM3());
        // The printed peak is month 3 and the trough month 10: the drawdown runs from month 4 to month 10.
        assertEquals(3, twice.firstDay());
        assertEquals(9, twice.lastDay());
        assertTrue(twice.sustainable());
    }

    @Test
    void fairGeyerOkunStoreAndWasteMonthByMonth() {
        BalanceResult result = TankBalance.run(twice(FGO_INFLOW), twice(FGO_DEMAND),
                new StorageDesign(176, 0, YieldRule.YBS));
        assertArrayEquals(FGO_STORE, result.endVolumesM3());
        double[] waste = new double[24];
        double before = 0;
        for (int month = 0; month < 24; month++) {
            double inflow = FGO_INFLOW[month % 12];
            waste[month] = before + inflow - result.suppliedM3(month) - result.endVolumeM3(month);
            before = result.endVolumeM3(month);
        }
        assertArrayEquals(FGO_WASTE, waste);
        assertEquals(103, result.totals().spilledM3());
        assertEquals(24, result.counts().fullDays());
    }

    @Test
    void fairGeyerOkunSmallestTankThatNeverFailsIs176() {
        SizingAnswer.Sized sized = assertInstanceOf(SizingAnswer.Sized.class,
                TankSizing.smallestTank(FGO_INFLOW, FGO_DEMAND, YieldRule.YBS, 1, () -> false));
        assertEquals(176, sized.volumeM3());
    }

    // Computed from the stated formulas (regression only). The first row's data is in the style of Loucks and van Beek,
    // Water Resources Systems Planning and Management, from memory.
    @Test
    void sequentPeakWorkedRows() {
        double[] nine = {1, 3, 3, 5, 8, 6, 7, 2, 1};
        assertEquals(7.5, SequentPeak.of(nine, TankBalance.constantDemand(3.5, 9), 2).volumeM3());

        double[] six = {6, 10, 9, 5, 4, 0};
        double[] sixDemand = {7, 0, 7, 8, 4, 8};
        assertEquals(11, SequentPeak.of(six, sixDemand, 1).volumeM3());
        assertEquals(12, SequentPeak.of(six, sixDemand, 2).volumeM3());

        double[] twelve = {382.8, 303.5, 290.1, 518.7, 741.6, 950.5, 1123.2, 1200.4, 973.1, 671.7, 498.9, 347.1};
        assertEquals(728.57, SequentPeak.of(twelve, TankBalance.constantDemand(555.9167, 12), 1).volumeM3(), 0.005);
        assertEquals(1659.7, SequentPeak.of(twelve, TankBalance.constantDemand(666.8, 12), 2).volumeM3(), 0.05);
    }

    // Computed from the stated formulas (regression only).
    @Test
    void tenStepToy() {
        double[] inflow = {0, 100, 0, 40, 500, 0, 0, 0, 60, 0};
        BalanceResult yas = TankBalance.run(inflow, 50, new StorageDesign(150, 80, YieldRule.YAS));
        assertArrayEquals(new double[] {50, 30, 50, 50, 40, 50, 50, 10, 0, 50}, yas.suppliedM3());
        assertEquals(390, yas.totals().spilledM3());
        assertEquals(0.76, yas.volumetricReliability().orElseThrow());
        assertEquals(0.60, yas.timeReliability().orElseThrow());

        BalanceResult ybs = TankBalance.run(inflow, 50, new StorageDesign(150, 80, YieldRule.YBS));
        assertArrayEquals(new double[] {50, 50, 50, 50, 50, 50, 50, 50, 50, 10}, ybs.suppliedM3());
        assertEquals(320, ybs.totals().spilledM3());
        assertEquals(0.92, ybs.volumetricReliability().orElseThrow());
        assertEquals(0.90, ybs.timeReliability().orElseThrow());
    }

    // Computed from the stated formulas with an independent script on the same file (regression only), litres.
    @ParameterizedTest
    @CsvSource({
        "100, 0.8,  0,    5000, 200, YAS, 226448,   123512,  4120, 0.774976, 1112",
        "100, 0.8,  0,    5000, 200, YBS, 229048,   120712,  4320, 0.783874, 1126",
        "100, 0.8,  0,   10000, 150, YAS, 205664,   139046,  9370, 0.938462, 1365",
        "100, 0.8,  0,   10000, 150, YBS, 207014,   137546,  9520, 0.944622, 1374",
        "60,  0.85, 0.5,  3000, 100, YAS, 118695.5, 89143.8, 2551, 0.812426, 1174"})
    void realRecordToThePrintedDigit(double areaM2, double runoff, double lossMm, double capacityL, double demandL,
            String rule, String yieldL, String spillL, String endL, String reliability, int fullDays)
            throws IOException {
        double[] inflow = new CatchmentInflow(areaM2, runoff, lossMm).inflowM3(RealRecord.depthMm());
        BalanceResult result = TankBalance.run(inflow, demandL / 1000,
                new StorageDesign(capacityL / 1000, 0, rule.equals("YAS") ? YieldRule.YAS : YieldRule.YBS));
        assertEquals(1461, result.counts().days());
        assertEquals(yieldL, printed(result.totals().suppliedM3(), yieldL));
        assertEquals(spillL, printed(result.totals().spilledM3(), spillL));
        assertEquals(endL, printed(result.totals().endVolumeM3(), endL));
        assertEquals(reliability, String.format(Locale.ROOT, "%.6f", result.volumetricReliability().orElseThrow()));
        assertEquals(fullDays, result.counts().fullDays());
        assertEquals(fullDays / 1461.0, result.timeReliability().orElseThrow());
    }

    // Computed (regression only): first row's demand, one and two passes.
    @Test
    void realRecordSequentPeak() throws IOException {
        double[] inflow = new CatchmentInflow(100, 0.8, 0).inflowM3(RealRecord.depthMm());
        double[] demand = TankBalance.constantDemand(0.2, inflow.length);
        assertEquals(24.376, SequentPeak.of(inflow, demand, 1).volumeM3());
        assertEquals(24.376, SequentPeak.of(inflow, demand, 2).volumeM3());
    }

    private static String printed(double volumeM3, String like) {
        int digits = like.contains(".") ? like.length() - like.indexOf('.') - 1 : 0;
        return String.format(Locale.ROOT, "%." + digits + "f", volumeM3 * 1000);
    }

    private static double[] twice(double[] values) {
        double[] both = new double[2 * values.length];
        System.arraycopy(values, 0, both, 0, values.length);
        System.arraycopy(values, 0, both, values.length, values.length);
        return both;
    }
}
