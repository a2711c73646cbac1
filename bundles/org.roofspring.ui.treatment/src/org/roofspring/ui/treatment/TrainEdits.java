package org.roofspring.ui.treatment;

import java.util.List;
import java.util.Locale;

import org.roofspring.site.Ids;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.StepKind;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.SiteSession;

/** The edits of the board. Each is one step of undo, and selects what it was about. */
public final class TrainEdits {
    private TrainEdits() {
    }

    /** Adds a train for the given use, or for none where it is null. */
    public static TreatmentTrain addTrain(SiteSession session, Use use) {
        session.takeOverInput();
        TreatmentTrain[] added = new TreatmentTrain[1];
        session.edits().compound("Add treatment train", session.site(), () -> {
            added[0] = (TreatmentTrain) session.edits().add(session.site(), Literals.SITE__TRAINS);
            if (use != null) {
                session.edits().set(use, Literals.USE__TRAIN, added[0]);
            }
        });
        session.select(session.selection().to(added[0]));
        return added[0];
    }

    /** Adds a step of a kind; its settings are for the user to enter, since a default would be a claim. */
    public static TreatmentStep addStep(SiteSession session, TreatmentTrain train, StepKind kind, int index) {
        session.takeOverInput();
        TreatmentStep step = SiteFactory.eINSTANCE.createTreatmentStep();
        step.setId(Ids.newId(session.site(), Literals.TREATMENT_STEP));
        step.setKind(kind);
        step.setName(freeName(train, name(kind)));
        int place = Math.clamp(index, 0, train.getSteps().size());
        session.edits().compound("Add " + Words.choice(kind) + " to " + Words.name(train), step,
                () -> train.getSteps().add(place, step));
        session.select(session.selection().to(step));
        return step;
    }

    /** What a kind is called at the head of a line. */
    static String name(StepKind kind) {
        String words = switch (kind) {
            case CERAMIC_SILVER -> "ceramic with silver";
            case CALCITE_CONTACT -> "limestone contact";
            case SOLAR -> "bottles in the sun";
            case CHLORINATION -> "chlorine";
            case SAFE_STORAGE -> "covered vessel with tap";
            default -> Words.choice(kind);
        };
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String freeName(TreatmentTrain train, String name) {
        List<String> taken = train.getSteps().stream().map(TreatmentStep::getName).toList();
        String free = name;
        for (int number = 2; taken.contains(free); number++) {
            free = name + " " + number;
        }
        return free;
    }

    /**
     * Moves a step, within its train or to another.
     *
     * @param index place in the target as it is now, from 0 to the number of its steps: before which step it goes
     * @return whether that was a move
     */
    public static boolean moveStep(SiteSession session, TreatmentStep step, TreatmentTrain target, int index) {
        TreatmentTrain from = (TreatmentTrain) step.eContainer();
        int now = from.getSteps().indexOf(step);
        int place = Math.clamp(index, 0, target.getSteps().size());
        if (from == target && (place == now || place == now + 1)) {
            return false;
        }
        session.takeOverInput();
        session.edits().compound("Move " + Words.name(step), step, () -> {
            if (from == target) {
                target.getSteps().move(place > now ? place - 1 : place, step);
            } else {
                target.getSteps().add(place, step);
            }
        });
        session.select(session.selection().to(step));
        return true;
    }

    /** Moves a step by one place; nothing at the ends. */
    public static boolean shift(SiteSession session, TreatmentStep step, int places) {
        TreatmentTrain train = (TreatmentTrain) step.eContainer();
        int to = train.getSteps().indexOf(step) + places;
        return to >= 0 && to < train.getSteps().size()
                && moveStep(session, step, train, places > 0 ? to + 1 : to);
    }

    /** Takes a step out, and selects its neighbour. */
    public static void remove(SiteSession session, TreatmentStep step) {
        session.takeOverInput();
        TreatmentTrain train = (TreatmentTrain) step.eContainer();
        int place = train.getSteps().indexOf(step);
        session.edits().remove(List.of(step));
        session.select(session.selection().to(train.getSteps().isEmpty() ? train
                : train.getSteps().get(Math.min(place, train.getSteps().size() - 1))));
    }

    /** Puts a step in place, or sets it aside without losing its settings. */
    public static void toggle(SiteSession session, TreatmentStep step) {
        session.takeOverInput();
        session.edits().set(step, Literals.TREATMENT_STEP__ACTIVE, !step.isActive());
    }

    /** Leads the water of a use through a train, or past all where it is null. */
    public static void connect(SiteSession session, Use use, TreatmentTrain train) {
        session.takeOverInput();
        session.edits().set(use, Literals.USE__TRAIN, train);
        session.select(session.selection().to(use));
    }
}
