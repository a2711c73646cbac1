package org.roofspring.site.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.roofspring.site.SitePackage;

/**
 * The kinds of element a site holds, in the order of the water's way: what falls, what catches, stores, moves, uses
 * and treats it, and then money, time and upkeep.
 */
public final class Catalogue {
    private static final Map<String, List<EReference>> CHAPTERS = new LinkedHashMap<>();

    static {
        CHAPTERS.put("Rain and target", List.of(SitePackage.Literals.SITE__RAIN, SitePackage.Literals.SITE__TARGET));
        CHAPTERS.put("Catching", List.of(SitePackage.Literals.SITE__ROOFS, SitePackage.Literals.SITE__GUTTERS,
                SitePackage.Literals.SITE__DOWNPIPES, SitePackage.Literals.SITE__SCREENS,
                SitePackage.Literals.SITE__DIVERTERS));
        CHAPTERS.put("Storing", List.of(SitePackage.Literals.SITE__TANKS, SitePackage.Literals.SITE__TANK_LINKS));
        CHAPTERS.put("Moving", List.of(SitePackage.Literals.SITE__PUMPS, SitePackage.Literals.SITE__PIPE_RUNS,
                SitePackage.Literals.SITE__JUNCTIONS, SitePackage.Literals.SITE__PRESSURE_VESSELS,
                SitePackage.Literals.SITE__TAPS));
        CHAPTERS.put("Using", List.of(SitePackage.Literals.SITE__USES, SitePackage.Literals.SITE__CALENDARS,
                SitePackage.Literals.SITE__RATIONING, SitePackage.Literals.SITE__TOP_UPS));
        CHAPTERS.put("Treating", List.of(SitePackage.Literals.SITE__RAW_WATER, SitePackage.Literals.SITE__TRAINS));
        CHAPTERS.put("Money", List.of(SitePackage.Literals.SITE__COSTS, SitePackage.Literals.SITE__ALTERNATIVES,
                SitePackage.Literals.SITE__ECONOMY));
        CHAPTERS.put("Stages and options", List.of(SitePackage.Literals.SITE__STAGES,
                SitePackage.Literals.SITE__OPTIONS));
        CHAPTERS.put("Upkeep and records", List.of(SitePackage.Literals.SITE__UPKEEP,
                SitePackage.Literals.SITE__SAFETY_PLAN, SitePackage.Literals.SITE__INSPECTIONS,
                SitePackage.Literals.SITE__READINGS, SitePackage.Literals.SITE__WATER_TESTS,
                SitePackage.Literals.SITE__INCIDENTS, SitePackage.Literals.SITE__SCHEME,
                SitePackage.Literals.SITE__REMARKS, SitePackage.Literals.SITE__EXTENSIONS));
    }

    private Catalogue() {
    }

    /** Chapters by title, each with the containments of the site that belong to it; in order. */
    public static Map<String, List<EReference>> chapters() {
        return java.util.Collections.unmodifiableMap(CHAPTERS);
    }

    /** All containments of the site, in order. */
    public static List<EReference> kinds() {
        List<EReference> kinds = new ArrayList<>();
        CHAPTERS.values().forEach(kinds::addAll);
        return kinds;
    }

    /** Containments of a class that hold elements shown in the outline, rather than rows of a table in the form. */
    public static List<EReference> parts(EClass type) {
        if (type == SitePackage.Literals.SITE) {
            return kinds();
        }
        return type.getEAllContainments().stream()
                .filter(reference -> SitePackage.Literals.ELEMENT.isSuperTypeOf(reference.getEReferenceType())).toList();
    }
}
