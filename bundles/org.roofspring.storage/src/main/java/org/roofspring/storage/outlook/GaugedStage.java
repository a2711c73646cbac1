package org.roofspring.storage.outlook;

import org.roofspring.storage.system.Stage;
import org.roofspring.storage.system.Tank;

/** The stage whose level is read off, among the others, which hold what the question says. */
record GaugedStage(double[] otherVolumesM3, int stage, double capacityM3) {

    static GaugedStage of(OutlookQuestion question, int stage) {
        int stages = question.system().stages().size();
        if (stage < 0 || stage >= stages) {
            throw new IllegalArgumentException("gaugedStage is " + stage + "; accepted is 0 to " + (stages - 1));
        }
        Stage gauged = question.system().stages().get(stage);
        return new GaugedStage(question.stageVolumeM3().clone(), stage,
                gauged.tanks().stream().mapToDouble(Tank::capacityM3).sum());
    }

    double[] volumes(double gaugedM3) {
        double[] volumes = otherVolumesM3.clone();
        volumes[stage] = Math.min(capacityM3, gaugedM3);
        return volumes;
    }
}
