package org.roofspring.storage.outlook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.system.Stage;
import org.roofspring.storage.system.StorageSystem;
import org.roofspring.storage.system.Tank;
import org.roofspring.storage.system.Transfer;
import org.roofspring.storage.system.Use;

/** Cases small enough to be worked by hand. */
class OutlookTest {

    private static final LocalDate RECORD = LocalDate.of(2001, 1, 1);
    private static final LocalDate TODAY = LocalDate.of(2025, 6, 1);

    /** Four years of no rain but for one rich day each, so many days after the first of June. */
    private static double[] inflow(int... daysAfter) {
        double[] inflow = new double[4 * 365 + 1];
        for (int year = 0; year < daysAfter.length; year++) {
            LocalDate rain = LocalDate.of(2001 + year, 6, 1).plusDays(daysAfter[year]);
            inflow[(int) (rain.toEpochDay() - RECORD.toEpochDay())] = 100;
        }
        return inflow;
    }

    /** Ten days of water in a tank of thirty. */
    private static OutlookQuestion question(int horizonDays) {
        return OutlookQuestion.plainTank(30, YieldRule.YAS, RECORD, inflow(5, 9, 12, 90), 1, TODAY, 10, horizonDays);
    }

    @Test
    void daysLeftAndChanceByHand() {
        Outlook outlook = Outlook.of(question(100), () -> false);
        // rain on day 5: 15 more fit by then, so 6 + 29 days; day 9: 10 + 29; days 12 and 90 come too late
        assertEquals(List.of(35, 39, 10, 10), outlook.runs().stream().map(YearRun::daysLeft).toList());
        assertTrue(outlook.runs().stream().allMatch(YearRun::dry));
        assertEquals(List.of(2001, 2002, 2003, 2004),
                outlook.runs().stream().map(run -> run.start().getYear()).toList());
        assertEquals(new Chance(0, 4), outlook.chanceDryWithin(10));
        assertEquals(new Chance(2, 4), outlook.chanceDryWithin(11));
        assertEquals(new Chance(3, 4), outlook.chanceDryWithin(36));
        assertEquals(new Chance(4, 4), outlook.chanceDry());
        assertEquals(new DaysLeft(10, false), outlook.daysLeft(0.1));
        assertEquals(new DaysLeft(10, false), outlook.daysLeft(0.5));
        assertEquals(new DaysLeft(39, false), outlook.daysLeft(0.9));
        assertEquals(ClopperPearson.of(2, 4, 0.9), outlook.chanceDryWithin(11).interval(0.9));
    }

    @Test
    void aShorterLookAheadSaysOrMore() {
        Outlook outlook = Outlook.of(question(20), () -> false);
        assertEquals(new DaysLeft(10, false), outlook.daysLeft(0.5));
        assertEquals(new DaysLeft(20, true), outlook.daysLeft(0.51));
        assertEquals(new Chance(2, 4), outlook.chanceDry());
    }

    @Test
    void fanOfLevels() {
        Outlook outlook = Outlook.of(question(8), () -> false);
        assertArrayEquals(new double[] {9, 8, 7, 6, 5, 4, 3, 2}, outlook.fanM3(0.5), 1e-12);
        assertArrayEquals(new double[] {9, 8, 7, 6, 5, 29, 28, 27}, outlook.fanM3(1), 1e-12);
    }

    /** The record ends on 31 December 2004; a run from November goes on in January 2001. */
    @Test
    void goesOnInTheFirstYear() {
        double[] inflow = new double[4 * 365 + 1];
        inflow[20] = 50;
        OutlookQuestion question = OutlookQuestion.plainTank(70, YieldRule.YAS, RECORD, inflow, 1,
                LocalDate.of(2025, 11, 1), 65, 120);
        assertEquals(List.of(false, false, false, true),
                Outlook.of(question, () -> false).runs().stream().map(YearRun::joined).toList());
        assertEquals(List.of(65, 65, 65, 65), left(question));
        assertEquals(List.of(70, 70, 70, 70), left(question.from(question.today(), new double[] {70})));
        inflow[20] = 0;
        inflow[2] = 50;
        // 61 days to the new year, rain on the third of January fills 65 - 63 to 52, less that day's use
        assertEquals(List.of(65, 65, 65, 63 + 52), left(question));
    }

    private static List<Integer> left(OutlookQuestion question) {
        return Outlook.of(question, () -> false).runs().stream().map(YearRun::daysLeft).toList();
    }

    @Test
    void leapDaysAndRecordsOfOneYear() {
        PastWeather oneYear = new PastWeather(LocalDate.of(2019, 3, 2), List.of(new double[365]), new double[0]);
        assertEquals(List.of(0), oneYear.daysLike(LocalDate.of(2025, 3, 1)), "1 March is not in it, 2 March is");
        assertEquals(List.of(364), oneYear.daysLike(LocalDate.of(2024, 2, 29)));
        PastWeather four = new PastWeather(RECORD, List.of(inflow()), new double[0]);
        assertEquals(List.of(58, 58 + 365, 58 + 730, 59 + 1095), four.daysLike(LocalDate.of(2024, 2, 29)));
    }

    @Test
    void mildestRation() {
        // six tenths of the demand bridge twelve days and more: 10 / 0.6 = 16.7; then the rain lasts to the horizon
        OutlookQuestion question = question(40);
        RationAnswer.Enough half = (RationAnswer.Enough) RationSearch.mildest(question, Set.of(), 0.5, () -> false);
        RationAnswer.Enough most = (RationAnswer.Enough) RationSearch.mildest(question, Set.of(), 0.25, () -> false);
        RationAnswer.Enough all = (RationAnswer.Enough) RationSearch.mildest(question, Set.of(), 0.24, () -> false);
        // half may fail: rain on days 5 and 9, then 34 and 30 days on a full tank of 30, less the day of rain
        assertEquals(0.85, half.ration().allowedRatio(), "35 days from day 5 need 29 and more: " + half);
        assertEquals(new Chance(2, 4), half.chance());
        assertEquals(0.76, most.ration().allowedRatio(), "13 days before the rain of day 12 need 10 / 13");
        assertEquals(0.25, all.ration().allowedRatio(), "40 days without rain need 10 / 40");
        assertEquals(new Chance(0, 4), all.chance());
    }

    /** Two uses, the first not cut: even nothing for the second is not enough. */
    @Test
    void noRationIsEnough() {
        StorageSystem system = new StorageSystem(List.of(Stage.of(Tank.plain("tank", 30, 0))), List.of(),
                List.of(Use.plain("drinking", 0), Use.plain("garden", 0)), Optional.empty(), YieldRule.YAS);
        FutureDemand demand = (date, days) -> List.of(filled(days, 0.5), filled(days, 0.5));
        OutlookQuestion question = new OutlookQuestion(system,
                new PastWeather(RECORD, List.of(inflow(5, 9, 12, 90)), new double[0]), demand, Set.of(0), TODAY,
                new double[] {10}, 40);
        assertEquals(new RationAnswer.NotEnough(new Chance(1, 4)),
                RationSearch.mildest(question, Set.of(1), 0.1, () -> false));
        RationAnswer.Enough garden = (RationAnswer.Enough) RationSearch.mildest(question, Set.of(1), 0.25, () -> false);
        assertEquals(0.58, garden.ration().allowedRatio(),
                "12 days of 0.5 + 0.5 r leave 0.5 of the 10 to drink; the garden may go short on the last day");
        assertEquals(Set.of(1), garden.ration().uses());
    }

    /** The rain of a dry use must not count, the water in the second stage must. */
    @Test
    void systemOfTwoStages() {
        StorageSystem chain = new StorageSystem(
                List.of(Stage.of(Tank.plain("cistern", 30, 0)),
                        Stage.of(new Tank("overhead", 5, 1, 0, 0, org.roofspring.storage.system.Leak.NONE))),
                List.of(new Transfer(3, 0, true)), List.of(Use.plain("tap", 1)), Optional.empty(), YieldRule.YAS);
        OutlookQuestion question = new OutlookQuestion(chain,
                new PastWeather(RECORD, List.of(inflow(5, 9, 12, 90), new double[1461]), new double[0]),
                FutureDemand.everyDay(1), Set.of(), TODAY, new double[] {6, 5}, 40);
        Outlook outlook = Outlook.of(question, () -> false);
        // ten litres can be drawn, and 1 never can; the rain then fills the cistern, less what the overhead took
        assertEquals(10, outlook.daysLeft(0.5).days());
        assertEquals(34 - 1, outlook.fanM3(1)[5], 1e-12, "cistern 30 and overhead 4, of which one is used on the day");
    }

    @Test
    void droughtCardByHand() {
        double[] inflow = new double[4 * 365 + 1];
        for (int year = 0; year < 4; year++) {
            LocalDate rain = LocalDate.of(2001 + year, 10, 1).plusDays(10L * year);
            inflow[(int) (rain.toEpochDay() - RECORD.toEpochDay())] = 100;
        }
        OutlookQuestion question = OutlookQuestion.plainTank(100, YieldRule.YAS, RECORD, inflow, 1, TODAY, 0, 60);
        DroughtCard card = DroughtCard.of(question, 0, List.of(Ration.NONE, new Ration(0.5, Set.of())), 0.25,
                () -> false);
        // October: one year may fail, so the rain of the 21st must be reached: 21 days
        assertEquals(List.of(OptionalDouble.of(21), OptionalDouble.of(10.5)), card.months().get(9).volumeM3());
        // September: 30 days more; August: 61 more than October's, but the look ahead ends after 60
        assertEquals(List.of(OptionalDouble.of(51), OptionalDouble.of(25.5)), card.months().get(8).volumeM3());
        assertEquals(List.of(OptionalDouble.of(60), OptionalDouble.of(30)), card.months().get(7).volumeM3());
        OutlookQuestion smaller = OutlookQuestion.plainTank(40, YieldRule.YAS, RECORD, inflow, 1, TODAY, 0, 60);
        DroughtCard small = DroughtCard.of(smaller, 0, List.of(Ration.NONE, new Ration(0.5, Set.of())), 0.25,
                () -> false);
        assertEquals(List.of(OptionalDouble.empty(), OptionalDouble.of(30)), small.months().get(7).volumeM3());
        assertEquals(Month.AUGUST, small.months().get(7).month());
    }

    @Test
    void dipstick() {
        TankGauge gauge = new TankGauge(List.of(new TankGauge.Point(0, 0), new TankGauge.Point(1, 20),
                new TankGauge.Point(2, 30)));
        Dipstick table = Dipstick.of(question(100), 0, gauge, 0.5, () -> false);
        assertEquals(5, table.rows().size());
        assertEquals(List.of(0.0, 10.0, 20.0, 25.0, 30.0), table.rows().stream().map(Dipstick.Row::volumeM3).toList());
        DaysLeft ten = new DaysLeft(10, false);
        assertEquals(new Dipstick.Row(0.5, 10, ten, ten, ten, new DaysLeft(39, false)), table.rows().get(1));
        assertEquals(new DaysLeft(0, false), table.rows().getFirst().hopeful());
        assertEquals(0.75, gauge.heightM(15));
        assertEquals(1.5, gauge.heightM(25));
        assertEquals(2, gauge.heightM(99));
        assertEquals(25, gauge.volumeM3(1.5));
        assertEquals(30, gauge.volumeM3(99));
        assertEquals(1.25, TankGauge.upright(2.5, 30).heightM(15));
    }

    @Test
    void refusals() {
        assertThrows(IllegalArgumentException.class, () -> question(0));
        assertThrows(IllegalArgumentException.class, () -> question(3661));
        assertEquals("inflowM3 has 364 days; accepted is 365 or more", assertThrows(IllegalArgumentException.class,
                () -> new PastWeather(RECORD, List.of(new double[364]), new double[0])).getMessage());
        assertThrows(IllegalArgumentException.class,
                () -> new PastWeather(RECORD, List.of(new double[400], new double[401]), new double[0]));
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 31}) {
            OutlookQuestion question = question(10).from(TODAY, new double[] {bad});
            assertThrows(IllegalArgumentException.class, () -> Outlook.of(question, () -> false), "" + bad);
        }
        for (double bad : new double[] {-0.1, Double.NaN, 1.1}) {
            assertThrows(IllegalArgumentException.class, () -> new Ration(bad, Set.of()));
            assertThrows(IllegalArgumentException.class,
                    () -> RationSearch.mildest(question(10), Set.of(), bad, () -> false));
            assertThrows(IllegalArgumentException.class,
                    () -> DroughtCard.of(question(10), 0, List.of(Ration.NONE), bad, () -> false));
            assertThrows(IllegalArgumentException.class, () -> Outlook.of(question(10), () -> false).daysLeft(bad));
        }
        assertThrows(IllegalArgumentException.class,
                () -> DroughtCard.of(question(10), 1, List.of(Ration.NONE), 0.1, () -> false));
        assertThrows(IllegalArgumentException.class,
                () -> DroughtCard.of(question(10), 0, List.of(), 0.1, () -> false));
        assertThrows(IllegalArgumentException.class, () -> DroughtCard.of(question(10), 0,
                List.of(new Ration(0.5, Set.of()), Ration.NONE), 0.1, () -> false));
        assertThrows(IllegalArgumentException.class, () -> TankGauge.upright(0, 10));
        assertThrows(IllegalArgumentException.class, () -> TankGauge.upright(Double.NaN, 10));
        for (double bad : new double[] {0, -1, Double.NaN, 1e-9}) {
            assertThrows(IllegalArgumentException.class,
                    () -> Dipstick.of(question(10), 0, TankGauge.upright(2, 30), bad, () -> false));
        }
        assertThrows(CancellationException.class, () -> Outlook.of(question(10), () -> true));
        assertThrows(CancellationException.class,
                () -> DroughtCard.of(question(10), 0, List.of(Ration.NONE), 0.1, () -> true));
    }

    private static double[] filled(int days, double value) {
        double[] series = new double[days];
        Arrays.fill(series, value);
        return series;
    }
}
