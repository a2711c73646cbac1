/** Reading the font that comes along. */
package org.roofspring.drawing.internal;
