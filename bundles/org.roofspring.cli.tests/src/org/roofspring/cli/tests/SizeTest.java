package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

class SizeTest {
    private static final double ROOF_M2 = 100;
    private static final double RUNOFF = 0.8;

    private static String catchment(double demandL) {
        return " --rain " + DemoData.realRain() + " --roof " + ROOF_M2 + "m2 --runoff " + RUNOFF + " --demand "
                + demandL + "L/d";
    }

    /** Sequent peak of the real record at 200 L/d by an independent script (computed): 24,376 L, one and two cycles. */
    @Test
    void sequentPeak() {
        Answer size = Asked.answer("size" + catchment(200) + " --target 95%");
        assertEquals(24_376, size.number("sequentPeakVolume", "m3") * 1000, 1e-6);
    }

    /** The smallest tank by a plain loop over doubles, read from the file by splitting lines: nothing is shared. */
    @ParameterizedTest
    @CsvSource({"200,0.95,yas", "200,1,yas", "200,0.8,ybs", "150,0.99,yas", "150,1,ybs", "50,0.5,yas"})
    void agreesWithAPlainLoop(double demandL, double target, String rule) throws IOException {
        double[] inflowL = inflowL();
        double enough = 1e6;
        double tooSmall = 0;
        while (enough - tooSmall > 1e-3) {
            double middle = (enough + tooSmall) / 2;
            if (fullDaysAfterWarmUp(inflowL, demandL, middle, rule) >= target * inflowL.length) {
                enough = middle;
            } else {
                tooSmall = middle;
            }
        }
        Answer size = Asked.answer("size" + catchment(demandL) + " --target " + target + " --rule " + rule);
        assertEquals(enough, size.number("requiredVolume", "m3") * 1000, 1e-3 * enough);
        assertTrue(size.number("timeReliability") >= target);
    }

    private static double[] inflowL() throws IOException {
        List<String> lines = Files.readAllLines(DemoData.realRain());
        return lines.subList(1, lines.size()).stream()
                .mapToDouble(line -> ROOF_M2 * RUNOFF * Double.parseDouble(line.split(",")[1])).toArray();
    }

    private static int fullDaysAfterWarmUp(double[] inflow, double demand, double capacity, String rule) {
        double volume = 0;
        int full = 0;
        for (int pass = 0; pass < 2; pass++) {
            full = 0;
            for (double q : inflow) {
                double y = Math.min(demand, rule.equals("yas") ? volume : volume + q);
                volume = Math.min(volume + q - y, rule.equals("yas") ? capacity - y : capacity);
                full += y >= demand - 1e-9 ? 1 : 0;
            }
        }
        return full;
    }

    /** The tank that was found, run by the other command from the volume that a first pass leaves. */
    @Test
    void storageConfirmsTheTankAndRefusesASmallerOne() {
        double required = Asked.answer("size" + catchment(200) + " --target 95%").number("requiredVolume", "m3");
        assertTrue(warmReliability(required) >= 0.95);
        assertTrue(warmReliability(required * 0.999) < 0.95, "a tank smaller by a thousandth must miss the target");
    }

    private static double warmReliability(double tankM3) {
        String tank = " --tank " + BigDecimal.valueOf(tankM3).toPlainString() + "m3";
        double start = Asked.answer("storage" + catchment(200) + tank).number("endVolume", "m3");
        return Asked.answer("storage" + catchment(200) + tank + " --start " + BigDecimal.valueOf(start).toPlainString()
                + "m3").number("timeReliability");
    }

    @Test
    void demandAboveInflowHasNoAnswer() {
        String line = Asked.of("size" + catchment(300) + " --target 95%").noAnswer();
        assertTrue(line.contains("more than the inflow"), line);
    }

    @Test
    void noDemandHasNoAnswer() {
        assertTrue(Asked.of("size" + catchment(0) + " --target 95%").noAnswer().contains("Nothing is demanded"));
    }
}
