package org.roofspring.calc;

import java.util.Objects;

/**
 * Where a formula, a value or a caution comes from.
 *
 * @param standing how sure it is
 * @param citation title and edition, or what the fact rests on
 */
public record Source(Standing standing, String citation) {
    /** How sure a source is; shown beside every value that rests on it. */
    public enum Standing {
        /** Seen in the named publication. */
        PUBLISHED("published"),
        /** The publication is named but was not opened: verify before relying on it. */
        FROM_MEMORY("from memory, verify"),
        /** Usual in the trade, with no source. */
        COMMON_PRACTICE("common practice, no source"),
        /** True by definition or arithmetic. */
        DEFINITION("by definition"),
        /** Entered by the user. */
        USER("entered by you"),
        /** Made up for a demonstration. */
        INVENTED("invented for the demo");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Source {
        Objects.requireNonNull(standing);
        Objects.requireNonNull(citation);
    }

    public static Source published(String citation) {
        return new Source(Standing.PUBLISHED, citation);
    }

    public static Source fromMemory(String citation) {
        return new Source(Standing.FROM_MEMORY, citation);
    }

    public static Source commonPractice(String what) {
        return new Source(Standing.COMMON_PRACTICE, what);
    }

    public static Source definition(String what) {
        return new Source(Standing.DEFINITION, what);
    }

    /** Citation and standing in one line. */
    @Override
    public String toString() {
        return citation.isEmpty() ? standing.words() : citation + " (" + standing.words() + ")";
    }
}
