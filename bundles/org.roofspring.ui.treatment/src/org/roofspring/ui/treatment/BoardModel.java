package org.roofspring.ui.treatment;

import java.util.List;

import org.roofspring.calc.FindingValue.Verdict.Level;

/**
 * What the board shows, in words and numbers, without any widget.
 *
 * @param lanes one for each train, and one for the uses that pass none
 */
public record BoardModel(List<Lane> lanes) {
    /** The groups in the order of the numbers of a step. */
    public static final List<String> GROUPS = List.of("Bacteria", "Viruses", "Giardia", "Cryptosporidium");

    public BoardModel {
        lanes = List.copyOf(lanes);
    }

    /**
     * A train from its tanks to its uses.
     *
     * @param trainId null for the lane without treatment
     * @param from    names of the tanks
     * @param facts   flow, head loss, store and work, in a line; empty while unknown
     * @param target  what the use in focus asks for; null while unknown, or where no use draws through the train
     * @param mind    mistakes in the order of steps, sentences
     * @param stale   an edit has overtaken what is said of it
     */
    public record Lane(String trainId, String name, String from, String facts, List<Step> steps, List<Use> uses,
            Target target, List<String> mind, boolean stale) {
        public Lane {
            steps = List.copyOf(steps);
            uses = List.copyOf(uses);
            mind = List.copyOf(mind);
        }
    }

    /**
     * A step.
     *
     * @param kind    what it does, in words; empty where the name says it
     * @param inPlace whether it counts
     * @param logs    taken out behind it, by group; empty while unknown
     * @param says    what holds or fails, in words
     * @param fails   whether a condition fails or something is out at times
     */
    public record Step(String id, String name, String kind, boolean inPlace, List<Double> logs, String says,
            boolean fails) {
        public Step {
            logs = List.copyOf(logs);
        }

        /** What stands in the box. */
        public String label() {
            return kind.isEmpty() ? name : name + "\n" + kind;
        }
    }

    /**
     * A use.
     *
     * @param level of the verdict; null where none is given
     * @param text  the verdict, or why there is none
     */
    public record Use(String id, String name, Level level, String text) {
    }

    /**
     * What the use in focus asks for.
     *
     * @param useId   the use
     * @param useName as people call it
     * @param logs    asked for, by group
     * @param reached by group, at the use
     */
    public record Target(String useId, String useName, List<Double> logs, List<Double> reached) {
        public Target {
            logs = List.copyOf(logs);
            reached = List.copyOf(reached);
        }

        /** What is missing of a group; 0 where it is reached. */
        public double shortBy(int group) {
            return Math.max(0, logs.get(group) - reached.get(group));
        }
    }
}
