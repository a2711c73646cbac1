/**
 * Water in pipes: properties of water and air, friction, fittings and the head lost in a run.
 *
 * <p>Plain functions and immutable records over SI doubles, the unit in the name. Pumps are in
 * {@code org.roofspring.hydraulics.pump}, overhead tanks and taps in {@code org.roofspring.hydraulics.gravity}.
 */
package org.roofspring.hydraulics;
