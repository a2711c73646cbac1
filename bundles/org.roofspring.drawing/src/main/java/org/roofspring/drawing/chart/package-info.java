/** Charts: what is plotted (series, axes) and the painter that turns it into shapes. */
package org.roofspring.drawing.chart;
