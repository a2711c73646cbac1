package org.roofspring.treatment.safety;

/**
 * Questions of the sanitary inspection of a roof-water supply. Each asks for a fault; a yes is one point of risk.
 */
public enum InspectionQuestion {
    DROPPINGS("Are there droppings, moss, leaves or dead animals on the roof or in the gutters?"),
    OVERHANGING_TREES("Do branches hang over the roof, or can animals reach it?"),
    GUTTERS("Do the gutters sag, leak or hold standing water?"),
    NO_SCREEN("Is the screen at the inlet missing, torn or coarser than 1 mm?"),
    NO_FIRST_FLUSH("Is the first-flush diverter missing, full or blocked?"),
    TANK_OPEN("Is the tank open, is its cover loose, or can light get in?"),
    TANK_CRACKED("Is the tank cracked or leaking, or is it below ground near a latrine or sewer?"),
    OVERFLOW_UNSCREENED("Are overflow or vent without a screen?"),
    TAP_DIRTY("Is the tap leaking, dirty, or is water drawn by dipping vessels?"),
    PUDDLE("Does water stand around the tap or tank?");

    private final String text;

    InspectionQuestion(String text) {
        this.text = text;
    }

    /** The question; yes is a fault. */
    public String text() {
        return text;
    }
}
