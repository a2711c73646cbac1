package org.roofspring.ui.parts.storage;

import java.util.List;

import org.eclipse.swt.graphics.Rectangle;

/** The axes around a plot: their marks, labels, titles with units, and the room they leave. */
final class PlotFrame {
    private static final int ROOM_FOR_LABEL = 70;
    private static final int GAP = 4;

    private final Axis across;
    private final Axis up;
    private final Rectangle inner;

    private PlotFrame(Axis across, Axis up, Rectangle inner) {
        this.across = across;
        this.up = up;
        this.inner = inner;
    }

    /** Width that the labels and the title of an upright axis take. */
    static int leftOf(Pen pen, Axis up, int height) {
        int widest = up.ticks().apply(room(pen, height)).stream().mapToInt(tick -> pen.size(tick.label()).x).max()
                .orElse(0);
        return pen.height() + widest + 3 * GAP;
    }

    /** Height that the labels and the title of a level axis take. */
    static int below(Pen pen) {
        return 2 * pen.height() + 2 * GAP;
    }

    private static int room(Pen pen, int height) {
        return Math.max(1, height / (2 * pen.height()));
    }

    /**
     * Draws both axes.
     *
     * @param inner what is left for the plot
     * @param named whether the level axis has labels and a title
     */
    static PlotFrame draw(Pen pen, Rectangle inner, Axis across, Axis up, boolean grid, boolean named) {
        PlotFrame frame = new PlotFrame(across, up, inner);
        int bottom = inner.y + inner.height;
        int right = inner.x + inner.width;
        List<Axis.Tick> rising = up.ticks().apply(room(pen, inner.height));
        for (Axis.Tick tick : rising) {
            int y = frame.y(tick.at());
            if (grid) {
                pen.ink(pen.palette().line()).line(inner.x, y, right, y);
            }
            pen.ink(pen.palette().label());
            pen.line(inner.x - GAP, y, inner.x, y);
            pen.right(tick.label(), inner.x - GAP - 2, y - pen.height() / 2);
        }
        int widest = rising.stream().mapToInt(tick -> pen.size(tick.label()).x).max().orElse(0);
        pen.upwards(up.title(), inner.x - 2 * GAP - 2 - widest - pen.height(), inner.y + inner.height / 2);
        for (Axis.Tick tick : across.ticks().apply(Math.max(1, inner.width / ROOM_FOR_LABEL))) {
            int x = frame.x(tick.at());
            if (grid) {
                pen.ink(pen.palette().line()).line(x, inner.y, x, bottom);
            }
            pen.ink(pen.palette().label());
            if (named) {
                pen.line(x, bottom, x, bottom + GAP);
                pen.centred(tick.label(), x, bottom + GAP, 0, right + ROOM_FOR_LABEL / 2);
            }
        }
        pen.ink(pen.palette().label());
        if (named) {
            pen.centred(across.title(), inner.x + inner.width / 2, bottom + GAP + pen.height(), 0, right);
        }
        pen.line(inner.x, bottom, right, bottom);
        pen.line(inner.x, inner.y, inner.x, bottom);
        return frame;
    }

    Rectangle inner() {
        return inner;
    }

    int x(double value) {
        return across.pixel(value, inner.x, inner.x + inner.width);
    }

    int y(double value) {
        return up.pixel(value, inner.y + inner.height, inner.y);
    }
}
