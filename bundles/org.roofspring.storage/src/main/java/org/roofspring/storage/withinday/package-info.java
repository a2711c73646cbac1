/**
 * The overhead tank and its pump within the day, from event to event: a pump that switches between two levels, peaks
 * of minutes, hours of power or sun, and outages.
 */
package org.roofspring.storage.withinday;
