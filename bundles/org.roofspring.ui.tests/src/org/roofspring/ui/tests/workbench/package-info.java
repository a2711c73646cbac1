/** Tests of the workbench in a real window. */
package org.roofspring.ui.tests.workbench;
