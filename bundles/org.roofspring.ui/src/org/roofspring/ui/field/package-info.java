/**
 * Fields for the features of a site. A field understands any unit of its dimension and shows the preferred one; what
 * cannot be taken over stays in the field as typed, with a sentence that says what is wrong.
 */
package org.roofspring.ui.field;
