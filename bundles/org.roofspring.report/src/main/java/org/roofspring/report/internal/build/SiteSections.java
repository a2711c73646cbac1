package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Cell;
import org.roofspring.site.Element;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.meta.FeatureFacts;

/**
 * What is in the site file: every element with every value that was given, and the defaults taken for those that were
 * not.
 */
final class SiteSections {
    /** Shown in sections of their own, or of no use on paper. */
    private static final Set<EStructuralFeature> ELSEWHERE = Set.of(SitePackage.Literals.SITE__REMARKS,
            SitePackage.Literals.COMPONENT__DRAWING_PLACE, SitePackage.Literals.SITE__SCHEMA_VERSION);

    private final Site site;
    private final Words words;
    private final Tables tables;

    SiteSections(Site site, Words words) {
        this.site = site;
        this.words = words;
        this.tables = new Tables(words);
    }

    /** A table for each kind of element, in the order of the file. */
    List<Block> inputs() {
        List<Block> blocks = new ArrayList<>();
        List<Block.Entry> entries = new ArrayList<>();
        for (EStructuralFeature feature : site.eClass().getEAllStructuralFeatures()) {
            if (site.eIsSet(feature) && !isContainment(feature) && !ELSEWHERE.contains(feature)
                    && feature != SitePackage.Literals.ELEMENT__ID && feature != SitePackage.Literals.ELEMENT__NOTE) {
                entries.add(new Block.Entry(Words.label(feature.getName()), new Cell(words.of(site.eGet(feature)))));
            }
        }
        blocks.add(new Block.KeyValues(entries));
        groups().forEach((reference, objects) -> blocks.addAll(group(reference, objects)));
        return blocks;
    }

    private static boolean isContainment(EStructuralFeature feature) {
        return feature instanceof EReference reference && reference.isContainment();
    }

    private Map<EReference, List<EObject>> groups() {
        Map<EReference, List<EObject>> groups = new LinkedHashMap<>();
        collect(site, groups);
        return groups;
    }

    private static void collect(EObject owner, Map<EReference, List<EObject>> groups) {
        for (EReference reference : owner.eClass().getEAllContainments()) {
            if (!ELSEWHERE.contains(reference)) {
                Object value = owner.eGet(reference);
                for (Object child : value instanceof Collection<?> many ? many : value == null ? List.of()
                        : List.of(value)) {
                    groups.computeIfAbsent(reference, k -> new ArrayList<>()).add((EObject) child);
                    collect((EObject) child, groups);
                }
            }
        }
    }

    private List<Block> group(EReference reference, List<EObject> objects) {
        boolean ofSite = reference.getEContainingClass() == SitePackage.Literals.SITE;
        Set<EStructuralFeature> features = new LinkedHashSet<>();
        objects.forEach(object -> object.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> object.eIsSet(feature) && !isContainment(feature) && !ELSEWHERE.contains(feature)
                        && feature != SitePackage.Literals.ELEMENT__ID
                                && feature != SitePackage.Literals.NAMED_ELEMENT__NAME)
                .forEach(features::add));
        boolean elements = objects.stream().anyMatch(object -> object instanceof NamedElement named
                && named.getName() != null);
        List<String> columns = new ArrayList<>();
        // the name first: it heads the columns where the table is turned
        if (elements) {
            columns.add("Name");
        }
        if (!ofSite) {
            columns.add("Of");
        }
        features.forEach(feature -> columns.add(Words.label(feature.getName())));
        List<List<Object>> rows = new ArrayList<>();
        for (EObject object : objects) {
            List<Object> row = new ArrayList<>();
            if (elements) {
                row.add(object instanceof Element element ? ownName(element) : "");
            }
            if (!ofSite) {
                row.add(object.eContainer() instanceof Element owner ? words.name(owner) : "");
            }
            features.forEach(feature -> row.add(value(object, feature)));
            rows.add(row);
        }
        String label = Words.label(reference.getName());
        String caption = ofSite ? label : label + " of "
                + Words.label(reference.getEContainingClass().getName()).toLowerCase(Locale.ROOT);
        String id = "table/" + reference.getEContainingClass().getName() + "." + reference.getName();
        return columns.isEmpty() ? List.of() : tables.of(id, caption, columns, rows, "", "");
    }

    /** Classes of different kinds can stand in one list, so not every object has every feature. */
    private static Object value(EObject object, EStructuralFeature feature) {
        boolean has = object.eClass().getEAllStructuralFeatures().contains(feature);
        return has && object.eIsSet(feature) ? object.eGet(feature) : null;
    }

    private String ownName(Element element) {
        return element instanceof NamedElement named && named.getName() != null ? named.getName() : words.name(element);
    }

    /** Values that nobody gave, with what is taken instead and where that comes from. */
    List<Block> defaults() {
        Map<EStructuralFeature, Integer> missing = new LinkedHashMap<>();
        countMissing(site, missing);
        site.eAllContents().forEachRemaining(object -> countMissing(object, missing));
        List<List<Object>> rows = new ArrayList<>();
        missing.forEach((feature, count) -> {
            FeatureFacts facts = FeatureFacts.of(feature);
            rows.add(List.of(Words.label(feature.getEContainingClass().getName()), Words.label(feature.getName()),
                    words.of(facts.defaultValue().orElseThrow()), String.valueOf(count),
                            facts.defaultSource().orElse("")));
        });
        return rows.isEmpty() ? List.of(new Block.Paragraph("Every value that has a default was given."))
                : tables.of("table/defaults", "Taken where no value was given", List.of("Of", "Value", "Taken as",
                        "Times", "Source"),
                        rows, "", "");
    }

    private static void countMissing(EObject object, Map<EStructuralFeature, Integer> missing) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (FeatureFacts.isQuantity(attribute) && !attribute.isMany() && object.eGet(attribute) == null
                    && FeatureFacts.of(attribute).defaultValue().isPresent()) {
                missing.merge(attribute, 1, Integer::sum);
            }
        }
    }
}
