/** Tests of the chart's arithmetic. */
package org.roofspring.ui.tests.chart;
