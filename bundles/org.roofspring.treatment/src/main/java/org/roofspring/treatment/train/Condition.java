package org.roofspring.treatment.train;

import org.roofspring.treatment.internal.Checks;

/**
 * Something that has to hold for a step to be credited.
 *
 * @param code stable, for programs
 * @param met  whether it holds
 * @param text what is needed and what was found, in one sentence
 */
public record Condition(String code, boolean met, String text) {
    public Condition {
        Checks.text("code", code);
        Checks.text("text", text);
    }

    /** {@code need} says what is needed, {@code found} what was found. */
    static Condition of(String code, boolean met, String need, String found) {
        return new Condition(code, met, need + (met ? " (met: " : " (not met: ") + found + ").");
    }
}
