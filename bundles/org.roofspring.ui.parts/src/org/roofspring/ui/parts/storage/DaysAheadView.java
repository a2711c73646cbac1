package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue.Daily;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.Quantity;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/** How long today's water lasts: the fan of volumes ahead, the chance of running dry, what to paint on the tank. */
public final class DaysAheadView extends StudyView {
    static final String CALCULATION = "storage.outlook";

    public DaysAheadView() {
        super(CALCULATION);
    }

    static FindingKey key(String id) {
        return new FindingKey(CALCULATION, id, null);
    }

    @Override
    List<Page> pages(SiteSession session, Outcome.Completed outcome, Figures figures) {
        Found found = new Found(outcome, figures);
        List<Page> pages = new ArrayList<>();
        Optional<Ahead> ahead = Ahead.of(found);
        ahead.ifPresent(days -> pages.add(new Page("Water ahead", new FanPlot(days, found),
                new Sheet(key("fan"), table(days), figures))));
        addTable(pages, found, "Dipstick table", "dipstick");
        addTable(pages, found, "Drought card", "droughtCard");
        addTable(pages, found, "Rations", "rations");
        addTable(pages, found, "Year by year", "years");
        return pages;
    }

    /** Day by day what the plot shows. */
    private static Table table(Ahead ahead) {
        List<List<Object>> rows = new ArrayList<>();
        for (int day = 0; day < ahead.days(); day++) {
            List<Object> row = new ArrayList<>();
            row.add(ahead.date(day).toString());
            for (Daily series : Arrays.asList(ahead.low(), ahead.middle(), ahead.high(), ahead.chance())) {
                row.add(Quantity.of(series.value(day), series.unit()));
            }
            rows.add(row);
        }
        return new Table(List.of("Day", "One year in ten has no more", "Half of the years", "Nine in ten",
                "Chance of having gone short"), rows);
    }

    private static void addTable(List<Page> pages, Found found, String title, String id) {
        found.outcome().finding(id).map(Finding::value).ifPresent(value -> pages.add(new Page(title, null,
                new Sheet(key(id), (Table) value, found.figures()))));
    }

    @Override
    String summary(SiteSession session, Outcome.Completed outcome, Figures figures) {
        Found found = new Found(outcome, figures);
        return found.words("volumeToday").map(volume -> volume + " in the tanks.  ").orElse("")
                + "Days of water left: " + left(found, "daysLeftCautious") + " (1 year in 10), "
                + left(found, "daysLeftMiddle") + " (half), " + left(found, "daysLeftHopeful") + " (9 in 10).  "
                + found.words("chanceDry").map(chance -> "Chance of going short within a year: " + chance).orElse("");
    }

    private static String left(Found found, String id) {
        return found.quantity(id).map(days -> found.figures().format().number(days.value())).orElse("\u2013")
                + (found.outcome().finding(id).filter(f -> f.title().endsWith(" or more")).isPresent() ? " or more" : "");
    }
}
