package org.roofspring.quantity;

/** What kind of thing a {@link Quantity} measures. Units convert only inside one dimension. */
public enum Dimension {
    /** Length, level, head of water, bore, depth of rain. */
    LENGTH("a length", "m, mm, cm, km, in, ft"),
    /** Area of roof, pipe or ground. */
    AREA("an area", "m2, cm2, ha, ft2"),
    /** Volume of water or product. */
    VOLUME("a volume", "L, m3, mL, galUS, galImp"),
    /** Volume a time. */
    FLOW("a flow", "L/s, L/min, L/h, L/d, m3/s, m3/h, m3/d, gpm"),
    /** Speed of water or wind. */
    VELOCITY("a velocity", "m/s, ft/s"),
    /** Pressure, absolute or gauge as the name of the value says. */
    PRESSURE("a pressure", "Pa, kPa, bar, m(head), psi"),
    /** Power. */
    POWER("a power", "W, kW, hp"),
    /** Energy. */
    ENERGY("an energy", "J, Wh, kWh"),
    /** Energy for each volume lifted. */
    SPECIFIC_ENERGY("an energy per volume", "Wh/m3, kWh/m3"),
    /** A span of time. */
    DURATION("a time", "s, min, h, d, yr"),
    /** Temperature on a scale (not a difference). */
    TEMPERATURE("a temperature", "degC, degF, K"),
    /** Rain intensity. */
    INTENSITY("an intensity", "mm/h, mm/d, in/h"),
    /** Mass in a volume of water. */
    CONCENTRATION("a concentration", "mg/L, ug/L, g/L"),
    /** Disinfectant concentration times contact time. */
    CONTACT_TIME("a disinfectant contact time", "mg.min/L"),
    /** Ultraviolet dose (fluence). */
    UV_DOSE("a UV dose", "mJ/cm2, J/m2"),
    /** Turbidity. */
    TURBIDITY("a turbidity", "NTU"),
    /** Mass of a volume. */
    DENSITY("a density", "kg/L, kg/m3, g/mL"),
    /** Mass. */
    MASS("a mass", "g, kg, mg, lb"),
    /** Rotational speed. */
    ROTATION("a rotational speed", "rpm"),
    /** Angle. */
    ANGLE("an angle", "deg, rad"),
    /** Events in a time, such as pump starts. */
    FREQUENCY("a rate", "1/h, 1/d, 1/yr"),
    /** Money in the currency of the site. */
    MONEY("an amount of money", "cur"),
    /** Money for each volume. */
    UNIT_COST("a cost per volume", "cur/m3, cur/L"),
    /** Money for each amount of energy. */
    ENERGY_COST("a cost per energy", "cur/kWh"),
    /** Pure number: share, coefficient, count. */
    RATIO("a number", "a bare number, %");

    private final String noun;
    private final String accepted;

    Dimension(String noun, String accepted) {
        this.noun = noun;
        this.accepted = accepted;
    }

    /** The dimension in words with its article, for messages: "an area". */
    public String noun() {
        return noun;
    }

    /** The usual units in words, for messages. */
    public String acceptedUnits() {
        return accepted;
    }
}
