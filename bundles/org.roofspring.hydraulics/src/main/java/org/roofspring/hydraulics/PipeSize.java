package org.roofspring.hydraulics;

import java.util.OptionalDouble;

import org.roofspring.hydraulics.internal.Require;

/**
 * A size of pipe in the catalogue.
 *
 * @param designation       how it is ordered, such as "PE 100 SDR 11, 50 x 4.6"
 * @param material          what it is made of
 * @param outsideDiameterM  [m], 0.001 to 10
 * @param wallM             thickness of the wall [m], above 0, less than half the outside diameter
 * @param nominalPressurePa highest lasting pressure at 20 degC by the standard [Pa]; absent for metals, whose pipe
 *                          usually outlasts its joints
 * @param source            standard that the dimensions are from
 */
public record PipeSize(String designation, PipeMaterial material, double outsideDiameterM, double wallM,
        OptionalDouble nominalPressurePa, String source) {
    public PipeSize {
        Require.text("designation of the pipe", designation);
        Require.present("pipe material", material);
        Require.within("outside diameter", outsideDiameterM, 1e-3, 10, "m");
        Require.within("wall of a pipe of " + Require.show(outsideDiameterM, "m") + " outside", wallM, 1e-4,
                0.45 * outsideDiameterM, "m");
        Require.present("nominal pressure", nominalPressurePa)
                .ifPresent(value -> Require.within("nominal pressure", value, 1e4, 1e8, "Pa"));
        Require.text("source of the pipe size", source);
    }

    /** True bore [m]: outside diameter less two walls. */
    public double boreM() {
        return outsideDiameterM - 2 * wallM;
    }

    /**
     * A run of this pipe.
     *
     * @param lengthM   [m], 0 to 1e6
     * @param fittingsK sum of loss coefficients, 0 to 1e6
     * @param years     age, 0 for new pipe, to 100
     * @throws IllegalArgumentException also where age makes the pipe rougher than the friction formula holds for
     */
    public PipeRun run(double lengthM, double fittingsK, double years) {
        return new PipeRun(boreM(), lengthM, material.agedRoughnessM(years), fittingsK);
    }
}
