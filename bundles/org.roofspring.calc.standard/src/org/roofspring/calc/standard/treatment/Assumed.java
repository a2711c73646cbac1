package org.roofspring.calc.standard.treatment;

import org.roofspring.treatment.Source;

/**
 * Something that was taken for want of a value in the site.
 *
 * @param where   the part, by name
 * @param what    the value that is missing, in words
 * @param takenAs what stands for it, with its unit
 * @param source  why
 */
record Assumed(String where, String what, String takenAs, Source source) {
}
