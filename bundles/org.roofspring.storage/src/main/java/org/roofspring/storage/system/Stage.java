package org.roofspring.storage.system;

import java.util.List;
import org.roofspring.storage.internal.FixedVolume;

/**
 * A place in the chain: one tank, or several joined at one level.
 *
 * @param name shown to people
 * @param tanks one or more
 * @param joint whether the tanks stand open to each other
 * @param overflow where water above the capacity goes
 */
public record Stage(String name, List<Tank> tanks, Joint joint, Overflow overflow) {

    /** Whether what befalls one tank of a stage befalls its neighbours. */
    public enum Joint {
        /** One body of water: an accident to one tank is an accident to all. */
        OPEN,
        /** A valve between each two is kept shut while nobody looks: an accident is held to one tank. */
        VALVED
    }

    /** Where water above the capacity goes. */
    public enum Overflow {
        /** Away. */
        AWAY,
        /** Into the next stage. */
        NEXT_STAGE
    }

    /** Copies the list and checks it. */
    public Stage {
        tanks = List.copyOf(tanks);
        if (tanks.isEmpty()) {
            throw new IllegalArgumentException("tanks of stage " + name + " is empty; accepted is one tank or more");
        }
        FixedVolume.toUnits(tanks.stream().mapToDouble(Tank::capacityM3).sum(), "capacity of stage " + name);
    }

    /** A stage of one tank that overflows away. */
    public static Stage of(Tank tank) {
        return new Stage(tank.name(), List.of(tank), Joint.OPEN, Overflow.AWAY);
    }
}
