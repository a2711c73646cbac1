/**
 * Finds every public entry of a kernel by reflection and calls it with numbers that should not be: not a number,
 * infinite, subnormal, enormous, negative. A new class of a kernel is covered without a new test.
 */
package org.roofspring.kernel.testkit;
