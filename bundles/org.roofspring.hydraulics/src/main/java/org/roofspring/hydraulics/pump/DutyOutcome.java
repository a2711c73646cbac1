package org.roofspring.hydraulics.pump;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.roofspring.hydraulics.internal.Require;

/** Where a pump settles on a system, or why it does not. */
public sealed interface DutyOutcome {

    /**
     * The stable intersection of least flow, where a pump settles that comes up from rest; absent where there is none.
     * Where {@link Meets#starts} is false it does not come up by itself.
     */
    Optional<DutyPoint> working();

    /** What there is to say about it beyond the points, in one sentence; empty where there is nothing. */
    String reason();

    /**
     * The curves meet.
     *
     * @param points     all intersections by rising flow, the unstable ones marked, at least one
     * @param starts     whether the pump lifts the standing column from nil flow by itself
     * @param runsBeyond whether the pump still has more head than the system needs at its highest measured flow
     */
    record Meets(List<DutyPoint> points, boolean starts, boolean runsBeyond) implements DutyOutcome {
        public Meets {
            points = Require.list("duty points", points);
            Require.within("number of duty points", points.size(), 1, Integer.MAX_VALUE);
        }

        @Override
        public Optional<DutyPoint> working() {
            return points.stream().filter(DutyPoint::stable).findFirst();
        }

        @Override
        public String reason() {
            StringBuilder reason = new StringBuilder();
            if (points.size() > 1) {
                reason.append("the pump can settle or hunt between ").append(points.size())
                        .append(" intersections with the system curve; ");
            }
            if (!starts) {
                reason.append("at its lowest measured flow the pump has less head than the system needs, so it does not"
                        + " get there from rest by itself; ");
            }
            if (runsBeyond) {
                reason.append("at its highest measured flow the pump still has more head than the system needs, so it"
                        + " can run out beyond what was measured; ");
            }
            return reason.isEmpty() ? "" : reason.substring(0, reason.length() - 2);
        }
    }

    /**
     * The static head is not below the head against a closed valve: no water comes.
     *
     * @param staticHeadM   [m]
     * @param shutOffHeadM  [m]
     */
    record StaticHeadAboveShutOff(double staticHeadM, double shutOffHeadM) implements DutyOutcome {
        @Override
        public Optional<DutyPoint> working() {
            return Optional.empty();
        }

        @Override
        public String reason() {
            return "the static head of " + metres(staticHeadM) + " is not below the shut-off head of the pump, "
                    + metres(shutOffHeadM) + ": no water comes";
        }
    }

    /**
     * At the highest measured flow the pump still has more head than the system needs: it runs out on its curve, beyond
     * what was measured, and nothing is extrapolated.
     *
     * @param lastFlowM3PerS highest measured flow [m3/s]
     * @param pumpHeadM      head of the pump there [m]
     * @param systemHeadM    head the system needs there [m]
     */
    record RunsOut(double lastFlowM3PerS, double pumpHeadM, double systemHeadM) implements DutyOutcome {
        @Override
        public Optional<DutyPoint> working() {
            return Optional.empty();
        }

        @Override
        public String reason() {
            return "the pump runs out beyond its last measured point: at " + litres(lastFlowM3PerS) + " it has "
                    + metres(pumpHeadM) + " where the system needs " + metres(systemHeadM)
                    + "; measure further, or throttle";
        }
    }

    /**
     * Already at the lowest measured flow, which is not nil, the system needs more than the pump has; less flow was not
     * measured, and nothing is extrapolated.
     *
     * @param firstFlowM3PerS lowest measured flow [m3/s]
     * @param pumpHeadM       head of the pump there [m]
     * @param systemHeadM     head the system needs there [m]
     */
    record BelowFirstPoint(double firstFlowM3PerS, double pumpHeadM, double systemHeadM) implements DutyOutcome {
        @Override
        public Optional<DutyPoint> working() {
            return Optional.empty();
        }

        @Override
        public String reason() {
            return "already at the lowest measured flow, " + litres(firstFlowM3PerS) + ", the system needs "
                    + metres(systemHeadM) + " where the pump has " + metres(pumpHeadM)
                    + "; measure the pump down to a closed valve";
        }
    }

    private static String metres(double headM) {
        return String.format(Locale.ROOT, "%.2f m", headM);
    }

    private static String litres(double flowM3PerS) {
        return String.format(Locale.ROOT, "%.4g L/s", flowM3PerS * 1000);
    }
}
