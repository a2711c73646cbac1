package org.roofspring.site.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.meta.Violation;

/**
 * Finds values that are missing or out of their range, and curves whose points make none, and says so in the words of
 * the screen.
 */
public final class SiteChecks {
    private static final int FEWEST_POINTS = 3;

    /**
     * What is wrong with one value.
     *
     * @param object   element or row
     * @param feature  which of its values
     * @param sentence such as "Plan area of North roof must be given."
     */
    public record Fault(EObject object, EStructuralFeature feature, String sentence) {
    }

    private SiteChecks() {
    }

    /** All faults of a site: values in the order of the file, then curves. */
    public static List<Fault> of(Site site) {
        List<Fault> faults = new ArrayList<>(Violation.in(site).stream().map(SiteChecks::fault).toList());
        for (TreeIterator<EObject> all = site.eAllContents(); all.hasNext();) {
            curve(all.next()).ifPresent(faults::add);
        }
        return faults;
    }

    /** The faults of one element or row, without those of what it contains. */
    public static List<Fault> of(EObject object) {
        List<Fault> faults = new ArrayList<>(Violation.of(object).stream().map(SiteChecks::fault).toList());
        curve(object).ifPresent(faults::add);
        return faults;
    }

    private static Fault fault(Violation violation) {
        String value = Words.feature(violation.feature()) + " of " + Words.name(violation.object());
        String reason = violation.reason();
        String sentence = reason.startsWith("must ") ? value + " " + reason : value + ": " + reason;
        return new Fault(violation.object(), violation.feature(), sentence + ".");
    }

    /** A curve that was begun needs three points or more, by rising flow. */
    private static Optional<Fault> curve(EObject object) {
        if (!(object instanceof PumpData pump) || pump.getPoints().isEmpty()) {
            return Optional.empty();
        }
        List<PumpPoint> points = pump.getPoints().stream()
                .filter(point -> point.getFlow() != null && point.getHead() != null).toList();
        String reason = null;
        for (int i = 1; i < points.size() && reason == null; i++) {
            if (!(points.get(i).getFlow().si() > points.get(i - 1).getFlow().si())) {
                reason = "points must come by rising flow, but " + points.get(i).getFlow() + " follows "
                        + points.get(i - 1).getFlow();
            }
        }
        if (points.size() < FEWEST_POINTS) {
            reason = "at least " + FEWEST_POINTS + " points with flow and head are needed, not " + points.size();
        }
        return Optional.ofNullable(reason).map(why -> new Fault(object, Literals.PUMP_DATA__POINTS,
                Words.feature(Literals.PUMP_DATA__POINTS) + " of " + Words.name(object) + ": " + why + "."));
    }
}
