package org.roofspring.ui.pumps;

import org.eclipse.jface.resource.FontRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.AbstractRegistryConfiguration;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.filterrow.FilterIconPainter;
import org.eclipse.nebula.widgets.nattable.filterrow.FilterRowPainter;
import org.eclipse.nebula.widgets.nattable.filterrow.config.DefaultFilterRowConfiguration;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeConfigAttributes;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.painter.cell.ICellPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.TextPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.decorator.LineBorderDecorator;
import org.eclipse.nebula.widgets.nattable.painter.cell.decorator.PaddingDecorator;
import org.eclipse.nebula.widgets.nattable.selection.config.DefaultSelectionStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.sort.config.SingleClickSortConfiguration;
import org.eclipse.nebula.widgets.nattable.sort.painter.SortableHeaderTextPainter;
import org.eclipse.nebula.widgets.nattable.style.BorderStyle;
import org.eclipse.nebula.widgets.nattable.style.BorderStyle.LineStyleEnum;
import org.eclipse.nebula.widgets.nattable.style.CellStyleAttributes;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.style.HorizontalAlignmentEnum;
import org.eclipse.nebula.widgets.nattable.style.SelectionStyleLabels;
import org.eclipse.nebula.widgets.nattable.style.Style;
import org.eclipse.nebula.widgets.nattable.style.VerticalAlignmentEnum;
import org.eclipse.nebula.widgets.nattable.util.GUIHelper;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.RGB;
import org.roofspring.ui.look.Palette;

/** How the grid looks, in the fonts and colours of the workbench. */
final class GridLook extends AbstractRegistryConfiguration {
    /** Labels of cells. */
    static final String NUMBER = "number";
    static final String STALE = "stale";
    static final String GOOD = "good";
    static final String CONDITIONAL = "conditional";
    static final String BAD = "bad";
    private static final float SELECTION_TINT = 0.82f;
    private static final int PADDING = 6;

    private final NatTable table;
    private final Palette palette;
    private final FontRegistry fonts = JFaceResources.getFontRegistry();
    private final Color paper;
    private final Color selected;

    GridLook(NatTable table) {
        this.table = table;
        palette = Palette.of(table);
        paper = table.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND);
        selected = new Color(blended(palette.water().getRGB(), paper.getRGB()));
    }

    private static RGB blended(RGB ink, RGB ground) {
        return new RGB(mix(ink.red, ground.red), mix(ink.green, ground.green), mix(ink.blue, ground.blue));
    }

    private static int mix(int ink, int ground) {
        return Math.round(ink + (ground - ink) * SELECTION_TINT);
    }

    @Override
    public void configureRegistry(IConfigRegistry registry) {
        registry.registerConfigAttribute(CellConfigAttributes.GRID_LINE_COLOR, palette.line());
        registry.registerConfigAttribute(FreezeConfigAttributes.SEPARATOR_COLOR, palette.stale());
        registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, padded(new TextPainter(false, true)));
        Style plain = style(null, paper, table.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND), table.getFont());
        plain.setAttributeValue(CellStyleAttributes.HORIZONTAL_ALIGNMENT, HorizontalAlignmentEnum.LEFT);
        plain.setAttributeValue(CellStyleAttributes.VERTICAL_ALIGNMENT, VerticalAlignmentEnum.MIDDLE);
        put(registry, plain, DisplayMode.NORMAL, null);
        put(registry, style(HorizontalAlignmentEnum.RIGHT, null, null, null), DisplayMode.NORMAL, NUMBER);
        Font italic = fonts.getItalic(JFaceResources.DEFAULT_FONT);
        put(registry, style(null, null, palette.stale(), italic), DisplayMode.NORMAL, STALE);
        put(registry, style(null, null, palette.good(), null), DisplayMode.NORMAL, GOOD);
        put(registry, style(null, null, palette.warning(), null), DisplayMode.NORMAL, CONDITIONAL);
        put(registry, style(null, null, palette.danger(), null), DisplayMode.NORMAL, BAD);
        selection(registry);
        header(registry);
    }

    private void header(IConfigRegistry registry) {
        Color ground = table.getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND);
        Style style = style(null, ground, palette.label(), table.getFont());
        for (DisplayMode mode : new DisplayMode[] {DisplayMode.NORMAL, DisplayMode.SELECT}) {
            put(registry, style, mode, GridRegion.COLUMN_HEADER);
        }
        put(registry, style(null, paper, palette.label(), table.getFont()), DisplayMode.NORMAL, GridRegion.FILTER_ROW);
    }

    /** What is selected keeps the colours of its words. */
    private void selection(IConfigRegistry registry) {
        DefaultSelectionStyleConfiguration none = new DefaultSelectionStyleConfiguration();
        none.selectionFont = null;
        none.selectionFgColor = null;
        none.selectionBgColor = selected;
        none.anchorBgColor = selected;
        none.anchorFgColor = null;
        none.anchorBorderStyle = null;
        none.configureRegistry(registry);
        Style anchor = style(null, selected, null, null);
        anchor.setAttributeValue(CellStyleAttributes.BORDER_STYLE, new BorderStyle(1, palette.water(),
                LineStyleEnum.SOLID));
        put(registry, anchor, DisplayMode.SELECT, SelectionStyleLabels.SELECTION_ANCHOR_STYLE);
    }

    /** A single click on a heading sorts; the arrow tells which way. */
    static SingleClickSortConfiguration sorting() {
        return new SingleClickSortConfiguration(new PaddingDecorator(
                new SortableHeaderTextPainter(new TextPainter(false, true), true, false), 2, PADDING, 2, PADDING));
    }

    /** A funnel marks where a condition can be typed, a cross takes one away. */
    static DefaultFilterRowConfiguration filtering() {
        DefaultFilterRowConfiguration filtering = new DefaultFilterRowConfiguration();
        filtering.cellPainter = new FilterRowPainter(new FilterIconPainter(GUIHelper.getImage("filter")));
        return filtering;
    }

    private static ICellPainter padded(ICellPainter painter) {
        return new LineBorderDecorator(new PaddingDecorator(painter, 0, PADDING, 0, PADDING));
    }

    private static void put(IConfigRegistry registry, Style style, DisplayMode mode, String label) {
        if (label == null) {
            registry.registerConfigAttribute(CellConfigAttributes.CELL_STYLE, style, mode);
        } else {
            registry.registerConfigAttribute(CellConfigAttributes.CELL_STYLE, style, mode, label);
        }
    }

    private static Style style(HorizontalAlignmentEnum align, Color ground, Color ink, Font font) {
        Style style = new Style();
        if (align != null) {
            style.setAttributeValue(CellStyleAttributes.HORIZONTAL_ALIGNMENT, align);
        }
        if (ground != null) {
            style.setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR, ground);
        }
        if (ink != null) {
            style.setAttributeValue(CellStyleAttributes.FOREGROUND_COLOR, ink);
        }
        if (font != null) {
            style.setAttributeValue(CellStyleAttributes.FONT, font);
        }
        return style;
    }
}
