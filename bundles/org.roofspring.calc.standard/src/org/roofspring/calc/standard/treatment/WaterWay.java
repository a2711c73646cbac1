package org.roofspring.calc.standard.treatment;

import java.util.List;

import org.roofspring.site.PipeRun;
import org.roofspring.site.Roof;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TopUp;
import org.roofspring.site.TreatmentTrain;

/**
 * The way the water takes to a use.
 *
 * @param trains     that all of it passes, from the tank to the use
 * @param bypassing  taps of the use that a pipe reaches without passing all of these trains
 * @param stores     tanks that hold water which has passed a train
 * @param tanks      that the water can come from, these stores included
 * @param roofs      whose water reaches these tanks
 * @param topUps     water from outside that reaches these tanks
 * @param pipes      that lead to the use
 */
record WaterWay(List<TreatmentTrain> trains, List<Tap> bypassing, List<Tank> stores, List<Tank> tanks,
        List<Roof> roofs, List<TopUp> topUps, List<PipeRun> pipes) {
    WaterWay {
        trains = List.copyOf(trains);
        bypassing = List.copyOf(bypassing);
        stores = List.copyOf(stores);
        tanks = List.copyOf(tanks);
        roofs = List.copyOf(roofs);
        topUps = List.copyOf(topUps);
        pipes = List.copyOf(pipes);
    }
}
