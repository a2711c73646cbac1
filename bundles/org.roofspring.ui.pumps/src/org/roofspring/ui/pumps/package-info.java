/**
 * The pump review board: every candidate for a pump beside each other, their curves on the system's band, and what
 * reviewers say. Nothing is computed here; all values come from the findings of the pump review.
 */
package org.roofspring.ui.pumps;
