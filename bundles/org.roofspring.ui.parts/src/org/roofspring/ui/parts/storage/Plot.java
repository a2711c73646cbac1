package org.roofspring.ui.parts.storage;

import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/**
 * A picture of findings, made of places in columns and rows that can be read one by one. It holds what it shows and,
 * once painted, where.
 */
public abstract class Plot {

    /** What is shown, for those who cannot see it. */
    public abstract String title();

    abstract void paint(Pen pen, Rectangle area);

    /** How many places there are from left to right. */
    public abstract int columns();

    /** How many places there are from top to bottom. */
    public abstract int rows();

    /** What stands at a place; empty where there is nothing. */
    public abstract Optional<Reading> reading(int column, int row);

    /** The place, as column and row, at a point of the last painting; null where there is none. */
    abstract Point placeAt(int x, int y);

    /** Where a place was painted last. */
    abstract Rectangle bounds(int column, int row);
}
