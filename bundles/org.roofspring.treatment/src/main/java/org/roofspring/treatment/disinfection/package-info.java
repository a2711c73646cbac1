/**
 * Disinfection by chlorine, ultraviolet lamp, boiling and sun: dose arithmetic, contact-time and dose tables, times.
 *
 * <p>Credits are the conservative reading of a table (rounded to the row that asks for more); interpolated and formula
 * values stand beside them for comparison and never replace them.
 */
package org.roofspring.treatment.disinfection;
