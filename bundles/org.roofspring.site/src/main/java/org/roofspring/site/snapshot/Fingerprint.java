package org.roofspring.site.snapshot;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Element;

/**
 * A digest of what was read: equal for equal content, different for any change of a value, an order or a link. Written
 * as {@code sha256:} and 64 hexadecimal digits.
 */
public final class Fingerprint {
    private Fingerprint() {
    }

    /** Fingerprint of an object and all that it contains; what it points to counts by identifier alone. */
    public static String of(EObject object) {
        StringBuilder text = new StringBuilder();
        write(object, text);
        return digest(text);
    }

    /** Fingerprint of some features of an object, with all that they contain. The order of the features counts. */
    public static String of(EObject object, Collection<? extends EStructuralFeature> features) {
        StringBuilder text = new StringBuilder();
        for (EStructuralFeature feature : features) {
            write(object, feature, text);
        }
        return digest(text);
    }

    /** Fingerprint of several fingerprints or other texts, in order. */
    public static String of(List<String> parts) {
        StringBuilder text = new StringBuilder();
        parts.forEach(part -> write(part, text));
        return digest(text);
    }

    private static void write(EObject object, StringBuilder text) {
        text.append(object.eClass().getName()).append('{');
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            write(object, feature, text);
        }
        text.append('}');
    }

    private static void write(EObject object, EStructuralFeature feature, StringBuilder text) {
        if (!object.eIsSet(feature)) {
            return;
        }
        text.append(feature.getName()).append('[');
        Object value = object.eGet(feature);
        for (Object single : value instanceof Collection<?> many ? many : List.of(value)) {
            if (feature instanceof EAttribute attribute) {
                EDataType type = attribute.getEAttributeType();
                write(EcoreUtil.convertToString(type, single), text);
            } else if (((EReference) feature).isContainment()) {
                write((EObject) single, text);
            } else {
                write(String.valueOf(((Element) single).getId()), text);
            }
        }
        text.append(']');
    }

    /** The length before the text keeps two neighbouring texts from being read as one. */
    private static void write(String value, StringBuilder text) {
        text.append(value.length()).append(':').append(value);
    }

    private static String digest(StringBuilder text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return "sha256:" + HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
