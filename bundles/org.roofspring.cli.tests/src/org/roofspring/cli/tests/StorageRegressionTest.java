package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

class StorageRegressionTest {
    private static final int DAYS = 1461;

    @TempDir
    Path folder;

    /**
     * The real record through the balance of Jenkins et al. 1978, by an independent script. Regression values, computed
     * and not published: yield, spill and volume at the end [L], volumetric reliability, full days.
     */
    @ParameterizedTest
    @CsvSource({"100,0.8,0,5000,200,yas,226448,123512,4120,0.774976,1112",
        "100,0.8,0,5000,200,ybs,229048,120712,4320,0.783874,1126",
        "100,0.8,0,10000,150,yas,205664,139046,9370,0.938462,1365",
        "100,0.8,0,10000,150,ybs,207014,137546,9520,0.944622,1374",
        "60,0.85,0.5,3000,100,yas,118695.5,89143.8,2551,0.812426,1174"})
    void realRecord(double roofM2, double runoff, double lossMm, double tankL, double demandL, String rule,
            double yieldL, double spillL, double endL, double volumetric, int fullDays) {
        Answer storage = Asked.answer("storage --rain " + DemoData.realRain() + " --roof " + roofM2 + "m2 --runoff "
                + runoff + " --loss " + lossMm + "mm --tank " + tankL + "L --demand " + demandL + "L/d --rule " + rule);
        assertEquals(yieldL, litres(storage, "supplied"), 1e-6);
        assertEquals(spillL, litres(storage, "spilled"), 0.05 + 1e-6, "printed to a tenth of a litre at best");
        assertEquals(endL, litres(storage, "endVolume"), 0.5, "printed to the litre");
        assertEquals(volumetric, storage.number("volumetricReliability"), 0.5e-6);
        assertEquals(fullDays, storage.number("fullDays", "d"));
        assertEquals((double) fullDays / DAYS, storage.number("timeReliability"), 1e-15);
        assertEquals(0, litres(storage, "inflow") - yieldL - litres(storage, "spilled")
                - litres(storage, "endVolume"), 1e-6, "what came in is drawn, spilled or still there");
    }

    /** Ten days whose balance was worked by an independent script (computed, not published). */
    @ParameterizedTest
    @CsvSource({"yas,380,390,0.76,0.60", "ybs,460,320,0.92,0.90"})
    void tenDays(String rule, double yieldL, double spillL, double volumetric, double time) throws IOException {
        Answer storage = Asked.answer("storage --rain " + tenDays() + " --roof 1m2 --runoff 1 --tank 150L --start 80L"
                + " --demand 50L/d --rule " + rule);
        assertEquals(yieldL, litres(storage, "supplied"), 1e-9);
        assertEquals(spillL, litres(storage, "spilled"), 1e-9);
        assertEquals(volumetric, storage.number("volumetricReliability"), 1e-12);
        assertEquals(time, storage.number("timeReliability"), 1e-12);
    }

    /** A millimetre on a square metre is a litre, so the inflow is the rain itself. */
    private Path tenDays() throws IOException {
        StringBuilder text = new StringBuilder("date,precipitation[mm]\n");
        double[] inflowL = {0, 100, 0, 40, 500, 0, 0, 0, 60, 0};
        for (int day = 0; day < inflowL.length; day++) {
            text.append(LocalDate.of(2001, 1, 1).plusDays(day)).append(',').append(inflowL[day]).append('\n');
        }
        return Files.writeString(folder.resolve("ten-days.csv"), text);
    }

    @Test
    void countsShortageAndEmptyDays() throws IOException {
        Answer storage = Asked.answer("storage --rain " + tenDays()
                + " --roof 1m2 --runoff 1 --tank 150L --start 80L --demand 50L/d");
        // by hand: Y = 50 30 50 50 40 50 50 10 0 50, V' = 30 100 50 40 110 60 10 0 60 10
        assertEquals(1, storage.number("emptyDays", "d"));
        assertEquals(2, storage.number("longestShortage", "d"));
        assertEquals(10, litres(storage, "endVolume"), 1e-9);
    }

    @Test
    void defaultsAreThoseOfTheContract() {
        String tank = "storage --roof 100m2 --runoff 0.8 --tank 5000L --demand 200L/d --rain " + DemoData.realRain();
        assertEquals(Asked.answer(tank + " --start 0L --rule yas --loss 0mm --gaps refuse --format auto"),
                Asked.answer(tank));
    }

    private static double litres(Answer answer, String figure) {
        return answer.number(figure, "m3") * 1000;
    }
}
