package org.roofspring.calc.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What a calculation says it reads: model classes, single features, or everything. */
final class Reads {
    private final boolean everything;
    private final Set<String> classes = new HashSet<>();
    private final Map<String, Set<String>> features = new HashMap<>();

    private Reads(List<String> names) {
        everything = names.contains("*");
        for (String name : names) {
            int dot = name.indexOf('.');
            if (dot < 0) {
                classes.add(name);
            } else {
                features.computeIfAbsent(name.substring(0, dot), key -> new HashSet<>()).add(name.substring(dot + 1));
            }
        }
    }

    static Reads of(CalculationDescriptor descriptor) {
        return new Reads(descriptor.reads());
    }

    /** The features of an element that are read, in the order of the model; empty when none is. */
    List<EStructuralFeature> of(EClass eClass) {
        if (everything || named(eClass, classes)) {
            return eClass.getEAllStructuralFeatures();
        }
        if (features.isEmpty()) {
            return List.of();
        }
        List<EStructuralFeature> read = new ArrayList<>();
        for (EStructuralFeature feature : eClass.getEAllStructuralFeatures()) {
            if (reads(eClass, feature)) {
                read.add(feature);
            }
        }
        return read;
    }

    /** Whether all features of a class are read. */
    boolean whole(EClass eClass) {
        return everything || named(eClass, classes);
    }

    /** Whether a change of the model bears on what is read. */
    boolean touchedBy(Notification notification, EStructuralFeature feature) {
        if (everything) {
            return true;
        }
        EClass changed = ((EObject) notification.getNotifier()).eClass();
        if (named(changed, classes) || reads(changed, feature)) {
            return true;
        }
        return feature instanceof EReference reference && reference.isContainment()
                && (anyRead(notification.getOldValue()) || anyRead(notification.getNewValue()));
    }

    private boolean anyRead(Object value) {
        if (value instanceof Collection<?> values) {
            return values.stream().anyMatch(this::anyRead);
        }
        if (!(value instanceof EObject element)) {
            return false;
        }
        if (!of(element.eClass()).isEmpty()) {
            return true;
        }
        return element.eContents().stream().anyMatch(this::anyRead);
    }

    private boolean reads(EClass eClass, EStructuralFeature feature) {
        if (features.getOrDefault(eClass.getName(), Set.of()).contains(feature.getName())) {
            return true;
        }
        return eClass.getEAllSuperTypes().stream()
                .anyMatch(type -> features.getOrDefault(type.getName(), Set.of()).contains(feature.getName()));
    }

    private static boolean named(EClass eClass, Set<String> names) {
        return names.contains(eClass.getName()) || eClass.getEAllSuperTypes().stream().anyMatch(type -> names.contains(type.getName()));
    }
}
