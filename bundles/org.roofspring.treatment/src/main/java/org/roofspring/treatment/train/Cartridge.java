package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * A replaceable sediment cartridge. Only an absolute rating below the size of an organism is credited with it: bacteria
 * are 0.2 to 0.5 um wide, Cryptosporidium 2 to 6 um (held by 1 um), Giardia 6 to 10 um (held by 3 um); viruses pass
 * every cartridge. A nominal 1 um cartridge may pass 20 to 30 % of particles of 1 um and earns nothing. So a 5 or 20 um
 * cartridge protects the steps behind it and is no barrier itself.
 *
 * @param media   string-wound or pleated
 * @param ratingM particle size of the rating, 1e-8 to 1e-3 [m]
 * @param rating  nominal or absolute
 */
public record Cartridge(Media media, double ratingM, Rating rating) implements Treatment {

    /** How the cartridge is made. */
    public enum Media { STRING_WOUND, PLEATED }

    /** What the printed size means. */
    public enum Rating {
        /** Most particles of that size are held. */
        NOMINAL,
        /** Practically all particles of that size are held, by a stated test. */
        ABSOLUTE
    }

    public static final Source SIZE_SOURCE = Source.read("sizes of organisms and filters: PMC10961906, Table 3; "
            + "nominal ratings: CDC fact sheet on filters and Cryptosporidium, 2004");

    private static final double BACTERIA_M = 0.2e-6;
    private static final double CRYPTOSPORIDIUM_M = 1e-6;
    private static final double GIARDIA_M = 3e-6;

    public Cartridge {
        Checks.present("media", media);
        Checks.within("rating (ratingM)", ratingM, 1e-8, 1e-3, "m");
        Checks.present("rating kind (rating)", rating);
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.SIZE_EXCLUSION;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of();
    }

    /** Whether organisms of the group are held back by their size. */
    public boolean holds(PathogenGroup group) {
        double sizeM = switch (group) {
            case BACTERIA -> BACTERIA_M;
            case VIRUSES -> 0;
            case GIARDIA -> GIARDIA_M;
            case CRYPTOSPORIDIUM -> CRYPTOSPORIDIUM_M;
        };
        return rating == Rating.ABSOLUTE && ratingM <= sizeM * (1 + 1e-9);
    }

    @Override
    public Credit credit(PathogenGroup group, WaterState entering, Removal removal) {
        return holds(group) ? Treatment.super.credit(group, entering, removal) : Credit.of(0, SIZE_SOURCE);
    }
}
