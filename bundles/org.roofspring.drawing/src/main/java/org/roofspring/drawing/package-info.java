/**
 * Drawings without a display: a small document of shapes in points, text measured with a font that comes along, and
 * the same shapes written as SVG. Whoever can draw a rectangle, a path and a text can replay them elsewhere.
 */
package org.roofspring.drawing;
