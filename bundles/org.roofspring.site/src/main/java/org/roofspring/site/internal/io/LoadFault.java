package org.roofspring.site.internal.io;

import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;

/** Puts what the XMI reader found wrong into one sentence for people. */
final class LoadFault {
    private LoadFault() {
    }

    static String sentence(String file, Resource resource, Exception failure) {
        return resource.getErrors().stream().filter(XMIException.class::isInstance).map(XMIException.class::cast)
                .min(Comparator.comparingInt(XMIException::getLine).thenComparingInt(XMIException::getColumn))
                .map(first -> String.format(Locale.ROOT, "%s, line %d, column %d: %s", file, first.getLine(),
                        first.getColumn(), XmlGuard.abridged(what(first))))
                .orElseGet(() -> file + " could not be read as a site: " + XmlGuard.abridged(
                        String.valueOf(failure.getMessage())));
    }

    private static String what(XMIException fault) {
        if (fault instanceof FeatureNotFoundException unknown) {
            return label(unknown.getObject()) + " has no feature \"" + unknown.getName() + "\" in this schema";
        }
        if (fault instanceof UnresolvedReferenceException dangling) {
            return (dangling.getObject() == null ? "a reference" : dangling.getFeature().getName() + " of "
                    + label(dangling.getObject())) + " points to \"" + dangling.getReference()
                    + "\", which is not in the file";
        }
        if (fault instanceof IllegalValueException illegal) {
            return illegal.getFeature().getName() + " of " + label(illegal.getObject()) + ": " + why(illegal);
        }
        return fault.getMessage();
    }

    private static String why(IllegalValueException illegal) {
        EStructuralFeature feature = illegal.getFeature();
        Object value = illegal.getValue();
        if (value instanceof EObject object) {
            return label(object) + " is not accepted; " + phrase(feature.getEType()) + " is needed";
        }
        EClassifier type = feature.getEType();
        if (type instanceof EEnum choices) {
            return "\"" + value + "\" is not one of " + choices.getELiterals().stream().map(EEnumLiteral::getLiteral)
                    .collect(Collectors.joining(", "));
        }
        if (feature instanceof EAttribute && ((EDataType) type).getInstanceClass().isPrimitive()) {
            return "\"" + value + "\" is not " + (type.getInstanceClass() == boolean.class ? "true or false"
                    : "a whole number");
        }
        Throwable cause = illegal.getCause();
        return cause == null || cause.getMessage() == null ? "\"" + value + "\" is not accepted" : cause.getMessage();
    }

    private static String phrase(EClassifier type) {
        return type.getName() + (type instanceof EClass && ((EClass) type).isAbstract() ? " of some kind" : "");
    }

    static String label(EObject object) {
        return object == null ? "an element" : object.toString();
    }
}
