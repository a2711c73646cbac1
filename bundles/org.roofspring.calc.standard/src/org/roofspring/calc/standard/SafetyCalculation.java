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
import org.roofspring.calc.standard.drainage.RoofCautions;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Purpose;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.Use;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * What on this site can hurt someone or make someone ill, before any number: weight, depth, lead, mosquitoes,
 * drinking.
 */
@Component
@CalculationInfo(id = "site.safety", version = "2", title = "Safety of the site", reads = { "Roof", "Gutter", "Tank",
    "Siting", "Use" })
public final class SafetyCalculation implements Calculation {
    private static final String HEALTH = "Ask your local health authority.";
    private static final double WATER_KG_PER_M3 = 998.2;
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
                weight(tank, findings, workings);
                hatch(tank, cautions);
            }
        }
        cautions.addAll(RoofCautions.of(site));
        drinking(site, cautions);
        return new Outcome.Completed(findings, workings, cautions);
    }

    private static void weight(Tank tank, List<Finding> findings, List<Working> workings) {
        if (tank.getCapacity() == null) {
            return;
        }
        Quantity mass = Quantity.of(tank.getCapacity().si() * WATER_KG_PER_M3, Units.KG);
        findings.add(new Finding("fullMass", "Mass of the water when full", tank.getId(),
                new FindingValue.Number(mass)));
        workings.add(new Working("fullMass", tank.getId(), "Mass of the water when full",
                List.of(Step.of("m", "mass of the water when full", "rho S", mass,
                        Source.definition("density of water at 20 degC, IAPWS-95"),
                        new Input("rho", "density", Quantity.of(WATER_KG_PER_M3, Units.KG_PER_M3)),
                        Given.input("S", "capacity", tank, SitePackage.Literals.TANK__CAPACITY, tank.getCapacity())))));
    }

    private static void hatch(Tank tank, List<Caution> cautions) {
        if (!tank.isLockedHatch() && tank.getCapacity() != null && tank.getCapacity().si() >= ENTERABLE_M3) {
            cautions.add(new Caution("tank.hatch", Severity.WARNING, tank.getId(),
                    "The hatch of {0} is not locked: a child can drown in it, and anybody can foul the water.",
                    List.of(Names.of(tank)), "", Source.commonPractice("lockable covers on cisterns")));
        }
    }

    private static void drinking(Site site, List<Caution> cautions) {
        for (Use use : site.getUses()) {
            if (use.isInUse() && (use.getPurpose() == Purpose.DRINKING || use.getPurpose() == Purpose.COOKING)) {
                cautions.add(new Caution("use.drinking", Severity.DANGER, use.getId(),
                        "Roof water carries germs until it is treated: the water for {0} needs treatment, and a test "
                                + "before and after.", List.of(Names.of(use)), HEALTH,
                        Source.published("Chubaka et al., 2018, doi 10.3390/pathogens7010021: E. coli in 28 of 53 "
                                + "tanks")));
            }
        }
    }
}
