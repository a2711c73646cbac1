/**
 * Reads a site as a treatment engineer does: which way the water takes to each use, what each step is in the terms of
 * the treatment kernel, what the roofs, tanks and surroundings bring into it, what tests and inspections say, and what
 * may be concluded for each use.
 */
package org.roofspring.calc.standard.treatment;
