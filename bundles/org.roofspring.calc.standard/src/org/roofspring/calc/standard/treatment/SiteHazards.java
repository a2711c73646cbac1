package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.site.NamedElement;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankMaterial;
import org.roofspring.site.TopUp;
import org.roofspring.site.TopUpSource;
import org.roofspring.site.Use;
import org.roofspring.treatment.safety.Hazard;
import org.roofspring.treatment.safety.VirusPathway;

/**
 * What materials and surroundings bring into the water of a use, each with the parts it comes from.
 *
 * @param chemical      hazards that the kernel judges
 * @param viruses       ways in for viruses
 * @param treatedTimber parts of treated timber, which the kernel does not know
 * @param colouring     roofs of thatch or plants, whose water is coloured
 * @param unstated      parts on the way whose material or cover is not said, so that nothing can be said of them
 */
record SiteHazards(Map<Hazard, Set<NamedElement>> chemical, Map<VirusPathway, Set<NamedElement>> viruses,
        Set<NamedElement> treatedTimber, Set<NamedElement> colouring, Set<NamedElement> unstated) {
    /** A concrete tank younger than this still raises the pH [d]: assumed. */
    static final int NEW_CONCRETE_DAYS = 365;
    /** Water below this dissolves metals, above the other it may be new concrete: the limits for pH. */
    private static final double ACID_PH = 6.5;
    private static final double ALKALINE_PH = 8.5;
    /** Distance to keep from a latrine to a tank in the ground [m]: from memory, The Sphere Handbook. */
    static final double LATRINE_DISTANCE_M = 30;

    /** @param ph of the stored water */
    static SiteHazards of(Use use, WaterWay way, double ph, LocalDate day) {
        SiteHazards found = new SiteHazards(new EnumMap<>(Hazard.class), new EnumMap<>(VirusPathway.class),
                new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>());
        way.roofs().forEach(found::roof);
        way.tanks().forEach(tank -> found.tank(tank, ph, day));
        way.pipes().forEach(found::pipe);
        way.topUps().forEach(found::topUp);
        if (use.isContainers()) {
            found.add(VirusPathway.SHARED_VESSEL, use);
        }
        if (ph < ACID_PH) {
            found.chemical.put(Hazard.SOFT_ACID_WATER, new LinkedHashSet<>());
        }
        return found;
    }

    private void roof(Roof roof) {
        switch (roof.getMaterial()) {
            case GALVANISED_STEEL, ZINC -> add(Hazard.ZINC, roof);
            case COPPER -> add(Hazard.COPPER, roof);
            case LEAD_SHEET -> add(Hazard.LEAD_FLASHING, roof);
            case BITUMEN -> add(Hazard.BITUMEN, roof);
            case ASBESTOS_CEMENT -> add(Hazard.ASBESTOS_CEMENT, roof);
            case THATCH, GREEN_ROOF -> colouring.add(roof);
            case TIMBER -> treatedTimber.add(roof);
            case UNSTATED, OTHER -> unstated.add(roof);
            default -> { }
        }
        for (org.roofspring.site.Hazard hazard : roof.getHazards()) {
            switch (hazard) {
                case SPRAY_DRIFT -> add(Hazard.SPRAY_DRIFT, roof);
                case WOOD_SMOKE, FLUE_OUTLET -> add(Hazard.SMOKE, roof);
                case TRAFFIC -> add(Hazard.TRAFFIC, roof);
                case INDUSTRY -> add(Hazard.INDUSTRY, roof);
                case LEAD_FLASHING -> add(Hazard.LEAD_FLASHING, roof);
                case LEAD_PAINT -> add(Hazard.LEAD_PAINT, roof);
                case BITUMEN_COATING -> add(Hazard.BITUMEN, roof);
                case TREATED_TIMBER -> treatedTimber.add(roof);
                case PUBLIC_ACCESS -> add(VirusPathway.PEOPLE_ON_ROOF, roof);
                // Trees, animals and dust bring microbes and dirt, which the raw water and the inspection speak of.
                default -> { }
            }
        }
    }

    private void tank(Tank tank, double ph, LocalDate day) {
        switch (tank.getMaterial()) {
            case GALVANISED_STEEL -> add(Hazard.ZINC, tank);
            case CONCRETE, FERROCEMENT, MASONRY -> {
                boolean isNew = tank.getInstalled() != null
                        && tank.getInstalled().isAfter(day.minusDays(NEW_CONCRETE_DAYS));
                if (isNew || ph > ALKALINE_PH) {
                    add(Hazard.NEW_CONCRETE, tank);
                }
            }
            case UNSTATED, OTHER -> unstated.add(tank);
            default -> { }
        }
        switch (tank.getCover()) {
            case OPEN, LOOSE -> add(VirusPathway.OPEN_TANK, tank);
            case UNSTATED -> unstated.add(tank);
            default -> { }
        }
        boolean inGround = tank.getPlaceInGround() == PlaceInGround.BURIED
                || tank.getPlaceInGround() == PlaceInGround.PARTLY_BURIED;
        if (inGround && tank.getSiting() != null && tank.getSiting().getLatrineDistance() != null
                && Given.si(tank.getSiting(), SitePackage.Literals.SITING__LATRINE_DISTANCE, 0) < LATRINE_DISTANCE_M) {
            add(VirusPathway.SEWAGE_NEARBY, tank);
        }
    }

    private void pipe(PipeRun run) {
        if (run.getMaterial() == PipeMaterial.COPPER) {
            add(Hazard.COPPER, run);
        } else if (run.getMaterial() == PipeMaterial.GALVANISED_STEEL) {
            add(Hazard.ZINC, run);
        }
    }

    private void topUp(TopUp topUp) {
        if (topUp.getSource() == TopUpSource.TANKER || topUp.getSource() == TopUpSource.CARRIED) {
            add(VirusPathway.TANKER_TOP_UP, topUp);
        } else if (topUp.getSource() != TopUpSource.MAINS) {
            add(VirusPathway.OTHER_SOURCE_MIXED, topUp);
        }
    }

    private void add(Hazard hazard, NamedElement element) {
        chemical.computeIfAbsent(hazard, key -> new LinkedHashSet<>()).add(element);
    }

    private void add(VirusPathway pathway, NamedElement element) {
        viruses.computeIfAbsent(pathway, key -> new LinkedHashSet<>()).add(element);
    }

    /** The first part a hazard comes from, by its code in the kernel's cautions; null where none is named. */
    String elementId(String cautionCode) {
        for (Map.Entry<Hazard, Set<NamedElement>> entry : chemical.entrySet()) {
            String code = "hazard." + entry.getKey().name().toLowerCase(Locale.ROOT);
            if (code.equals(cautionCode) && !entry.getValue().isEmpty()) {
                return entry.getValue().iterator().next().getId();
            }
        }
        return null;
    }

    /** Kinds of hazards, the kernel's. */
    Set<Hazard> kinds() {
        return chemical.isEmpty() ? Set.of() : EnumSet.copyOf(chemical.keySet());
    }

    /** Names of the parts, in the order found. */
    static String names(Set<? extends NamedElement> elements) {
        List<String> names = new ArrayList<>();
        elements.forEach(element -> names.add(SiteTerms.name(element)));
        return String.join(", ", names);
    }
}
