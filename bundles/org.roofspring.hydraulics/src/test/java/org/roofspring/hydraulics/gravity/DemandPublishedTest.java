package org.roofspring.hydraulics.gravity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.pump.PumpOperation;

class DemandPublishedTest {
    private static final double GPM = 3.785411784e-3 / 60;

    /**
     * US National Standard Plumbing Code family, Table B.5.4, demand corresponding to fixture load, flush tanks: read
     * in an online copy of an adopted code (the row of 1000 from its page text).
     */
    @ParameterizedTest
    @ValueSource(strings = {"3:3", "4:4", "5:4.5", "6:5", "7:6", "8:7", "9:7.5", "10:8", "11:8.5", "12:9", "13:10",
        "14:10.5", "120:49", "140:53", "160:57", "180:61", "200:65", "225:70", "250:75", "300:85", "400:105", "500:125",
        "750:170", "1000:210"})
    void flushTanks(String row) {
        assertRow(FixtureUnits.FLUSH_TANKS, row);
    }

    /** The same table, flush valves, read. */
    @ParameterizedTest
    @ValueSource(strings = {"5:22", "6:23", "7:24", "8:25", "9:26", "10:27", "11:28", "12:29", "13:29.5", "14:30",
        "120:74", "140:78", "160:83", "180:87", "200:91", "225:95", "250:100", "300:110", "400:125", "500:140",
        "750:175"})
    void flushValves(String row) {
        assertRow(FixtureUnits.FLUSH_VALVES, row);
    }

    private static void assertRow(FixtureUnits table, String row) {
        String[] cells = row.split(":");
        assertEquals(Double.parseDouble(cells[1]), table.flowM3PerS(Double.parseDouble(cells[0])) / GPM, 1e-12);
    }

    /** More users draw more, each less: no row from memory is a slip of the pen. */
    @ParameterizedTest
    @EnumSource
    void demandRisesAndDemandForEachUnitFalls(FixtureUnits table) {
        double last = 0;
        double lastForEach = Double.MAX_VALUE;
        for (double units = table.fewest(); units <= table.most(); units += 1) {
            double flow = table.flowM3PerS(units);
            assertTrue(flow > last, "at " + units);
            assertTrue(flow / units < lastForEach * 1.03, "at " + units);
            last = flow;
            lastForEach = flow / units;
        }
        assertThrows(IllegalArgumentException.class, () -> table.flowM3PerS(table.fewest() - 0.1));
        assertThrows(IllegalArgumentException.class, () -> table.flowM3PerS(Double.NaN));
    }

    @Test
    void reachesCarryTheUnitsBeyondThem() {
        GravityTree tree = Supplies.house();
        Map<String, Double> units = new LinkedHashMap<>();
        units.put("kitchen tap", 1.5);
        units.put("shower head", 2.0);
        units.put("yard tap", 4.0);
        Map<String, Double> flows = FixtureUnits.FLUSH_TANKS.flows(tree, units);
        assertEquals(FixtureUnits.FLUSH_TANKS.flowM3PerS(7.5), flows.get("main"), 1e-15, "6.5 gpm, under 0.45 L/s");
        assertEquals(0.1e-3, flows.get("to shower"), 1e-18, "below the table: what the outlet wants");
        assertEquals(0.2e-3, flows.get("to yard"), 1e-18, "never more than the outlet wants");
    }

    /** Textbook orifice, from an independent program: 12.5 mm, 5 m, Cd 0.62 gives 0.7535 L/s (Cd from memory). */
    @Test
    void orifice() {
        HeadLoss orifice = HeadLoss.orifice(0.0125, 0.62);
        assertEquals(5, orifice.headM(0.7535e-3), 5e-4);
    }

    /**
     * Jordan 1980, from memory: 7, 10, 30 and 56 m; 10 to 30 m Akvopedia, Public standpost (after WHO and IRC), read.
     */
    @ParameterizedTest
    @CsvSource({"6.9, TOO_LOW", "7, LOW", "9.9, LOW", "10, GOOD", "30, GOOD", "30.1, HIGH", "56, HIGH", "57, TOO_HIGH",
        "-3, TOO_LOW"})
    void headOverAStandpost(double headM, StandpostHead.Verdict verdict) {
        assertEquals(verdict, StandpostHead.USUAL.judge(headM));
    }

    /**
     * Sphere Handbook (early edition), read: 20 L in at most 3 min, 6.67 L/min; the design tapstand of 0.225 L/s holds
     * it.
     */
    @Test
    void tapstandFillsAContainerInTime() {
        assertEquals(180, PumpOperation.runningTimeS(0.020, 6.67e-3 / 60), 0.1);
        assertTrue(PumpOperation.runningTimeS(0.020, 0.225e-3) < 180);
    }

    /** Definition: 60 W at half efficiency over 10 m lift 0.306 L/s; 17 L/min as of Sphere 2018, from memory. */
    @Test
    void handPumpAndBucket() {
        WaterProperties water = WaterProperties.at(20);
        assertEquals(30 / (998.2065 * 9.80665 * 10),
                ManualSupply.handPumpFlowM3PerS(ManualSupply.SUSTAINED_POWER_W, 0.5, 10, water), 1e-9);
        assertEquals(17, ManualSupply.PLANNING_HAND_PUMP_M3_PER_S * 60_000, 1e-12);
        assertEquals(10, ManualSupply.bucketTrips(0.2, 0.02));
        assertEquals(11, ManualSupply.bucketTrips(0.201, 0.02));
        assertEquals(0, ManualSupply.bucketTrips(0, 0.02));
        assertEquals(100 + 100, ManualSupply.bucketTripS(0.02, 0.2e-3, 50, 1), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> ManualSupply.handPumpFlowM3PerS(60, 0.5, 0, water));
    }
}
