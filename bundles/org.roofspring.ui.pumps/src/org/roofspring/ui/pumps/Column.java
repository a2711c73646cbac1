package org.roofspring.ui.pumps;

import java.util.Optional;

import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Units;

/** The columns of the board, from left to right. */
public enum Column {
    PUMP("Pump", "Pump", null, 172),
    VERDICT("Verdict", "Verdict", null, 100),
    FLOW("Flow", "Flow", Units.L_PER_S, 74),
    FLOW_LOWEST("Lowest flow", "Flow, lowest", Units.L_PER_S, 84),
    FLOW_HIGHEST("Highest flow", "Flow, highest", Units.L_PER_S, 88),
    HEAD("Head", "Head", Units.M, 66),
    EFFICIENCY("Efficiency", "Efficiency", Units.PERCENT, 80),
    OFF_BEST("Off best flow", "Off best flow", Units.PERCENT, 92),
    NPSH_MARGIN("NPSH margin", "NPSH margin, worst", Units.M, 92),
    POWER("Power", "Power", Units.W, 70),
    ENERGY("Energy", "Energy", Units.WH_PER_M3, 72),
    YEARLY_ENERGY("Energy a year", "Energy a year", Units.KWH, 96),
    YEARLY_COST("Cost a year", "Cost a year", Units.MONEY, 84),
    TIME_TO_FILL("Time to fill", "Time to fill", Units.MIN, 84),
    STARTS("Starts a day", "Starts a day", Units.PER_D, 88),
    REVIEW("Review", null, null, 190),
    REASONS("Reasons", "Reasons", null, 520);

    private final String title;
    private final String finding;
    private final Unit unit;
    private final int width;

    Column(String title, String finding, Unit unit, int width) {
        this.title = title;
        this.finding = finding;
        this.unit = unit;
        this.width = width;
    }

    /** What stands over the column. */
    public String title() {
        return title;
    }

    /** The column of the table of findings that it shows; empty where it shows what is in the site. */
    Optional<String> finding() {
        return Optional.ofNullable(finding);
    }

    /** Whether it holds numbers. */
    public boolean isNumber() {
        return unit != null;
    }

    /** The unit in which its numbers are shown. */
    Unit unit(UnitSystem system) {
        return system.preferred(unit);
    }

    /** Title over unit; a number of starts a day says its unit already. */
    String heading(UnitSystem system, QuantityFormat format) {
        return unit == null || this == STARTS ? title : title + "\n" + format.symbol(unit(system));
    }

    int width() {
        return width;
    }
}
