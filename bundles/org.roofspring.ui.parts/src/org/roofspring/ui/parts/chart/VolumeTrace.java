package org.roofspring.ui.parts.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.SiteSession;

/**
 * One line of the chart.
 *
 * @param title what it is about
 * @param daily the volumes; compared by identity, since results never change
 */
record VolumeTrace(String title, FindingValue.Daily daily) {
    static final String CALCULATION = "storage.balance";
    private static final String FINDING = "volumeTrace";

    /** The traces in a site's results: that of the whole site first, then those of single tanks. */
    static List<VolumeTrace> of(SiteSession session) {
        SiteResults results = session.live().results();
        List<VolumeTrace> traces = new ArrayList<>();
        results.completed(CALCULATION).ifPresent(outcome -> {
            for (Finding finding : outcome.findings()) {
                if (finding.id().equals(FINDING) && finding.value() instanceof FindingValue.Daily daily) {
                    String title = session.element(finding.elementId()).map(Words::name).orElse("All tanks");
                    traces.add(finding.elementId() == null ? 0 : traces.size(), new VolumeTrace(title, daily));
                }
            }
        });
        return traces;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VolumeTrace trace && trace.daily == daily && trace.title.equals(title);
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, System.identityHashCode(daily));
    }
}
