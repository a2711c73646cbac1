package org.roofspring.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.GutterProfile;
import org.roofspring.site.SitePackage;
import org.roofspring.site.edit.Catalogue;
import org.roofspring.site.edit.FormPlan;
import org.roofspring.site.edit.SiteChecks;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.FeatureFacts;

/** Names, meanings and forms of the whole model. */
class ModelWordsTest {
    @Test
    void everyFieldIsInItsFormOnce() {
        for (EClassifier classifier : SitePackage.eINSTANCE.getEClassifiers()) {
            if (!(classifier instanceof EClass type) || type.isAbstract()) {
                continue;
            }
            Set<EStructuralFeature> planned = new HashSet<>();
            for (FormPlan.Section section : FormPlan.of(type).sections()) {
                assertFalse(section.features().isEmpty(), type.getName() + "/" + section.title());
                section.features().forEach(feature -> assertTrue(planned.add(feature), type.getName() + " shows " + feature.getName() + " twice"));
            }
            for (EStructuralFeature attribute : type.getEAllAttributes()) {
                boolean hidden = attribute == SitePackage.Literals.ELEMENT__ID || attribute == SitePackage.Literals.SITE__SCHEMA_VERSION;
                assertEquals(!hidden, planned.contains(attribute), type.getName() + "." + attribute.getName());
            }
            type.getEAllReferences().stream().filter(reference -> !reference.isContainment())
                    .forEach(reference -> assertTrue(planned.contains(reference), type.getName() + "." + reference.getName()));
        }
    }

    @Test
    void everyFieldHasAMeaningToShow() {
        for (EClassifier classifier : SitePackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass type) {
                type.getEStructuralFeatures().forEach(feature -> assertFalse(FeatureFacts.documentation(feature).isBlank(),
                        type.getName() + "." + feature.getName()));
            }
        }
    }

    @Test
    void everyPartOfTheSiteIsInTheCatalogueOnce() {
        List<?> kinds = Catalogue.kinds();
        assertEquals(new HashSet<Object>(SitePackage.Literals.SITE.getEAllContainments()), new HashSet<Object>(kinds));
        assertEquals(kinds.size(), new HashSet<Object>(kinds).size());
    }

    @Test
    void namesReadAsWords() {
        assertEquals("Plan area", Words.feature(SitePackage.Literals.ROOF__PLAN_AREA));
        assertEquals("First-flush diverter", Words.kind(SitePackage.Literals.FIRST_FLUSH_DIVERTER));
        assertEquals("half round", Words.choice(GutterProfile.HALF_ROUND));
        assertEquals("NPSH required", Words.feature(SitePackage.Literals.PUMP_POINT__NPSH_REQUIRED));
        for (EClassifier classifier : SitePackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EEnum choices) {
                Set<String> words = new HashSet<>();
                choices.getELiterals().forEach(literal -> assertTrue(words.add(Words.choice(literal.getInstance())),
                        choices.getName() + "." + literal.getName() + " reads like another"));
            }
        }
    }

    @Test
    void faultsAreSentencesInTheWordsOfTheScreen() {
        SampleSite sample = new SampleSite();
        assertTrue(SiteChecks.of(sample.site).isEmpty(), SiteChecks.of(sample.site).toString());
        sample.north.setPlanArea(null);
        sample.south.setPlanArea(Quantity.of(-5, Units.M2));
        assertEquals(List.of("Plan area of North must be given.", "Plan area of South: -5 m2 must be above 0\u00a0m\u00b2."),
                SiteChecks.of(sample.site).stream().map(SiteChecks.Fault::sentence).toList());
    }
}
