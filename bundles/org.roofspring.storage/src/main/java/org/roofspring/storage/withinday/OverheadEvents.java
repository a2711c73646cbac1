package org.roofspring.storage.withinday;

import java.util.List;
import org.roofspring.storage.withinday.OverheadSystem.Control;

/**
 * Goes from event to event. After {@link #next} the fields hold the stretch that has just passed, in which all flows
 * were even. One run, one thread.
 */
final class OverheadEvents {

    private final OverheadSystem system;
    private final OverheadTank tank;
    private final List<Outage> outages;

    double timeS;
    double volumeM3;
    /** Whether the levels ask the pump to run. */
    boolean calling;

    private boolean wasPowered;

    double durationS;
    double askedM3PerS;
    double suppliedM3PerS;
    double pumpedM3PerS;

    OverheadEvents(OverheadSystem system, double startS, double volumeM3, boolean calling, List<Outage> outages) {
        this.system = system;
        this.tank = system.tank();
        this.outages = outages;
        this.timeS = startS;
        this.volumeM3 = volumeM3;
        this.calling = calling;
        this.wasPowered = powerM3PerS(startS) > 0;
    }

    /** Passes the stretch up to the next event, or to the end if that comes first. */
    void next(double endS) {
        double power = powerM3PerS(timeS);
        decide(power > 0);
        pumpedM3PerS = calling ? power : 0;
        askedM3PerS = system.draw().flowM3PerS(timeS);
        suppliedM3PerS = volumeM3 > tank.deadVolumeM3() ? askedM3PerS : Math.min(askedM3PerS, pumpedM3PerS);
        double rate = pumpedM3PerS - suppliedM3PerS;
        double changeS = Math.min(endS, nextChangeS());
        double level = rate > 0 ? tank.stopVolumeM3() : calling ? tank.deadVolumeM3() : tank.startVolumeM3();
        double levelS = rate == 0 ? Double.POSITIVE_INFINITY : (level - volumeM3) / rate;
        if (levelS < changeS - timeS) {
            durationS = levelS;
            timeS += levelS;
            volumeM3 = level;
        } else {
            durationS = changeS - timeS;
            double moved = volumeM3 + rate * durationS;
            volumeM3 = rate > 0 ? Math.min(level, moved) : Math.max(level, moved);
            timeS = changeS;
        }
    }

    private void decide(boolean powered) {
        boolean returned = powered && !wasPowered;
        wasPowered = powered;
        if (returned && system.control() == Control.LEVELS_AND_RETURN_OF_POWER || volumeM3 <= tank.startVolumeM3()) {
            calling = true;
        }
        if (volumeM3 >= tank.stopVolumeM3()) {
            calling = false;
        }
    }

    private double powerM3PerS(double atS) {
        for (Outage outage : outages) {
            if (outage.covers(atS)) {
                return 0;
            }
        }
        return system.pump().flowM3PerS(atS);
    }

    private double nextChangeS() {
        double next = Math.min(system.pump().nextChangeS(timeS), system.draw().nextChangeS(timeS));
        for (Outage outage : outages) {
            next = outage.startS() > timeS ? Math.min(next, outage.startS()) : next;
            next = outage.endS() > timeS ? Math.min(next, outage.endS()) : next;
        }
        return next;
    }
}
