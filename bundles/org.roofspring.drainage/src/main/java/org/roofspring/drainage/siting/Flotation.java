package org.roofspring.drainage.siting;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;

/**
 * Whether ground water lifts an empty tank that is set in the ground: its own weight and what holds it down against
 * the weight of the water it displaces.
 *
 * @param displacedM3  outside volume of tank and anchor below the highest ground water, from 0 to 1e5 m3
 * @param emptyMassKg  of the empty tank, from 0 to 1e8 kg
 * @param anchorMassKg of a slab or collar tied to it, weighed in air, from 0 to 1e8 kg
 * @param coverMassKg  of the soil that rests on tank and collar, soaked, its whole volume below the ground water
 *                     counted in {@code displacedM3}, from 0 to 1e8 kg
 */
public record Flotation(double displacedM3, double emptyMassKg, double anchorMassKg, double coverMassKg) {
    /** Holding-down force over uplift to reach, unless another is given. */
    public static final double DEFAULT_SAFETY_RATIO = 1.2;
    /** Source of {@link #DEFAULT_SAFETY_RATIO}. */
    public static final Source SAFETY_SOURCE = Source.fromMemory(
            "EN 1997-1, limit state of uplift (partial factors 1.0 on uplift, 0.9 on weight), rounded up");
    /** Concrete of an anchor slab, unless another is given [kg/m3]. */
    public static final double CONCRETE_KG_PER_M3 = 2400;

    public Flotation {
        Require.range("displacedM3", displacedM3, 0, 1e5, "a volume from 0 to 100000 m3");
        Require.range("emptyMassKg", emptyMassKg, 0, 1e8, "a mass from 0 to 1e8 kg");
        Require.range("anchorMassKg", anchorMassKg, 0, 1e8, "a mass from 0 to 1e8 kg");
        Require.range("coverMassKg", coverMassKg, 0, 1e8, "a mass from 0 to 1e8 kg");
    }

    /** Uplift [N]. */
    public double upliftN() {
        return displacedM3 * TankLoad.WATER_KG_PER_M3 * Channel.GRAVITY;
    }

    /** What holds the tank down [N]. */
    public double holdDownN() {
        return (emptyMassKg + anchorMassKg + coverMassKg) * Channel.GRAVITY;
    }

    /**
     * Whether the tank stays down by a margin.
     *
     * @param safetyRatio of holding-down force over uplift, from 1 to 2
     */
    public boolean staysDown(double safetyRatio) {
        return holdDownN() >= safety(safetyRatio) * upliftN();
    }

    /**
     * Further anchor mass that is needed [kg], weighed in air; 0 when the tank stays down as it is. The anchor itself
     * lies in ground water and displaces some.
     *
     * @param safetyRatio of holding-down force over uplift, from 1 to 2
     * @param kgPerM3     density of the anchor, from 2100 to 12000 kg/m3
     */
    public double missingAnchorKg(double safetyRatio, double kgPerM3) {
        safety(safetyRatio);
        Require.range("kgPerM3", kgPerM3, 2100, 12000, "a density of the anchor from 2100 to 12000 kg/m3");
        double missingKg = (safetyRatio * upliftN() - holdDownN()) / Channel.GRAVITY;
        return Math.max(0, missingKg / (1 - safetyRatio * TankLoad.WATER_KG_PER_M3 / kgPerM3));
    }

    private static double safety(double safetyRatio) {
        return Require.range("safetyRatio", safetyRatio, 1, 2, "a ratio from 1 to 2");
    }
}
