package org.roofspring.hydraulics.gravity;

import org.roofspring.hydraulics.internal.Require;

/**
 * A place where pipes begin, branch or end.
 *
 * @param id         its name, unlike that of any other node
 * @param elevationM [m] above any one datum, -1000 to 10 000
 */
public record Node(String id, double elevationM) {
    public Node {
        Require.text("name of a node", id);
        Require.within("elevation of node \"" + id + "\"", elevationM, -1000, 10_000, "m");
    }
}
