package org.roofspring.treatment.disinfection;

import java.util.Locale;
import java.util.OptionalDouble;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * How much of a product brings a volume of water to a chlorine dose. The dose is what goes in; what is left after the
 * water has used some up (the residual) has to be measured, and only the residual earns a credit
 * ({@link ChlorineCredit}).
 *
 * <p>m = D V; by weight per volume v = m / s; by weight per weight M = m / s and, for a liquid, v = M / rho.
 * D dose [mg/L], V volume [m3], m available chlorine [kg], s strength [ratio; kg/L by volume], rho density [kg/m3].
 *
 * @param activeMassKg   available chlorine [kg]
 * @param productMassKg  product by weight [kg]; empty for a liquid labelled by volume, whose mass is not needed
 * @param productVolumeM3 product by volume [m3]; empty for granules and tablets
 * @param drops          the same in drops [count, not rounded]; empty for granules and tablets
 */
public record ChlorineDose(double activeMassKg, OptionalDouble productMassKg, OptionalDouble productVolumeM3,
        OptionalDouble drops) {

    /** Volume of a drop [m3]: 20 drops to the millilitre. */
    public static final double DEFAULT_DROP_VOLUME_M3 = 0.05e-6;
    public static final Source DROP_SOURCE = Source.commonPractice("20 drops to the millilitre; droppers differ, "
            + "so count the drops of yours into a measure");
    /** Largest dose accepted [mg/L], enough for the shock chlorination of an empty tank. */
    public static final double MAX_DOSE_MG_PER_L = 1000;
    /** Largest volume accepted [m3]. */
    public static final double MAX_VOLUME_M3 = 1e6;

    /** The dose with drops of the usual size. */
    public static ChlorineDose of(double waterVolumeM3, double doseMgPerL, ChlorineProduct product) {
        return of(waterVolumeM3, doseMgPerL, product, DEFAULT_DROP_VOLUME_M3);
    }

    /**
     * @param waterVolumeM3 water to treat, above 0 to 1e6 [m3]
     * @param doseMgPerL    available chlorine to add, above 0 to 1000 [mg/L]
     * @param product       as labelled, or weaker where it has aged
     * @param dropVolumeM3  of the dropper used, above 0 to 1e-6 [m3]
     * @throws IllegalArgumentException outside these ranges
     */
    public static ChlorineDose of(double waterVolumeM3, double doseMgPerL, ChlorineProduct product,
            double dropVolumeM3) {
        Checks.positive("water volume (waterVolumeM3)", waterVolumeM3, MAX_VOLUME_M3, "m3");
        Checks.positive("dose (doseMgPerL)", doseMgPerL, MAX_DOSE_MG_PER_L, "mg/L");
        Checks.present("product", product);
        Checks.positive("drop volume (dropVolumeM3)", dropVolumeM3, 1e-6, "m3");
        double activeKg = doseMgPerL * waterVolumeM3 / 1000;
        if (product.basis() == ChlorineProduct.Basis.WEIGHT_PER_VOLUME) {
            double volumeM3 = activeKg / product.strengthRatio() / 1000;
            return liquid(activeKg, OptionalDouble.empty(), volumeM3, dropVolumeM3);
        }
        double massKg = activeKg / product.strengthRatio();
        if (product.form() == ChlorineProduct.Form.LIQUID) {
            return liquid(activeKg, OptionalDouble.of(massKg), massKg / product.densityKgPerM3(), dropVolumeM3);
        }
        return new ChlorineDose(activeKg, OptionalDouble.of(massKg), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static ChlorineDose liquid(double activeKg, OptionalDouble massKg, double volumeM3, double dropVolumeM3) {
        return new ChlorineDose(activeKg, massKg, OptionalDouble.of(volumeM3),
                OptionalDouble.of(volumeM3 / dropVolumeM3));
    }

    /**
     * The dose that an amount of liquid gives: the arithmetic backwards.
     *
     * @param waterVolumeM3   above 0 to 1e6 [m3]
     * @param productVolumeM3 above 0 to 1e6 [m3]
     * @param product         a liquid
     * @return dose [mg/L]
     */
    public static double fromLiquid(double waterVolumeM3, double productVolumeM3, ChlorineProduct product) {
        Checks.positive("water volume (waterVolumeM3)", waterVolumeM3, MAX_VOLUME_M3, "m3");
        Checks.positive("product volume (productVolumeM3)", productVolumeM3, MAX_VOLUME_M3, "m3");
        if (Checks.present("product", product).form() != ChlorineProduct.Form.LIQUID) {
            throw new IllegalArgumentException("product must be a liquid to be dosed by volume, not "
                    + product.form().name().toLowerCase(Locale.ROOT));
        }
        double kgPerM3 = product.basis() == ChlorineProduct.Basis.WEIGHT_PER_VOLUME ? 1000 * product.strengthRatio()
                : product.densityKgPerM3() * product.strengthRatio();
        return 1000 * productVolumeM3 * kgPerM3 / waterVolumeM3;
    }

    /**
     * The dose that a mass of product gives.
     *
     * @param waterVolumeM3 above 0 to 1e6 [m3]
     * @param productMassKg above 0 to 1e9 [kg]
     * @param strengthRatio by weight, above 0 to 1
     * @return dose [mg/L]
     */
    public static double fromMass(double waterVolumeM3, double productMassKg, double strengthRatio) {
        Checks.positive("water volume (waterVolumeM3)", waterVolumeM3, MAX_VOLUME_M3, "m3");
        Checks.positive("product mass (productMassKg)", productMassKg, 1e9, "kg");
        Checks.positive("strength (strengthRatio)", strengthRatio, 1, "(a share; 0.65 is 65 %)");
        return 1000 * productMassKg * strengthRatio / waterVolumeM3;
    }

    /**
     * The same in tablets.
     *
     * @param tabletMassKg of one, above 0 to 10 [kg]
     * @return count, not rounded; empty for a liquid labelled by volume
     */
    public OptionalDouble tablets(double tabletMassKg) {
        Checks.positive("tablet mass (tabletMassKg)", tabletMassKg, 10, "kg");
        return productMassKg.isPresent() ? OptionalDouble.of(productMassKg.getAsDouble() / tabletMassKg)
                : OptionalDouble.empty();
    }
}
