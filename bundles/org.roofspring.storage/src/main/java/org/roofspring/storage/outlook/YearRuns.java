package org.roofspring.storage.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.roofspring.storage.system.SystemForward;
import org.roofspring.storage.system.Tank;

/**
 * The years of the record, each made ready to be run forward from one date, from any volumes. One thread.
 *
 * <p>A run from full tanks is kept for each year. Once a run from other volumes stands as that one stood on the same
 * day, as happens when rain fills the tanks, the rest is the same and need not be run again.
 */
final class YearRuns {

    private final OutlookQuestion question;
    private final List<Integer> startDays;
    private final List<SystemForward> runs = new ArrayList<>();
    private final FullRun[] fullRuns;
    private final int[] watched;
    private final BooleanSupplier cancelled;

    /** Volume of each stage as each day ends, and the first short day from each day on; from full tanks. */
    private record FullRun(double[][] stageVolumeM3, int[] nextShort) {
    }

    YearRuns(OutlookQuestion question, BooleanSupplier cancelled) {
        this.question = question;
        this.cancelled = cancelled;
        int days = question.horizonDays();
        List<double[]> demand = question.demand().seriesM3(question.today(), days);
        startDays = question.weather().daysLike(question.today());
        for (int startDay : startDays) {
            poll();
            runs.add(new SystemForward(question.system(), question.weather().from(startDay, demand, days)));
        }
        fullRuns = new FullRun[runs.size()];
        watched = IntStream.range(0, question.system().uses().size()).filter(question::watches).toArray();
    }

    /** Years run; one or more, since a record of a year has every day but perhaps a leap day. */
    int years() {
        return runs.size();
    }

    boolean moreIsNeverWorse() {
        return question.moreIsNeverWorse();
    }

    /** Runs a year until it goes short, or to the end. */
    YearRun run(int year, double[] stageVolumeM3) {
        FullRun full = question.system().topUp().isEmpty() ? fullRun(year) : null;
        SystemForward run = start(year, stageVolumeM3);
        for (int day = 0; day < question.horizonDays(); day++) {
            run.next();
            if (!met(run)) {
                return outcome(year, day, true);
            }
            if (full != null && same(run, full, day)) {
                int left = full.nextShort()[day + 1];
                return outcome(year, left, left < question.horizonDays());
            }
        }
        return outcome(year, question.horizonDays(), false);
    }

    private FullRun fullRun(int year) {
        if (fullRuns[year] == null) {
            int days = question.horizonDays();
            int stages = question.system().stages().size();
            double[][] volumes = new double[days][stages];
            int[] nextShort = new int[days + 1];
            SystemForward run = start(year, fullM3());
            for (int day = 0; day < days; day++) {
                run.next();
                for (int stage = 0; stage < stages; stage++) {
                    volumes[day][stage] = run.stageVolumeM3(stage);
                }
                nextShort[day] = met(run) ? -1 : day;
            }
            nextShort[days] = days;
            for (int day = days - 1; day >= 0; day--) {
                nextShort[day] = nextShort[day] < 0 ? nextShort[day + 1] : day;
            }
            fullRuns[year] = new FullRun(volumes, nextShort);
        }
        return fullRuns[year];
    }

    private double[] fullM3() {
        return question.system().stages().stream()
                .mapToDouble(stage -> stage.tanks().stream().mapToDouble(Tank::capacityM3).sum()).toArray();
    }

    /** Volumes are whole microlitres, so equal doubles are equal volumes. */
    private static boolean same(SystemForward run, FullRun full, int day) {
        double[] volumes = full.stageVolumeM3()[day];
        for (int stage = 0; stage < volumes.length; stage++) {
            if (run.stageVolumeM3(stage) != volumes[stage]) {
                return false;
            }
        }
        return true;
    }

    /** Runs a year to the end and notes the volume that can be drawn as each day ends [m3]. */
    YearRun run(int year, double[] stageVolumeM3, double[] usableM3) {
        SystemForward run = start(year, stageVolumeM3);
        int firstShort = usableM3.length;
        for (int day = 0; day < usableM3.length; day++) {
            run.next();
            usableM3[day] = run.usableM3();
            if (firstShort == usableM3.length && !met(run)) {
                firstShort = day;
            }
        }
        return outcome(year, firstShort, firstShort < usableM3.length);
    }

    private SystemForward start(int year, double[] stageVolumeM3) {
        poll();
        SystemForward run = runs.get(year);
        run.restart(stageVolumeM3);
        return run;
    }

    private boolean met(SystemForward run) {
        for (int use : watched) {
            if (!run.met(use)) {
                return false;
            }
        }
        return true;
    }

    private YearRun outcome(int year, int daysLeft, boolean dry) {
        int startDay = startDays.get(year);
        return new YearRun(question.weather().firstDate().plusDays(startDay),
                question.weather().endsBefore(startDay, question.horizonDays()), daysLeft, dry);
    }

    private void poll() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("the outlook was cancelled");
        }
    }
}
