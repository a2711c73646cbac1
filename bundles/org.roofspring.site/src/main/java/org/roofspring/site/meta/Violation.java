package org.roofspring.site.meta;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Site;

/**
 * A value that is missing or out of its range. A file with such values can be opened, so that they can be mended; it
 * cannot be calculated with.
 *
 * @param object  whose value it is
 * @param feature which value
 * @param reason  what is wrong and what is accepted, such as "-3 m2 must be above 0 m2"
 */
public record Violation(EObject object, EStructuralFeature feature, String reason) {
    /** One sentence: element, feature, what is wrong. */
    public String sentence() {
        return feature.getName() + " of " + where() + ": " + reason;
    }

    private String where() {
        boolean named = object.eClass().getEStructuralFeature("id") != null;
        return named || object.eContainer() == null ? object.toString()
                : object.eClass().getName() + " in " + object.eContainer();
    }

    /** Every missing or out-of-range value of the site, in document order. */
    public static List<Violation> in(Site site) {
        List<Violation> found = new ArrayList<>(of(site));
        for (TreeIterator<EObject> all = site.eAllContents(); all.hasNext();) {
            found.addAll(of(all.next()));
        }
        return found;
    }

    /** Every missing or out-of-range value of one object, without what it contains. */
    public static List<Violation> of(EObject object) {
        List<Violation> found = new ArrayList<>();
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            reason(object, feature).ifPresent(reason -> found.add(new Violation(object, feature, reason)));
        }
        return found;
    }

    private static Optional<String> reason(EObject object, EStructuralFeature feature) {
        Object value = object.eGet(feature);
        if (value == null || value instanceof Collection<?> many && many.isEmpty()) {
            return feature.isRequired() ? Optional.of("must be given") : Optional.empty();
        }
        if (value instanceof Quantity quantity) {
            return FeatureFacts.of(feature).refusal(quantity).map(refusal -> quantity + " " + refusal);
        }
        // an int or long is zero when it was never set, so its range is checked only once it was
        if (value instanceof Number number && (object.eIsSet(feature) || feature.isRequired())) {
            return FeatureFacts.of(feature).refusal(number.doubleValue()).map(refusal -> number + " " + refusal);
        }
        return Optional.empty();
    }
}
