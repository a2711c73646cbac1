/** Colours, icons and lists that look alike in every part. */
package org.roofspring.ui.look;
