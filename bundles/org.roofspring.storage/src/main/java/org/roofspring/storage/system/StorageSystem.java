package org.roofspring.storage.system;

import java.util.List;
import java.util.Optional;
import org.roofspring.storage.YieldRule;

/**
 * The tanks of a site and what draws on them.
 *
 * @param stages chain of stages, first one first; one or more
 * @param transfers one between each two neighbours, so one fewer than stages
 * @param uses one or more
 * @param topUp water bought in, if any
 * @param rule when in the day the demand is drawn
 */
public record StorageSystem(List<Stage> stages, List<Transfer> transfers, List<Use> uses, Optional<TopUp> topUp,
        YieldRule rule) {

    /** Copies the lists and checks that they fit together. */
    public StorageSystem {
        stages = List.copyOf(stages);
        transfers = List.copyOf(transfers);
        uses = List.copyOf(uses);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("stages is empty; accepted is one stage or more");
        }
        if (transfers.size() != stages.size() - 1) {
            throw new IllegalArgumentException("transfers has " + transfers.size() + " entries; accepted is "
                    + (stages.size() - 1) + ", one between each two stages");
        }
        if (uses.isEmpty()) {
            throw new IllegalArgumentException("uses is empty; accepted is one use or more");
        }
        for (Use use : uses) {
            Checks.index(use.stage(), stages.size(), "stage of use " + use.name());
        }
        if (topUp.isPresent()) {
            Checks.index(topUp.get().stage(), stages.size(), "stage of the top-up");
        }
        if (stages.getLast().overflow() == Stage.Overflow.NEXT_STAGE) {
            throw new IllegalArgumentException(
                    "overflow of the last stage is NEXT_STAGE; accepted is AWAY, there is no next stage");
        }
        if (rule == null) {
            throw new IllegalArgumentException("rule is missing; accepted is a YieldRule");
        }
    }

    /** One tank, one use. */
    public static StorageSystem single(Tank tank, YieldRule rule) {
        return new StorageSystem(List.of(Stage.of(tank)), List.of(), List.of(Use.plain("demand", 0)),
                Optional.empty(), rule);
    }
}
