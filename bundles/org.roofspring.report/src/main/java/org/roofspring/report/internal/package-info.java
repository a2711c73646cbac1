/** Shared by the writers of reports. */
package org.roofspring.report.internal;
