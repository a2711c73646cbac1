package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Hazard;
import org.roofspring.site.NamedElement;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Purpose;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankKind;
import org.roofspring.site.Use;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What on this site can hurt someone or make someone ill, before any number: weight, depth, lead, mosquitoes, drinking. */
@Component
@CalculationInfo(id = "site.safety", version = "1", title = "Safety of the site", reads = { "Roof", "Tank", "Use" })
public final class SafetyCalculation implements Calculation {
    private static final String HEALTH = "Ask your local health authority.";
    private static final double WATER_KG_PER_M3 = 998.2;
    private static final double MESH_MM = 1;
    /** A tank in which a person can stand is one that a person will climb into. */
    private static final double ENTERABLE_M3 = 2;

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        boolean anything = !snapshot.site().getTanks().isEmpty() || !snapshot.site().getRoofs().isEmpty();
        return anything ? Applicability.yes() : Applicability.no("There is neither roof nor tank yet.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        Site site = snapshot.site();
        List<Finding> findings = new ArrayList<>();
        List<Working> workings = new ArrayList<>();
        List<Caution> cautions = new ArrayList<>();
        for (Tank tank : site.getTanks()) {
            if (tank.isInUse()) {
                weight(tank, findings, workings, cautions);
                entry(tank, cautions);
                mosquitoes(tank, cautions);
            }
        }
        site.getRoofs().stream().filter(Roof::isInUse).forEach(roof -> roofMaterial(roof, cautions));
        drinking(site, cautions);
        return new Outcome.Completed(findings, workings, cautions);
    }

    private static void weight(Tank tank, List<Finding> findings, List<Working> workings, List<Caution> cautions) {
        if (tank.getCapacity() == null) {
            return;
        }
        Quantity mass = Quantity.of(tank.getCapacity().si() * WATER_KG_PER_M3, Units.KG);
        findings.add(new Finding("fullMass", "Mass of the water in " + tank.getName() + " when full", tank.getId(), new FindingValue.Number(mass)));
        workings.add(new Working("fullMass", tank.getId(), "Mass of the water when full",
                List.of(Step.of("m", "mass of the water when full", "rho S", mass, Source.definition("density of water at 20 degC, IAPWS-95"),
                        new Input("rho", "density", Quantity.of(WATER_KG_PER_M3, Units.KG_PER_M3)),
                        Given.input("S", "capacity", tank, SitePackage.Literals.TANK__CAPACITY, tank.getCapacity())))));
        if (tank.getPlaceInGround() == PlaceInGround.ON_STAND || tank.getKind() == TankKind.OVERHEAD) {
            cautions.add(new Caution("tank.raised-load", Severity.DANGER, tank.getId(),
                    "{0} holds {1} of water above the ground when full.", List.of(name(tank), mass),
                    "A structural engineer must design stand and foundation; follow the local code.", Source.definition("mass of the water")));
        }
    }

    private static void entry(Tank tank, List<Caution> cautions) {
        boolean closed = tank.getCover() != TankCover.OPEN;
        if (closed && tank.getCapacity() != null && tank.getCapacity().si() >= ENTERABLE_M3) {
            cautions.add(new Caution("tank.confined-space", Severity.DANGER, tank.getId(),
                    "{0} is a confined space: air in it can kill without warning. Clean it from outside; nobody enters alone, and no engine runs inside.",
                    List.of(name(tank)), "Entry is for trained people with gas test and attendant; follow the local code.",
                    Source.fromMemory("29 CFR 1910.146, permit-required confined spaces")));
        }
        if (!tank.isLockedHatch() && tank.getCapacity() != null && tank.getCapacity().si() >= ENTERABLE_M3) {
            cautions.add(new Caution("tank.hatch", Severity.WARNING, tank.getId(),
                    "The hatch of {0} is not locked: a child can drown in it, and anybody can foul the water.", List.of(name(tank)), "",
                    Source.commonPractice("lockable covers on cisterns")));
        }
    }

    private static void mosquitoes(Tank tank, List<Caution> cautions) {
        if (tank.getCover() == TankCover.OPEN || tank.getCover() == TankCover.LOOSE) {
            cautions.add(new Caution("tank.open", Severity.DANGER, tank.getId(),
                    "{0} is not closed: mosquitoes breed in it, and animals and people can foul it.", List.of(name(tank)), HEALTH,
                    Source.published("Warwick Development Technology Unit, roofwater harvesting pages")));
        } else if (tank.getScreenMesh() != null && tank.getScreenMesh().in(Units.MM) > MESH_MM) {
            cautions.add(new Caution("tank.mesh", Severity.WARNING, tank.getId(),
                    "The mesh of {0} at {1} lets mosquitoes in; {2} or finer and proof against corrosion is advised.",
                    List.of(name(tank), tank.getScreenMesh(), Quantity.of(MESH_MM, Units.MM)), HEALTH,
                    Source.fromMemory("enHealth, Guidance on use of rainwater tanks")));
        }
    }

    private static void roofMaterial(Roof roof, List<Caution> cautions) {
        if (roof.getMaterial() == RoofMaterial.LEAD_SHEET || roof.getHazards().contains(Hazard.LEAD_FLASHING)
                || roof.getHazards().contains(Hazard.LEAD_PAINT)) {
            cautions.add(new Caution("roof.lead", Severity.DANGER, roof.getId(),
                    "Lead on {0} dissolves into the water and harms children most: do not drink or cook with it until the lead is gone and a test is clean.",
                    List.of(name(roof)), HEALTH, Source.published("Somerset Regional Council, lead paint and rainwater tanks; NZ Ministry of Health, Water Safety Plan Guide: Roof Water, 2014")));
        }
        if (roof.getMaterial() == RoofMaterial.ASBESTOS_CEMENT) {
            cautions.add(new Caution("roof.asbestos", Severity.DANGER, roof.getId(),
                    "{0} is of asbestos cement: never cut, scrub or drill it, and do not drink water from it where it is weathered.", List.of(name(roof)),
                    "Ask a licensed asbestos contractor and your local health authority.", Source.commonPractice("asbestos-cement roofs")));
        }
        if (roof.getHazards().contains(Hazard.TRAFFIC) || roof.getHazards().contains(Hazard.INDUSTRY)) {
            cautions.add(new Caution("roof.fallout", Severity.WARNING, roof.getId(),
                    "Dust of traffic or industry settles on {0}; do not gather drinking water there.", List.of(name(roof)), HEALTH,
                    Source.published("Government of South Australia, rainwater fact sheet")));
        }
    }

    private static void drinking(Site site, List<Caution> cautions) {
        for (Use use : site.getUses()) {
            if (use.isInUse() && (use.getPurpose() == Purpose.DRINKING || use.getPurpose() == Purpose.COOKING)) {
                cautions.add(new Caution("use.drinking", Severity.DANGER, use.getId(),
                        "Roof water carries germs until it is treated: the water for {0} needs treatment, and a test before and after.", List.of(name(use)), HEALTH,
                        Source.published("Chubaka et al., 2018, doi 10.3390/pathogens7010021: E. coli in 28 of 53 tanks")));
            }
        }
    }

    private static String name(NamedElement element) {
        return element.getName() == null ? element.getId() : element.getName();
    }
}
