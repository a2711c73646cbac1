package org.roofspring.storage.outlook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.system.Leak;
import org.roofspring.storage.system.Stage;
import org.roofspring.storage.system.StorageSystem;
import org.roofspring.storage.system.Tank;
import org.roofspring.storage.system.Transfer;
import org.roofspring.storage.system.Use;

/** What must hold for every tank, and a slow balance written another way. */
class OutlookPropertyTest {

    private static final int HORIZON = 90;
    private static final LocalDate FIRST = LocalDate.of(1999, 9, 17);

    private static double[] inflow(Random random, int days) {
        double[] inflow = new double[days];
        for (int day = 0; day < days; day++) {
            inflow[day] = random.nextInt(5) == 0 ? random.nextInt(40) / 4.0 : 0;
        }
        return inflow;
    }

    private static OutlookQuestion plain(Random random) {
        double capacity = 1 + random.nextInt(60);
        YieldRule rule = random.nextBoolean() ? YieldRule.YAS : YieldRule.YBS;
        return OutlookQuestion.plainTank(capacity, rule, FIRST, inflow(random, 365 + random.nextInt(1500)),
                random.nextInt(12) / 4.0, FIRST.plusDays(random.nextInt(9000)), capacity * random.nextDouble(),
                HORIZON);
    }

    /** A cistern and an overhead tank, perhaps leaking and open to the air, with two uses. */
    private static OutlookQuestion system(Random random) {
        int days = 365 + random.nextInt(900);
        double first = 1 + random.nextInt(40);
        double second = 1 + random.nextInt(10);
        Leak leak = random.nextBoolean() ? Leak.NONE
                : new Leak(random.nextInt(10) / 100.0, random.nextInt(3) / 10.0, 0.3);
        List<Stage> stages = List.of(Stage.of(new Tank("cistern", first, first / 10, 0, random.nextInt(3), leak)),
                Stage.of(new Tank("overhead", second, 0, 0, 0, Leak.NONE)));
        List<Use> uses = List.of(new Use("tap", 1, 1, 0, false, List.of()),
                new Use("garden", 1, 2, random.nextInt(3) / 4.0, false, List.of()));
        StorageSystem system = new StorageSystem(stages, List.of(new Transfer(1 + random.nextInt(6), 0, true)), uses,
                Optional.empty(), random.nextBoolean() ? YieldRule.YAS : YieldRule.YBS);
        double[] evaporation = new double[days];
        Arrays.fill(evaporation, random.nextInt(6));
        double tap = random.nextInt(8) / 4.0;
        double garden = random.nextInt(8) / 4.0;
        FutureDemand demand = (date, count) -> {
            List<double[]> series = new ArrayList<>();
            for (double each : new double[] {tap, garden}) {
                double[] values = new double[count];
                for (int day = 0; day < count; day++) {
                    values[day] = date.plusDays(day).getDayOfWeek().getValue() < 6 ? each : each / 3;
                }
                series.add(values);
            }
            return series;
        };
        return new OutlookQuestion(system, new PastWeather(FIRST, List.of(inflow(random, days), new double[days]),
                evaporation), demand, Set.of(), FIRST.plusDays(random.nextInt(9000)),
                new double[] {first * random.nextDouble(), second * random.nextDouble()}, HORIZON);
    }

    private static OutlookQuestion any(Random random) {
        return random.nextBoolean() ? plain(random) : system(random);
    }

    /** In plain doubles, date by date, the quarters of the numbers being exact in them. */
    @Property(tries = 300)
    void slowBalanceOfThePlainTank(@ForAll long seed) {
        Random random = new Random(seed);
        int days = 366 + random.nextInt(1500);
        double[] inflow = inflow(random, days);
        double capacity = 1 + random.nextInt(60);
        double demand = random.nextInt(12) / 4.0;
        double start = random.nextInt((int) capacity * 4) / 4.0;
        boolean yas = random.nextBoolean();
        LocalDate today = LocalDate.of(2031, 1 + random.nextInt(12), 1 + random.nextInt(28));
        Outlook outlook = Outlook.of(OutlookQuestion.plainTank(capacity, yas ? YieldRule.YAS : YieldRule.YBS, FIRST,
                inflow, demand, today, start, HORIZON), () -> false);
        List<Integer> left = new ArrayList<>();
        List<double[]> volumes = new ArrayList<>();
        LocalDate end = FIRST.plusDays(days);
        for (int year = 1999; year < 2010; year++) {
            LocalDate date = today.withYear(year);
            if (date.isBefore(FIRST) || !date.isBefore(end)) {
                continue;
            }
            double volume = start;
            int firstShort = HORIZON;
            double[] path = new double[HORIZON];
            for (int day = 0; day < HORIZON; day++) {
                if (date.equals(end)) {
                    LocalDate again = end.withYear(1999);
                    date = again.isBefore(FIRST) ? end.withYear(2000) : again;
                }
                double in = inflow[(int) (date.toEpochDay() - FIRST.toEpochDay())];
                double given = yas ? Math.min(demand, volume) : Math.min(demand, volume + in);
                volume = yas ? Math.min(volume + in - given, capacity - given)
                        : Math.min(volume + in - given, capacity);
                firstShort = given < demand && firstShort == HORIZON ? day : firstShort;
                path[day] = volume;
                date = date.plusDays(1);
            }
            left.add(firstShort);
            volumes.add(path);
        }
        assertEquals(left, outlook.runs().stream().map(YearRun::daysLeft).toList());
        double[] highest = new double[HORIZON];
        double[] lowest = new double[HORIZON];
        for (int day = 0; day < HORIZON; day++) {
            int at = day;
            highest[day] = volumes.stream().mapToDouble(path -> path[at]).max().orElseThrow();
            lowest[day] = volumes.stream().mapToDouble(path -> path[at]).min().orElseThrow();
        }
        assertArrayEquals(highest, outlook.fanM3(1), 1e-9);
        assertArrayEquals(lowest, outlook.fanM3(0), 1e-9);
    }

    @Property(tries = 300)
    void moreWaterTodayNeverShortensTheDaysLeft(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double more) {
        OutlookQuestion question = any(new Random(seed));
        double[] fuller = question.stageVolumeM3().clone();
        for (int stage = 0; stage < fuller.length; stage++) {
            double room = question.system().stages().get(stage).tanks().getFirst().capacityM3() - fuller[stage];
            fuller[stage] += Math.max(0, room) * more;
        }
        List<YearRun> before = Outlook.of(question, () -> false).runs();
        List<YearRun> after = Outlook.of(question.from(question.today(), fuller), () -> false).runs();
        for (int year = 0; year < before.size(); year++) {
            int at = year;
            assertTrue(after.get(year).daysLeft() >= before.get(year).daysLeft(),
                    () -> after.get(at) + " against " + before.get(at));
        }
    }

    @Property(tries = 300)
    void lowerRationNeverRaisesTheRisk(@ForAll long seed, @ForAll @IntRange(min = 0, max = 100) int a,
            @ForAll @IntRange(min = 0, max = 100) int b, @ForAll boolean all) {
        OutlookQuestion question = any(new Random(seed));
        Set<Integer> cut = all || question.system().uses().size() == 1 ? Set.of() : Set.of(1);
        Outlook milder = Outlook.of(question.under(new Ration(Math.max(a, b) / 100.0, cut)), () -> false);
        Outlook harder = Outlook.of(question.under(new Ration(Math.min(a, b) / 100.0, cut)), () -> false);
        for (int days = 0; days <= HORIZON; days++) {
            assertTrue(harder.chanceDryWithin(days).dry() <= milder.chanceDryWithin(days).dry());
        }
    }

    @Property(tries = 200)
    void chanceGrowsAndDaysFollow(@ForAll long seed) {
        Outlook outlook = Outlook.of(any(new Random(seed)), () -> false);
        for (int days = 1; days <= HORIZON; days++) {
            assertTrue(outlook.chanceDryWithin(days).dry() >= outlook.chanceDryWithin(days - 1).dry());
        }
        for (double share : new double[] {0, 0.1, 0.5, 0.9, 1}) {
            DaysLeft left = outlook.daysLeft(share);
            assertTrue(outlook.chanceDryWithin(left.days()).ratio() <= share);
            if (!left.orMore() && share > 0) {
                assertTrue(outlook.chanceDryWithin(left.days() + 1).ratio() >= share);
            }
        }
    }

    @Property(tries = 25)
    void theMildestRationIsTheMildest(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 0.5) double limit) {
        OutlookQuestion question = any(new Random(seed));
        int mildest = -1;
        for (int percent = 0; percent <= 100; percent++) {
            OutlookQuestion rationed = question.under(new Ration(percent / 100.0, Set.of()));
            if (Outlook.of(rationed, () -> false).chanceDry().ratio() <= limit) {
                mildest = percent;
            }
        }
        RationAnswer answer = RationSearch.mildest(question, Set.of(), limit, () -> false);
        assertEquals(mildest, answer instanceof RationAnswer.Enough enough
                ? (int) Math.round(enough.ration().allowedRatio() * 100) : -1);
    }

    @Property(tries = 20)
    void marksAreTheLowestThatKeepTheLimit(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 0.5) double limit) {
        OutlookQuestion question = plain(new Random(seed)).within(40);
        double capacity = question.system().stages().getFirst().tanks().getFirst().capacityM3();
        DroughtCard card = DroughtCard.of(question, 0, List.of(Ration.NONE, new Ration(0.6, Set.of())), limit,
                () -> false);
        for (DroughtCard.MonthMarks month : card.months()) {
            LocalDate date = LocalDate.of(question.today().getYear(), month.month(), 1);
            double all = month.volumeM3().getFirst().orElse(capacity + 1);
            double less = month.volumeM3().get(1).orElse(capacity + 1);
            assertTrue(less <= all, () -> less + " is above " + all);
            if (all > capacity) {
                assertTrue(chance(question, date, capacity) > limit);
            } else {
                assertTrue(chance(question, date, all) <= limit);
                double below = all - capacity / 1000;
                assertTrue(below < -1e-9 || chance(question, date, Math.max(0, below)) > limit || all == 0);
            }
        }
    }

    private static double chance(OutlookQuestion question, LocalDate date, double volumeM3) {
        return Outlook.of(question.from(date, new double[] {volumeM3}), () -> false).chanceDry().ratio();
    }
}
