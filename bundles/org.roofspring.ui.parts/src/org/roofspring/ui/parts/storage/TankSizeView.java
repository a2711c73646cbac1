package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.Outcome;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/** How much tank, and how much roof: the reliability curve, the surface of both, and the simple rules beside them. */
public final class TankSizeView extends StudyView {
    static final String CALCULATION = "storage.sizing";
    static final String BALANCE = "storage.balance";

    public TankSizeView() {
        super(CALCULATION);
    }

    static FindingKey key(String id) {
        return new FindingKey(CALCULATION, id, null);
    }

    @Override
    List<Page> pages(SiteSession session, Outcome.Completed outcome, Figures figures) {
        Found found = new Found(outcome, figures);
        Optional<Found> balance = balance(session).map(built -> new Found(built, figures));
        List<Page> pages = new ArrayList<>();
        found.value("reliabilityTable", Table.class).ifPresent(table -> pages.add(new Page("Reliability of a tank",
                new ReliabilityPlot(found, balance, table), new Sheet(key("reliabilityTable"), table, figures))));
        found.value("surface", Table.class).ifPresent(table -> pages.add(new Page("Roof by tank",
                new SurfacePlot(found, table), new Sheet(key("surface"), table, figures))));
        addTable(pages, found, "Simple rules", "rules");
        addTable(pages, found, "Longest and deepest shortage", "shortages");
        return pages;
    }

    private static void addTable(List<Page> pages, Found found, String title, String id) {
        found.value(id, Table.class).ifPresent(table -> pages.add(new Page(title, null,
                new Sheet(key(id), table, found.figures()))));
    }

    private static Optional<Outcome.Completed> balance(SiteSession session) {
        return session.live().results().completed(BALANCE);
    }

    @Override
    List<Object> others(SiteSession session) {
        return balance(session).map(outcome -> List.<Object>of(outcome)).orElse(List.of());
    }

    @Override
    String summary(SiteSession session, Outcome.Completed outcome, Figures figures) {
        Found found = new Found(outcome, figures);
        String needed = found.words("requiredVolume").map(volume -> "Needed: " + volume + " usable")
                .orElse("No tank reaches the target");
        String present = found.words("presentVolume").map(volume -> "; there are " + volume).orElse("");
        String verdict = found.value("verdict", FindingValue.Verdict.class).map(said -> ".  " + said.text())
                .orElse("");
        return needed + present + verdict;
    }
}
