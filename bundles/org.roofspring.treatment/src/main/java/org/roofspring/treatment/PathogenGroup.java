package org.roofspring.treatment;

/** Groups of organisms that barriers treat alike. */
public enum PathogenGroup {
    BACTERIA("bacteria"),
    VIRUSES("viruses"),
    /** Protozoa that chlorine reaches. */
    GIARDIA("Giardia"),
    /** Protozoa that chlorine does not reach. */
    CRYPTOSPORIDIUM("Cryptosporidium");

    private final String label;

    PathogenGroup(String label) {
        this.label = label;
    }

    /** In running text. */
    public String label() {
        return label;
    }
}
