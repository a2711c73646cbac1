package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.EnergySource;
import org.roofspring.site.LogReduction;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.StepKind;
import org.roofspring.site.Tank;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.UpkeepTask;
import org.roofspring.treatment.LogRange;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.train.Cartridge;
import org.roofspring.treatment.train.HeadLoss;
import org.roofspring.treatment.train.Running;
import org.roofspring.treatment.train.StepLibrary;
import org.roofspring.treatment.train.StepService;
import org.roofspring.treatment.train.TrainStep;

/** Reads the steps of a train: what they are, what they need, how they are run, and what the site does not say. */
final class StepReader {
    private static final double DAY_S = 86_400;
    private static final Source NOT_GIVEN = Source.assumed("not given in the site");

    private final Site site;
    private final LocalDate day;
    private final TrainDemand demand;
    private final List<Tank> tanks;
    /** Steps are often changed on one day; counting it once for all of them is what takes time here. */
    private final Map<LocalDate, Double> passedM3 = new HashMap<>();

    /**
     * @param day    to which the age of filters is counted
     * @param demand of the train the steps belong to
     * @param tanks  that it is fed from
     */
    StepReader(Site site, LocalDate day, TrainDemand demand, List<Tank> tanks) {
        this.site = site;
        this.day = day;
        this.demand = demand;
        this.tanks = tanks;
    }

    /** @throws UnreadableException where the values of the step contradict each other */
    ReadStep read(TreatmentStep step) {
        try {
            return new One(step).read();
        } catch (IllegalArgumentException e) {
            throw new UnreadableException(step.getId(), SiteTerms.name(step), e);
        }
    }

    /** Reading of one step: what is found on the way is gathered here. */
    private final class One {
        private final TreatmentStep step;
        private final List<String> conditions = new ArrayList<>();
        private final List<Assumed> assumed = new ArrayList<>();
        private String name;

        One(TreatmentStep step) {
            this.step = step;
            this.name = step.getName();
        }

        ReadStep read() {
            Optional<TrainStep> base = new StepTreatment(site, step, demand, tanks, this::lookedAfterWithin,
                    this::serviceDays, conditions, this::assume).base();
            if (base.isEmpty()) {
                unusedReductions(!step.getReductions().isEmpty());
                name = name == null || name.isBlank() ? passiveName() : name;
                return new ReadStep(step, name, Optional.empty(), headLoss(HeadLoss.NONE), passiveTasks(), conditions,
                        assumed);
            }
            name = name == null || name.isBlank() ? base.get().name() : name;
            StepService service = service(base.get().service());
            TrainStep kernel = new TrainStep(step.getId(), name, base.get().treatment(),
                    removal(base.get().removal()), service, running(service));
            unusedReductions(!step.getReductions().isEmpty() && base.get().treatment() instanceof Cartridge cartridge
                    && Arrays.stream(PathogenGroup.values()).noneMatch(cartridge::holds));
            certified();
            power();
            return new ReadStep(step, name, Optional.of(kernel), service.headLoss(), service.tasks(), conditions,
                    assumed);
        }

        private void assume(String what, String takenAs, Source source) {
            assumed.add(new Assumed(name == null || name.isBlank() ? step.getId() : name, what, takenAs, source));
        }

        private void unusedReductions(boolean unused) {
            if (unused) {
                assume("log reductions that were entered", "not used", Source.commonPractice("a filter without an "
                        + "absolute rating below the size of an organism, and a step of unknown kind, earn nothing"));
            }
        }

        private Removal removal(Removal usual) {
            return new Removal(range(org.roofspring.site.PathogenGroup.BACTERIA, usual.bacteria()),
                    range(org.roofspring.site.PathogenGroup.VIRUSES, usual.viruses()),
                    range(org.roofspring.site.PathogenGroup.GIARDIA, usual.giardia()),
                    range(org.roofspring.site.PathogenGroup.CRYPTOSPORIDIUM, usual.cryptosporidium()));
        }

        private LogRange range(org.roofspring.site.PathogenGroup group, LogRange usual) {
            for (LogReduction given : step.getReductions()) {
                if (given.getGroup() == group && (given.getLow() != null || given.getHigh() != null)) {
                    double low = given.getLow() != null ? given.getLow().si()
                            : Math.min(usual.low(), given.getHigh().si());
                    double high = given.getHigh() != null ? given.getHigh().si() : Math.max(usual.high(), low);
                    return new LogRange(low, high, SiteTerms.entered(given.getSource()));
                }
            }
            return usual;
        }

        private StepService service(StepService usual) {
            boolean atFlow = step.getMaxFlow() != null;
            OptionalDouble flowLimit = atFlow ? OptionalDouble.of(step.getMaxFlow().si()) : usual.flowLimitM3PerS();
            // Pots and bottles are a matter of work, which has its own condition; a filter with a rated flow has no
            // daily limit of its own.
            boolean byHand = step.getKind() == StepKind.BOILING || step.getKind() == StepKind.SOLAR;
            OptionalDouble dailyLimit = atFlow || byHand ? OptionalDouble.empty() : usual.dailyLimitM3();
            if (!atFlow && !demand.train().isBatch()) {
                flowLimit.ifPresent(limit -> assume("highest flow", litresAMinute(limit), usual.source()));
            }
            dailyLimit.ifPresent(limit -> assume("most in a day", SiteTerms.shown(1000 * limit) + " L",
                    usual.source()));
            if (byHand && usual.dailyLimitM3().isPresent()) {
                byHand(usual.dailyLimitM3().getAsDouble());
            }
            boolean byVolume = step.getChangeVolume() != null;
            OptionalDouble lifeVolume = byVolume ? OptionalDouble.of(step.getChangeVolume().si())
                    : usual.lifeVolumeM3();
            OptionalDouble life = step.getChangeInterval() != null ? OptionalDouble.of(step.getChangeInterval().si())
                    : usual.lifeS();
            if (!byVolume) {
                lifeVolume.ifPresent(volume -> assume("volume until it is changed", SiteTerms.shown(1000 * volume)
                        + " L", usual.source()));
            }
            if (step.getChangeInterval() == null) {
                life.ifPresent(span -> assume("time until it is changed", days(span), usual.source()));
            }
            OptionalDouble neededHead = demand.train().isBatch() ? OptionalDouble.empty() : usual.neededHeadM();
            neededHead.ifPresent(head -> conditions.add(name + " has at least " + SiteTerms.shown(head)
                    + " m of head before it, which was not checked."));
            return new StepService(flowLimit, dailyLimit, headLoss(usual.headLoss()), neededHead, lifeVolume, life,
                    byVolume ? OptionalDouble.empty() : usual.dirtCapacityKg(), usual.turbidityLeftRatio(),
                    tasks(usual, life), usual.source());
        }

        private void byHand(double oneManageM3) {
            if (demand.dailyM3() > oneManageM3 * (1 + 1e-9)) {
                conditions.add(name + " is really done for " + SiteTerms.shown(1000 * demand.dailyM3())
                        + " L every day: that is more than the " + SiteTerms.shown(1000 * oneManageM3)
                        + " L that one household is taken to manage.");
            }
        }

        private HeadLoss headLoss(HeadLoss usual) {
            if (demand.train().isBatch()) {
                return HeadLoss.NONE;
            }
            Quantity clean = step.getHeadLossClean();
            Quantity fouled = step.getHeadLossFouled();
            if (clean == null && fouled == null) {
                if (usual.fouledHeadM() > 0) {
                    assume("head loss clean and fouled at " + litresAMinute(usual.flowM3PerS()),
                            SiteTerms.shown(usual.cleanHeadM()) + " m and " + SiteTerms.shown(usual.fouledHeadM())
                                    + " m", usual.source());
                }
                return usual;
            }
            double cleanM = clean != null ? clean.in(Units.M_HEAD) : Math.min(usual.cleanHeadM(),
                    fouled.in(Units.M_HEAD));
            double fouledM = fouled != null ? fouled.in(Units.M_HEAD) : Math.max(usual.fouledHeadM(), cleanM);
            double at = step.getReferenceFlow() != null ? step.getReferenceFlow().si() : demand.designM3PerS();
            if (step.getReferenceFlow() == null) {
                assume("flow at which its head losses hold", litresAMinute(at), NOT_GIVEN);
            }
            double exponent = usual == HeadLoss.NONE ? 2 : usual.exponent();
            return new HeadLoss(at, cleanM, fouledM, exponent, SiteTerms.entered("head loss of " + name));
        }

        /** Upkeep; what comes round with the life of the element follows the interval that the site gives. */
        private List<org.roofspring.treatment.train.UpkeepTask> tasks(StepService usual, OptionalDouble life) {
            List<org.roofspring.treatment.train.UpkeepTask> tasks = new ArrayList<>();
            double pots = step.getKind() == StepKind.BOILING || step.getKind() == StepKind.SOLAR
                    ? Math.max(1, Math.ceil(demand.dailyM3() / usual.dailyLimitM3().orElse(1) - 1e-9)) : 1;
            for (org.roofspring.treatment.train.UpkeepTask task : usual.tasks()) {
                boolean withLife = step.getChangeInterval() != null && usual.lifeS().isPresent()
                        && task.intervalS() == usual.lifeS().getAsDouble();
                boolean eachDay = task.intervalS() == DAY_S;
                tasks.add(withLife ? new org.roofspring.treatment.train.UpkeepTask(task.text(), life.orElseThrow(),
                        task.durationS(), SiteTerms.entered("interval of " + name))
                        : eachDay && pots > 1 ? new org.roofspring.treatment.train.UpkeepTask(task.text() + " ("
                                + SiteTerms.shown(pots) + " rounds)", task.intervalS(), pots * task.durationS(),
                                task.source()) : task);
            }
            return tasks;
        }

        private Running running(StepService service) {
            double outage = 1 - Given.si(step, Literals.TREATMENT_STEP__AVAILABILITY, 1);
            boolean wears = service.lifeS().isPresent() || service.lifeVolumeM3().isPresent();
            LocalDate changed = step.getLastChanged();
            if (changed == null) {
                if (wears) {
                    conditions.add(name + " is not yet due for a change: the day of its last change is not given, so "
                            + "it was taken as new.");
                }
                return new Running(outage, 0, 0, OptionalDouble.empty());
            }
            return new Running(outage, passedM3.computeIfAbsent(changed, since -> demand.passedM3(since, day)),
                    TrainDemand.days(changed, day) * DAY_S,
                    OptionalDouble.empty());
        }

        /** A printed size or dose is a claim until somebody has tested that model. */
        private void certified() {
            boolean claims = switch (step.getKind()) {
                case UV_LAMP, CERAMIC, CERAMIC_SILVER, MICROFILTRATION, ULTRAFILTRATION, REVERSE_OSMOSIS -> true;
                case SEDIMENT_CARTRIDGE -> step.getRatingBasis() == org.roofspring.site.RatingBasis.ABSOLUTE;
                default -> false;
            };
            if (claims && !step.isValidated()) {
                conditions.add("What " + name + " is credited with is certified for this very model.");
            }
        }

        private void power() {
            if (step.getKind() == StepKind.UV_LAMP && !Given.isGiven(step,
                    Literals.TREATMENT_STEP__AVAILABILITY)) {
                String source = step.getEnergySource() == EnergySource.UNSTATED ? "" : " ("
                        + step.getEnergySource().getLiteral() + ")";
                conditions.add("Power for " + name + source
                        + " never fails: the share of time it works is not given, so it was taken as always.");
            }
        }

        /** Changed, or done in a task of upkeep, within so many days. */
        private boolean lookedAfterWithin(int days) {
            LocalDate since = day.minusDays(days);
            return notBefore(step.getLastChanged(), since) || site.getUpkeep().stream()
                    .filter(task -> task.getElements().contains(step)).map(UpkeepTask::getLastDone)
                    .anyMatch(done -> notBefore(done, since));
        }

        private boolean notBefore(LocalDate date, LocalDate since) {
            return date != null && !date.isBefore(since);
        }

        /** Days since it was last changed, or since the train was built; empty where neither is given. */
        private OptionalDouble serviceDays() {
            LocalDate since = step.getLastChanged() != null ? step.getLastChanged() : demand.train().getInstalled();
            return since == null ? OptionalDouble.empty() : OptionalDouble.of(TrainDemand.days(since, day));
        }

        private String passiveName() {
            return switch (step.getKind()) {
                case SAFE_STORAGE -> "storage vessel";
                case CALCITE_CONTACT -> "limestone contact";
                default -> "step of unstated kind";
            };
        }

        private List<org.roofspring.treatment.train.UpkeepTask> passiveTasks() {
            String text = switch (step.getKind()) {
                case SAFE_STORAGE -> "Wash out the vessel and its tap with clean water and a little bleach";
                case CALCITE_CONTACT -> "Look at the level of the limestone and measure the pH behind it";
                default -> null;
            };
            double interval = step.getChangeInterval() != null ? step.getChangeInterval().si()
                    : step.getKind() == StepKind.SAFE_STORAGE ? 7 * DAY_S : 30 * DAY_S;
            return text == null ? List.of() : List.of(new org.roofspring.treatment.train.UpkeepTask(text, interval,
                    15 * 60, step.getChangeInterval() != null ? SiteTerms.entered("interval of " + name)
                            : StepLibrary.UPKEEP));
        }
    }

    static String litresAMinute(double flowM3PerS) {
        return SiteTerms.shown(60_000 * flowM3PerS) + " L/min";
    }

    static String days(double durationS) {
        return SiteTerms.shown(durationS / DAY_S) + " d";
    }
}
