/**
 * Pumps: curves fitted to measured points, speed, series and parallel, suction, where a pump settles on a system, how
 * it is run, and direct supply through a pressure vessel.
 */
package org.roofspring.hydraulics.pump;
