package org.roofspring.calc.engine;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Fingerprints (SHA-256) of what each calculation reads from one snapshot: the elements and features it names, the
 * data files they refer to, and the fingerprints of the results it builds on. Made for one run by one thread.
 */
final class Fingerprints {
    private final SiteSnapshot snapshot;
    private final List<EObject> elements = new ArrayList<>();
    private final Map<EObject, String> wholeElements = new IdentityHashMap<>();

    Fingerprints(SiteSnapshot snapshot) {
        this.snapshot = snapshot;
        elements.add(snapshot.site());
        for (Iterator<EObject> contents = snapshot.site().eAllContents(); contents.hasNext();) {
            elements.add(contents.next());
        }
    }

    String of(CalculationDescriptor descriptor, Map<String, CalculationResult> before) {
        MessageDigest digest = sha256();
        update(digest, descriptor.id());
        update(digest, descriptor.version());
        Reads reads = Reads.of(descriptor);
        for (EObject element : elements) {
            if (reads.whole(element.eClass())) {
                update(digest, wholeElements.computeIfAbsent(element, e -> text(e, e.eClass().getEAllStructuralFeatures())));
            } else {
                List<EStructuralFeature> features = reads.of(element.eClass());
                if (!features.isEmpty()) {
                    update(digest, text(element, features));
                }
            }
        }
        for (String dependency : descriptor.dependencies()) {
            CalculationResult result = before.get(dependency);
            update(digest, result == null ? "-" : result.status() + result.fingerprint());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private String text(EObject element, List<EStructuralFeature> features) {
        StringBuilder text = new StringBuilder(element.eClass().getName()).append('|').append(EcoreUtil.getID(element)).append('|');
        if (element.eContainer() != null) {
            text.append(EcoreUtil.getID(element.eContainer())).append('.').append(element.eContainingFeature().getName());
        }
        for (EStructuralFeature feature : features) {
            Object value = element.eGet(feature);
            text.append('\n').append(feature.getName()).append('=');
            if (value instanceof Collection<?> values) {
                values.forEach(item -> appendValue(text, feature, item));
            } else if (value != null) {
                appendValue(text, feature, value);
            }
        }
        return text.toString();
    }

    private void appendValue(StringBuilder text, EStructuralFeature feature, Object value) {
        if (feature instanceof EAttribute attribute) {
            String written = EcoreUtil.convertToString(attribute.getEAttributeType(), value);
            text.append(written).append(';');
            if (namesFile(attribute) && !written.isBlank()) {
                text.append(stamp(written)).append(';');
            }
        } else if (feature instanceof EReference reference && !reference.isContainment() && !reference.isContainer()) {
            text.append(EcoreUtil.getID((EObject) value)).append(';');
        }
    }

    /** By convention of the model an attribute that names a data file ends in "file". */
    private static boolean namesFile(EAttribute attribute) {
        return attribute.getName().toLowerCase(Locale.ROOT).endsWith("file");
    }

    /** Changes when the file does: size and time, or that there is none. */
    private String stamp(String relative) {
        try {
            Path file = snapshot.resolve(relative);
            return Files.size(file) + "@" + Files.getLastModifiedTime(file).toMillis();
        } catch (IOException e) {
            return "none: " + e.getMessage();
        }
    }

    private static void update(MessageDigest digest, String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
