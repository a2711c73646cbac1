/**
 * The design report: a document model, built from a site and its results, and its writers: HTML, PDF and CSV. Needs no
 * display; the same site, results and date always give the same bytes.
 */
package org.roofspring.report;
