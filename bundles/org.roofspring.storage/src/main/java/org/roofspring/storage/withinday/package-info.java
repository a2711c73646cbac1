/**
 * The overhead tank and its pump within the day, from event to event: a pump that switches between two levels, peaks
 * of minutes, hours of power or sun, and outages.
 *
 * <p>Draw and pump flow are constant between the moments at which they change, so the volume is a chain of straight
 * lines. A run goes from one event to the next (draw or power changes, a level is reached), each computed exactly;
 * there is no time step that a short peak could fall through.
 *
 * <p>Times are seconds from midnight of the first day. A stretch holds from its beginning up to, not including, its
 * end. Water below the outlet can never be drawn. The pump is taken to find water: whether the tank below has any is
 * for the daily balance ({@link org.roofspring.storage.system}).
 */
package org.roofspring.storage.withinday;
