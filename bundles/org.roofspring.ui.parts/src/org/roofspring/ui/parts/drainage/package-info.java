/** The way of the rain from each roof to its tank, with how far every part of it is used in the design storm. */
package org.roofspring.ui.parts.drainage;
