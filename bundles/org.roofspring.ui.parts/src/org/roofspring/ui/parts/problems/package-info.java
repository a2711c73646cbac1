/** What stands in the way of an answer: values to mend, calculations without an answer, plug-ins that failed. */
package org.roofspring.ui.parts.problems;
