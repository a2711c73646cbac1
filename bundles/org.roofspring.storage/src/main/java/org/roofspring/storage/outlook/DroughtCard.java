package org.roofspring.storage.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Marks to paint on a tank: on the first of each month, the volume from which a given use of water can be kept up with
 * a chance of running dry within the limit. At or above the first mark the first ration may be used, between the first
 * and the second mark the second, and so on; below the last mark no ration on the card is safe.
 *
 * @param horizonDays how far each mark looks ahead [d]
 * @param limitRatio chance of running dry that is bearable [-]
 * @param rations the rations, mildest first
 * @param months the marks, January first
 */
public record DroughtCard(int horizonDays, double limitRatio, List<Ration> rations, List<MonthMarks> months) {

    /** Steps into which the tank is divided; a mark is right to one of them, rounded up to the safe side. */
    private static final int STEPS = 1000;

    /**
     * The marks of one month.
     *
     * @param month on whose first day they hold
     * @param volumeM3 one for each ration: volume in the gauged stage, dead volume included [m&sup3;]; empty where even
     *            a full tank is not enough
     */
    public record MonthMarks(Month month, List<OptionalDouble> volumeM3) {

        /** Copies the list. */
        public MonthMarks {
            volumeM3 = List.copyOf(volumeM3);
        }
    }

    /** Copies the lists. */
    public DroughtCard {
        rations = List.copyOf(rations);
        months = List.copyOf(months);
    }

    /**
     * Works the marks out.
     *
     * @param question the system; its date is not used except for the year, nor is the volume of the gauged stage; the
     *            other stages hold the volumes it names; the look ahead is that of each mark
     * @param gaugedStage index of the stage that carries the marks
     * @param rations one or more, mildest first
     * @param limitRatio chance of running dry that is bearable [-], 0 to 1
     * @param cancelled polled while running
     * @throws IllegalArgumentException when there is no ration, one is milder than that before it, or a value is out of
     *             range
     * @throws CancellationException when cancelled
     */
    public static DroughtCard of(OutlookQuestion question, int gaugedStage, List<Ration> rations, double limitRatio,
            BooleanSupplier cancelled) {
        Shares.check(limitRatio, "limitRatio");
        GaugedStage stage = GaugedStage.of(question, gaugedStage);
        if (rations.isEmpty()) {
            throw new IllegalArgumentException("rations is empty; accepted is one ration or more");
        }
        for (int i = 1; i < rations.size(); i++) {
            if (rations.get(i).allowedRatio() > rations.get(i - 1).allowedRatio()) {
                throw new IllegalArgumentException("rations holds " + rations.get(i).allowedRatio() + " after "
                        + rations.get(i - 1).allowedRatio() + "; accepted is the mildest first");
            }
        }
        List<MonthMarks> months = new ArrayList<>();
        for (Month month : Month.values()) {
            LocalDate date = LocalDate.of(question.today().getYear(), month, 1);
            List<OptionalDouble> marks = new ArrayList<>();
            for (Ration ration : rations) {
                YearRuns runs = new YearRuns(question.from(date, question.stageVolumeM3()).under(ration), cancelled);
                marks.add(mark(runs, stage, Shares.atMost(limitRatio, runs.years())));
            }
            months.add(new MonthMarks(month, marks));
        }
        return new DroughtCard(question.horizonDays(), limitRatio, rations, months);
    }

    /** The lowest step from which no more years than allowed run dry. */
    private static OptionalDouble mark(YearRuns runs, GaugedStage stage, int allowed) {
        YearBrackets years = new YearBrackets(runs.years(), runs.moreIsNeverWorse());
        int enough = STEPS + 1;
        int tooLow = -1;
        while (enough - tooLow > 1) {
            int step = enough > STEPS ? STEPS : tooLow + (enough - tooLow) / 2;
            double[] volumes = stage.volumes(stage.capacityM3() * step / STEPS);
            if (years.dryYears(step, allowed, year -> runs.run(year, volumes).dry()) <= allowed) {
                enough = step;
            } else if (step == STEPS) {
                return OptionalDouble.empty();
            } else {
                tooLow = step;
            }
        }
        return OptionalDouble.of(stage.capacityM3() * enough / STEPS);
    }
}
