/**
 * What a calculation plug-in is written against, ours and a third party's alike.
 *
 * <p>A plug-in is one class: it implements {@link org.roofspring.calc.Calculation}, carries
 * {@link org.roofspring.calc.CalculationInfo}, and is a declarative service. It reads an immutable
 * {@link org.roofspring.site.snapshot.SiteSnapshot} and returns an {@link org.roofspring.calc.Outcome}: findings,
 * the workings behind them, and cautions. It has no threads, no clock, no screen and no state.
 */
package org.roofspring.calc;
