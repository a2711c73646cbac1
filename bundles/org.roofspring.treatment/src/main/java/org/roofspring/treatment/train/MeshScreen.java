package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * A screen that keeps out leaves, insects and small animals. Never credited with pathogens.
 *
 * @param apertureM opening of the mesh, above 0 to 0.1 [m]
 */
public record MeshScreen(double apertureM) implements Treatment {
    /** Largest opening that keeps mosquitoes out [m]: from memory, Australian rainwater tank guidance. */
    public static final double MOSQUITO_APERTURE_M = 0.001;

    public MeshScreen {
        Checks.positive("aperture (apertureM)", apertureM, 0.1, "m");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.SIZE_EXCLUSION;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of(Condition.of("mesh.aperture", apertureM <= MOSQUITO_APERTURE_M * (1 + 1e-9),
                "Mesh openings of at most 1 mm keep mosquitoes out", Checks.shown(apertureM * 1000) + " mm"));
    }
}
