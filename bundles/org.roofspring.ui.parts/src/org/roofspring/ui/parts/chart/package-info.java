/** The volume of water in the tanks over the whole record. */
package org.roofspring.ui.parts.chart;
