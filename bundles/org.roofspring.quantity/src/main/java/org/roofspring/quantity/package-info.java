/**
 * Dimensions, the unit catalogue, and {@link org.roofspring.quantity.Quantity}: a number with its unit, read and
 * written as text.
 *
 * <p>Kernels compute with plain SI doubles whose unit is in the name; a {@code Quantity} stands at the edges: site
 * files, findings, screens, reports and the command line.
 */
package org.roofspring.quantity;
