package org.roofspring.ui.tests.edit;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Ids;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.TankLink;
import org.roofspring.site.UpkeepTask;

/** A small site with references of every sort: required and not, single and many, from rows and from elements. */
final class SampleSite {
    final Site site = SiteFactory.eINSTANCE.createSite();
    final Roof north = roof("North", 100);
    final Roof south = roof("South", 50);
    final Tank cistern = tank("Cistern");
    final Tank overhead = tank("Overhead");
    final RoofDrain drain = SiteFactory.eINSTANCE.createRoofDrain();
    final TankLink link = SiteFactory.eINSTANCE.createTankLink();
    final PipeRun main = SiteFactory.eINSTANCE.createPipeRun();
    final UpkeepTask cleaning = SiteFactory.eINSTANCE.createUpkeepTask();

    SampleSite() {
        site.setName("Sample");
        drain.setTo(cistern);
        north.getDrains().add(drain);
        link.setName("Balance pipe");
        link.setFrom(cistern);
        link.setTo(overhead);
        site.getTankLinks().add(link);
        main.setName("Rising main");
        main.setFrom(cistern);
        main.setTo(overhead);
        site.getPipeRuns().add(main);
        cleaning.setName("Clean");
        cleaning.getElements().add(north);
        cleaning.getElements().add(cistern);
        site.getUpkeep().add(cleaning);
        Ids.assignMissing(site);
    }

    private Roof roof(String name, double areaM2) {
        Roof roof = SiteFactory.eINSTANCE.createRoof();
        roof.setName(name);
        roof.setPlanArea(Quantity.of(areaM2, Units.M2));
        site.getRoofs().add(roof);
        return roof;
    }

    private Tank tank(String name) {
        Tank tank = SiteFactory.eINSTANCE.createTank();
        tank.setName(name);
        tank.setCapacity(Quantity.of(10, Units.M3));
        site.getTanks().add(tank);
        return tank;
    }
}
