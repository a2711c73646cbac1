package org.roofspring.calc.standard.water;

import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.calc.Working.Input;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.site.meta.KnownValue;

/** Values of the site as given, or else the default that the model states. */
public final class Given {
    private Given() {
    }

    /** The value, or the model's default for it, or nothing. */
    public static Optional<Quantity> value(EObject element, EAttribute attribute) {
        return FeatureFacts.of(attribute).valueIn(element).map(KnownValue::quantity);
    }

    /** The value or default in the SI-based unit, or another number where there is neither. */
    public static double si(EObject element, EAttribute attribute, double otherwise) {
        return value(element, attribute).map(Quantity::si).orElse(otherwise);
    }

    /** Whether it was given, not taken from a default. */
    public static boolean isGiven(EObject element, EAttribute attribute) {
        return element.eGet(attribute) != null;
    }

    /** The value as an input of a working, linked to the field it comes from. */
    public static Input input(String symbol, String meaning, EObject element, EAttribute attribute, Quantity otherwise) {
        return new Input(symbol, meaning, value(element, attribute).orElse(otherwise), EcoreUtil.getID(element), attribute.getName());
    }
}
