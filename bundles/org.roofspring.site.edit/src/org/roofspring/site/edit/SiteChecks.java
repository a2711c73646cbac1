package org.roofspring.site.edit;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.site.Site;
import org.roofspring.site.meta.Violation;

/** Finds values that are missing or out of their range, and says so in the words of the screen. */
public final class SiteChecks {

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

    /** All faults of a site, in the order of the file. */
    public static List<Fault> of(Site site) {
        return Violation.in(site).stream().map(SiteChecks::fault).toList();
    }

    /** The faults of one element or row, without those of what it contains. */
    public static List<Fault> of(EObject object) {
        return Violation.of(object).stream().map(SiteChecks::fault).toList();
    }

    private static Fault fault(Violation violation) {
        String value = Words.feature(violation.feature()) + " of " + Words.name(violation.object());
        String reason = violation.reason();
        String sentence = reason.startsWith("must ") ? value + " " + reason : value + ": " + reason;
        return new Fault(violation.object(), violation.feature(), sentence + ".");
    }
}
