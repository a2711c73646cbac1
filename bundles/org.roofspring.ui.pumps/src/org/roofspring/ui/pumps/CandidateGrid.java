package org.roofspring.ui.pumps;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.ConfigRegistry;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.data.IDataProvider;
import org.eclipse.nebula.widgets.nattable.data.IRowDataProvider;
import org.eclipse.nebula.widgets.nattable.edit.config.DefaultEditBindings;
import org.eclipse.nebula.widgets.nattable.edit.config.DefaultEditConfiguration;
import org.eclipse.nebula.widgets.nattable.filterrow.FilterRowHeaderComposite;
import org.eclipse.nebula.widgets.nattable.freeze.CompositeFreezeLayer;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeLayer;
import org.eclipse.nebula.widgets.nattable.freeze.command.FreezeColumnCommand;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.LabelStack;
import org.eclipse.nebula.widgets.nattable.resize.config.DefaultColumnResizeBindings;
import org.eclipse.nebula.widgets.nattable.selection.RowSelectionModel;
import org.eclipse.nebula.widgets.nattable.selection.RowSelectionProvider;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionBindings;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionConfiguration;
import org.eclipse.nebula.widgets.nattable.sort.SortHeaderLayer;
import org.eclipse.nebula.widgets.nattable.tooltip.NatTableContentTooltip;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.nebula.widgets.nattable.viewport.command.ShowRowInViewportCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.UnitSystem;

/**
 * The pumps as rows of a grid. A click on a heading sorts, what is typed below it filters, and the name stays in sight
 * when the grid is moved sideways.
 */
public final class CandidateGrid {
    private static final int HEADER_HEIGHT = 42;
    private static final int ROW_HEIGHT = 24;
    private static final int HEADER_ROWS = 2;
    private static final int INSIDE = 10;
    private static final int ROOM_FOR_ARROW = 20;

    /** Is told about what people do. */
    interface Listener {
        /** Other rows are selected; the last one is the one that was clicked. */
        void selected(List<String> ids);

        /** A condition was typed; {@code problem} says what is wrong with one, or is empty. */
        void filtered(String problem);
    }

    private final Listener listener;
    private final List<BoardRow> shown = new ArrayList<>();
    private final Map<Column, String> filters = new LinkedHashMap<>();
    private final RowOrder order = new RowOrder(this::arrange);
    private final Rows rows = new Rows();
    private final NatTable table;
    private final SelectionLayer selectionLayer;
    private final FilterRowHeaderComposite<BoardRow> filterRow;
    private final RowSelectionProvider<BoardRow> selection;
    private BoardModel model = BoardModel.EMPTY;
    private UnitSystem system = UnitSystem.METRIC;
    private QuantityFormat format = QuantityFormat.metric();
    private List<String> selectedIds = List.of();
    private boolean telling = true;

    CandidateGrid(Composite parent, Listener listener) {
        GridLibrary.start();
        this.listener = listener;
        DataLayer body = new DataLayer(rows);
        body.setDefaultRowHeight(ROW_HEIGHT);
        body.setConfigLabelAccumulator(this::label);
        selectionLayer = new SelectionLayer(body, false);
        selectionLayer.setSelectionModel(new RowSelectionModel<>(selectionLayer, rows, BoardRow::id));
        selectionLayer.addConfiguration(new RowOnlySelectionConfiguration());
        ViewportLayer viewport = new ViewportLayer(selectionLayer);
        CompositeFreezeLayer frozen = new CompositeFreezeLayer(new FreezeLayer(selectionLayer), viewport,
                selectionLayer);
        DataLayer headings = new DataLayer(new Headings());
        headings.setDefaultRowHeight(HEADER_HEIGHT);
        headings.setConfigLabelAccumulator((labels, column, row) -> number(labels, Column.values()[column]));
        GC gc = new GC(parent);
        for (Column column : Column.values()) {
            int width = Math.max(column.width(), gc.textExtent(column.title()).x + ROOM_FOR_ARROW);
            body.setDefaultColumnWidthByPosition(column.ordinal(), width);
            headings.setDefaultColumnWidthByPosition(column.ordinal(), width);
        }
        gc.dispose();
        SortHeaderLayer<BoardRow> sortable = new SortHeaderLayer<>(
                new ColumnHeaderLayer(headings, frozen, selectionLayer, false), order, false);
        sortable.addConfiguration(GridLook.sorting());
        sortable.addConfiguration(new DefaultColumnResizeBindings());
        ConfigRegistry registry = new ConfigRegistry();
        filterRow = new FilterRowHeaderComposite<>(this::filter, sortable, headings.getDataProvider(), registry);
        CompositeLayer whole = new CompositeLayer(1, 2);
        whole.setChildLayer(GridRegion.COLUMN_HEADER, filterRow, 0, 0);
        whole.setChildLayer(GridRegion.BODY, frozen, 0, 1);
        whole.addConfiguration(new DefaultEditConfiguration());
        whole.addConfiguration(new DefaultEditBindings());
        table = new NatTable(parent, whole, false);
        table.setConfigRegistry(registry);
        table.addConfiguration(new DefaultNatTableStyleConfiguration());
        table.addConfiguration(GridLook.filtering());
        table.addConfiguration(new GridLook(table));
        table.addConfiguration(new RowOnlySelectionBindings());
        table.configure();
        table.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        table.doCommand(new FreezeColumnCommand(frozen, Column.PUMP.ordinal()));
        new NatTableContentTooltip(table, GridRegion.BODY, GridRegion.COLUMN_HEADER);
        selection = new RowSelectionProvider<>(selectionLayer, rows, false);
        selection.addSelectionChangedListener(event -> selected(event.getStructuredSelection()));
    }

    private void selected(IStructuredSelection now) {
        List<String> ids = new ArrayList<>();
        for (Object row : now.toList()) {
            ids.add(((BoardRow) row).id());
        }
        int anchor = selectionLayer.getSelectionAnchor().rowPosition;
        if (anchor >= 0 && anchor < shown.size() && ids.remove(shown.get(anchor).id())) {
            ids.add(shown.get(anchor).id());
        }
        if (!ids.equals(selectedIds)) {
            selectedIds = List.copyOf(ids);
            if (telling) {
                listener.selected(selectedIds);
            }
        }
    }

    private void label(LabelStack labels, int columnPosition, int rowPosition) {
        if (rowPosition >= shown.size()) {
            return;
        }
        BoardRow row = shown.get(rowPosition);
        Column column = Column.values()[columnPosition];
        if (row.stale(column)) {
            labels.addLabel(GridLook.STALE);
        } else if (column == Column.VERDICT && row.level() != null) {
            labels.addLabel(switch (row.level()) {
                case GOOD -> GridLook.GOOD;
                case CONDITIONAL -> GridLook.CONDITIONAL;
                case BAD -> GridLook.BAD;
            });
        } else if (column == Column.REVIEW && row.text(column).contains("out of date")) {
            labels.addLabel(GridLook.BAD);
        }
        number(labels, column);
    }

    private static void number(LabelStack labels, Column column) {
        if (column.isNumber()) {
            labels.addLabel(GridLook.NUMBER);
        }
    }

    void show(BoardModel newModel, UnitSystem newSystem, QuantityFormat newFormat) {
        model = newModel;
        system = newSystem;
        format = newFormat;
        arrange();
    }

    /** Filters and sorts anew; what is selected stays so. */
    private void arrange() {
        List<BoardRow> wanted = new ArrayList<>(model.rows());
        for (Map.Entry<Column, String> filter : filters.entrySet()) {
            wanted.removeIf(condition(filter.getKey(), filter.getValue()).negate());
        }
        order.comparator().ifPresent(wanted::sort);
        boolean sameRows = ids(wanted).equals(ids(shown));
        shown.clear();
        shown.addAll(wanted);
        table.refresh(!sameRows);
        if (!sameRows) {
            reselect();
        }
    }

    private Predicate<BoardRow> condition(Column column, String typed) {
        try {
            return CellFilter.of(column, typed, system);
        } catch (IllegalArgumentException e) {
            return row -> true; // it was said when it was typed; nothing is hidden by what is not understood
        }
    }

    private void filter(Map<Integer, Object> typed) {
        filters.clear();
        String problem = "";
        for (Map.Entry<Integer, Object> each : typed.entrySet()) {
            Column column = Column.values()[each.getKey()];
            filters.put(column, String.valueOf(each.getValue()));
            try {
                CellFilter.of(column, filters.get(column), system);
            } catch (IllegalArgumentException e) {
                problem = e.getMessage();
            }
        }
        arrange();
        listener.filtered(problem);
    }

    private static List<String> ids(List<BoardRow> rows) {
        return rows.stream().map(BoardRow::id).toList();
    }

    private void reselect() {
        List<String> before = selectedIds;
        telling = false;
        try {
            selection.setSelection(new StructuredSelection(rowsOf(before)));
        } finally {
            telling = true;
        }
        selectedIds = before.stream().filter(id -> shown.stream().anyMatch(row -> row.id().equals(id))).toList();
        if (!selectedIds.equals(before)) {
            listener.selected(selectedIds);
        }
    }

    private List<BoardRow> rowsOf(Collection<String> ids) {
        return shown.stream().filter(row -> ids.contains(row.id())).toList();
    }

    /** Selects rows and brings the first of them into sight; the listener is not told. */
    void select(List<String> ids) {
        selectedIds = ids.stream().filter(id -> shown.stream().anyMatch(row -> row.id().equals(id))).toList();
        reselect();
        rowsOf(selectedIds).stream().findFirst()
                .ifPresent(row -> table.doCommand(new ShowRowInViewportCommand(shown.indexOf(row))));
    }

    /** What is selected; the one that was clicked last comes last. */
    public List<String> selectedIds() {
        return selectedIds;
    }

    /** The rows that are seen, from the top. */
    public List<BoardRow> shownRows() {
        return List.copyOf(shown);
    }

    /** Types a condition over a column, or takes it away where the text is empty. */
    public void filter(Column column, String text) {
        filterRow.getFilterRowDataLayer().setDataValue(column.ordinal(), 0, text.isEmpty() ? null : text);
    }

    /** The grid itself. */
    public Control control() {
        return table;
    }

    /** Where the heading of a column is, for tests; empty where it is out of sight. */
    public Optional<Point> headingAt(Column column) {
        for (int position = 0; position < table.getColumnCount(); position++) {
            if (table.getColumnIndexByPosition(position) == column.ordinal()) {
                return Optional.of(new Point(table.getStartXOfColumnPosition(position) + INSIDE, INSIDE));
            }
        }
        return Optional.empty();
    }

    /** Where a row is, for tests; empty where it is out of sight. */
    public Optional<Point> rowAt(String id) {
        int wanted = ids(shown).indexOf(id);
        for (int position = HEADER_ROWS; position < table.getRowCount(); position++) {
            if (table.getRowIndexByPosition(position) == wanted) {
                return Optional.of(new Point(INSIDE, table.getStartYOfRowPosition(position) + INSIDE));
            }
        }
        return Optional.empty();
    }

    /** The text that a cell shows. */
    public String cell(String id, Column column) {
        return model.row(id).map(row -> cell(row, column)).orElse("");
    }

    private String cell(BoardRow row, Column column) {
        return column.isNumber() ? row.number(column).map(number -> format.number(number.in(column.unit(system))))
                .orElse("") : row.text(column);
    }

    /** The headings. */
    private final class Headings implements IDataProvider {
        @Override
        public Object getDataValue(int columnIndex, int rowIndex) {
            return Column.values()[columnIndex].heading(system, format);
        }

        @Override
        public void setDataValue(int columnIndex, int rowIndex, Object newValue) {
            throw new UnsupportedOperationException("headings are not edited");
        }

        @Override
        public int getColumnCount() {
            return Column.values().length;
        }

        @Override
        public int getRowCount() {
            return 1;
        }
    }

    /** The rows that are seen. */
    private final class Rows implements IRowDataProvider<BoardRow> {
        @Override
        public BoardRow getRowObject(int rowIndex) {
            return rowIndex >= 0 && rowIndex < shown.size() ? shown.get(rowIndex) : null;
        }

        @Override
        public int indexOfRowObject(BoardRow row) {
            return ids(shown).indexOf(row.id());
        }

        @Override
        public Object getDataValue(int columnIndex, int rowIndex) {
            BoardRow row = getRowObject(rowIndex);
            return row == null ? "" : cell(row, Column.values()[columnIndex]);
        }

        @Override
        public void setDataValue(int columnIndex, int rowIndex, Object newValue) {
            throw new UnsupportedOperationException("findings are not edited");
        }

        @Override
        public int getColumnCount() {
            return Column.values().length;
        }

        @Override
        public int getRowCount() {
            return shown.size();
        }
    }
}
