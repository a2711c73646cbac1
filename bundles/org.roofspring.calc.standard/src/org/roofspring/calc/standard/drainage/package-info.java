/**
 * The way of the rain from roof to tank, read out of a site and put to the drainage kernel: design storm, roofs, gutters
 * with outlets and downpipes, screens, diverters, and the tank's overflow and vent.
 */
package org.roofspring.calc.standard.drainage;
