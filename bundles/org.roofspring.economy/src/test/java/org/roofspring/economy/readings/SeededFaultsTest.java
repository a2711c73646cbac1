package org.roofspring.economy.readings;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.roofspring.economy.readings.GapAnswer.Judged;

/**
 * Six months of gappy dipstick and meter readings of an invented tank, with faults put in by seed: how often the
 * size of
 * a leak lies in its interval, how often sound cases raise an alarm, how often the cause is named right.
 */
class SeededFaultsTest {
    private static final int DAYS = 183;
    private static final double CAPACITY_M3 = 60;
    private static final double SECTION_M2 = 24;
    private static final double ROOF_M2 = 280;
    private static final int OF_EACH = 50;
    private static final int SOUND = 200;

    private enum Fault {
        NONE, LEAK, THEFT, BLOCKAGE, USE
    }

    /** One invented half year: what is reckoned with, what is read, and the truth behind it. */
    private static final class HalfYear {
        final double[] inflow = new double[DAYS];
        final double[] planned = new double[DAYS];
        final List<LevelReading> levels = new ArrayList<>();
        final List<MeterReading> meters = new ArrayList<>();
        double size;
        int since;

        HalfYear(Fault fault, long seed) {
            Random random = new Random(seed);
            double usual = 0.5 + 0.3 * random.nextDouble();
            boolean wet = false;
            for (int day = 0; day < DAYS; day++) {
                wet = random.nextDouble() < (wet ? 0.55 : 0.2);
                double rainMm = wet ? -9 * Math.log(1 - random.nextDouble()) : 0;
                inflow[day] = ROOF_M2 * 0.85 * Math.max(0, rainMm - 0.5) / 1000;
                planned[day] = day % 7 < 5 ? usual : 0.3 * usual;
            }
            since = random.nextInt(100);
            size = switch (fault) {
                case NONE -> 0;
                case LEAK -> 0.05 + 0.45 * random.nextDouble();
                case THEFT -> 3 + 6 * random.nextDouble();
                case BLOCKAGE -> 0.25 + 0.5 * random.nextDouble();
                case USE -> 0.5 + 0.5 * random.nextDouble();
            };
            run(fault, random);
        }

        private void run(Fault fault, Random random) {
            double runoff = 1 + 0.05 * random.nextGaussian();
            double habit = 1 + 0.08 * random.nextGaussian();
            double meterError = 1 + 0.01 * random.nextGaussian();
            int hole = 20 + random.nextInt(120);
            double volume = 30 + 15 * random.nextDouble();
            double counter = 1000 * random.nextDouble();
            for (int day = 0; day <= DAYS; day++) {
                boolean away = day >= hole && day < hole + 17;
                if (day % 4 == 0 && !away && random.nextDouble() < 0.7) {
                    double height = volume / SECTION_M2 + 0.01 * random.nextGaussian();
                    levels.add(new LevelReading(day, Math.max(0, Math.rint(height * 100) / 100 * SECTION_M2)));
                }
                if (day % 7 == 3 && !away && random.nextDouble() < 0.6) {
                    meters.add(new MeterReading(day, Math.max(0, Math.rint(counter * 100) / 100)));
                }
                if (day == DAYS) {
                    return;
                }
                boolean faulty = day >= since;
                double storm = Math.exp(0.15 * random.nextGaussian());
                double rain = inflow[day] * runoff * storm * (fault == Fault.BLOCKAGE && faulty ? 1 - size : 1);
                volume = Math.min(CAPACITY_M3, volume + rain);
                double wanted = planned[day] * habit * Math.exp(0.25 * random.nextGaussian())
                        * (fault == Fault.USE && faulty ? 1 + size : 1);
                double used = Math.min(volume, wanted);
                counter += used * meterError;
                volume -= used;
                volume = Math.max(0, volume - (fault == Fault.LEAK && faulty ? size : 0)
                        - (fault == Fault.THEFT && day == since ? size : 0));
            }
        }

        GapAnswer judged(boolean metered) {
            return GapStudy.of(new WaterCourse(inflow, planned, new double[DAYS], CAPACITY_M3), levels,
                    metered ? meters : List.of(), Doubt.usual(0.01 * SECTION_M2), 7, () -> false);
        }
    }

    private static HalfYear halfYear(Fault fault, int number) {
        return new HalfYear(fault, 1000L * fault.ordinal() + number);
    }

    /**
     * 200 cases: 50 each of leak, theft, blocked downpipe and overuse; another 200 sound ones for the rate of
     * alarms.
     */
    @Test
    void leaksLieInTheirIntervalsAndSoundCasesAreLeftInPeace() {
        List<String> lines = new ArrayList<>();
        int inside = 0;
        int stated = 0;
        double width = 0;
        for (Fault fault : List.of(Fault.LEAK, Fault.THEFT, Fault.BLOCKAGE, Fault.USE)) {
            int alarms = 0;
            int named = 0;
            int unjudged = 0;
            for (int i = 0; i < OF_EACH; i++) {
                HalfYear year = halfYear(fault, i);
                if (!(year.judged(true) instanceof Judged judged)) {
                    unjudged++;
                    continue;
                }
                alarms += judged.alarm() ? 1 : 0;
                named += judged.cause().map(Cause::name).filter(fault.name()::equals).isPresent() ? 1 : 0;
                if (fault == Fault.LEAK && year.since <= judged.untilDay() - GapStudy.SHORTEST_DAYS) {
                    stated++;
                    inside += judged.loss().contains(year.size) ? 1 : 0;
                    width += judged.loss().high() - judged.loss().low();
                }
            }
            lines.add(String.format(Locale.ROOT, "%-8s alarm %d, cause named right %d, too few readings %d of %d",
                    fault, alarms, named, unjudged, OF_EACH));
        }
        int quiet = 0;
        int quietUnmetered = 0;
        for (int i = 0; i < SOUND; i++) {
            HalfYear year = halfYear(Fault.NONE, i);
            quiet += year.judged(true) instanceof Judged judged && judged.alarm() ? 0 : 1;
            quietUnmetered += year.judged(false) instanceof Judged judged && judged.alarm() ? 0 : 1;
        }
        lines.add(String.format(Locale.ROOT, "leak sizes inside their interval: %d of %d, mean width %.3f m3/d", inside,
                stated, width / stated));
        lines.add(String.format(Locale.ROOT, "sound cases without alarm: %d with meter, %d without, of %d", quiet,
                quietUnmetered, SOUND));
        lines.forEach(System.out::println);
        assertTrue(stated >= 0.8 * OF_EACH, "leaks with a stated interval: " + stated);
        assertTrue(inside >= 0.9 * stated, "leak sizes inside their interval: " + inside + " of " + stated);
        assertTrue(quiet >= 0.95 * SOUND, "sound cases without alarm: " + quiet);
        assertTrue(quietUnmetered >= 0.95 * SOUND, "sound cases without alarm and meter: " + quietUnmetered);
    }
}
