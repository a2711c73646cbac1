/** Builds the report of a site from its elements and its results. */
package org.roofspring.report.internal.build;
