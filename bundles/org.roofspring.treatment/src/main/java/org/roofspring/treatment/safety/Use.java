package org.roofspring.treatment.safety;

/** What the water is used for. */
public enum Use {
    GARDEN("the garden"),
    /** Bodies, hands, dishes, clothes. */
    WASHING("washing"),
    COOKING("cooking"),
    DRINKING("drinking");

    private final String label;

    Use(String label) {
        this.label = label;
    }

    /** In running text: "suitable for washing". */
    public String label() {
        return label;
    }

    /** Swallowed on purpose. */
    public boolean swallowed() {
        return this == DRINKING || this == COOKING;
    }
}
