package org.roofspring.ui.parts.storage;

import org.eclipse.swt.graphics.Rectangle;

/** A scale of colours beside a map: an upright bar with marks and a title with its unit. */
final class Legend {
    private static final int GAP = 4;

    private Legend() {
    }

    /** @param bar where the colours stand; marks and title are drawn to its right */
    static void draw(Pen pen, Rectangle bar, Axis axis, Ramp ramp) {
        for (int y = 0; y < bar.height; y++) {
            pen.ink(ramp.at(1 - (double) y / Math.max(1, bar.height - 1)));
            pen.fill(new Rectangle(bar.x, bar.y + y, bar.width, 1));
        }
        pen.ink(pen.palette().label()).frame(bar);
        int right = bar.x + bar.width;
        int widest = 0;
        for (Axis.Tick tick : axis.ticks().apply(Math.max(1, bar.height / (3 * pen.height())))) {
            int y = axis.pixel(tick.at(), bar.y + bar.height, bar.y);
            pen.line(right, y, right + GAP, y);
            pen.text(tick.label(), right + GAP + 2,
                    Math.clamp(y - pen.height() / 2, bar.y, Math.max(bar.y, bar.y + bar.height - pen.height())));
            widest = Math.max(widest, pen.size(tick.label()).x);
        }
        pen.upwards(axis.title(), right + 2 * GAP + widest + 2, bar.y + bar.height / 2);
    }
}
