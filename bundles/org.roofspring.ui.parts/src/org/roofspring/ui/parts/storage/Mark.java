package org.roofspring.ui.parts.storage;

import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;

/**
 * A point that stands out in a plot.
 *
 * @param x       value across
 * @param y       value upwards
 * @param label   short name; empty where words stand elsewhere
 * @param shape   how it is drawn
 * @param reading its words and finding
 */
record Mark(double x, double y, String label, Shape shape, Reading reading) {
    private static final int SIZE = 5;
    private static final RGB WHITE = new RGB(255, 255, 255);

    /** Shapes that are told apart without their colour. */
    enum Shape {
        DISC, RING, SQUARE, TRIANGLE
    }

    /** Where it lies when its middle is at a point. */
    static Rectangle bounds(int x, int y) {
        return new Rectangle(x - SIZE, y - SIZE, 2 * SIZE, 2 * SIZE);
    }

    /** Draws the shape with a white rim, so that it is seen on any ground. */
    void draw(Pen pen, RGB ink, int atX, int atY) {
        int[] triangle = { atX, atY - SIZE, atX + SIZE, atY + SIZE - 1, atX - SIZE, atY + SIZE - 1 };
        int[] square = { atX, atY - SIZE - 1, atX + SIZE + 1, atY, atX, atY + SIZE + 1, atX - SIZE - 1, atY };
        switch (shape) {
            case DISC -> {
                pen.ink(WHITE).gc().fillOval(atX - SIZE - 1, atY - SIZE - 1, 2 * SIZE + 2, 2 * SIZE + 2);
                pen.ink(ink).gc().fillOval(atX - SIZE, atY - SIZE, 2 * SIZE, 2 * SIZE);
            }
            case RING -> {
                pen.ink(WHITE).gc().fillOval(atX - SIZE, atY - SIZE, 2 * SIZE, 2 * SIZE);
                pen.ink(ink).gc().setLineWidth(2);
                pen.gc().drawOval(atX - SIZE, atY - SIZE, 2 * SIZE, 2 * SIZE);
                pen.gc().setLineWidth(1);
            }
            case SQUARE -> {
                pen.ink(ink).fill(square);
                pen.ink(WHITE).gc().drawPolygon(square);
            }
            case TRIANGLE -> {
                pen.ink(ink).fill(triangle);
                pen.ink(WHITE).gc().drawPolygon(triangle);
            }
        }
    }
}
