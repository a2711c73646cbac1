package org.roofspring.ui.pumps;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.nebula.widgets.nattable.sort.ISortModel;
import org.eclipse.nebula.widgets.nattable.sort.SortDirectionEnum;
import org.roofspring.calc.FindingValue.Verdict.Level;

/** By which column the rows are sorted. Rows that have nothing there come last, whichever way. */
final class RowOrder implements ISortModel {
    private final Runnable changed;
    private Column column;
    private SortDirectionEnum direction = SortDirectionEnum.NONE;

    RowOrder(Runnable changed) {
        this.changed = changed;
    }

    /** How the rows are ordered now; empty for the order of the site. */
    Optional<Comparator<BoardRow>> comparator() {
        if (column == null || direction == SortDirectionEnum.NONE) {
            return Optional.empty();
        }
        Comparator<BoardRow> known = known(column);
        Comparator<BoardRow> either = direction == SortDirectionEnum.DESC ? known.reversed() : known;
        Comparator<BoardRow> missingLast = Comparator.comparing(row -> !present(row));
        return Optional.of(missingLast.thenComparing(either));
    }

    private boolean present(BoardRow row) {
        return column.isNumber() ? row.number(column).isPresent() : !row.text(column).isEmpty();
    }

    private static Comparator<BoardRow> known(Column column) {
        if (column.isNumber()) {
            return Comparator.comparingDouble(row -> row.number(column).map(number -> number.si()).orElse(0.0));
        }
        Comparator<BoardRow> byText = Comparator.comparing(row -> row.text(column), String.CASE_INSENSITIVE_ORDER);
        Comparator<BoardRow> byLevel = Comparator.comparing(BoardRow::level,
                Comparator.nullsLast(Comparator.<Level>naturalOrder()));
        return column == Column.VERDICT ? byLevel.thenComparing(byText) : byText;
    }

    @Override
    public void sort(int columnIndex, SortDirectionEnum sortDirection, boolean accumulate) {
        column = sortDirection == SortDirectionEnum.NONE ? null : Column.values()[columnIndex];
        direction = sortDirection;
        changed.run();
    }

    @Override
    public void clear() {
        column = null;
        direction = SortDirectionEnum.NONE;
        changed.run();
    }

    @Override
    public List<Integer> getSortedColumnIndexes() {
        return column == null ? List.of() : List.of(column.ordinal());
    }

    @Override
    public boolean isColumnIndexSorted(int columnIndex) {
        return column != null && column.ordinal() == columnIndex;
    }

    @Override
    public SortDirectionEnum getSortDirection(int columnIndex) {
        return isColumnIndexSorted(columnIndex) ? direction : SortDirectionEnum.NONE;
    }

    @Override
    public int getSortOrder(int columnIndex) {
        return isColumnIndexSorted(columnIndex) ? 0 : -1;
    }

    @SuppressWarnings("rawtypes") // as the interface has it
    @Override
    public List<Comparator> getComparatorsForColumnIndex(int columnIndex) {
        return List.of(getColumnComparator(columnIndex));
    }

    @Override
    public Comparator<?> getColumnComparator(int columnIndex) {
        return known(Column.values()[columnIndex]);
    }
}
