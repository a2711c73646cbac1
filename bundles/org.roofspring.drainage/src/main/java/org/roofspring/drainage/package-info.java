/**
 * The way in, from roof to tank: what the roof sheds in a storm, and what gutters, outlets, downpipes, first-flush
 * diverters, screens and overflows can carry. Records in, records out; SI doubles whose unit is in the name.
 *
 * <p>Gutters are judged twice, by the empirical formula of a standard and by the free-surface flow solved along the
 * gutter; {@link org.roofspring.drainage.GutterCapacity} always returns both.
 */
package org.roofspring.drainage;
