package org.roofspring.calc.standard.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;

/** Whether the sign-offs of reviewers still stand. */
public final class SignOffs {
    /** Id of the finding about each sign-off; it is about the remark. */
    public static final String FINDING = "signOff";

    private SignOffs() {
    }

    /** Whether a remark accepts something that is named. */
    public static boolean isSignOff(Remark remark) {
        return remark.getKind() == RemarkKind.ACCEPTED && remark.getElement() != null;
    }

    /**
     * The verdict on each sign-off about an element whose basis is known.
     *
     * @param basisOf what a decision about an element rests on now
     * @param nameOf  what people call the element with an identifier
     */
    public static List<Finding> findings(List<Remark> remarks, Function<NamedElement, Optional<Basis>> basisOf,
            UnaryOperator<String> nameOf) {
        return remarks.stream().filter(SignOffs::isSignOff)
                .flatMap(remark -> basisOf.apply(remark.getElement()).map(basis -> new Finding(FINDING,
                        "Sign-off of " + remark.getElement().getName() + " by " + author(remark), remark.getId(),
                        verdict(remark, basis, nameOf))).stream()).toList();
    }

    private static String author(Remark remark) {
        return remark.getAuthor() == null ? "an unnamed reviewer" : remark.getAuthor();
    }

    /** In force while what it rested on is as it was. */
    static FindingValue.Verdict verdict(Remark remark, Basis now, UnaryOperator<String> nameOf) {
        if (remark.getFingerprint() == null || remark.getFingerprint().isBlank()) {
            return new FindingValue.Verdict(Level.BAD, "Out of date",
                    List.of("it does not say what it rests on, so it cannot be checked"));
        }
        if (remark.getFingerprint().equals(now.fingerprint())) {
            return new FindingValue.Verdict(Level.GOOD, "In force", List.of());
        }
        List<String> changes = now.changesSince(remark.getRestsOn(), nameOf);
        return new FindingValue.Verdict(Level.BAD, "Out of date",
                changes.isEmpty() ? List.of("what it rests on has changed since") : changes);
    }
}
