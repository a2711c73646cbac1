/**
 * Money and upkeep of a rainwater system: discount factors and life-cycle cost, the order of stages, tasks that fall
 * due, and what readings say against the water balance. Records in, records out.
 *
 * <p>Money is in the currency of the site, and names of amounts end in {@code Cur}; prices of water in
 * {@code CurPerM3}. Spans of whole and part years end in {@code Years}, since interest is reckoned by the year. Other
 * values are in SI units, with volumes of readings in m3 and rates of loss in m3 per day ({@code M3PerDay}).
 */
package org.roofspring.economy;
