/**
 * Design rainfall: from a site's annual maxima, by extreme-value laws and ratios between durations, or from an entered
 * intensity-duration relation.
 */
package org.roofspring.drainage.intensity;
