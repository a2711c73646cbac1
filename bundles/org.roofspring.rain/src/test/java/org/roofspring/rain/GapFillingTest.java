package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class GapFillingTest {
    private static final double NAN = Double.NaN;
    /** 30 and 31 January, then February. */
    private final RainRecord record = RainRecord.of(LocalDate.of(2023, 1, 30),
            new double[] {4, NAN, 1, 0, 8, NAN, NAN, 3});

    @Test
    void refuse() {
        String message = assertThrows(MissingRainException.class, () -> GapFilling.fill(record, GapMethod.REFUSE))
                .getMessage();
        assertTrue(message.startsWith("3 of 8 days are missing, the first on 2023-01-31"), message);
        RainRecord whole = RainRecord.of(LocalDate.of(2023, 1, 30), new double[] {4});
        assertEquals(whole, GapFilling.fill(whole, GapMethod.REFUSE).record());
    }

    @Test
    void zero() {
        GapFilling filled = GapFilling.fill(record, GapMethod.ZERO);
        assertEquals(3, filled.filledDays());
        assertEquals(0, filled.addedMm());
        assertEquals(3, filled.record().filledDays());
        assertEquals(DayMark.FILLED, filled.record().mark(1));
        assertEquals(DayMark.MEASURED, filled.record().mark(0));
        assertEquals(16, Arrays.stream(filled.record().completeDepthsMm()).sum());
    }

    @Test
    void meanOfTheMonthsWetAndDryDays() {
        GapFilling filled = GapFilling.fill(record, GapMethod.MONTH_MEAN);
        assertEquals(4, filled.record().depthMm(1));
        // February: (1 + 0 + 8 + 3) / 4
        assertEquals(3, filled.record().depthMm(5));
        assertEquals(3, filled.record().depthMm(6));
        assertEquals(10, filled.addedMm());
        assertEquals("3 of 8 days (37.5 %) are filled, 10.0 mm in all: missing days get the mean depth of their "
                + "calendar month, which shortens dry spells.", filled.statement());
    }

    @Test
    void climatologyTakesTheSameFortnight() {
        double[] depthMm = new double[3 * 365 + 1];
        Arrays.fill(depthMm, 1);
        LocalDate first = LocalDate.of(2023, 1, 1);
        RainRecord ones = RainRecord.of(first, depthMm);
        // 1 March to 15 March 2023 rain 5 mm a day; 8 March 2024 is missing
        for (int day = 0; day < 15; day++) {
            depthMm[ones.indexOf(LocalDate.of(2023, 3, 1)) + day] = 5;
        }
        depthMm[ones.indexOf(LocalDate.of(2024, 3, 8))] = NAN;
        GapFilling filled = GapFilling.fill(RainRecord.of(first, depthMm), GapMethod.CLIMATOLOGY);
        // 15 days of 2023 at 5 mm, 14 of 2024 and 15 of 2025 at 1 mm
        assertEquals((15 * 5 + 14 + 15) / 44.0, filled.record().depthMm(filled.record()
                .indexOf(LocalDate.of(2024, 3, 8))), 1e-12);
        assertEquals(1, filled.filledDays());
    }

    @Test
    void noReadingToTakeAMeanFrom() {
        RainRecord nothing = RainRecord.of(LocalDate.of(2023, 1, 31), new double[] {1, NAN});
        assertTrue(assertThrows(MissingRainException.class, () -> GapFilling.fill(nothing, GapMethod.MONTH_MEAN))
                .getMessage().contains("2023-02-01"));
        RainRecord july = RainRecord.of(LocalDate.of(2023, 1, 31), missingFrom(1));
        assertThrows(MissingRainException.class, () -> GapFilling.fill(july, GapMethod.CLIMATOLOGY));
    }

    private static double[] missingFrom(int day) {
        double[] depthMm = new double[200];
        Arrays.fill(depthMm, day, depthMm.length, NAN);
        return depthMm;
    }

    @Test
    void namesOfMethods() {
        for (GapMethod method : GapMethod.values()) {
            assertEquals(method, GapMethod.named(method.id()));
        }
        assertEquals("\"guess\" is not a way to fill missing days; accepted are refuse, zero, mean, climatology",
                assertThrows(IllegalArgumentException.class, () -> GapMethod.named("guess")).getMessage());
    }
}
