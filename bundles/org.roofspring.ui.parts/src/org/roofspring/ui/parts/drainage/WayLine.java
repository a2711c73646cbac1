package org.roofspring.ui.parts.drainage;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.roofspring.ui.session.FindingKey;

/**
 * A part of the way from roof to tank, as it is shown.
 *
 * @param path        identifiers from the roof down to this part; a part that two gutters lead to stands under both
 * @param type        of the part
 * @param name        of the part
 * @param arrives     flow in the design storm, in the reader's units; empty where it is not known
 * @param carries     what it lets through, likewise
 * @param utilisation the one over the other
 * @param used        the same as text
 * @param words       what that means
 * @param stale       whether the figures are out of date
 * @param finding     whose workings say more, or null
 * @param onward      the parts that its water goes to
 */
public record WayLine(List<String> path, EClass type, String name, String arrives, String carries,
        OptionalDouble utilisation, String used, String words, boolean stale, FindingKey finding,
        List<WayLine> onward) {
    /** A part this much used is all but full. */
    static final double NEARLY_FULL = 0.9;

    public WayLine {
        path = List.copyOf(path);
        onward = List.copyOf(onward);
    }

    /** Identifier of the part. */
    public String elementId() {
        return path.getLast();
    }

    boolean overloaded() {
        return utilisation.orElse(0) > 1;
    }

    boolean nearlyFull() {
        return !overloaded() && utilisation.orElse(0) > NEARLY_FULL;
    }

    /** This line and all below it. */
    Stream<WayLine> all() {
        return Stream.concat(Stream.of(this), onward.stream().flatMap(WayLine::all));
    }
}
