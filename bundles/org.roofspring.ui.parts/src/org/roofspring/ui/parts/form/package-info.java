/** The editor of a site: a form for the selected element, built from the model. */
package org.roofspring.ui.parts.form;
