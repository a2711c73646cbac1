package org.roofspring.ui.parts.chart;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.site.Tank;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.SiteSession;

/**
 * The line of the chart.
 *
 * @param title which tanks
 * @param daily the volumes; compared by identity, since results never change
 */
record VolumeTrace(String title, FindingValue.Daily daily) {
    static final String CALCULATION = "storage.balance";
    private static final String ALL_TANKS = "volumeTrace";
    private static final String ONE_TANK = "stageTrace";

    /** The trace of the selected tank, or else of all tanks together. */
    static Optional<VolumeTrace> of(SiteSession session) {
        Optional<Outcome.Completed> balance = session.live().results().completed(CALCULATION);
        EObject selected = session.selection().element();
        Optional<VolumeTrace> ofTank = selected instanceof Tank tank
                ? balance.flatMap(outcome -> outcome.finding(ONE_TANK, tank.getId())).flatMap(finding -> trace(Words.name(tank), finding))
                : Optional.empty();
        return ofTank.or(() -> balance.flatMap(outcome -> outcome.finding(ALL_TANKS)).flatMap(finding -> trace("all tanks", finding)));
    }

    private static Optional<VolumeTrace> trace(String title, Finding finding) {
        return finding.value() instanceof FindingValue.Daily daily ? Optional.of(new VolumeTrace(title, daily)) : Optional.empty();
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
