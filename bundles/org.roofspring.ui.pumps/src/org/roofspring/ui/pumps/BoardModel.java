package org.roofspring.ui.pumps;

import java.util.List;
import java.util.Optional;

import org.roofspring.calc.FindingValue.Curve;

/**
 * What the board shows of one pump and its candidates.
 *
 * @param pumpId  the pump that they are weighed for, or null where the site has none
 * @param rows    the pump as designed and its candidates, in the order of the site
 * @param lowest  head that the system needs, lowest over all states, or null where it is not known
 * @param highest and highest
 * @param state   what there is to say about all of it, in a sentence
 * @param stale   whether nothing of it is sure to hold any more
 */
public record BoardModel(String pumpId, List<BoardRow> rows, Curve lowest, Curve highest, String state,
        boolean stale) {
    static final BoardModel EMPTY = new BoardModel(null, List.of(), null, null, "", false);

    public BoardModel {
        rows = List.copyOf(rows);
    }

    /** The row of a pump or candidate. */
    public Optional<BoardRow> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }
}
