package org.roofspring.calc.standard.water;

import java.util.List;
import java.util.function.Predicate;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.FittingType;
import org.roofspring.hydraulics.PipeCatalogue;
import org.roofspring.hydraulics.PipeFriction;
import org.roofspring.site.Fitting;
import org.roofspring.site.FittingKind;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.PipeRun;
import org.roofspring.site.SitePackage;

/** Runs of pipe of the site as the hydraulics kernel sees them. */
public final class PipeLosses {
    /** Age at which a run without a stated aged roughness is checked: the usual life of building pipework. */
    public static final double AGED_YEARS = 25;

    private PipeLosses() {
    }

    /** What the losses of a run lack to be computed: bore or length; empty when nothing. */
    public static List<String> missing(PipeRun run) {
        List<String> missing = new java.util.ArrayList<>();
        if (run.getBore() == null) {
            missing.add("The bore of " + run.getName() + " is missing.");
        }
        if (run.getLength() == null) {
            missing.add("The length of " + run.getName() + " is missing.");
        }
        return missing;
    }

    /** The run with all its fittings, new and aged; bore and length must be given. */
    public static AgeingRun ageing(PipeRun run) {
        return ageing(run, kind -> true);
    }

    /** The run with some of its fittings, new and aged; bore and length must be given. */
    static AgeingRun ageing(PipeRun run, Predicate<FittingKind> counted) {
        double boreM = run.getBore().si();
        org.roofspring.hydraulics.PipeMaterial material = material(run.getMaterial());
        double freshM = Given.si(run, SitePackage.Literals.PIPE_RUN__ROUGHNESS, material.roughnessM());
        // a narrow steel pipe would be rougher by the usual growth than the friction formula holds for
        double usualAgedM = Math.min(PipeFriction.ROUGHEST * boreM, material.agedRoughnessM(AGED_YEARS));
        double agedM = Given.si(run, SitePackage.Literals.PIPE_RUN__AGED_ROUGHNESS, Math.max(freshM, usualAgedM));
        return new AgeingRun(new org.roofspring.hydraulics.PipeRun(boreM, run.getLength().si(), freshM,
                fittingsK(run, counted)), agedM);
    }

    /** Sum of the coefficients of some of the fittings: as given, else that of the kind. */
    static double fittingsK(PipeRun run, Predicate<FittingKind> counted) {
        double sum = 0;
        for (Fitting fitting : run.getFittings()) {
            if (counted.test(fitting.getKind())) {
                sum += fitting.getCount() * Given.si(fitting, SitePackage.Literals.FITTING__LOSS_COEFFICIENT,
                        usualK(fitting.getKind(), run.getBore().si()));
            }
        }
        return sum;
    }

    private static double usualK(FittingKind kind, double boreM) {
        return switch (kind) {
            case ENTRANCE_SHARP -> FittingType.ENTRANCE_SHARP.k(boreM);
            case ENTRANCE_PROJECTING -> FittingType.ENTRANCE_PROJECTING.k(boreM);
            case ENTRANCE_ROUNDED -> org.roofspring.hydraulics.Fittings.roundedEntranceK(0.15);
            case EXIT -> FittingType.EXIT.k(boreM);
            case ELBOW90 -> FittingType.ELBOW_90.k(boreM);
            case ELBOW45, BEND_LONG -> FittingType.ELBOW_45.k(boreM);
            case RETURN_BEND -> FittingType.CLOSE_RETURN.k(boreM);
            case TEE_THROUGH -> FittingType.TEE_RUN.k(boreM);
            case TEE_BRANCH -> FittingType.TEE_BRANCH.k(boreM);
            case GATE_VALVE -> FittingType.GATE_VALVE.k(boreM);
            case BALL_VALVE -> FittingType.BALL_VALVE.k(boreM);
            case GLOBE_VALVE -> FittingType.GLOBE_VALVE.k(boreM);
            case ANGLE_VALVE -> FittingType.ANGLE_VALVE.k(boreM);
            case CHECK_SWING -> FittingType.SWING_CHECK_ANGLED.k(boreM);
            case CHECK_LIFT -> FittingType.LIFT_CHECK_STRAIGHT.k(boreM);
            case FOOT_VALVE -> FittingType.FOOT_VALVE_POPPET.k(boreM);
            // these differ too much from maker to maker: nothing is taken unless it is given
            case BUTTERFLY_VALVE, STRAINER, WATER_METER, FLOAT_VALVE, REDUCER, ENLARGEMENT, COUPLING, OTHER, UNSTATED -> 0;
        };
    }

    /** Fittings whose loss is neither given nor known from their kind. */
    public static List<Fitting> withoutLoss(PipeRun run) {
        return run.getFittings().stream().filter(fitting -> fitting.getLossCoefficient() == null && fitting.getCount() > 0
                && fitting.getKind() != FittingKind.COUPLING && usualK(fitting.getKind(), 0.05) == 0).toList();
    }

    /** The catalogue's material; cast iron, hose and unstated ones are taken as what they are most like. */
    public static org.roofspring.hydraulics.PipeMaterial material(PipeMaterial material) {
        return switch (material) {
            case PVC -> PipeCatalogue.PVC_U;
            case POLYETHYLENE, HOSE -> PipeCatalogue.PE_100;
            case POLYPROPYLENE -> PipeCatalogue.PP_R;
            case COPPER, STAINLESS_STEEL -> PipeCatalogue.COPPER;
            case GALVANISED_STEEL, STEEL, CAST_IRON, OTHER, UNSTATED -> PipeCatalogue.GALVANISED_STEEL;
        };
    }
}
