/**
 * Editing a site without a screen: commands that can be undone, names in plain words for classes and features, the
 * order in which elements and fields are shown, and checks that speak in sentences.
 */
package org.roofspring.site.edit;
