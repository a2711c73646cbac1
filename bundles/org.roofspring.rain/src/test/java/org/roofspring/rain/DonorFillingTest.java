package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.function.IntToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Gaps filled from another station, by the ratio of both stations' rain in the month. */
class DonorFillingTest {
    private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);
    private static final int DAYS = 3 * 365;

    private static RainRecord record(int days, IntToDoubleFunction depthMm) {
        double[] depths = new double[days];
        for (int day = 0; day < days; day++) {
            depths[day] = depthMm.applyAsDouble(day);
        }
        return RainRecord.of(FIRST, depths);
    }

    private static double rain(int day) {
        return day % 4 == 0 ? 2 + day % 7 : 0;
    }

    /** Two stations that differ by one ratio: what was cut out comes back, to rounding. */
    @Property(tries = 60)
    void whatADonorKnowsComesBack(@ForAll @DoubleRange(min = 0.1, max = 10) double ratio,
            @ForAll @IntRange(min = 0, max = DAYS - 60) int from, @ForAll @IntRange(min = 1, max = 25) int length) {
        RainRecord record = record(DAYS, day -> day >= from && day < from + length ? Double.NaN : rain(day));
        DonorFilling filling = DonorFilling.fill(record, record(DAYS, day -> ratio * rain(day)), "donor");
        double added = 0;
        for (int day = 0; day < DAYS; day++) {
            assertEquals(rain(day), filling.record().depthMm(day), 1e-9);
            added += day >= from && day < from + length ? rain(day) : 0;
        }
        assertEquals(length, filling.filledDays());
        assertEquals(added, filling.addedMm(), 1e-9);
    }

    @Test
    void aWholeRecordStaysAsItIs() {
        RainRecord record = record(DAYS, DonorFillingTest::rain);
        DonorFilling filling = DonorFilling.fill(record, record(1, day -> 0), "donor");
        assertEquals(0, filling.filledDays());
        assertEquals("No day is missing.", filling.statement());
    }

    @Test
    void aDayThatTheDonorDoesNotHaveIsNamed() {
        RainRecord record = record(DAYS, day -> day == 500 ? Double.NaN : rain(day));
        assertTrue(assertThrows(MissingRainException.class, () -> DonorFilling.fill(record, record(400, day -> rain(day)), "donor"))
                .getMessage().contains(FIRST.plusDays(500).toString()));
    }

    @Test
    void tooFewDaysInCommonAreRefused() {
        RainRecord record = record(DAYS, day -> day < 62 ? Double.NaN : rain(day));
        RainRecord donor = record(365, DonorFillingTest::rain);
        assertTrue(assertThrows(MissingRainException.class, () -> DonorFilling.fill(record, donor, "donor")).getMessage()
                .contains("January"));
    }

    @Test
    void aDonorThatWasDryWhileItRainedHereIsRefused() {
        RainRecord record = record(DAYS, day -> day == 10 ? Double.NaN : rain(day));
        assertThrows(MissingRainException.class, () -> DonorFilling.fill(record, record(DAYS, day -> 0), "donor"));
    }
}
