/** Recurring work, from the site to findings. */
package org.roofspring.calc.standard.upkeep;
