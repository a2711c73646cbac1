package org.roofspring.drainage.siting;

import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;

/**
 * What a full tank weighs, and how hard it presses on the ground.
 *
 * @param volumeM3    of water when full, from 0 to 1e5 m3
 * @param emptyMassKg of the shell with its fittings, from 0 to 1e8 kg
 * @param baseMassKg  of the slab or plinth, from 0 to 1e8 kg
 * @param baseAreaM2  with which it stands on the ground, from 0.01 to 1e5 m2
 */
public record TankLoad(double volumeM3, double emptyMassKg, double baseMassKg, double baseAreaM2) {
    /** Water at 20 degrees [kg/m3]. */
    public static final double WATER_KG_PER_M3 = 998.2;

    public TankLoad {
        Require.range("volumeM3", volumeM3, 0, 1e5, "a volume from 0 to 100000 m3");
        Require.range("emptyMassKg", emptyMassKg, 0, 1e8, "a mass from 0 to 1e8 kg");
        Require.range("baseMassKg", baseMassKg, 0, 1e8, "a mass from 0 to 1e8 kg");
        Require.range("baseAreaM2", baseAreaM2, 0.01, 1e5, "a base area from 0.01 to 100000 m2");
    }

    /** Mass of water, shell and base [kg]. */
    public double massKg() {
        return volumeM3 * WATER_KG_PER_M3 + emptyMassKg + baseMassKg;
    }

    /** Weight of water, shell and base [N]. */
    public double weightN() {
        return massKg() * Channel.GRAVITY;
    }

    /** Mean pressure on the ground [Pa]; more under an edge when the load is not in the middle. */
    public double pressurePa() {
        return weightN() / baseAreaM2;
    }

    /**
     * Pressure over what the ground is trusted to bear; above 1 the base must grow or the ground be improved.
     *
     * @param bearingPa that the ground bears, from 1000 to 1e8 Pa
     */
    public double bearingUtilisation(double bearingPa) {
        return pressurePa()
                / Require.range("bearingPa", bearingPa, 1000, 1e8, "a bearing pressure from 1000 to 1e8 Pa");
    }
}
