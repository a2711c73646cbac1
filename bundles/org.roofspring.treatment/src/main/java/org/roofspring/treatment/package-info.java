/**
 * Treatment of roof water: what a train of steps removes, what it needs, where it fails, and what may be said of the
 * water that leaves it. Records in, records out.
 *
 * <p>Beside the SI units (m, m2, m3, s, kg, Pa) the names of values use the units that the tables of the trade are
 * written in: {@code MgPerL} for concentrations [mg/L], {@code MgMinPerL} for contact time of a disinfectant
 * [mg.min/L], {@code MjPerCm2} for ultraviolet dose [mJ/cm2], {@code Ntu} for turbidity [NTU]. These are also the base
 * units of the quantity catalogue. Log reductions are powers of ten: 3 log leaves one organism in a thousand.
 *
 * <p>No result of this package says that water is safe. It says what the given assumptions lead to, from which source,
 * and what has to be tested, and it defers to the local health authority.
 */
package org.roofspring.treatment;
