package org.roofspring.storage.outlook;

import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The mildest ration that keeps the chance of running dry under a limit. A lower ration never raises the chance, as
 * long as nothing is bought in and no rationing rule acts, so halving finds it.
 */
public final class RationSearch {

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
        int tooMuch = 101;
        int enough = -1;
        Chance best = null;
        while (tooMuch - enough > 1) {
            int percent = enough < 0 && tooMuch == 101 ? 100 : (enough + tooMuch) / 2;
            Chance chance = chance(question, ration.to(percent / 100.0), cancelled);
            if (chance.dry() <= Shares.atMost(limitRatio, chance.years())) {
                enough = percent;
                best = chance;
            } else {
                tooMuch = percent;
            }
        }
        return best == null ? new RationAnswer.NotEnough(chance(question, ration.to(0), cancelled))
                : new RationAnswer.Enough(ration.to(enough / 100.0), best);
    }

    private static Chance chance(OutlookQuestion question, Ration ration, BooleanSupplier cancelled) {
        YearRuns runs = new YearRuns(question.under(ration), cancelled);
        return new Chance(runs.dryYears(question.stageVolumeM3(), runs.years()), runs.years());
    }
}
