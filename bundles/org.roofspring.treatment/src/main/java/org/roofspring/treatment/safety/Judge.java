package org.roofspring.treatment.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.roofspring.treatment.Caution;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.internal.Checks;
import org.roofspring.treatment.train.Chlorination;
import org.roofspring.treatment.train.Condition;
import org.roofspring.treatment.train.StepOrder;
import org.roofspring.treatment.train.StepResult;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.WaterState;

/**
 * Comes from a train and a situation to a verdict. Anything that breaks a target, a health limit or the virus rule
 * makes the water not suitable; anything that is untested, interrupted or only sometimes true makes it suitable
 * only if.
 */
public final class Judge {
    /** Legionella grows above this [degC]: from memory, WHO 2007, Legionella and the Prevention of Legionellosis. */
    public static final double LEGIONELLA_TEMPERATURE_C = 25;

    private final TrainResult train;
    private final Situation situation;
    private final UseTarget target;
    private final WaterState source;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> conditions = new ArrayList<>();
    private final List<String> basis = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();

    private Judge(TrainResult train, WaterState source, Situation situation, UseTarget target) {
        this.train = Checks.present("train", train);
        this.source = Checks.present("source", source);
        this.situation = Checks.present("situation", situation);
        this.target = Checks.present("target", target);
    }

    /** With the default target of the situation. */
    public static Verdict judge(TrainResult train, WaterState source, Situation situation) {
        return judge(train, source, situation, Checks.present("situation", situation).defaultTarget());
    }

    /**
     * @param train     evaluated for this use
     * @param source    water in the tank, as given to the evaluation
     * @param situation use, people, hazards, tests
     * @param target    log reductions asked for
     */
    public static Verdict judge(TrainResult train, WaterState source, Situation situation, UseTarget target) {
        return new Judge(train, source, situation, target).verdict();
    }

    private Verdict verdict() {
        cautions.addAll(train.cautions());
        microbes();
        order();
        viruses();
        interruptions();
        hazards();
        tests();
        residual();
        aerosol();
        people();
        inspection();
        Verdict.Outcome outcome = !reasons.isEmpty() ? Verdict.Outcome.NOT_SUITABLE
                : conditions.isEmpty() ? Verdict.Outcome.SUITABLE : Verdict.Outcome.SUITABLE_IF;
        return new Verdict(outcome, situation.use(), reasons, conditions, basis, cautions);
    }

    private void microbes() {
        for (PathogenGroup group : PathogenGroup.values()) {
            double has = train.total().of(group);
            double needs = target.logs().of(group);
            if (has < needs - 1e-9) {
                reasons.add(String.format(Locale.ROOT, "The train takes out %.2f log of %s; %.2f log are asked for.",
                        has, group.label(), needs));
            }
        }
        basis.add("Target: " + target.source().text() + ".");
        for (StepResult step : train.steps()) {
            for (PathogenGroup group : PathogenGroup.values()) {
                if (step.earned().of(group) > 0) {
                    basis.add(sentence(step.step().name() + ", " + group.label() + ": "
                            + step.credits().get(group).text()));
                }
            }
        }
    }

    /** A way in for viruses needs a barrier, whatever target was set. */
    private void viruses() {
        if (situation.virusPathways().isEmpty()) {
            if (situation.use().swallowed() && target.logs().viruses() == 0) {
                basis.add("No virus target, because no way in for viruses was named.");
            }
            return;
        }
        String ways = situation.virusPathways().stream().sorted().map(VirusPathway::label)
                .collect(Collectors.joining(", "));
        if (!situation.use().swallowed()) {
            return;
        }
        if (train.total().viruses() < UseTarget.virusBarrier() - 1e-9) {
            reasons.add("Viruses can come in by " + ways + ", and the train has no sufficient barrier against them.");
        } else {
            basis.add("Viruses can come in by " + ways + "; the train has a barrier against them.");
        }
    }

    /** A mistake in the order may undo a barrier although its credit stands. */
    private void order() {
        if (situation.use().swallowed()) {
            StepOrder.cautions(train.steps().stream().map(StepResult::step).toList()).stream()
                    .filter(caution -> caution.severity() != Caution.Severity.INFO)
                    .forEach(caution -> conditions.add("The order is put right. " + sentence(caution.text())));
        }
    }

    private void interruptions() {
        for (StepResult step : train.steps()) {
            if (!step.interrupted()) {
                step.failed().forEach(failed -> cautions.add(Caution.warning(failed.code(),
                        step.step().name() + ": " + failed.text())));
                continue;
            }
            for (Condition failed : step.failed()) {
                require(step.step().name() + " earns no credit until this holds: " + failed.text());
            }
            double out = step.step().running().outageRatio();
            if (out > 0) {
                require(String.format(Locale.ROOT, "%s, out for %.3g %% of the time, is kept running, or no water is "
                        + "drawn while it is out.", step.step().name(), 100 * out));
            }
        }
    }

    private void hazards() {
        List<Hazard> sorted = situation.hazards().stream().sorted(Comparator.naturalOrder()).toList();
        boolean acid = situation.hazards().contains(Hazard.SOFT_ACID_WATER) || source.ph() < 6.5;
        for (Hazard hazard : sorted) {
            boolean proven = hazard.tests().stream().allMatch(situation.tests()::proves);
            String tests = hazard.tests().stream().map(TestParameter::label).collect(Collectors.joining(" and "));
            String sentence = hazard.danger() + ": " + hazard.control() + " (" + hazard.source().text() + ").";
            if (!situation.use().swallowed()) {
                cautions.add(Caution.info("hazard." + hazard.name().toLowerCase(Locale.ROOT), sentence));
                continue;
            }
            boolean blocks = hazard.effect() == Hazard.Effect.BLOCKS || acid && hazard == Hazard.COPPER;
            cautions.add(new Caution("hazard." + hazard.name().toLowerCase(Locale.ROOT),
                    blocks && !proven ? Caution.Severity.DANGER : Caution.Severity.WARNING, sentence));
            if (blocks && !proven) {
                reasons.add(hazard.danger() + ", and no current test shows " + tests
                        + " to be within limits; no step of the train is credited with it.");
            } else if (proven) {
                conditions.add(hazard.danger() + ": " + tests + " is tested again each year and " + hazard.control()
                        + ".");
            } else {
                conditions.add(hazard.danger() + ": " + tests + " is tested and within limits, and "
                        + hazard.control() + ".");
            }
        }
        if (acid && situation.use().swallowed()
                && situation.hazards().stream().anyMatch(Hazard::dissolvesInAcidWater)) {
            cautions.add(Caution.warning("hazard.acid-on-metal",
                    "Acid water stands on metal that dissolves in it; raise the pH and test the metals."));
        }
    }

    private void tests() {
        if (!situation.tests().sourceTested()) {
            conditions.add("The source is tested for E. coli by a laboratory; no result that still counts is known, "
                    + "and 28 of 53 roof-water tanks surveyed had E. coli (Chubaka et al. 2018).");
        }
        for (WaterTest bad : situation.tests().bad()) {
            TestLimit limit = situation.tests().limit(bad.parameter());
            String found = sentence("Limit " + limit.text(bad.parameter().unit()) + ", found " + bad.text());
            boolean chemical = bad.parameter() != TestParameter.E_COLI
                    && bad.parameter() != TestParameter.HYDROGEN_SULPHIDE_STRIP;
            boolean supersededAtTap = bad.point() == WaterTest.Point.SOURCE
                    && situation.tests().latest(bad.parameter(), WaterTest.Point.TAP).isPresent();
            // Microbes in the tank are what the train is for; a later sample at the tap says more than the tank's.
            boolean counts = bad.point() == WaterTest.Point.TAP || chemical && !supersededAtTap;
            if (counts && limit.health() && situation.use().swallowed()) {
                reasons.add(found + " " + limit.action());
            } else if (counts && situation.use() != Use.GARDEN) {
                conditions.add(found + " " + limit.action());
            } else {
                cautions.add(Caution.info("test." + bad.parameter().name().toLowerCase(Locale.ROOT),
                        found + " " + limit.action()));
            }
        }
    }

    /** Chlorine that something behind it takes out leaves stored water unprotected. */
    private void residual() {
        boolean chlorinated = train.steps().stream().anyMatch(step -> step.step().treatment() instanceof Chlorination);
        double left = train.leaving(source).freeChlorineMgPerL();
        if (situation.storedAfter() && situation.use() != Use.GARDEN && left < 0.2) {
            String stored = chlorinated ? "No chlorine residual is left in the water that is stored behind the train: "
                    : "Nothing protects the water that is stored behind the train: ";
            conditions.add(stored + "it is used within a day from a clean covered vessel with a tap, or chlorinated "
                    + "last to leave at least 0.2 mg/L.");
        }
    }

    private void aerosol() {
        if (!situation.aerosol()) {
            return;
        }
        boolean warm = source.temperatureC() >= LEGIONELLA_TEMPERATURE_C;
        String text = "Sprayed water can carry Legionella into the lungs: keep cold water below 25 degC and hot water "
                + "stored above 60 degC, flush after days without use, clean shower heads, and fit tempering valves "
                + "by a licensed plumber.";
        cautions.add(situation.vulnerableUsers() ? Caution.danger("legionella", text)
                : Caution.warning("legionella", text));
        if (warm || situation.vulnerableUsers()) {
            conditions.add((warm ? "The water is warm enough for Legionella (" + Checks.shown(source.temperatureC())
                    + " degC): " : "Vulnerable people breathe the spray: ") + "it is disinfected before the shower or "
                    + "sprinkler, flushed, and not left to stand.");
        }
    }

    private void people() {
        if (!situation.vulnerableUsers()) {
            return;
        }
        String text = "Infants, old, pregnant and immunocompromised people fall ill from fewer organisms; for "
                + "immunocompromised people disinfect or boil the water, and ask their doctor.";
        cautions.add(Caution.warning("vulnerable-users", text));
    }

    private void inspection() {
        situation.inspection().ifPresent(score -> {
            if (score.level().ordinal() >= InspectionScore.Level.HIGH.ordinal() && situation.use() != Use.GARDEN) {
                conditions.add("The sanitary inspection finds a " + score.level().label() + " risk (" + score.lowest()
                        + (score.unanswered().isEmpty() ? "" : " to " + score.highest()) + " of "
                        + InspectionQuestion.values().length + " faults): the faults are put right first.");
            }
        });
    }

    /** What is not needed for the garden is no condition there. */
    private void require(String text) {
        if (situation.use() != Use.GARDEN) {
            conditions.add(Character.toUpperCase(text.charAt(0)) + text.substring(1));
        }
    }

    private static String sentence(String text) {
        String capital = Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }
}
