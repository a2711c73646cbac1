package org.roofspring.hydraulics.gravity;

import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.internal.Require;

/**
 * A tap, shower or other outlet into the open air, at its node.
 *
 * @param id               its name, unlike that of any other outlet
 * @param node             node it is on
 * @param tap              head that it takes, wide open, as a function of flow; above nil at the wanted flow
 * @param wantedFlowM3PerS flow it should give [m3/s], 1e-9 to 1000
 */
public record Outlet(String id, String node, HeadLoss tap, double wantedFlowM3PerS) {
    public Outlet {
        Require.text("name of an outlet", id);
        Require.text("node of outlet \"" + id + "\"", node);
        Require.present("head loss of outlet \"" + id + "\"", tap);
        Require.within("wanted flow of outlet \"" + id + "\"", wantedFlowM3PerS, 1e-9, PipeRun.HIGHEST_FLOW_M3_PER_S,
                "m3/s");
        Require.within("head that outlet \"" + id + "\" takes at its wanted flow", tap.headM(wantedFlowM3PerS),
                1e-6, 1e6, "m");
    }

    /** Head over the outlet at which it gives the wanted flow [m]. */
    public double wantedHeadM() {
        return tap.headM(wantedFlowM3PerS);
    }
}
