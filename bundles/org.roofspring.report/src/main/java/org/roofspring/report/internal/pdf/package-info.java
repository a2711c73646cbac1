/**
 * Setting a report on pages. Blocks become strips (pieces that stay together), strips are put on pages, pages are
 * painted.
 */
package org.roofspring.report.internal.pdf;
