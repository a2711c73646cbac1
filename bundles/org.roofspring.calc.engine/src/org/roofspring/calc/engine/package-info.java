/**
 * Runs calculations: which there are, in which order, on which snapshot, and what came out.
 *
 * <p>{@link org.roofspring.calc.engine.CalculationRegistry} lists them, {@link org.roofspring.calc.engine.CalculationGraph}
 * orders them, {@link org.roofspring.calc.engine.CalculationRunner} runs them over one snapshot, and
 * {@link org.roofspring.calc.engine.LiveSite} keeps the findings of an open site up to date.
 */
package org.roofspring.calc.engine;
