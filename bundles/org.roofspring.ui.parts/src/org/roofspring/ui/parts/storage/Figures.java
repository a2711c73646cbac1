package org.roofspring.ui.parts.storage;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.UnitSystem;

/**
 * Values as the reader wants to see them.
 *
 * @param system units that are shown
 * @param format how numbers are written
 */
record Figures(UnitSystem system, QuantityFormat format) {

    /** The unit in which values of this unit are shown. */
    Unit shown(Unit given) {
        return system.preferred(given);
    }

    /** A value in the unit it is shown in. */
    double number(double value, Unit given) {
        Unit shown = shown(given);
        return shown == given ? value : shown.fromSi(given.toSi(value));
    }

    double number(Quantity quantity) {
        return number(quantity.value(), quantity.unit());
    }

    String words(Quantity quantity) {
        return format.format(quantity);
    }

    /** A title with the unit in brackets. */
    String title(String name, Unit given) {
        String symbol = format.symbol(shown(given));
        return symbol.isEmpty() ? name : name + " [" + symbol + "]";
    }
}
