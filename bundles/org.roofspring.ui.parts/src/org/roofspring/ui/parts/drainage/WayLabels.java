package org.roofspring.ui.parts.drainage;

import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;

/** The cells of one column of text. */
final class WayLabels extends ColumnLabelProvider {
    static final int PART = 0;
    static final int ARRIVES = 1;
    static final int CARRIES = 2;
    static final int USED = 3;
    static final int WORDS = 4;

    private final int column;
    private final Palette palette;

    WayLabels(int column, Palette palette) {
        this.column = column;
        this.palette = palette;
    }

    @Override
    public String getText(Object element) {
        WayLine line = (WayLine) element;
        return switch (column) {
            case PART -> line.name();
            case ARRIVES -> line.arrives();
            case CARRIES -> line.carries();
            case USED -> line.used();
            default -> line.stale() && !line.words().isEmpty() ? line.words() + " (out of date)" : line.words();
        };
    }

    @Override
    public Image getImage(Object element) {
        return column == PART ? Icons.of(((WayLine) element).type()) : null;
    }

    @Override
    public Color getForeground(Object element) {
        WayLine line = (WayLine) element;
        if (line.stale()) {
            return palette.stale();
        }
        if (column < USED) {
            return null;
        }
        return line.overloaded() ? palette.danger() : line.nearlyFull() ? palette.warning() : null;
    }

    @Override
    public String getToolTipText(Object element) {
        String text = getText(element);
        return text.isEmpty() ? null : text;
    }
}
