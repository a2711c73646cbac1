package org.roofspring.ui.parts.storage;

import java.util.List;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/** In which months of the record water was missing, and how much. */
public final class ShortageView extends StudyView {
    private static final String CALCULATION = "storage.balance";
    private static final String MAP = "shortageByMonth";

    public ShortageView() {
        super(CALCULATION);
    }

    @Override
    List<Page> pages(SiteSession session, Outcome.Completed outcome, Figures figures) {
        return outcome.finding(MAP).map(Finding::value).map(value -> {
            FindingValue.Table table = (FindingValue.Table) value;
            FindingKey key = new FindingKey(CALCULATION, MAP, null);
            return List.of(new Page("Shortage by month", new MonthMap(key, table, figures),
                    new Sheet(key, table, figures)));
        }).orElse(List.of());
    }

    @Override
    String summary(SiteSession session, Outcome.Completed outcome, Figures figures) {
        Found found = new Found(outcome, figures);
        return found.words("timeReliability").map(share -> "Days met in full: " + share).orElse("No demand")
                + found.words("longestShortage").map(days -> ".  Longest shortage: " + days).orElse("");
    }
}
