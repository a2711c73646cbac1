package org.roofspring.site.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.internal.io.SiteSaver;

/**
 * A program of its own that saves a site and stands still at one step of it, waiting to be killed. Arguments: file,
 * file with the content to save, step. The content comes ready from the parent, so that this starts in no time: turning
 * a site into bytes touches no disk.
 */
final class KilledWhileSaving {
    /** What it prints when it stands still; the name of the step follows. */
    static final String HERE = "at ";
    /** What it prints when the step does not exist and the site was saved. */
    static final String SAVED = "saved";

    private KilledWhileSaving() {
    }

    public static void main(String[] arguments) throws IOException {
        int last = Integer.parseInt(arguments[2]);
        new SiteSaver(new StoppingDisk((step, what) -> {
            if (step == last) {
                System.out.println(HERE + what);
                while (true) {
                    System.in.read(); // nothing is ever sent
                }
            }
        })).save(Files.readAllBytes(Path.of(arguments[1])), Path.of(arguments[0]), null);
        System.out.println(SAVED);
    }

    /** A site of some 100 kB. */
    static Site site(String name) {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setId("site");
        site.setName(name);
        for (int i = 0; i < 1000; i++) {
            Roof roof = SiteFactory.eINSTANCE.createRoof();
            roof.setId("roof-" + i);
            roof.setName(name + " roof " + i + " of a rather long building");
            roof.setPlanArea(Quantity.of(i, Units.M2));
            site.getRoofs().add(roof);
        }
        return site;
    }
}
