/** Frozen copies of a site, for calculations on other threads, and fingerprints of what was read. */
package org.roofspring.site.snapshot;
