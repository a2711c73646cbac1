/** Readings against the balance, from the site to findings. */
package org.roofspring.calc.standard.readings;
