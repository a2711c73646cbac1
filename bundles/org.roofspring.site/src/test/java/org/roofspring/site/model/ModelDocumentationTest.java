package org.roofspring.site.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.SitePackage;
import org.roofspring.site.meta.FeatureFacts;

/** The model explains itself: what is not explained, or explained wrongly, fails. */
class ModelDocumentationTest {
    private static final SitePackage MODEL = SitePackage.eINSTANCE;

    @Test
    void everyClassFeatureTypeAndLiteralIsDocumented() {
        List<String> bare = new ArrayList<>();
        int seen = 0;
        for (TreeIterator<EObject> all = MODEL.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            if (element instanceof EClassifier || element instanceof EStructuralFeature
                    || element.eClass() == EcorePackage.Literals.EENUM_LITERAL) {
                seen++;
                String text = EcoreUtil.getDocumentation((ENamedElement) element);
                if (text == null || text.length() < 4 || !text.endsWith(".")) {
                    bare.add(path(element));
                }
            }
        }
        assertEquals(List.of(), bare);
        assertEquals(true, seen > 800, "only " + seen + " documented things were found");
    }

    @Test
    void documentationNamesUnitAndDefaultOfEachFeature() {
        List<String> wrong = new ArrayList<>();
        for (EAttribute attribute : attributes()) {
            FeatureFacts facts = FeatureFacts.of(attribute);
            String text = facts.documentation();
            facts.usualUnit().filter(unit -> unit != Units.ONE).ifPresent(unit -> {
                if (!text.contains("Usual unit " + unit.symbol())) {
                    wrong.add(path(attribute) + " does not name its unit " + unit);
                }
            });
            facts.defaultValue().ifPresent(value -> {
                if (!text.contains("Default ") || !text.contains(facts.defaultSource().orElse("no source given"))) {
                    wrong.add(path(attribute) + " does not name its default and source");
                }
            });
            if ((facts.minimum().isPresent() || facts.maximum().isPresent()) && !text.contains("Range ")) {
                wrong.add(path(attribute) + " does not name its range");
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyDefaultHasASourceAndLiesInItsRange() {
        List<String> wrong = new ArrayList<>();
        for (EAttribute attribute : attributes()) {
            FeatureFacts facts = FeatureFacts.of(attribute);
            facts.defaultValue().flatMap(facts::refusal).ifPresent(reason -> wrong.add(path(attribute) + reason));
            if (facts.defaultValue().isPresent() != facts.defaultSource().isPresent()) {
                wrong.add(path(attribute) + " has a default without source, or a source without default");
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyQuantityTypeNamesADimensionAndAUnitOfIt() {
        Set<String> free = new TreeSet<>();
        for (EClassifier classifier : MODEL.getEClassifiers()) {
            if (classifier instanceof EDataType type && type.getInstanceClass() == Quantity.class) {
                String dimension = EcoreUtil.getAnnotation(type, "http://www.roofspring.org/quantity", "dimension");
                String unit = EcoreUtil.getAnnotation(type, "http://www.roofspring.org/quantity", "unit");
                if (dimension == null) {
                    free.add(type.getName());
                } else {
                    assertEquals(Dimension.valueOf(dimension), Units.find(unit).orElseThrow().dimension(),
                            type.getName());
                }
            }
        }
        assertEquals(Set.of("Measurement"), free, "types whose values may have any dimension");
    }

    @Test
    void noFeatureIsABareFloatingPointNumber() {
        for (EAttribute attribute : attributes()) {
            Class<?> type = attribute.getEAttributeType().getInstanceClass();
            assertEquals(false, type == double.class || type == Double.class || type == float.class,
                    path(attribute) + " has no dimension");
        }
    }

    @Test
    void whateverIsNoRowHasAnIdentifier() {
        for (EClassifier classifier : MODEL.getEClassifiers()) {
            if (classifier instanceof EClass type && !type.isAbstract()) {
                boolean row = MODEL.getRow().isSuperTypeOf(type);
                assertEquals(!row, type.getEIDAttribute() != null, type.getName());
                assertEquals(!row, MODEL.getElement().isSuperTypeOf(type), type.getName());
            }
        }
    }

    /** Lazily resolved references would make readers of a snapshot write. */
    @Test
    void noReferenceResolvesProxies() {
        for (EClassifier classifier : MODEL.getEClassifiers()) {
            if (classifier instanceof EClass type) {
                for (EReference reference : type.getEReferences()) {
                    assertEquals(false, reference.isResolveProxies(), path(reference));
                    assertEquals(true, reference.isContainment()
                            || MODEL.getElement().isSuperTypeOf(reference.getEReferenceType()),
                            path(reference) + " must point to something that has an identifier");
                }
            }
        }
    }

    @Test
    void literalsAreWrittenAsTheyAreNamed() {
        for (EClassifier classifier : MODEL.getEClassifiers()) {
            if (classifier instanceof EEnum choices) {
                choices.getELiterals().forEach(literal -> assertEquals(literal.getName(), literal.getLiteral()));
            }
        }
    }

    private static List<EAttribute> attributes() {
        return MODEL.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .flatMap(type -> type.getEAttributes().stream()).toList();
    }

    private static String path(EObject element) {
        return (element.eContainer() instanceof ENamedElement owner ? owner.getName() + "." : "")
                + ((ENamedElement) element).getName();
    }
}
