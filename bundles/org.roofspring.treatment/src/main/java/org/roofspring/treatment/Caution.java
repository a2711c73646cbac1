package org.roofspring.treatment;

import org.roofspring.treatment.internal.Checks;

/**
 * Something the user has to know before relying on a result.
 *
 * @param code     stable, for programs
 * @param severity how bad it can get
 * @param text     one or two sentences in plain words; where someone can be hurt, also who must be asked
 */
public record Caution(String code, Severity severity, String text) {

    /** How bad it can get. */
    public enum Severity {
        /** Worth knowing. */
        INFO,
        /** The result may not hold, or money or water may be lost. */
        WARNING,
        /** Someone can be hurt or made ill. */
        DANGER
    }

    public Caution {
        Checks.text("code", code);
        Checks.present("severity", severity);
        Checks.text("text", text);
    }

    public static Caution info(String code, String text) {
        return new Caution(code, Severity.INFO, text);
    }

    public static Caution warning(String code, String text) {
        return new Caution(code, Severity.WARNING, text);
    }

    public static Caution danger(String code, String text) {
        return new Caution(code, Severity.DANGER, text);
    }
}
