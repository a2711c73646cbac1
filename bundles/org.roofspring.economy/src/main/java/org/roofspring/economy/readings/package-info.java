/**
 * Readings against the water balance: how much water goes where nobody reckoned with it, since when, and why most
 * likely. Day indices count from the first day of the series; a reading holds for the morning of its day.
 */
package org.roofspring.economy.readings;
