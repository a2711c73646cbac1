package org.roofspring.storage.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.roofspring.storage.system.SystemForward;

/**
 * The years of the record, each made ready to be run forward from one date, from any volumes. One thread.
 */
final class YearRuns {

    private final OutlookQuestion question;
    private final List<Integer> startDays;
    private final List<SystemForward> runs = new ArrayList<>();
    private final int[] watched;
    private final BooleanSupplier cancelled;

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
        watched = IntStream.range(0, question.system().uses().size()).filter(question::watches).toArray();
    }

    /** Years run; one or more, since a record of a year has every day but perhaps a leap day. */
    int years() {
        return runs.size();
    }

    /** Runs a year until it goes short, or to the end. */
    YearRun run(int year, double[] stageVolumeM3) {
        SystemForward run = start(year, stageVolumeM3);
        int left = 0;
        boolean met = true;
        while (met && run.hasNext()) {
            run.next();
            met = met(run);
            left += met ? 1 : 0;
        }
        return outcome(year, left, !met);
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

    /** Years that run dry from given volumes; counting stops above the most that matter. */
    int dryYears(double[] stageVolumeM3, int most) {
        int dry = 0;
        for (int year = 0; year < years() && dry <= most; year++) {
            dry += run(year, stageVolumeM3).dry() ? 1 : 0;
        }
        return dry;
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
