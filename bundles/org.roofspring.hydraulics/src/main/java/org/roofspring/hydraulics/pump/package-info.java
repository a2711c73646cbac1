/**
 * Pumps: curves fitted to measured points, speed, series and parallel, suction, and where a pump settles on a system.
 */
package org.roofspring.hydraulics.pump;
