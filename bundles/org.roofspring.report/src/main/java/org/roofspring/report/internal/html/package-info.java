/** Writing a report as one HTML file. */
package org.roofspring.report.internal.html;
