/**
 * The way of the rain from roof to tank, read out of a site and put to the drainage kernel: design storm, roofs,
 * gutters with outlets and downpipes, screens, diverters, the tank's overflow and vent, and the ground it stands on.
 */
package org.roofspring.calc.standard.drainage;
