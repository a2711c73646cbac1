/** What there is to say about a pump of the site beyond its duty point: suction, surge, running, and comparison. */
package org.roofspring.calc.standard.pumping;
