package org.roofspring.calc.standard.water;

import java.util.Optional;

import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.calc.Working.Input;
import org.roofspring.quantity.Quantity;

/** Values of the site as given, or else the default that the model states. */
public final class Given {
    private static final String VALUE = "http://www.roofspring.org/value";

    private Given() {
    }

    /** The value, or the model's default for it, or nothing. */
    public static Optional<Quantity> value(EObject element, EAttribute attribute) {
        Quantity given = (Quantity) element.eGet(attribute);
        if (given != null) {
            return Optional.of(given);
        }
        EAnnotation annotation = attribute.getEAnnotation(VALUE);
        String text = annotation == null ? null : annotation.getDetails().get("default");
        return text == null ? Optional.empty() : Optional.of(Quantity.valueOf(text));
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
