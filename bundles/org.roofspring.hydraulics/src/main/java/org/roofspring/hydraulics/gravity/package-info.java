/**
 * Supply by gravity from an overhead tank through branches and filters to taps, solved together as a tree; how many use
 * it at once; and water by hand when nothing else runs.
 */
package org.roofspring.hydraulics.gravity;
