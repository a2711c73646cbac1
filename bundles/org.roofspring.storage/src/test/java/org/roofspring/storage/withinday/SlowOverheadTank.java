package org.roofspring.storage.withinday;

import java.util.ArrayList;
import java.util.List;

/** The overhead tank in fine even steps, written without looking at the event-driven one. */
final class SlowOverheadTank {

    final double stepS;
    double volumeM3;
    double suppliedM3;
    double pumpedM3;
    double askedM3;
    double drySteps;
    double pumpSteps;
    final List<Double> startsS = new ArrayList<>();

    private SlowOverheadTank(double stepS, double volumeM3) {
        this.stepS = stepS;
        this.volumeM3 = volumeM3;
    }

    static SlowOverheadTank run(OverheadSystem system, double fromS, double volumeM3, boolean filling, double durationS,
            double stepS, List<Outage> outages) {
        SlowOverheadTank slow = new SlowOverheadTank(stepS, volumeM3);
        OverheadTank tank = system.tank();
        boolean on = filling;
        boolean pumpedBefore = false;
        boolean powerBefore = true;
        long steps = Math.round(durationS / stepS);
        for (long step = 0; step < steps; step++) {
            double time = fromS + (step + 0.5) * stepS;
            double lift = system.pump().flowM3PerS(time);
            for (Outage outage : outages) {
                lift = time > outage.startS() && time < outage.startS() + outage.durationS() ? 0 : lift;
            }
            if (lift > 0 && !powerBefore && system.control() == OverheadSystem.Control.LEVELS_AND_RETURN_OF_POWER) {
                on = true;
            }
            powerBefore = lift > 0;
            if (slow.volumeM3 <= tank.startVolumeM3()) {
                on = true;
            }
            if (slow.volumeM3 >= tank.stopVolumeM3()) {
                on = false;
            }
            double in = on ? lift * stepS : 0;
            double wanted = system.draw().flowM3PerS(time) * stepS;
            double out = Math.max(0, Math.min(wanted, slow.volumeM3 + in - tank.deadVolumeM3()));
            slow.volumeM3 += in - out;
            slow.askedM3 += wanted;
            slow.suppliedM3 += out;
            slow.pumpedM3 += in;
            slow.drySteps += out < wanted * (1 - 1e-9) ? 1 : 0;
            slow.pumpSteps += in > 0 ? 1 : 0;
            if (in > 0 && !pumpedBefore) {
                slow.startsS.add(fromS + step * stepS);
            }
            pumpedBefore = in > 0;
        }
        return slow;
    }
}
