package org.roofspring.calc.standard.drainage;

import java.util.List;
import java.util.Locale;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.drainage.siting.Flotation;
import org.roofspring.drainage.siting.PollutionSource;
import org.roofspring.drainage.siting.Soakaway;
import org.roofspring.drainage.siting.TankLoad;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Siting;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Tank;

/**
 * How a tank stands in its ground and among its neighbours. Anything structural goes to an engineer: these figures say
 * when to ask one, they do not replace one.
 */
public final class TankGround {
    private static final String ENGINEER = "Ask a structural or geotechnical engineer before anything is built.";
    private static final String HEALTH = "Ask your local health authority.";
    private static final double SOIL_KG_PER_M3 = 1600;
    private static final Source WEIGHT = Source.definition("weight over area; water of 998.2 kg/m3, g of 9.80665 m/s2");
    private static final Source SOIL = Source.commonPractice("loose soil of 1600 kg/m3, assumed; have it looked at");
    private static final Source KNOWN = Source.definition("what is known of the site");

    private final Tank tank;
    private final Siting siting;
    private final AnswerBuilder answer;

    private TankGround(Tank tank) {
        this.tank = tank;
        this.siting = tank.getSiting();
        this.answer = new AnswerBuilder(tank.getId());
    }

    /** @param tank with a siting */
    public static Outcome.Completed of(Tank tank) {
        TankGround ground = new TankGround(tank);
        ground.neighbours();
        ground.checked("bearing", ground::bearing);
        if (ground.inGround()) {
            ground.checked("flotation", ground::flotation);
        }
        ground.overflow();
        return ground.answer.build();
    }

    private boolean inGround() {
        return tank.getPlaceInGround() == PlaceInGround.BURIED
                || tank.getPlaceInGround() == PlaceInGround.PARTLY_BURIED;
    }

    private void checked(String what, Runnable check) {
        try {
            check.run();
        } catch (IllegalArgumentException e) {
            notChecked(what, e.getMessage());
        }
    }

    private void notChecked(String what, String why) {
        answer.caution(new Caution("siting.not-checked", Severity.INFO, tank.getId(),
                "The {0} of {1} is not checked: {2}.",
                List.of(what, Names.of(tank), why), "", KNOWN));
    }

    private void neighbours() {
        if (siting.getLatrineDistance() != null) {
            neighbour("latrine", "latrine or foul soakaway", PollutionSource.Kind.LATRINE,
                    siting.getLatrineDistance(), siting.isLatrineUphill());
        } else if (inGround()) {
            notChecked("distance to latrines", "it is not given");
        }
        if (siting.getRefuseDistance() != null) {
            neighbour("refuse", "refuse or animal pen", PollutionSource.Kind.REFUSE, siting.getRefuseDistance(), false);
        } else if (inGround()) {
            notChecked("distance to refuse", "it is not given");
        }
    }

    /** Ground water carries filth into tanks in the ground; above it, distance matters less than a tight cover. */
    private void neighbour(String id, String what, PollutionSource.Kind kind, Quantity distance, boolean uphill) {
        double keepM = inGround() ? PollutionSource.DEFAULT_DISTANCE_M : 0;
        PollutionSource.Verdict verdict = new PollutionSource(kind, distance.si(), uphill ? 1 : 0).verdict(keepM);
        Quantity keep = Quantity.of(PollutionSource.DEFAULT_DISTANCE_M, Units.M);
        boolean clear = verdict == PollutionSource.Verdict.CLEAR;
        boolean near = verdict == PollutionSource.Verdict.TOO_NEAR
                || verdict == PollutionSource.Verdict.TOO_NEAR_AND_UPHILL;
        String words = switch (verdict) {
            case CLEAR -> inGround() ? "far enough" : "the tank stands above the ground";
            case UPHILL -> "uphill: seepage and run-off come down to the tank";
            case TOO_NEAR -> "too near";
            case TOO_NEAR_AND_UPHILL -> "too near and uphill";
        };
        answer.add(id, "Nearest " + what, new Verdict(clear ? Level.GOOD : near ? Level.BAD : Level.CONDITIONAL, words,
                List.of(distance + " away; " + keep + " is kept from a tank in the ground")));
        if (!clear) {
            answer.caution(new Caution("siting." + id, Severity.DANGER, tank.getId(),
                    "The nearest {0} is {1} from {2}: {3}. Keep {4} from a tank in the ground, and above it.",
                    List.of(what, distance, Names.of(tank), words, keep), HEALTH,
                    KernelTerms.source(PollutionSource.DISTANCE_SOURCE)));
        }
    }

    private void bearing() {
        if (tank.getCapacity() == null || siting.getBaseArea() == null) {
            notChecked("pressure on the ground", "its capacity and the area of its base must be given");
            return;
        }
        double emptyKg = siting.getEmptyMass() == null ? 0 : siting.getEmptyMass().in(Units.KG);
        TankLoad load = new TankLoad(tank.getCapacity().si(), emptyKg, 0, siting.getBaseArea().si());
        Quantity pressure = Quantity.ofSi(load.pressurePa(), Units.KPA);
        answer.number("bearingPressure", "Pressure of the full tank on the ground", pressure, Step.of("p",
                "mean pressure; more under an edge when the load is not in the middle", "(rho S + m) g / A", pressure,
                WEIGHT, Given.input("S", "capacity", tank, Literals.TANK__CAPACITY, tank.getCapacity()),
                Given.input("m", "mass of the empty tank and its base", siting, Literals.SITING__EMPTY_MASS,
                        Quantity.of(0, Units.KG)),
                Given.input("A", "area of the base", siting, Literals.SITING__BASE_AREA, siting.getBaseArea())));
        if (siting.getAllowedBearing() == null) {
            answer.caution(new Caution("siting.bearing-unknown", Severity.DANGER, tank.getId(),
                    "{0} presses on the ground with {1} when full, and what the ground may carry is not known.",
                    List.of(Names.of(tank), pressure), ENGINEER, WEIGHT));
            return;
        }
        double used = load.bearingUtilisation(siting.getAllowedBearing().si());
        answer.number("bearingUtilisation", "Of what the ground may carry", Quantity.ofSi(used, Units.PERCENT),
                Step.of("u", "pressure over what is allowed", "p / pa", Quantity.ofSi(used, Units.PERCENT), WEIGHT,
                        new Input("p", "pressure", pressure), Given.input("pa", "allowed", siting,
                                Literals.SITING__ALLOWED_BEARING, siting.getAllowedBearing())));
        if (used > 1) {
            answer.caution(new Caution("siting.bearing", Severity.DANGER, tank.getId(),
                    "{0} presses on the ground with {1} when full, more than the {2} that it may carry: the base must "
                            + "grow or the ground be improved.",
                    List.of(Names.of(tank), pressure, siting.getAllowedBearing()), ENGINEER, WEIGHT));
        }
        if (siting.getEmptyMass() == null) {
            notChecked("own weight",
                    "the mass of the empty tank is not given, so the pressure is that of the water alone");
        }
    }

    private void flotation() {
        if (siting.getGroundwaterDepth() == null || siting.getBurialDepth() == null || siting.getBaseArea() == null
                || siting.getEmptyMass() == null) {
            answer.caution(new Caution("siting.flotation-unknown", Severity.DANGER, tank.getId(),
                    "Whether ground water lifts {0} when it is empty is not known: give the depth of ground water and "
                            + "of the floor, the area of the base and the mass of the empty tank.",
                    List.of(Names.of(tank)), ENGINEER, KernelTerms.source(Flotation.SAFETY_SOURCE)));
            return;
        }
        double drownedM = Math.max(0, siting.getBurialDepth().si() - siting.getGroundwaterDepth().si());
        double cover = siting.getSoilCover() == null ? 0 : siting.getSoilCover().si();
        double coverKg = cover * siting.getBaseArea().si() * SOIL_KG_PER_M3;
        Flotation flotation = new Flotation(drownedM * siting.getBaseArea().si(), siting.getEmptyMass().in(Units.KG), 0,
                coverKg);
        if (drownedM == 0) {
            answer.add("flotation", "Uplift when empty", new Verdict(Level.GOOD, "none",
                    List.of("Ground water stays below its floor.")));
            return;
        }
        double safety = flotation.holdDownN() / flotation.upliftN();
        Quantity least = Quantity.of(Flotation.DEFAULT_SAFETY_RATIO);
        answer.number("upliftSafety", "Weight of the empty tank over its uplift", safety, Units.ONE,
                Step.of("mc", "soil that rests on it", "A c 1600 kg/m3", Quantity.of(coverKg, Units.KG), SOIL,
                        new Input("A", "area of the base", siting.getBaseArea()),
                        new Input("c", "soil cover", Quantity.of(cover, Units.M), siting.getId(), "soilCover")),
                Step.of("s", "what holds it down over the water it displaces", "(m + mc) / (rho A (d - z))",
                        Quantity.of(safety), KernelTerms.source(Flotation.SAFETY_SOURCE),
                        Given.input("m", "mass of the empty tank", siting, Literals.SITING__EMPTY_MASS,
                                siting.getEmptyMass()),
                        new Input("mc", "soil", Quantity.of(coverKg, Units.KG)),
                        new Input("A", "area of the base", siting.getBaseArea(), siting.getId(), "baseArea"),
                        Given.input("d", "depth of the floor", siting, Literals.SITING__BURIAL_DEPTH,
                                siting.getBurialDepth()),
                        Given.input("z", "depth of ground water", siting, Literals.SITING__GROUNDWATER_DEPTH,
                                siting.getGroundwaterDepth())));
        if (!flotation.staysDown(Flotation.DEFAULT_SAFETY_RATIO)) {
            answer.caution(new Caution("siting.flotation", Severity.DANGER, tank.getId(),
                    "Ground water can lift {0} when it is empty: what holds it down is {1} of the uplift, and {2} is "
                            + "asked for. {3} more, as a concrete anchor, would hold it.",
                    List.of(Names.of(tank), String.format(Locale.ROOT, "%.2f times", safety), least,
                            Quantity.of(flotation.missingAnchorKg(Flotation.DEFAULT_SAFETY_RATIO,
                                    Flotation.CONCRETE_KG_PER_M3), Units.KG)), ENGINEER,
                    KernelTerms.source(Flotation.SAFETY_SOURCE)));
        }
    }

    private void overflow() {
        if (siting.isSoakaway() && !SoakawayFindings.sized(siting)) {
            answer.caution(new Caution("siting.soakaway", Severity.INFO, tank.getId(),
                    "The soakaway of {0} is not checked, since the size of its pit and the infiltration of the soil are "
                            + "not all given: it must hold the storm with the tank full and be half empty again in "
                            + "{1}, and the soil's infiltration must be found by a trial pit.",
                    List.of(Names.of(tank), Quantity.ofSi(Soakaway.HALF_EMPTY_S, Units.H)),
                    "Ask an engineer, and the local code.", KernelTerms.source(Soakaway.SOURCE)));
        }
    }
}
