package org.roofspring.ui.parts.storage;

import org.roofspring.ui.session.FindingKey;

/**
 * What stands at one place of a plot.
 *
 * @param words   value by value, with units
 * @param finding whose workings explain it
 */
public record Reading(String words, FindingKey finding) {
}
