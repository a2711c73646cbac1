/** The outline: all elements of the site in the order of the water's way. */
package org.roofspring.ui.parts.outline;
