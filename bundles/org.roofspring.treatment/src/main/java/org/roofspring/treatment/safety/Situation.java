package org.roofspring.treatment.safety;

import java.util.Optional;
import java.util.Set;

import org.roofspring.treatment.internal.Checks;

/**
 * What a verdict has to know besides the train.
 *
 * @param use             of the water
 * @param vulnerableUsers infants, old, pregnant or immunocompromised people use it
 * @param aerosol         it is sprayed where people breathe: shower, mist, sprinkler
 * @param storedAfter     it is stored behind the last step before use
 * @param hazards         of materials and surroundings
 * @param virusPathways   ways in for viruses
 * @param tests           results as they stand on the day
 * @param inspection      score of the sanitary inspection; empty where none was made
 */
public record Situation(Use use, boolean vulnerableUsers, boolean aerosol, boolean storedAfter, Set<Hazard> hazards,
        Set<VirusPathway> virusPathways, WaterTests tests, Optional<InspectionScore> inspection) {
    public Situation {
        Checks.present("use", use);
        hazards = Set.copyOf(Checks.list("hazards", hazards));
        virusPathways = Set.copyOf(Checks.list("virusPathways", virusPathways));
        Checks.present("tests", tests);
        Checks.present("inspection", inspection);
    }

    /** The default target of this use and these people. */
    public UseTarget defaultTarget() {
        return UseTarget.of(use, vulnerableUsers, !virusPathways.isEmpty());
    }
}
