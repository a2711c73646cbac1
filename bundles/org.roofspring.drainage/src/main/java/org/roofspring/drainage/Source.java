package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * Where a default or a caution comes from, and how far that was verified.
 *
 * @param citation title with edition, table or section; for common practice, what is practised
 * @param standing how it was obtained
 */
public record Source(String citation, Standing standing) {

    /** How a number or a fact was obtained. */
    public enum Standing {
        /** Seen in the named publication or an extract of it. */
        READ,
        /** Seen in a text that quotes the named publication. */
        AS_QUOTED,
        /** Written from memory of the named publication, which was not opened. */
        FROM_MEMORY,
        /** What the trade does; no publication. */
        COMMON_PRACTICE,
        /** Follows from a formula. */
        DERIVED,
        /** Assumed for want of anything better; to be replaced by local knowledge. */
        ASSUMED
    }

    public Source {
        Require.given("citation", citation);
        Require.given("standing", standing);
    }

    public static Source read(String citation) {
        return new Source(citation, Standing.READ);
    }

    public static Source asQuoted(String citation) {
        return new Source(citation, Standing.AS_QUOTED);
    }

    public static Source fromMemory(String citation) {
        return new Source(citation, Standing.FROM_MEMORY);
    }

    public static Source commonPractice(String practice) {
        return new Source(practice, Standing.COMMON_PRACTICE);
    }

    public static Source derived(String formula) {
        return new Source(formula, Standing.DERIVED);
    }

    public static Source assumed(String assumption) {
        return new Source(assumption, Standing.ASSUMED);
    }

    /** True where the user must be told that it still has to be verified or replaced. */
    public boolean needsVerifying() {
        return standing == Standing.FROM_MEMORY || standing == Standing.ASSUMED;
    }

    /** One line for screen and paper, with its mark where it is not a verified publication. */
    public String text() {
        return switch (standing) {
            case READ, DERIVED -> citation;
            case AS_QUOTED -> citation + " (as quoted)";
            case FROM_MEMORY -> "from memory, verify against " + citation;
            case COMMON_PRACTICE -> citation + " (common practice, no source)";
            case ASSUMED -> citation + " (assumed; replace with local knowledge)";
        };
    }
}
