/**
 * Life-cycle cost: what a supply of water costs over the years, today's worth of it, each year, for each m3 and each
 * person; which of several is cheaper on the same demand, from which year, and what would turn that answer round.
 *
 * <p>Costs fall due at a time in years after building, and each is brought back by (1 + r)^-t. All results are in money
 * of the base year: where prices are nominal, the inflation is taken out of the rate first, so real and nominal
 * reckoning of the same case agree.
 */
package org.roofspring.economy.lifecycle;
