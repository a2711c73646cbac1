package org.roofspring.treatment.train;

/** How a step removes or kills. What one mechanism misses, a second step of the same mechanism misses too. */
public enum Mechanism {
    DIVERSION("leaving out the first water"),
    SETTLING("settling"),
    SIZE_EXCLUSION("holding back by size"),
    ADSORPTION("adsorption"),
    BIOLOGICAL("a living sand layer"),
    ULTRAVIOLET("ultraviolet light"),
    HEAT("heat"),
    OXIDANT("a chemical oxidant");

    private final String label;

    Mechanism(String label) {
        this.label = label;
    }

    /** In running text. */
    public String label() {
        return label;
    }
}
