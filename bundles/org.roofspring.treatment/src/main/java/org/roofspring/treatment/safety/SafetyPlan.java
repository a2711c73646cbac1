package org.roofspring.treatment.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.roofspring.treatment.internal.Checks;
import org.roofspring.treatment.train.Boil;
import org.roofspring.treatment.train.Cartridge;
import org.roofspring.treatment.train.Ceramic;
import org.roofspring.treatment.train.Chlorination;
import org.roofspring.treatment.train.Condition;
import org.roofspring.treatment.train.FirstFlush;
import org.roofspring.treatment.train.GranularCarbon;
import org.roofspring.treatment.train.Membrane;
import org.roofspring.treatment.train.MeshScreen;
import org.roofspring.treatment.train.Settling;
import org.roofspring.treatment.train.SlowSand;
import org.roofspring.treatment.train.SolarBottles;
import org.roofspring.treatment.train.StepResult;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.UpkeepTask;
import org.roofspring.treatment.train.UvLamp;

/**
 * The water safety plan of a train in its situation: what can go wrong from roof to use, what prevents it, and who does
 * what when it fails. A draft to be completed on site with those who do the work.
 *
 * @param rows from the roof to the use
 */
public record SafetyPlan(List<PlanRow> rows) {
    private static final String CARETAKER = "caretaker or householder";
    private static final String LICENSED = "licensed tradesperson, called by the caretaker";
    private static final String LABORATORY = "caretaker takes the sample, laboratory tests it";

    public SafetyPlan {
        rows = Checks.list("rows", rows);
    }

    public static SafetyPlan of(TrainResult train, Situation situation) {
        Checks.present("train", train);
        Checks.present("situation", situation);
        List<PlanRow> rows = new ArrayList<>();
        rows.add(new PlanRow("Droppings, leaves and dust on roof and gutters bring in organisms",
                "clean roof and gutters", "no droppings, leaves or standing water",
                "look twice a year and before the first rains",
                "clean, with fall protection; lead the next rain away", CARETAKER));
        situation.hazards().stream().sorted().forEach(hazard -> rows.add(hazard(hazard)));
        situation.virusPathways().stream().sorted().forEach(pathway -> rows.add(new PlanRow(
                "Viruses come in by " + pathway.label(), "close the way in, or treat with a virus barrier",
                "no way in, or the barrier working", "at each monthly inspection",
                "boil or chlorinate water for drinking until it is closed", CARETAKER)));
        train.steps().forEach(step -> rows.add(step(step)));
        situation.inspection().ifPresent(score -> score.faults().forEach(fault -> rows.add(new PlanRow(
                "Found at the sanitary inspection: " + fault.text(), "put the fault right", "answer no",
                "inspect each month", "repair and inspect again", CARETAKER))));
        if (situation.storedAfter()) {
            rows.add(new PlanRow("Treated water is soiled again in store",
                    "covered vessel with a tap, cleaned each week",
                    "at least 0.2 mg/L free chlorine, or used within a day", "measure or date each filling",
                    "pour away, clean the vessel, treat again", CARETAKER));
        }
        if (situation.aerosol()) {
            rows.add(new PlanRow("Legionella in sprayed water",
                    "cold below 25 degC, hot stored above 60 degC, flushing", "no standing warm water",
                    "measure temperatures each month, flush after days without use",
                    "heat or disinfect and flush; no showers for vulnerable people meanwhile", LICENSED));
        }
        rows.add(test(TestParameter.E_COLI, situation));
        situation.hazards().stream().flatMap(hazard -> hazard.tests().stream()).distinct().sorted()
                .forEach(parameter -> rows.add(test(parameter, situation)));
        return new SafetyPlan(rows);
    }

    private static PlanRow hazard(Hazard hazard) {
        String tests = hazard.tests().stream().map(parameter -> parameter.label() + " "
                + parameter.defaultLimit().text(parameter.unit())).collect(Collectors.joining(", "));
        boolean blocks = hazard.effect() == Hazard.Effect.BLOCKS;
        String action = blocks ? "not for drinking or cooking until a test is within limits; ask the health authority"
                : "test, and act on the result";
        return new PlanRow(hazard.danger(), hazard.control(), tests, "test each year and after work on the roof",
                action, blocks ? LICENSED : CARETAKER);
    }

    private static PlanRow test(TestParameter parameter, Situation situation) {
        TestLimit limit = situation.tests().limit(parameter);
        return new PlanRow("Something is missed: " + parameter.label(), "water test", limit.text(parameter.unit()),
                "each year, after repairs, and when someone falls ill", limit.action(), LABORATORY);
    }

    private static PlanRow step(StepResult step) {
        String limit = step.conditions().isEmpty() ? "in place and tight"
                : step.conditions().stream().map(Condition::text).collect(Collectors.joining(" "));
        String check = step.step().service().tasks().stream().map(SafetyPlan::check)
                .collect(Collectors.joining("; "));
        return new PlanRow(failure(step), step.step().name(), limit, check.isEmpty() ? "look each week" : check,
                action(step), CARETAKER);
    }

    private static String check(UpkeepTask task) {
        double days = task.intervalS() / 86_400;
        String interval = days < 1.5 ? "each day" : days < 10 ? "each week" : days < 45 ? "each month"
                : days < 300 ? "each " + Math.round(days / 30.44) + " months" : "each year or less often";
        return interval + ": " + Character.toLowerCase(task.text().charAt(0)) + task.text().substring(1);
    }

    private static String failure(StepResult step) {
        return switch (step.step().treatment()) {
            case MeshScreen mesh -> "Leaves, insects and animals get in through a torn screen";
            case FirstFlush flush -> "A full diverter lets the dirtiest water into the tank";
            case Settling settling -> "Sludge is stirred up and drawn";
            case Cartridge cartridge -> "A spent cartridge lets dirt through or stops the flow";
            case Ceramic ceramic -> "A crack or leaking seal lets organisms past the ceramic";
            case GranularCarbon carbon -> "Spent carbon gives off what it held and grows bacteria";
            case SlowSand sand -> "The living layer dies from drying, chlorine or too fast a flow";
            case Membrane membrane -> "A torn membrane lets organisms through";
            case UvLamp lamp -> "Water passes an unlit, aged or dirty lamp";
            case Boil boil -> "Water is not brought to a rolling boil, or is soiled after it";
            case SolarBottles bottles -> "Bottles are cloudy, too large or out too short";
            case Chlorination chlorine -> "Too little chlorine is left, or too much";
        };
    }

    private static String action(StepResult step) {
        return switch (step.step().treatment()) {
            case MeshScreen mesh -> "replace the mesh";
            case FirstFlush flush -> "drain and clean it; watch the next rain";
            case Settling settling -> "let it stand, have sludge removed without entering the tank";
            case Cartridge cartridge -> "change it and disinfect the housing";
            case GranularCarbon carbon -> "change it and flush";
            case Ceramic ceramic -> "replace it; boil or chlorinate meanwhile";
            case SlowSand sand -> "boil or chlorinate until it has ripened again";
            case Membrane membrane -> "shut the line, boil or chlorinate, replace the module";
            case UvLamp lamp -> "shut the line, boil or chlorinate until the lamp is lit; flush the pipes behind it";
            case Boil boil -> "boil again";
            case SolarBottles bottles -> "leave them out longer, or boil";
            case Chlorination chlorine -> "dose again and wait, or dilute; measure again";
        };
    }
}
