/**
 * Days of work as an iCalendar file (RFC 5545), which phones and calendars read. The library behind it stays inside.
 */
package org.roofspring.icalendar;
