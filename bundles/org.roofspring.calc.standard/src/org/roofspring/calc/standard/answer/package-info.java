/**
 * Kernel results put into words: findings, the workings behind them, and cautions. Used by the built-in calculations
 * and by the commands that answer without a site, so that both say the same.
 */
package org.roofspring.calc.standard.answer;
