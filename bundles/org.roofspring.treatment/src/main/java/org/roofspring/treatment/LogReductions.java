package org.roofspring.treatment;

import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;

import org.roofspring.treatment.internal.Checks;

/**
 * A log reduction for each pathogen group: 0 to 20 powers of ten. Also used for targets.
 */
public record LogReductions(double bacteria, double viruses, double giardia, double cryptosporidium) {
    public static final LogReductions NONE = new LogReductions(0, 0, 0, 0);

    private static final double MAX = 20;

    public LogReductions {
        Checks.within("log reduction of bacteria", bacteria, 0, MAX, "");
        Checks.within("log reduction of viruses", viruses, 0, MAX, "");
        Checks.within("log reduction of Giardia", giardia, 0, MAX, "");
        Checks.within("log reduction of Cryptosporidium", cryptosporidium, 0, MAX, "");
    }

    public static LogReductions byGroup(ToDoubleFunction<PathogenGroup> value) {
        return new LogReductions(value.applyAsDouble(PathogenGroup.BACTERIA),
                value.applyAsDouble(PathogenGroup.VIRUSES), value.applyAsDouble(PathogenGroup.GIARDIA),
                value.applyAsDouble(PathogenGroup.CRYPTOSPORIDIUM));
    }

    public double of(PathogenGroup group) {
        return switch (group) {
            case BACTERIA -> bacteria;
            case VIRUSES -> viruses;
            case GIARDIA -> giardia;
            case CRYPTOSPORIDIUM -> cryptosporidium;
        };
    }

    /** Each group combined with the same group of another, such as {@code Math::max}. */
    public LogReductions combine(LogReductions other, DoubleBinaryOperator operator) {
        return byGroup(group -> operator.applyAsDouble(of(group), other.of(group)));
    }

    public LogReductions cappedAt(double cap) {
        return byGroup(group -> Math.min(of(group), cap));
    }

    /** True where every group reaches the target. */
    public boolean reaches(LogReductions target) {
        for (PathogenGroup group : PathogenGroup.values()) {
            if (of(group) < target.of(group) - 1e-9) {
                return false;
            }
        }
        return true;
    }
}
