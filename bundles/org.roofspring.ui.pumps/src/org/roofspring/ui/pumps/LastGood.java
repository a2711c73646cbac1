package org.roofspring.ui.pumps;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.roofspring.calc.engine.SiteResults;

/** The last figures that each pump of a site had, so that bad input leaves them to be seen, greyed. */
final class LastGood {
    private final Map<String, ReviewAnswer.About> figures = new HashMap<>();
    private final Map<String, ReviewAnswer.Band> bands = new HashMap<>();
    private Object seen;
    private ReviewAnswer answer;

    /** Takes in the results that are shown now; gives the answer they hold, if they hold one. */
    Optional<ReviewAnswer> take(SiteResults results) {
        Object completed = results.completed(ReviewAnswer.CALCULATION).orElse(null);
        if (completed != seen) {
            seen = completed;
            answer = results.completed(ReviewAnswer.CALCULATION).map(ReviewAnswer::new).orElse(null);
            if (answer != null) {
                answer.abouts().forEach((id, about) -> {
                    if (about.works()) {
                        figures.put(id, about);
                    }
                });
                answer.pumpsWithBand().forEach(pump -> bands.put(pump, answer.band(pump).orElseThrow()));
            }
        }
        return Optional.ofNullable(answer);
    }

    Optional<ReviewAnswer.About> figures(String element) {
        return Optional.ofNullable(figures.get(element));
    }

    Optional<ReviewAnswer.Band> band(String pump) {
        return Optional.ofNullable(bands.get(pump));
    }
}
