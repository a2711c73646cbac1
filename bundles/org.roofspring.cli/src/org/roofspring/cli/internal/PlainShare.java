package org.roofspring.cli.internal;

import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

/** People read shares in per cent; programs read them as plain numbers, 1 for the whole. */
final class PlainShare {
    private PlainShare() {
    }

    static Quantity of(Quantity quantity) {
        return quantity.unit().dimension() == Dimension.RATIO ? quantity.as(Units.ONE) : quantity;
    }
}
