package org.roofspring.storage.outlook;

import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The mildest ration that keeps the chance of running dry under a limit. A lower ration never raises the chance, as
 * long as every use is watched, nothing is bought in and no rationing rule acts, so halving finds it; else it finds one
 * that keeps the limit, though a milder one may do so too.
 */
public final class RationSearch {

    private static final int MOST_PERCENT = 100;

    private RationSearch() {
    }

    /**
     * @param question where things stand; a day counts as short when the ration itself is not met
     * @param cut indices of the uses that the ration cuts; none means all
     * @param limitRatio chance of running dry that is bearable [-], 0 to 1
     * @param cancelled polled while running
     * @throws CancellationException when cancelled
     */
    public static RationAnswer mildest(OutlookQuestion question, Set<Integer> cut, double limitRatio,
            BooleanSupplier cancelled) {
        Shares.check(limitRatio, "limitRatio");
        Ration ration = new Ration(1, cut);
        int years = question.weather().daysLike(question.today()).size();
        int allowed = Shares.atMost(limitRatio, years);
        YearBrackets brackets = new YearBrackets(years, question.moreIsNeverWorse());
        int tooMuch = MOST_PERCENT + 1;
        int enough = -1;
        int dryAtEnough = 0;
        while (tooMuch - enough > 1) {
            int percent = tooMuch > MOST_PERCENT ? MOST_PERCENT : (enough + tooMuch) / 2;
            YearRuns runs = runs(question, ration, percent, cancelled);
            int dry = brackets.dryYears(MOST_PERCENT - percent, allowed,
                    year -> runs.run(year, question.stageVolumeM3()).dry());
            if (dry <= allowed) {
                enough = percent;
                dryAtEnough = dry;
            } else {
                tooMuch = percent;
            }
        }
        if (enough >= 0) {
            return new RationAnswer.Enough(ration.to(enough / 100.0), new Chance(dryAtEnough, years));
        }
        YearRuns nothing = runs(question, ration, 0, cancelled);
        return new RationAnswer.NotEnough(new Chance(brackets.dryYears(MOST_PERCENT, years,
                year -> nothing.run(year, question.stageVolumeM3()).dry()), years));
    }

    private static YearRuns runs(OutlookQuestion question, Ration ration, int percent, BooleanSupplier cancelled) {
        return new YearRuns(question.under(ration.to(percent / 100.0)), cancelled);
    }
}
