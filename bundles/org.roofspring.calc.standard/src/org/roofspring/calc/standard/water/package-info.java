/**
 * The site model turned into kernel records: roofs into inflow, uses into demand, tanks into a chain of stages, runs
 * of pipe into head losses. Shared by the built-in calculations.
 */
package org.roofspring.calc.standard.water;
