package org.roofspring.site.edit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.site.SitePackage;

/**
 * Which fields of an element are shown together, and in which order. The file {@code forms.txt} beside this class names
 * them for the larger classes; features it does not name follow in a last section.
 *
 * @param sections in order, none empty
 */
public record FormPlan(List<Section> sections) {
    private static final Set<EStructuralFeature> NEVER_SHOWN = Set.of(SitePackage.Literals.ELEMENT__ID,
            SitePackage.Literals.SITE__SCHEMA_VERSION);
    private static final Map<EClass, FormPlan> PLANS = new ConcurrentHashMap<>();
    private static final Map<String, Map<String, List<String>>> WRITTEN = read();

    /**
     * Fields under one heading.
     *
     * @param features attributes, references and tables; in order
     */
    public record Section(String title, List<EStructuralFeature> features) {
        public Section {
            features = List.copyOf(features);
        }
    }

    public FormPlan {
        sections = List.copyOf(sections);
    }

    /** The plan of a class. */
    public static FormPlan of(EClass type) {
        return PLANS.computeIfAbsent(type, FormPlan::make);
    }

    private static FormPlan make(EClass type) {
        Set<EStructuralFeature> left = new LinkedHashSet<>();
        Set<EStructuralFeature> common = new LinkedHashSet<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (shown(type, feature)) {
                boolean ofAll = SitePackage.Literals.COMPONENT.getEAllStructuralFeatures().contains(feature);
                (ofAll ? common : left).add(feature);
            }
        }
        List<Section> sections = new ArrayList<>();
        for (Map.Entry<String, List<String>> written : WRITTEN.getOrDefault(type.getName(), Map.of()).entrySet()) {
            List<EStructuralFeature> features = written.getValue().stream().map(name -> feature(type, name)).toList();
            left.removeAll(features);
            common.removeAll(features);
            sections.add(new Section(written.getKey(), features));
        }
        if (sections.isEmpty()) {
            List<EStructuralFeature> first = new ArrayList<>();
            List.of(SitePackage.Literals.NAMED_ELEMENT__NAME, SitePackage.Literals.COMPONENT__IN_USE).forEach(feature -> {
                if (common.remove(feature)) {
                    first.add(feature);
                }
            });
            first.addAll(left);
            left.clear();
            if (!first.isEmpty()) {
                sections.add(new Section(Words.kind(type), first));
            }
        }
        List<EStructuralFeature> rest = new ArrayList<>(left);
        rest.addAll(common);
        if (!rest.isEmpty()) {
            sections.add(new Section("More", rest));
        }
        return new FormPlan(sections);
    }

    /** Parts of the site are in the outline, not in its form. */
    private static boolean shown(EClass type, EStructuralFeature feature) {
        if (NEVER_SHOWN.contains(feature) || !feature.isChangeable() || feature.isDerived()) {
            return false;
        }
        if (feature instanceof EReference reference && reference.isContainment()) {
            return type != SitePackage.Literals.SITE && reference.isMany();
        }
        return !(feature instanceof EReference reference && reference.isContainer());
    }

    private static EStructuralFeature feature(EClass type, String name) {
        EStructuralFeature feature = type.getEStructuralFeature(name);
        if (feature == null || !shown(type, feature)) {
            throw new IllegalStateException("forms.txt names " + name + ", which is not a field of " + type.getName());
        }
        return feature;
    }

    /** Class names stand at the start of a line, sections are indented: title, colon, features. */
    private static Map<String, Map<String, List<String>>> read() {
        Map<String, Map<String, List<String>>> forms = new LinkedHashMap<>();
        try (InputStream stream = FormPlan.class.getResourceAsStream("forms.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            Map<String, List<String>> sections = null;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (!line.startsWith(" ")) {
                    sections = new LinkedHashMap<>();
                    forms.put(line.strip(), sections);
                } else {
                    int colon = line.indexOf(':');
                    sections.put(line.substring(0, colon).strip(), List.of(line.substring(colon + 1).strip().split("\\s+")));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("forms.txt cannot be read", e);
        }
        return forms;
    }
}
