package org.roofspring.ui.parts.storage;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.session.FindingKey;

/** A sheet as a table; rows are filled in as they come into view. */
final class SheetTable {
    private static final int MOST_WIDTH = 420;
    private static final int PADDING = 22;
    private static final int ROWS_FOR_WIDTH = 40;

    private final Table table;
    private Sheet sheet;
    private boolean stale;

    /**
     * @param selected told the finding of a row that was selected
     * @param open     told when its workings are to be brought up
     */
    SheetTable(Composite parent, Consumer<FindingKey> selected, Runnable open) {
        table = new Table(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.SINGLE | SWT.H_SCROLL | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        table.addListener(SWT.SetData, event -> fill((TableItem) event.item, table.indexOf((TableItem) event.item)));
        table.addListener(SWT.Selection, event -> selected.accept(sheet.finding()));
        table.addListener(SWT.DefaultSelection, event -> {
            selected.accept(sheet.finding());
            open.run();
        });
    }

    private void fill(TableItem item, int row) {
        for (int column = 0; column < sheet.columns(); column++) {
            item.setText(column, sheet.text(row, column));
        }
        item.setForeground(stale ? Palette.of(table).stale() : null);
    }

    void show(Sheet newSheet, boolean nowStale) {
        if (newSheet == sheet && nowStale == stale) {
            return;
        }
        boolean sameColumns = sheet != null && headings(sheet).equals(headings(newSheet));
        sheet = newSheet;
        stale = nowStale;
        table.setRedraw(false);
        try {
            if (!sameColumns) {
                makeColumns();
            }
            int selected = table.getSelectionIndex();
            int top = table.getTopIndex();
            table.setItemCount(sheet.rows());
            table.clearAll();
            if (sameColumns && selected >= 0 && selected < sheet.rows()) {
                table.setSelection(selected);
            }
            table.setTopIndex(sameColumns ? top : 0);
        } finally {
            table.setRedraw(true);
        }
    }

    private static java.util.List<String> headings(Sheet sheet) {
        return java.util.stream.IntStream.range(0, sheet.columns()).mapToObj(sheet::heading).toList();
    }

    private void makeColumns() {
        table.setItemCount(0);
        for (TableColumn column : table.getColumns()) {
            column.dispose();
        }
        org.eclipse.swt.graphics.GC gc = new org.eclipse.swt.graphics.GC(table);
        for (int i = 0; i < sheet.columns(); i++) {
            TableColumn column = new TableColumn(table, sheet.numeric(i) ? SWT.RIGHT : SWT.LEFT);
            column.setText(sheet.heading(i));
            // headings are set in bold
            int width = gc.textExtent(sheet.heading(i)).x * 6 / 5;
            for (int row = 0; row < Math.min(ROWS_FOR_WIDTH, sheet.rows()); row++) {
                width = Math.max(width, gc.textExtent(sheet.text(row, i)).x);
            }
            column.setWidth(Math.min(MOST_WIDTH, width + PADDING));
            column.setMoveable(true);
        }
        gc.dispose();
    }

    void clear() {
        sheet = null;
        table.setItemCount(0);
        for (TableColumn column : table.getColumns()) {
            column.dispose();
        }
    }

    Table control() {
        return table;
    }
}
