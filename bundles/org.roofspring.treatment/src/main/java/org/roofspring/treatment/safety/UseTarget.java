package org.roofspring.treatment.safety;

import java.util.function.ToDoubleFunction;

import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;
import org.roofspring.treatment.risk.Pathogen;
import org.roofspring.treatment.risk.RiskChain;

/**
 * The log reduction that a use asks for, editable.
 *
 * @param logs   by group
 * @param source of the target
 */
public record UseTarget(LogReductions logs, Source source) {
    /** Two of three levels, for people in ordinary health. */
    public static final Source PROTECTIVE = Source.fromMemory("WHO 2011, Evaluating Household Water Treatment Options: "
            + "protective (at least 2 log bacteria, 3 log viruses, 2 log protozoa)");
    /** The highest level, for people who fall ill easily. */
    public static final Source HIGHLY_PROTECTIVE = Source.fromMemory("WHO 2011, Evaluating Household Water Treatment "
            + "Options: highly protective (at least 4 log bacteria, 5 log viruses, 4 log protozoa)");
    public static final Source WASHING_SOURCE = Source.assumed("a tenth or less of the water drunk is swallowed in "
            + "washing, so one log less than for drinking");
    public static final Source GARDEN_SOURCE = Source.assumed("garden water is not swallowed; crops eaten raw are "
            + "washed with treated water");

    private static final LogReductions PROTECTIVE_LOGS = new LogReductions(2, 3, 2, 2);
    private static final LogReductions HIGHLY_PROTECTIVE_LOGS = new LogReductions(4, 5, 4, 4);

    public UseTarget {
        Checks.present("logs", logs);
        Checks.present("source", source);
    }

    /**
     * The default target. Viruses are asked for where they have a way in, and for vulnerable users always.
     *
     * @param virusWayIn people or sewage can bring viruses into the water
     */
    public static UseTarget of(Use use, boolean vulnerableUsers, boolean virusWayIn) {
        LogReductions full = vulnerableUsers ? HIGHLY_PROTECTIVE_LOGS : PROTECTIVE_LOGS;
        LogReductions logs = virusWayIn || vulnerableUsers ? full
                : new LogReductions(full.bacteria(), 0, full.giardia(), full.cryptosporidium());
        return switch (Checks.present("use", use)) {
            case GARDEN -> new UseTarget(LogReductions.NONE, GARDEN_SOURCE);
            case WASHING -> new UseTarget(LogReductions.byGroup(group -> Math.max(0, logs.of(group) - 1)),
                    WASHING_SOURCE);
            case COOKING, DRINKING -> new UseTarget(logs, vulnerableUsers ? HIGHLY_PROTECTIVE : PROTECTIVE);
        };
    }

    /** Viruses that a train must take out where they have a way in [log]. */
    static double virusBarrier() {
        return PROTECTIVE_LOGS.viruses();
    }

    /**
     * A target from the risk chain, run backwards for the reference pathogens; Giardia as Cryptosporidium.
     *
     * @param rawPerL      organisms in raw water by group, assumed by the user, 0 to 1e12 [1/L]; 0 for none
     * @param litresPerDay unboiled water swallowed, above 0 to 100 [L]
     * @param targetDaly   for a person and year, 1e-12 to 1
     */
    public static UseTarget fromRisk(ToDoubleFunction<PathogenGroup> rawPerL, double litresPerDay,
            double targetDaly) {
        LogReductions logs = LogReductions.byGroup(group -> {
            double raw = rawPerL.applyAsDouble(group);
            return raw == 0 ? 0 : RiskChain.neededLog(reference(group), raw, litresPerDay, RiskChain.DAYS, targetDaly);
        });
        return new UseTarget(logs, Source.derived("risk chain backwards from " + targetDaly
                + " DALY a person and year, with the raw concentrations assumed by the user; "
                + Pathogen.CHAIN_SOURCE.text()));
    }

    private static Pathogen reference(PathogenGroup group) {
        return switch (group) {
            case BACTERIA -> Pathogen.CAMPYLOBACTER;
            case VIRUSES -> Pathogen.ROTAVIRUS;
            case GIARDIA, CRYPTOSPORIDIUM -> Pathogen.CRYPTOSPORIDIUM;
        };
    }
}
