package org.roofspring.site.snapshot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Change;
import org.roofspring.site.Element;
import org.roofspring.site.Site;

/** Makes the changes of an option in a copy of the site. */
final class Changes {
    private final Map<String, Element> byId = new HashMap<>();

    private Changes(Site site) {
        site.eAllContents().forEachRemaining(object -> {
            if (object instanceof Element element) {
                byId.put(element.getId(), element);
            }
        });
        byId.put(site.getId(), site);
    }

    static Site applied(Site site, List<Change> changes) {
        Changes all = new Changes(site);
        changes.forEach(all::apply);
        return site;
    }

    private void apply(Change change) {
        if (change.getElement() == null || change.getFeature() == null) {
            throw new IllegalArgumentException(change + " names no element or no feature to change");
        }
        Element element = byId.get(change.getElement().getId());
        EStructuralFeature feature = element.eClass().getEStructuralFeature(change.getFeature());
        if (feature == null || isFixed(feature)) {
            throw new IllegalArgumentException(element + " has no feature \"" + change.getFeature()
                    + "\" that an option can change");
        }
        if (change.getValue() == null) {
            element.eUnset(feature);
            return;
        }
        try {
            element.eSet(feature, feature.isMany() ? values(feature, change.getValue())
                    : value(feature, change.getValue()));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("a change of " + feature.getName() + " of " + element
                    + " cannot be made: " + e.getMessage(), e);
        }
    }

    private static boolean isFixed(EStructuralFeature feature) {
        return feature instanceof EReference reference ? reference.isContainment() : ((EAttribute) feature).isID();
    }

    private List<Object> values(EStructuralFeature feature, String text) {
        List<Object> values = new ArrayList<>();
        for (String part : text.trim().split("\\s+")) {
            values.add(value(feature, part));
        }
        return values;
    }

    private Object value(EStructuralFeature feature, String text) {
        if (feature instanceof EAttribute attribute) {
            return EcoreUtil.createFromString(attribute.getEAttributeType(), text);
        }
        EObject target = byId.get(text.trim());
        if (!feature.getEType().isInstance(target)) {
            throw new IllegalArgumentException("\"" + text + "\" is not the identifier of a "
                    + feature.getEType().getName());
        }
        return target;
    }
}
