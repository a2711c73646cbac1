package org.roofspring.ui.pumps;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.roofspring.calc.FindingValue.Curve;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.quantity.Quantity;

/**
 * A pump on the board.
 *
 * @param id           of the pump or candidate
 * @param cells        a {@link Quantity} or a text for each column that has something to show
 * @param level        of its verdict, or null where there is none yet
 * @param figuresStale whether the figures are the last good ones rather than those of the site as it is
 * @param verdictStale whether the verdict is so too
 * @param head         its curve of head, or null where there is none
 */
public record BoardRow(String id, Map<Column, Object> cells, Level level, boolean figuresStale, boolean verdictStale,
        Curve head) {
    public BoardRow {
        cells = Collections.unmodifiableMap(new EnumMap<>(cells));
    }

    /** What people call it. */
    public String name() {
        return text(Column.PUMP);
    }

    /** The text of a cell; empty where there is none. */
    public String text(Column column) {
        return cells.get(column) instanceof String text ? text : "";
    }

    /** The number of a cell. */
    public Optional<Quantity> number(Column column) {
        return cells.get(column) instanceof Quantity quantity ? Optional.of(quantity) : Optional.empty();
    }

    /** Whether a cell shows what may not hold any more. */
    public boolean stale(Column column) {
        return switch (column) {
            case PUMP, REVIEW -> false;
            case VERDICT, REASONS -> verdictStale;
            default -> figuresStale;
        };
    }
}
