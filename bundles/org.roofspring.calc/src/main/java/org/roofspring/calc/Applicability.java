package org.roofspring.calc;

import java.util.List;

/**
 * Whether a calculation applies to a site, and if not, why.
 *
 * @param reasons empty when it applies; otherwise sentences to show
 */
public record Applicability(List<String> reasons) {
    private static final Applicability YES = new Applicability(List.of());

    public Applicability {
        reasons = List.copyOf(reasons);
    }

    /** It applies. */
    public static Applicability yes() {
        return YES;
    }

    /** It does not, and each reason says what is missing. */
    public static Applicability no(String... reasons) {
        if (reasons.length == 0) {
            throw new IllegalArgumentException("a calculation that does not apply must say why");
        }
        return new Applicability(List.of(reasons));
    }

    public boolean applies() {
        return reasons.isEmpty();
    }
}
