package org.roofspring.ui.parts.findings;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Image;
import org.roofspring.ui.look.FindingWords;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;

/** The cells of one column of the findings. */
final class FindingLabels extends ColumnLabelProvider {
    static final int TITLE = 0;
    static final int VALUE = 1;
    private final int column;
    private final Palette palette;

    FindingLabels(int column, Palette palette) {
        this.column = column;
        this.palette = palette;
    }

    @Override
    public String getText(Object element) {
        FindingLine line = (FindingLine) element;
        return switch (column) {
            case TITLE -> line.title();
            default -> line.finding() == null ? line.state() : FindingWords.brief(line.value());
        };
    }

    @Override
    public Image getImage(Object element) {
        FindingLine line = (FindingLine) element;
        if (column != TITLE || line.finding() != null) {
            return null;
        }
        return Icons.image(line.state().isEmpty() ? "part" : "calculation");
    }

    @Override
    public Color getForeground(Object element) {
        FindingLine line = (FindingLine) element;
        return line.stale() ? palette.stale() : column == VALUE && line.finding() == null ? palette.muted() : null;
    }

    @Override
    public Font getFont(Object element) {
        FindingLine line = (FindingLine) element;
        return column == TITLE && line.finding() == null && !line.state().isEmpty() ? JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT) : null;
    }

    @Override
    public String getToolTipText(Object element) {
        FindingLine line = (FindingLine) element;
        String text = column == TITLE || line.finding() == null ? getText(element) : line.value();
        return text.isEmpty() ? null : text;
    }
}
