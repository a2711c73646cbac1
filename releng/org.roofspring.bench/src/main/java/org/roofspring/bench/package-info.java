/**
 * Benchmarks: each group first checks that the programs it compares agree, then measures them in turn, and ends with
 * lines {@code ratio NAME VALUE} and {@code figure NAME VALUE UNIT}.
 */
package org.roofspring.bench;
