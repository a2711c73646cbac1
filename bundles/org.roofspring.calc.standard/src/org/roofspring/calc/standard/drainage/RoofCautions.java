package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.drainage.StandardGutter;
import org.roofspring.drainage.siting.RoofCaution;
import org.roofspring.drainage.siting.Soakaway;
import org.roofspring.quantity.Units;
import org.roofspring.site.Gutter;
import org.roofspring.site.Hazard;
import org.roofspring.site.NamedElement;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankKind;

/** Which of the cautions that go with roofs, gutters and tanks a site calls for, each beside the part it is about. */
public final class RoofCautions {
    private static final double MESH_MM = 1;
    /** A tank in which a person can stand is one that a person will climb into. */
    private static final double ENTERABLE_M3 = 2;

    private final List<Caution> cautions = new ArrayList<>();

    private RoofCautions() {
    }

    /** The cautions of a site, dangers and all, in the order of its parts. */
    public static List<Caution> of(Site site) {
        RoofCautions said = new RoofCautions();
        site.getRoofs().stream().filter(Roof::isInUse).forEach(said::roof);
        List<Gutter> gutters = site.getGutters().stream().filter(Gutter::isInUse).toList();
        gutters.forEach(said::gutter);
        if (!gutters.isEmpty()) {
            said.cautions.add(KernelTerms.caution(null, RoofCaution.LADDER_WORK));
        }
        site.getTanks().stream().filter(Tank::isInUse).forEach(said::tank);
        return said.cautions;
    }

    private void roof(Roof roof) {
        List<Hazard> hazards = roof.getHazards();
        add(roof, RoofCaution.LEAD_PAINT, hazards.contains(Hazard.LEAD_PAINT));
        add(roof, RoofCaution.LEAD_FLASHING,
                roof.getMaterial() == RoofMaterial.LEAD_SHEET || hazards.contains(Hazard.LEAD_FLASHING));
        add(roof, RoofCaution.ASBESTOS_CEMENT, roof.getMaterial() == RoofMaterial.ASBESTOS_CEMENT);
        add(roof, RoofCaution.BIRDS_AND_ANIMALS, hazards.contains(Hazard.BIRDS) || hazards.contains(Hazard.ANIMALS));
        add(roof, RoofCaution.OVERHANGING_TREES, hazards.contains(Hazard.OVERHANGING_TREES));
        add(roof, RoofCaution.POLLUTED_AIR, hazards.contains(Hazard.TRAFFIC) || hazards.contains(Hazard.INDUSTRY));
    }

    private void gutter(Gutter gutter) {
        add(gutter, RoofCaution.STANDING_WATER, Given.si(gutter, SitePackage.Literals.GUTTER__SLOPE, 0)
                <= StandardGutter.NOMINALLY_LEVEL_RATIO);
    }

    private void tank(Tank tank) {
        boolean open = tank.getCover() == TankCover.OPEN || tank.getCover() == TankCover.LOOSE;
        boolean coarse = tank.getScreenMesh() == null || tank.getScreenMesh().in(Units.MM) > MESH_MM;
        add(tank, RoofCaution.COVER_AND_CLEAN, open);
        add(tank, RoofCaution.MOSQUITO_MESH, open || coarse);
        boolean large = tank.getCapacity() != null && tank.getCapacity().si() >= ENTERABLE_M3;
        add(tank, RoofCaution.CONFINED_SPACE, large && tank.getCover() != TankCover.OPEN);
        add(tank, RoofCaution.TANK_WEIGHT, tank.getPlaceInGround() == PlaceInGround.ON_STAND
                || tank.getKind() == TankKind.OVERHEAD);
        add(tank, RoofCaution.BURIED_TANK, tank.getPlaceInGround() == PlaceInGround.BURIED
                || tank.getPlaceInGround() == PlaceInGround.PARTLY_BURIED);
        boolean far = tank.getSiting() != null && tank.getSiting().getFoundationDistance() != null
                && tank.getSiting().getFoundationDistance().si() >= Soakaway.FOUNDATION_DISTANCE_M;
        add(tank, RoofCaution.OVERFLOW_AT_FOUNDATION, !far && tank.getOverflowsTo() == null);
    }

    private void add(NamedElement part, RoofCaution caution, boolean concerns) {
        if (concerns) {
            cautions.add(KernelTerms.caution(part.getId(), Names.of(part), caution));
        }
    }
}
