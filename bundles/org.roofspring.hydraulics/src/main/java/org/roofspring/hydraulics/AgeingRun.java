package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * A run of pipe, new and as it will be when old.
 *
 * @param fresh          the run with the roughness of new pipe
 * @param agedRoughnessM roughness at the age that the design is to serve [m], not below that of new pipe, to 0.05 of
 *                       bore
 */
public record AgeingRun(PipeRun fresh, double agedRoughnessM) {
    public AgeingRun {
        Require.present("run of pipe", fresh);
        Require.within("aged roughness of a pipe of " + Require.show(fresh.boreM(), "m") + " bore", agedRoughnessM,
                fresh.roughnessM(), PipeFriction.ROUGHEST * fresh.boreM(), "m");
    }

    /** A run that does not age. */
    public static AgeingRun lasting(PipeRun run) {
        return new AgeingRun(Require.present("run of pipe", run), run.roughnessM());
    }

    /** A run of catalogue pipe, new and after some years. */
    public static AgeingRun of(PipeSize pipe, double lengthM, double fittingsK, double years) {
        Require.present("pipe", pipe);
        return new AgeingRun(pipe.run(lengthM, fittingsK, 0), pipe.material().agedRoughnessM(years));
    }

    /** The run as it is when new, or when old. */
    public PipeRun run(boolean aged) {
        return aged ? fresh.withRoughnessM(agedRoughnessM) : fresh;
    }
}
