package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * A point of the profile of a run.
 *
 * @param distanceM  from the start, along the pipe [m], 0 to 1e6
 * @param elevationM of the pipe [m], -1000 to 10 000
 */
public record ProfilePoint(double distanceM, double elevationM) {
    public ProfilePoint {
        Require.within("distance along the run", distanceM, 0, 1e6, "m");
        Require.within("elevation of the pipe", elevationM, -1000, 10_000, "m");
    }
}
