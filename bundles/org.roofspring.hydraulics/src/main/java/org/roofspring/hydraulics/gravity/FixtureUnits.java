package org.roofspring.hydraulics.gravity;

import java.util.LinkedHashMap;
import java.util.Map;

import org.roofspring.hydraulics.internal.LinearTable;
import org.roofspring.hydraulics.internal.Require;

/**
 * Design flow of pipes that many people use independently of each other, by water supply fixture units.
 *
 * <p>Code: the US National Standard Plumbing Code family, Table B.5.4, demand corresponding to fixture load, as read in
 * an online copy of an adopted code. Its rows between 14 and 120 units, which that copy did not show, are from memory;
 * verify against the code. Between rows by straight lines. Other code families differ by a fifth and more, so name this
 * one beside the result. It does not hold for school breaks, when taps are used together: count the taps in use there.
 */
public enum FixtureUnits {
    /** Closets with flush tanks, or none. */
    FLUSH_TANKS(new LinearTable(
            3, 3, 4, 4, 5, 4.5, 6, 5, 7, 6, 8, 7, 9, 7.5, 10, 8, 11, 8.5, 12, 9, 13, 10, 14, 10.5,
            20, 14, 25, 17, 30, 20, 40, 25, 50, 29, 60, 33, 80, 39, 100, 44,
            120, 49, 140, 53, 160, 57, 180, 61, 200, 65, 225, 70, 250, 75, 300, 85, 400, 105, 500, 125, 750, 170,
            1000, 210)),
    /** Closets with flush valves. */
    FLUSH_VALVES(new LinearTable(
            5, 22, 6, 23, 7, 24, 8, 25, 9, 26, 10, 27, 11, 28, 12, 29, 13, 29.5, 14, 30,
            20, 35, 25, 38, 30, 41, 40, 47, 50, 51, 60, 55, 80, 62, 100, 68,
            120, 74, 140, 78, 160, 83, 180, 87, 200, 91, 225, 95, 250, 100, 300, 110, 400, 125, 500, 140, 750, 175));

    /** The code, to name beside a result. */
    public static final String CODE = "US National Standard Plumbing Code family, Table B.5.4 (rows between 14 and 120"
            + " units from memory, verify against the code)";

    private static final double GPM_M3_PER_S = 3.785411784e-3 / 60;

    private final LinearTable gpm;

    FixtureUnits(LinearTable gpm) {
        this.gpm = gpm;
    }

    /** Fewest units of the table. */
    public double fewest() {
        return gpm.low();
    }

    /** Most units of the table. */
    public double most() {
        return gpm.high();
    }

    /**
     * Design flow [m3/s].
     *
     * @param units from {@link #fewest} to {@link #most}
     */
    public double flowM3PerS(double units) {
        return gpm.value(Require.within("fixture units", units, fewest(), most(), "")) * GPM_M3_PER_S;
    }

    /**
     * Design flow of each reach [m3/s] from the units of the outlets beyond it: by the table, but never more than all
     * those outlets together want, which is also what counts below the table.
     *
     * @param unitsByOutlet units by name of the outlet, above 0; outlets that are not named count as not there
     */
    public Map<String, Double> flows(GravityTree tree, Map<String, Double> unitsByOutlet) {
        Require.present("fixture units", unitsByOutlet);
        Map<String, Double> units = new LinkedHashMap<>();
        for (Outlet outlet : GravitySolver.outlets(tree, unitsByOutlet.keySet())) {
            double each = Require.within("fixture units of outlet \"" + outlet.id() + "\"",
                    unitsByOutlet.get(outlet.id()), 0.01, most(), "");
            tree.wayTo(outlet.node()).forEach(reach -> units.merge(reach.id(), each, Double::sum));
        }
        Map<String, Double> flows = GravitySolver.wantedFlows(tree, unitsByOutlet.keySet());
        flows.replaceAll((reach, wanted) -> units.get(reach) < fewest() ? wanted
                : Math.min(wanted, flowM3PerS(units.get(reach))));
        return flows;
    }
}
