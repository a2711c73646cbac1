/** Tests of edits, names, forms and checks. */
package org.roofspring.ui.tests.edit;
