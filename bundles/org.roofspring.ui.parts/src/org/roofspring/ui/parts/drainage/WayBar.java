package org.roofspring.ui.parts.drainage;

import org.eclipse.jface.viewers.OwnerDrawLabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TreeItem;
import org.roofspring.ui.look.Palette;

/**
 * A bar as long as the part is used. The frame is its capacity; what goes beyond is drawn to the frame's end and past a
 * stroke that marks it. The number and the words beside it say the same.
 */
final class WayBar extends OwnerDrawLabelProvider {
    private static final int MARGIN = 4;
    private static final int HEIGHT = 10;
    /** Share of the cell that stands for the capacity; the rest is for what goes beyond it. */
    private static final double FRAME = 0.8;

    private final Palette palette;
    private final int column;

    WayBar(Palette palette, int column) {
        this.palette = palette;
        this.column = column;
    }

    @Override
    protected void measure(Event event, Object element) {
        // the row is as high as its text
    }

    @Override
    protected void paint(Event event, Object element) {
        WayLine line = (WayLine) element;
        if (line.utilisation().isEmpty() || !(event.item instanceof TreeItem item)) {
            return;
        }
        Rectangle cell = item.getBounds(column);
        int whole = cell.width - 2 * MARGIN;
        int frame = (int) (whole * FRAME);
        int x = cell.x + MARGIN;
        int y = cell.y + (cell.height - HEIGHT) / 2;
        double used = line.utilisation().getAsDouble();
        int length = used > 1 ? whole : (int) Math.round(frame * used);
        GC gc = event.gc;
        Color before = gc.getBackground();
        Color pen = gc.getForeground();
        gc.setBackground(tone(line));
        gc.fillRectangle(x, y, length, HEIGHT);
        gc.setForeground(palette.label());
        gc.drawRectangle(x, y, frame, HEIGHT - 1);
        if (used > 1) {
            gc.setLineWidth(2);
            gc.drawLine(x + frame, y - 2, x + frame, y + HEIGHT + 1);
            gc.setLineWidth(1);
        }
        gc.setBackground(before);
        gc.setForeground(pen);
    }

    private Color tone(WayLine line) {
        if (line.stale()) {
            return palette.line();
        }
        return line.overloaded() ? palette.danger() : line.nearlyFull() ? palette.warning() : palette.water();
    }

    @Override
    protected void erase(Event event, Object element) {
        event.detail &= ~SWT.FOREGROUND;
    }
}
