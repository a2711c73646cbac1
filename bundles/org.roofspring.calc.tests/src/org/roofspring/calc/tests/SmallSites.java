package org.roofspring.calc.tests;

import org.roofspring.quantity.Quantity;
import org.roofspring.site.Junction;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;

/** Invented sites of a few parts, small enough to work out by hand. */
final class SmallSites {
    private static final SiteFactory FACTORY = SiteFactory.eINSTANCE;

    private SmallSites() {
    }

    /** Cistern with water between 0 and 2 m, pump at 0.5 m, overhead tank whose inlet is at 12 m, 40 mm pipes. */
    static Site pumped() {
        Site site = FACTORY.createSite();
        site.setId("site");
        Tank cistern = tank(site, "cistern", "0 m");
        cistern.setOverflowHeight(q("2 m"));
        Tank overhead = tank(site, "overhead", "10 m");
        overhead.setCapacity(q("2 m3"));
        overhead.setOverflowHeight(q("1.9 m"));
        overhead.setInletHeight(q("2 m"));
        overhead.setStartHeight(q("0.5 m"));
        overhead.setStopHeight(q("1.5 m"));
        Pump pump = FACTORY.createPump();
        pump.setId("pump");
        pump.setName("Pump");
        pump.setLevel(q("0.5 m"));
        pump.setFootValve(true);
        points(pump, 0, 24, 0.5, 22.5, 1, 18, 1.5, 11, 2, 2);
        site.getPumps().add(pump);
        run(site, "suction", cistern, pump, "40 mm", "4 m");
        run(site, "rising", pump, overhead, "40 mm", "40 m");
        return site;
    }

    /** A tank with water at 5.5 m that feeds one tap at 1 m through a short pipe so wide that it takes no head. */
    static Site oneTap() {
        Site site = FACTORY.createSite();
        site.setId("site");
        Tank tank = tank(site, "tank", "5 m");
        tank.setOverflowHeight(q("2 m"));
        tank.setStartHeight(q("0.5 m"));
        run(site, "drop", tank, tap(site, "tap", "1 m"), "500 mm", "1 m");
        return site;
    }

    static Tank tank(Site site, String id, String base) {
        Tank tank = FACTORY.createTank();
        tank.setId(id);
        tank.setName("Tank " + id);
        tank.setBaseLevel(q(base));
        site.getTanks().add(tank);
        return tank;
    }

    /** A tap that gives 6 L/min at 1 m of head. */
    static Tap tap(Site site, String id, String level) {
        Tap tap = FACTORY.createTap();
        tap.setId(id);
        tap.setName("Tap " + id);
        tap.setLevel(q(level));
        tap.setDesignFlow(q("6 L/min"));
        tap.setMinimumHead(q("1 m(head)"));
        site.getTaps().add(tap);
        return tap;
    }

    static Junction junction(Site site, String id, String level) {
        Junction junction = FACTORY.createJunction();
        junction.setId(id);
        junction.setName("Junction " + id);
        junction.setLevel(q(level));
        site.getJunctions().add(junction);
        return junction;
    }

    static PressureVessel vessel(Site site, String level) {
        PressureVessel vessel = FACTORY.createPressureVessel();
        vessel.setId("vessel");
        vessel.setName("Vessel");
        vessel.setLevel(q(level));
        vessel.setVolume(q("100 L"));
        vessel.setPrecharge(q("80 kPa"));
        vessel.setCutIn(q("100 kPa"));
        vessel.setCutOut(q("180 kPa"));
        site.getPressureVessels().add(vessel);
        return vessel;
    }

    static PipeRun run(Site site, String id, PipeNode from, PipeNode to, String bore, String length) {
        PipeRun run = FACTORY.createPipeRun();
        run.setId(id);
        run.setName("Run " + id);
        run.setFrom(from);
        run.setTo(to);
        run.setBore(q(bore));
        run.setLength(q(length));
        run.setMaterial(PipeMaterial.POLYETHYLENE);
        site.getPipeRuns().add(run);
        return run;
    }

    /** Points from pairs of flow in L/s and head in m, with an efficiency of 40 % and 2 m of NPSH required. */
    static void points(PumpData data, double... flowsAndHeads) {
        data.getPoints().clear();
        for (int i = 0; i < flowsAndHeads.length; i += 2) {
            PumpPoint point = FACTORY.createPumpPoint();
            point.setFlow(q(flowsAndHeads[i] + " L/s"));
            point.setHead(q(flowsAndHeads[i + 1] + " m"));
            point.setEfficiency(q("40 %"));
            point.setNpshRequired(q("2 m"));
            data.getPoints().add(point);
        }
    }

    static Quantity q(String text) {
        return Quantity.valueOf(text);
    }
}
