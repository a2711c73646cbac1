package org.roofspring.ui.field;

import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.widgets.Composite;

/** Makes the field that suits a feature. */
public final class Fields {
    /** Texts that run over several lines. */
    private static final Set<String> LONG_TEXTS = Set.of("note", "checklist", "spares", "hazard", "action", "control", "reason",
            "text");

    private Fields() {
    }

    /**
     * Makes a field.
     *
     * @param parent  with a grid of {@link Field#COLUMNS} columns
     * @param feature an attribute, or a reference that is no containment
     */
    public static Field create(FieldContext context, Composite parent, EStructuralFeature feature) {
        Field field = choose(context, parent, feature);
        field.build();
        return field;
    }

    private static Field choose(FieldContext context, Composite parent, EStructuralFeature feature) {
        if (feature instanceof EReference reference) {
            if (reference.isContainment()) {
                throw new IllegalArgumentException(reference.getName() + " holds elements of its own; it is no field");
            }
            return reference.isMany() ? new ReferencesField(context, parent, reference) : new ChoiceField(context, parent, reference);
        }
        EAttribute attribute = (EAttribute) feature;
        Class<?> java = attribute.getEAttributeType().getInstanceClass();
        if (attribute.getEAttributeType() instanceof EEnum) {
            return attribute.isMany() ? new FlagsField(context, parent, attribute) : new ChoiceField(context, parent, attribute);
        }
        if (java == boolean.class || java == Boolean.class) {
            return new FlagField(context, parent, attribute);
        }
        boolean manyLines = java == String.class && !attribute.isMany() && LONG_TEXTS.contains(attribute.getName());
        return new TextField(context, parent, attribute, manyLines);
    }
}
