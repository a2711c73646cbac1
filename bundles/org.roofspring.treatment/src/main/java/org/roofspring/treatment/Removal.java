package org.roofspring.treatment;

import org.roofspring.treatment.internal.Checks;

/** The editable ranges of a barrier, one for each pathogen group. */
public record Removal(LogRange bacteria, LogRange viruses, LogRange giardia, LogRange cryptosporidium) {
    public Removal {
        Checks.present("bacteria", bacteria);
        Checks.present("viruses", viruses);
        Checks.present("giardia", giardia);
        Checks.present("cryptosporidium", cryptosporidium);
    }

    /** Nothing of any group. */
    public static Removal none(Source source) {
        LogRange none = LogRange.none(source);
        return new Removal(none, none, none, none);
    }

    public LogRange of(PathogenGroup group) {
        return switch (group) {
            case BACTERIA -> bacteria;
            case VIRUSES -> viruses;
            case GIARDIA -> giardia;
            case CRYPTOSPORIDIUM -> cryptosporidium;
        };
    }
}
