/** Helpers of the workbench tests. */
package org.roofspring.ui.tests;
