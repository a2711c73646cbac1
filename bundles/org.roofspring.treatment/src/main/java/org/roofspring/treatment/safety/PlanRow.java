package org.roofspring.treatment.safety;

import org.roofspring.treatment.internal.Checks;

/**
 * A line of the water safety plan.
 *
 * @param hazard  what can go wrong
 * @param control what keeps it from doing so
 * @param limit   what must hold
 * @param check   how and how often it is looked at
 * @param action  when the limit is broken
 * @param who     does the check and the action
 */
public record PlanRow(String hazard, String control, String limit, String check, String action, String who) {
    public PlanRow {
        Checks.text("hazard", hazard);
        Checks.text("control", control);
        Checks.text("limit", limit);
        Checks.text("check", check);
        Checks.text("action", action);
        Checks.text("who", who);
    }
}
