/**
 * The treatment train: steps from tank to use, what each is credited with, under which conditions, and what it asks
 * for in head, flow and work.
 *
 * <p>A credit is the low end of an editable range, or what a dose or contact-time table gives, at most the range's high
 * end. A step whose condition fails earns nothing. Of two steps with the same mechanism only the larger counts. A step
 * that is out for a share o of the time is credited with -log10((1 - o) 10^-L + o).
 */
package org.roofspring.treatment.train;
