package org.roofspring.quantity;

/** In which units a person wants to read: a preference of display that never changes a computed number. */
public enum UnitSystem {
    METRIC, US_CUSTOMARY, IMPERIAL;

    /** The unit in which this system shows what is usually given in {@code usual}. */
    public Unit preferred(Unit usual) {
        return switch (this) {
            case METRIC -> metric(usual);
            case US_CUSTOMARY -> customary(usual, Units.GAL_US, Units.GAL_US_PER_D, Units.GPM);
            case IMPERIAL -> customary(usual, Units.GAL_IMP, Units.GAL_IMP_PER_D, Units.GAL_IMP_PER_MIN);
        };
    }

    private static Unit metric(Unit usual) {
        if (usual == Units.GAL_US || usual == Units.GAL_IMP) {
            return Units.L;
        }
        if (usual == Units.GAL_US_PER_D || usual == Units.GAL_IMP_PER_D) {
            return Units.L_PER_D;
        }
        if (usual == Units.GPM || usual == Units.GAL_IMP_PER_MIN) {
            return Units.L_PER_MIN;
        }
        return switch (usual.symbol()) {
            case "m3/s" -> Units.L_PER_S;
            case "in" -> Units.MM;
            case "ft" -> Units.M;
            case "ft2" -> Units.M2;
            case "ft/s" -> Units.M_PER_S;
            case "psi" -> Units.BAR;
            case "hp" -> Units.KW;
            case "degF" -> Units.DEG_C;
            case "in/h" -> Units.MM_PER_H;
            case "lb" -> Units.KG;
            default -> usual;
        };
    }

    private static Unit customary(Unit usual, Unit gallon, Unit gallonPerDay, Unit gallonPerMinute) {
        return switch (usual.symbol()) {
            case "mm", "cm" -> Units.IN;
            case "m" -> Units.FT;
            case "m2" -> Units.FT2;
            case "m3", "L" -> gallon;
            case "L/d", "m3/d" -> gallonPerDay;
            case "L/s", "L/min", "m3/h", "m3/s" -> gallonPerMinute;
            case "m/s" -> Units.FT_PER_S;
            case "Pa", "kPa", "bar", "m(head)" -> Units.PSI;
            case "degC" -> Units.DEG_F;
            case "mm/h" -> Units.IN_PER_H;
            case "kg" -> Units.LB;
            default -> usual;
        };
    }
}
