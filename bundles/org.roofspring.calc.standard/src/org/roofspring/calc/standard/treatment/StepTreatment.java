package org.roofspring.calc.standard.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.Supplier;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Units;
import org.roofspring.site.RatingBasis;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Tank;
import org.roofspring.site.TreatmentStep;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.disinfection.SolarDisinfection;
import org.roofspring.treatment.train.Cartridge;
import org.roofspring.treatment.train.Ceramic;
import org.roofspring.treatment.train.Membrane;
import org.roofspring.treatment.train.Settling;
import org.roofspring.treatment.train.SlowSand;
import org.roofspring.treatment.train.SolarBottles;
import org.roofspring.treatment.train.StepLibrary;
import org.roofspring.treatment.train.TrainStep;
import org.roofspring.treatment.train.Treatment;
import org.roofspring.treatment.train.UvLamp;

/** What a step of the site is in the kernel's library, with the settings that its credit depends on. */
final class StepTreatment {
    /** Notes a value that the site does not give. */
    interface Assuming {
        void assume(String what, String takenAs, Source source);
    }

    private static final Source NOT_GIVEN = Source.assumed("not given in the site");
    private static final double DEFAULT_RATING_M = 20e-6;
    private static final double MESH_M = 0.001;
    private static final double DAY_S = 86_400;
    private static final int YEAR_DAYS = 366;
    private static final int HALF_YEAR_DAYS = 183;
    /** A reading of chlorine older than this says nothing of today's water [d]: assumed. */
    private static final int RESIDUAL_DAYS = 31;

    private final Site site;
    private final TreatmentStep step;
    private final TrainDemand demand;
    private final List<Tank> tanks;
    private final IntPredicate lookedAfterWithin;
    private final Supplier<OptionalDouble> serviceDays;
    private final List<String> conditions;
    private final Assuming assuming;

    /**
     * @param lookedAfterWithin whether it was changed or serviced within so many days
     * @param serviceDays       since its last change
     * @param conditions        takes what else has to hold
     * @param assuming          takes what the site does not give
     */
    StepTreatment(Site site, TreatmentStep step, TrainDemand demand, List<Tank> tanks, IntPredicate lookedAfterWithin,
            Supplier<OptionalDouble> serviceDays, List<String> conditions, Assuming assuming) {
        this.site = site;
        this.step = step;
        this.demand = demand;
        this.tanks = tanks;
        this.lookedAfterWithin = lookedAfterWithin;
        this.serviceDays = serviceDays;
        this.conditions = conditions;
        this.assuming = assuming;
    }

    /** The step of the library; empty where it treats nothing. */
    Optional<TrainStep> base() {
        return Optional.ofNullable(switch (step.getKind()) {
            case MESH_SCREEN -> StepLibrary.meshScreen(step.getRating() == null ? MESH_M : step.getRating().si());
            case SETTLING -> settling();
            case SEDIMENT_CARTRIDGE -> cartridge();
            // A rapid sand filter takes dirt and, without coagulation, is credited with nothing: as a coarse cartridge.
            case RAPID_SAND -> StepLibrary.cartridge(Cartridge.Media.STRING_WOUND, DEFAULT_RATING_M,
                    Cartridge.Rating.NOMINAL);
            case CERAMIC -> ceramic(false);
            case CERAMIC_SILVER -> ceramic(true);
            case GRANULAR_CARBON, CARBON_BLOCK -> StepLibrary.granularCarbon(120);
            case SLOW_SAND -> slowSand();
            case MICROFILTRATION -> membrane(Membrane.Kind.MICROFILTRATION);
            case ULTRAFILTRATION -> membrane(Membrane.Kind.ULTRAFILTRATION);
            case REVERSE_OSMOSIS -> membrane(Membrane.Kind.REVERSE_OSMOSIS);
            case UV_LAMP -> uvLamp();
            case BOILING -> boiling();
            case SOLAR -> solar();
            case CHLORINATION -> chlorination();
            case CALCITE_CONTACT, SAFE_STORAGE, OTHER, UNSTATED -> null;
        });
    }

    private TrainStep settling() {
        double standingS = step.getContactTime() == null ? DAY_S : step.getContactTime().si();
        boolean raised = !tanks.isEmpty() && tanks.stream().allMatch(tank -> tank.isFloatingIntake()
                || Given.si(tank, Literals.TANK__OUTLET_HEIGHT, 0) >= 0.1);
        if (step.getContactTime() == null) {
            assuming.assume("standing after rain", "a day", NOT_GIVEN);
        }
        return with(StepLibrary.settling(standingS), new Settling(standingS, raised));
    }

    private TrainStep cartridge() {
        double ratingM = step.getRating() == null ? DEFAULT_RATING_M : step.getRating().si();
        if (step.getRating() == null) {
            assuming.assume("particle size", "20 um, nominal", NOT_GIVEN);
        }
        boolean absolute = step.getRating() != null && step.getRatingBasis() == RatingBasis.ABSOLUTE;
        return StepLibrary.cartridge(absolute ? Cartridge.Media.PLEATED : Cartridge.Media.STRING_WOUND, ratingM,
                absolute ? Cartridge.Rating.ABSOLUTE : Cartridge.Rating.NOMINAL);
    }

    /** Whole as long as somebody has cleaned, and so looked at, it within a year or its own interval. */
    private TrainStep ceramic(boolean silver) {
        return with(StepLibrary.ceramic(Ceramic.Form.CANDLE, silver),
                new Ceramic(Ceramic.Form.CANDLE, silver, lookedAfterWithin.test(interval(YEAR_DAYS))));
    }

    private TrainStep membrane(Membrane.Kind kind) {
        return with(StepLibrary.membrane(kind),
                new Membrane(kind, lookedAfterWithin.test(interval(HALF_YEAR_DAYS))));
    }

    private int interval(int otherwiseDays) {
        return step.getChangeInterval() == null ? otherwiseDays
                : (int) Math.round(step.getChangeInterval().in(Units.D));
    }

    /** The bed area is not part of the site: its highest flow is that at 0.4 m/h. */
    private TrainStep slowSand() {
        double share = step.getMaxFlow() == null ? 0.5 : demand.train().isBatch() ? 0.5
                : Math.max(0.01, demand.designM3PerS() / step.getMaxFlow().si());
        if (step.getMaxFlow() == null) {
            conditions.add("Water passes the slow sand at no more than 0.4 m/h: its highest flow is not given, so "
                    + "half of that was taken.");
        }
        double ripenedS = serviceDays.get().orElse(0) * DAY_S;
        return StepLibrary.slowSand(Math.min(0.01, share * SlowSand.MAX_VELOCITY_M_PER_S), ripenedS);
    }

    private TrainStep uvLamp() {
        double dose = step.getUvDose() == null ? 0 : step.getUvDose().si();
        if (step.getUvDose() == null) {
            assuming.assume("UV dose", "none", NOT_GIVEN);
        }
        // Certified: by its dose. Otherwise whichever of dose table and class of technology gives less.
        UvLamp.Basis basis = step.isValidated() ? UvLamp.Basis.DOSE_TABLE : UvLamp.Basis.LOWER_OF_BOTH;
        return with(StepLibrary.uvLamp(dose), new UvLamp(dose, basis, true));
    }

    private TrainStep boiling() {
        double altitudeM = Given.si(site, Literals.SITE__ALTITUDE, 0);
        if (!Given.isGiven(site, Literals.SITE__ALTITUDE)) {
            assuming.assume("altitude", "sea level", NOT_GIVEN);
        }
        double neededS = Boiling.at(altitudeM, Boiling.Agency.EPA).durationS();
        if (step.getContactTime() == null) {
            conditions.add("It is kept at a rolling boil for " + SiteTerms.shown(neededS / 60)
                    + " min: the time is not given, so this was taken.");
        }
        return StepLibrary.boil(altitudeM, Boiling.Agency.EPA,
                step.getContactTime() == null ? neededS : step.getContactTime().si());
    }

    private TrainStep solar() {
        double bottleM3 = step.getBatchVolume() == null ? SolarDisinfection.MAX_BOTTLE_M3
                : step.getBatchVolume().si();
        double exposureS = step.getContactTime() == null ? 0 : step.getContactTime().si();
        if (step.getBatchVolume() == null) {
            assuming.assume("bottle", "2 L", NOT_GIVEN);
        }
        boolean longEnoughForCloud = exposureS >= 2 * DAY_S;
        if (!longEnoughForCloud) {
            conditions.add("On days with more than half of the sky under cloud the bottles lie out for two days ("
                    + SolarDisinfection.EXPOSURE_SOURCE.text() + ").");
        }
        SolarDisinfection.Sky sky = longEnoughForCloud ? SolarDisinfection.Sky.CLOUDY : SolarDisinfection.Sky.CLEAR;
        return with(StepLibrary.solarBottles(sky), new SolarBottles(bottleM3, sky, exposureS));
    }

    private TrainStep chlorination() {
        OptionalDouble residual = step.getResidual() == null ? OptionalDouble.empty()
                : OptionalDouble.of(step.getResidual().si());
        if (residual.isPresent() && step.getResidualDate() == null) {
            conditions.add("The free chlorine residual is measured again: the day it was measured is not given.");
        } else if (residual.isPresent() && serviceDaysSinceResidual() > RESIDUAL_DAYS) {
            conditions.add("The free chlorine residual is measured again: that of " + step.getResidualDate()
                    + " is older than " + RESIDUAL_DAYS + " days.");
        }
        if (step.getContactTime() != null || step.getContactVolume() == null) {
            double contactS = step.getContactTime() == null ? 0 : step.getContactTime().si();
            return StepLibrary.chlorination(residual, contactS, Baffling.STANDING);
        }
        double flow = demand.designM3PerS();
        if (flow <= 0) {
            return StepLibrary.chlorination(residual, 0, Baffling.STANDING);
        }
        Baffling baffling = baffling(Given.si(step, Literals.TREATMENT_STEP__BAFFLING, Baffling.NONE.ratio()));
        if (!Given.isGiven(step, Literals.TREATMENT_STEP__BAFFLING)) {
            assuming.assume("baffling of the contact tank", baffling.label() + ", "
                    + SiteTerms.shown(baffling.ratio()), Baffling.SOURCE);
        }
        return StepLibrary.chlorination(residual, Math.min(1e8, step.getContactVolume().si() / flow), baffling);
    }

    private int serviceDaysSinceResidual() {
        return NotedDay.of(site).map(day -> TrainDemand.days(step.getResidualDate(), day)).orElse(0);
    }

    /** The class of baffling that is not better than the entered share. */
    private static Baffling baffling(double ratio) {
        Baffling best = Baffling.NONE;
        for (Baffling baffling : List.of(Baffling.POOR, Baffling.AVERAGE, Baffling.SUPERIOR, Baffling.PLUG_FLOW)) {
            if (baffling.ratio() <= ratio + 1e-9) {
                best = baffling;
            }
        }
        return best;
    }

    private static TrainStep with(TrainStep base, Treatment treatment) {
        return new TrainStep(base.id(), base.name(), treatment, base.removal(), base.service(), base.running());
    }
}
