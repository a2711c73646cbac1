package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.internal.Checks;

/**
 * A chlorine product as its label states it.
 *
 * @param form           liquid, granules or tablets
 * @param strengthRatio  available chlorine [ratio, above 0 to 1]; 0.125 for "12.5 %"
 * @param basis          what the label's percentage is a share of; weight per volume is usual for liquids and is
 *                       possible only for them
 * @param densityKgPerM3 of the liquid, 500 to 3000 [kg/m3]; read for a liquid by weight only; {@link #DEFAULT_DENSITY}
 *                       where the label does not say
 */
public record ChlorineProduct(Form form, double strengthRatio, Basis basis, double densityKgPerM3) {

    /** Density of strong hypochlorite solution [kg/m3]: common practice, no source. */
    public static final double DEFAULT_DENSITY = 1200;

    /** How the product is handled. */
    public enum Form { LIQUID, GRANULES, TABLETS }

    /** What a percentage of available chlorine is a share of. */
    public enum Basis {
        /** Grams of available chlorine in 100 mL of product. */
        WEIGHT_PER_VOLUME,
        /** Grams of available chlorine in 100 g of product. */
        WEIGHT_PER_WEIGHT
    }

    public ChlorineProduct {
        Checks.present("form", form);
        Checks.positive("strength (strengthRatio)", strengthRatio, 1, "(a share; 0.65 is 65 %)");
        Checks.present("basis", basis);
        Checks.within("density (densityKgPerM3)", densityKgPerM3, 500, 3000, "kg/m3");
        if (form != Form.LIQUID && basis == Basis.WEIGHT_PER_VOLUME) {
            throw new IllegalArgumentException("basis must be weight per weight for granules and tablets; "
                    + "weight per volume is accepted for a liquid only");
        }
    }

    /** A product with the usual basis of its form: weight per volume for a liquid, weight per weight for a solid. */
    public static ChlorineProduct of(Form form, double strengthRatio) {
        return new ChlorineProduct(form, strengthRatio, defaultBasis(form), DEFAULT_DENSITY);
    }

    public static Basis defaultBasis(Form form) {
        return Checks.present("form", form) == Form.LIQUID ? Basis.WEIGHT_PER_VOLUME : Basis.WEIGHT_PER_WEIGHT;
    }
}
