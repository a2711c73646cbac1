/**
 * Contract tests for calculations. A plug-in's author extends
 * {@link org.roofspring.calc.testkit.CalculationContractTest} with two short methods and gets every rule of the SPI
 * tested.
 */
package org.roofspring.calc.testkit;
