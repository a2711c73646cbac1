package org.roofspring.economy.upkeep;

import java.util.Arrays;
import java.util.List;

/**
 * What is usually done on the parts of a roof water system. The intervals are common practice, no source: each is a
 * proposal that whoever runs the system enters as a task of their own and changes.
 */
public enum CommonTask {
    GUTTERS(Part.GUTTER, "Clean the gutters", 182, true, List.of("Remove leaves by hand, never into the tank",
            "Flush away from the tank", "Check brackets, joints and fall"), List.of("Gloves, bucket, brackets"),
            "Falls: ladder on firm ground, held by a second person, never in wind or wet"),
    SCREENS(Part.SCREEN, "Clean the screens", 30, true, List.of("Brush off leaves", "Look for holes in the mesh"),
            List.of("Mesh, ties"), ""),
    DIVERTERS(Part.DIVERTER, "Empty and flush the first-flush diverters", 30, true,
            List.of("Open the drain until it runs clear", "Clear the drain hole", "Close it again"),
            List.of("Seal of the cap"), ""),
    TANK_LOOK(Part.TANK, "Look the tank over", 91, false, List.of("Lid locked, mesh whole at inlet, overflow and vent",
            "No cracks, no wet patches, no roots", "Overflow runs free"), List.of("Mesh, sealant"), ""),
    TANK_CLEANING(Part.TANK, "Clean the tank", 1096, false, List.of("Let the water down to the sludge",
            "Remove the sludge", "Wash, disinfect, and let the first water go"), List.of("Chlorine, brushes, pump"),
            "Confined space: air in a tank can kill. From outside where possible; entry only by trained people under "
            + "the local code"),
    PUMP(Part.PUMP, "Look the pump over", 182, false, List.of("Listen for noise, look for leaks",
            "Compare flow and current with the first day", "Clean the strainer"), List.of("Seal, fuse"),
            "Electricity: switched off and locked first; repairs by a licensed electrician"),
    TAPS(Part.TAP, "Mend dripping taps", 30, false, List.of("Look at every tap", "Renew washers"),
            List.of("Washers, tape"), ""),
    LEVEL(Part.TANK, "Read the dipstick and write it down", 7, false, List.of(), List.of("Dipstick, notebook"), ""),
    WATER_TEST(Part.TRAIN, "Test the drinking water for E. coli", 182, false,
            List.of("Sample from the tap after flaming or wiping it", "Keep cool and dark, to the laboratory in a day"),
            List.of("Sterile bottle"), "");

    /** The part that a task belongs to. */
    public enum Part {
        GUTTER, SCREEN, DIVERTER, TANK, PUMP, TAP, TRAIN
    }

    private final Part part;
    private final String words;
    private final int intervalDays;
    private final boolean beforeFirstRain;
    private final List<String> checklist;
    private final List<String> spares;
    private final String hazard;

    CommonTask(Part part, String words, int intervalDays, boolean beforeFirstRain, List<String> checklist,
            List<String> spares, String hazard) {
        this.part = part;
        this.words = words;
        this.intervalDays = intervalDays;
        this.beforeFirstRain = beforeFirstRain;
        this.checklist = checklist;
        this.spares = spares;
        this.hazard = hazard;
    }

    /** The tasks of a part. */
    public static List<CommonTask> of(Part part) {
        return Arrays.stream(values()).filter(task -> task.part == part).toList();
    }

    public String words() {
        return words;
    }

    /** Usual interval [d]. */
    public int intervalDays() {
        return intervalDays;
    }

    /** Whether it is also done before the first rain after the dry season. */
    public boolean beforeFirstRain() {
        return beforeFirstRain;
    }

    public List<String> checklist() {
        return checklist;
    }

    public List<String> spares() {
        return spares;
    }

    /** What can hurt the one who does it; may be empty. */
    public String hazard() {
        return hazard;
    }
}
