/**
 * Tank storage: the daily balance of a rainwater tank, sizing, reliability surfaces and the outlook from today's level.
 * Records and {@code double[]} series in, records out; rain is a {@code double[]} of mm a day without gaps.
 *
 * <h2>Decision: volumes are whole microlitres</h2>
 *
 * <p><b>Question.</b> Whether a day is met is the comparison Y &ge; D. A tank that holds exactly 25 days of 8 L must
 * count 25 full days; in binary floating point 8 L is not exact, and the last day is won or lost by rounding noise.
 *
 * <p><b>Decision.</b> Every volume (inflow, demand, capacity, level) is converted once, with rounding to nearest, to
 * whole microlitres (1 &micro;L = 1 mm&sup3; = 1e-9 m&sup3;) and the balance runs in {@code long} arithmetic. Sums,
 * comparisons and splits are then exact: mass closes with no tolerance, and splitting a record and carrying the level
 * gives the same answer as running it whole. Where a flow is proportional (evaporation, leakage, the general yield
 * weighting) the product is rounded once to a whole microlitre, and that same number is taken from one side and given
 * to the other, so mass still closes exactly.
 *
 * <p><b>Resolution and range.</b> One single volume: 0 to 2,000,000 m&sup3;, so that a level written as a double in
 * m&sup3; and read back is the same whole number (2e15 is below 2^51). A total over a record: up to 4e9 m&sup3;, so
 * that the sum of two totals still fits a {@code long}; the totals of inflow and of demand are checked before a run
 * starts, and every other total is bounded by them. Outside these ranges the input is refused with one sentence. A
 * day's inflow is wrong by at most 0.5 &micro;L, far below any gauge.
 *
 * <p><b>Consequence.</b> An inflow below half a microlitre a day is no inflow.
 */
package org.roofspring.storage;
