package org.roofspring.economy.readings;

/** Where water goes that nobody reckoned with. */
public enum Cause {
    /** As much each day, from a day on. */
    LEAK("a leak"),
    /** So much at once. */
    THEFT("water taken at once: theft, or a tap left open"),
    /** A share of all rain, from a day on. */
    BLOCKAGE("rain that does not reach the tank: a blocked downpipe or gutter"),
    /** More use than planned. */
    USE("more use than planned");

    private final String words;

    Cause(String words) {
        this.words = words;
    }

    /** In plain words. */
    public String words() {
        return words;
    }
}
