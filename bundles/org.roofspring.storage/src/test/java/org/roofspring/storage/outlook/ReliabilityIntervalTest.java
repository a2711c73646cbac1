package org.roofspring.storage.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.StorageDesign;
import org.roofspring.storage.TankBalance;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.outlook.ReliabilityInterval.Bootstrap;

class ReliabilityIntervalTest {

    private static HydroYears years(int... shortDays) {
        List<HydroYear> years = new ArrayList<>();
        for (int shorts : shortDays) {
            years.add(new HydroYear(LocalDate.of(1990 + years.size(), 4, 1), 365, shorts, 365, shorts * 0.5));
        }
        return new HydroYears(Month.APRIL, years, 0);
    }

    private static ReliabilityInterval interval(HydroYears years, double confidence, Bootstrap bootstrap) {
        return ReliabilityInterval.of(years, confidence, bootstrap, () -> false).orElseThrow();
    }

    /** With three years all 27 equally likely records can be written down; many draws come close to their shares. */
    @Test
    void bootstrapAgainstAllRecordsThatCanBeDrawn() {
        int[] shorts = {0, 10, 40};
        double[] all = new double[27];
        for (int i = 0; i < 27; i++) {
            all[i] = 1 - (shorts[i % 3] + shorts[i / 3 % 3] + shorts[i / 9]) / 1095.0;
        }
        Arrays.sort(all);
        Bootstrap bootstrap = new Bootstrap(200_000, 1, 7);
        for (double confidence : new double[] {0.5, 0.8, 0.9}) {
            Interval drawn = interval(years(shorts), confidence, bootstrap).timeReliability();
            int place = (int) Math.floor((1 - confidence) / 2 * 27);
            assertEquals(all[place], drawn.low(), 1e-15);
            assertEquals(all[26 - place], drawn.high(), 1e-15);
        }
    }

    /** Drawn as one block the record is always itself, wherever the circle begins. */
    @Test
    void oneBlockIsTheRecord() {
        ReliabilityInterval whole = interval(years(0, 3, 0, 9), 0.9, new Bootstrap(500, 9, 1));
        assertEquals(new Interval(1 - 12 / 1460.0, 1 - 12 / 1460.0, 0.9), whole.timeReliability());
        assertEquals(1 - 6.0 / 1460, whole.volumetricReliability().low(), 1e-15);
    }

    /** Pairs of dry years that are kept together make the interval wider. */
    @Test
    void blocksKeepDryYearsTogether() {
        HydroYears pairs = years(0, 0, 60, 60, 0, 0, 0, 0, 60, 60, 0, 0, 0, 0, 60, 60, 0, 0, 0, 0);
        Interval single = interval(pairs, 0.9, new Bootstrap(20_000, 1, 3)).timeReliability();
        Interval paired = interval(pairs, 0.9, new Bootstrap(20_000, 2, 3)).timeReliability();
        assertTrue(paired.high() - paired.low() > single.high() - single.low(), () -> paired + " and " + single);
    }

    @Test
    void sameSeedSameInterval() {
        HydroYears years = years(0, 3, 0, 9, 0, 40, 2);
        assertEquals(interval(years, 0.9, new Bootstrap(1000, 1, 5)), interval(years, 0.9, new Bootstrap(1000, 1, 5)));
        assertNotEquals(interval(years, 0.9, new Bootstrap(100, 1, 5)),
                interval(years, 0.9, new Bootstrap(100, 1, 6)));
    }

    @Test
    void noFailedYearIsNotCertainty() {
        ReliabilityInterval forty = interval(years(new int[40]), 0.95, new Bootstrap(100, 1, 1));
        assertEquals(40, forty.years());
        assertEquals(0, forty.failedYears());
        assertEquals(0.0722, forty.failureUpperLimit(), 5e-5);
        assertEquals(0.0881, forty.failure().high(), 5e-5);
        assertEquals(new Interval(1, 1, 0.95), forty.timeReliability());
    }

    /** Resampling holds the record in its middle for nearly every record, not for all: the same ones are tried each time. */
    @Property(tries = 200, seed = "20261125")
    void theRecordItselfLiesInside(@ForAll @Size(min = 1, max = 30) List<@IntRange(min = 0, max = 200) Integer> shorts,
            @ForAll @IntRange(min = 1, max = 4) int block) {
        HydroYears years = years(shorts.stream().mapToInt(Integer::intValue).toArray());
        ReliabilityInterval interval = interval(years, 0.95, new Bootstrap(2000, block, 11));
        double time = 1 - shorts.stream().mapToInt(Integer::intValue).sum() / (365.0 * shorts.size());
        assertTrue(interval.timeReliability().low() <= time + 1e-12
                && interval.timeReliability().high() >= time - 1e-12, interval::toString);
        double failed = shorts.stream().filter(days -> days > 0).count() / (double) shorts.size();
        assertTrue(interval.failure().low() <= failed && failed <= interval.failure().high());
    }

    /** A barrel that is filled each January and asked for 1 a day: 20 days met, the rest of January to June short. */
    @Test
    void cutsARunIntoYears() {
        LocalDate first = LocalDate.of(2001, 10, 1);
        int days = (int) (LocalDate.of(2006, 3, 1).toEpochDay() - first.toEpochDay());
        double[] inflow = new double[days];
        double[] demand = new double[days];
        for (int day = 0; day < days; day++) {
            LocalDate date = first.plusDays(day);
            inflow[day] = date.getDayOfYear() == 1 ? 20 : 0;
            demand[day] = date.getMonthValue() <= 6 && date.getYear() != 2004 ? 1 : 0;
        }
        BalanceResult run = TankBalance.run(inflow, demand, new StorageDesign(20, 0, YieldRule.YBS));
        HydroYears years = HydroYears.of(first, run, Month.JULY);
        assertEquals(List.of(LocalDate.of(2002, 7, 1), LocalDate.of(2004, 7, 1)),
                years.years().stream().map(HydroYear::firstDate).toList(), "no demand in the year from July 2003");
        assertEquals(new HydroYear(LocalDate.of(2002, 7, 1), 181, 161, 181, 161), years.years().getFirst());
        assertEquals(days - 3 * 365 - 1, years.daysLeftOut());
        assertEquals(2, years.failed());
        assertEquals(Optional.empty(), ReliabilityInterval.of(HydroYears.of(first.plusYears(9), TankBalance.run(
                new double[300], new double[300], new StorageDesign(1, 0, YieldRule.YAS)), Month.JULY), 0.9,
                new Bootstrap(100, 1, 1), () -> false));
    }

    @Test
    void theYearBeginsWhenTheWettestHalfIsOver() {
        double[] inflow = new double[365];
        for (int day = 0; day < inflow.length; day++) {
            int month = LocalDate.of(2001, 1, 1).plusDays(day).getMonthValue();
            inflow[day] = month >= 10 || month <= 3 ? 2 : 0.1;
        }
        assertEquals(Month.APRIL, HydroYears.startMonth(LocalDate.of(2001, 1, 1), inflow));
        assertEquals(Month.JANUARY, HydroYears.startMonth(LocalDate.of(2001, 1, 1), new double[365]));
    }

    @Test
    void refusesAndCancels() {
        assertThrows(IllegalArgumentException.class, () -> new Bootstrap(99, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Bootstrap(100, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> interval(years(1), Double.NaN, new Bootstrap(100, 1, 1)));
        assertThrows(CancellationException.class,
                () -> ReliabilityInterval.of(years(1, 2), 0.9, new Bootstrap(100, 1, 1), () -> true));
    }
}
