/** What taps get: by gravity from a tank, from a pressure vessel, and in the breaks of a school. */
package org.roofspring.calc.standard.supply;
