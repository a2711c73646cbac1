package org.roofspring.hydraulics.gravity;

import java.util.List;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * The way between two nodes: pipes one after another, and filters or other devices in them.
 *
 * @param id            its name, unlike that of any other reach
 * @param from          node at one end
 * @param to            node at the other end
 * @param pipes         in turn; may be none where only devices are meant
 * @param cleanDevices  head that the devices take when clean
 * @param fouledDevices and when they are due for cleaning or change
 */
public record Reach(String id, String from, String to, List<AgeingRun> pipes, HeadLoss cleanDevices,
        HeadLoss fouledDevices) {
    public Reach {
        Require.text("name of a reach", id);
        Require.text("first node of reach \"" + id + "\"", from);
        Require.text("second node of reach \"" + id + "\"", to);
        pipes = Require.list("pipes of reach \"" + id + "\"", pipes);
        Require.present("head loss of clean devices", cleanDevices);
        Require.present("head loss of fouled devices", fouledDevices);
    }

    /** A reach of one pipe that does not age, without devices. */
    public static Reach of(String id, String from, String to, PipeRun pipe) {
        return new Reach(id, from, to, List.of(AgeingRun.lasting(pipe)), HeadLoss.none(), HeadLoss.none());
    }

    /** The pipes as they are new or worn. */
    public List<PipeRun> pipes(boolean worn) {
        return pipes.stream().map(pipe -> pipe.run(worn)).toList();
    }

    /** The devices as they are clean or fouled. */
    public HeadLoss devices(boolean worn) {
        return worn ? fouledDevices : cleanDevices;
    }

    /** Head that pipes and devices take together. */
    public HeadLoss carrying(WaterProperties water, boolean worn) {
        HeadLoss all = devices(worn);
        for (PipeRun pipe : pipes(worn)) {
            all = all.then(pipe.carrying(water));
        }
        return all;
    }
}
