package org.roofspring.treatment.train;

import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.ChlorineContact;
import org.roofspring.treatment.disinfection.ChlorineCredit;
import org.roofspring.treatment.disinfection.GiardiaContactTable;
import org.roofspring.treatment.disinfection.VirusContactTable;
import org.roofspring.treatment.internal.Checks;

/**
 * Free chlorine with a contact time. Giardia and viruses are credited by the contact-time tables; bacteria, which the
 * tables leave out, by the class of technology where at least 0.5 mg/L is left after 30 minutes at a pH below 8;
 * Cryptosporidium never.
 *
 * @param residualMgPerL free chlorine at the end of the contact, measured or modelled, 0 to 100 [mg/L]; empty where
 *                       only a dose is known
 * @param contactS       0 to 1e8 [s]
 * @param baffling       of the contact tank
 * @param stabilised     the product carries cyanuric acid, as pool products often do
 */
public record Chlorination(OptionalDouble residualMgPerL, double contactS, Baffling baffling, boolean stabilised)
        implements Treatment {
    /** For bacteria; 0.5 mg/L after 30 minutes was also read in enHealth, Guidance on Use of Rainwater Tanks. */
    public static final Source BACTERIA_SOURCE = Source.fromMemory("WHO Guidelines for Drinking-water Quality, 4th ed: "
            + "0.5 mg/L free chlorine after 30 minutes at pH below 8");
    /** From memory, verify against WHO Guidelines for Drinking-water Quality: turbidity before chlorine [NTU]. */
    public static final double MAX_TURBIDITY_NTU = 5;

    private static final double BACTERIA_RESIDUAL_MG_PER_L = 0.5;
    private static final double BACTERIA_CONTACT_S = 1800;
    private static final double BACTERIA_PH = 8;

    public Chlorination {
        Checks.present("residual (residualMgPerL)", residualMgPerL);
        new ChlorineContact(residualMgPerL.orElse(0), contactS, baffling, 7, 20);
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.OXIDANT;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        double residual = residualMgPerL.orElse(0);
        return List.of(
                Condition.of("chlorine.residual", residual > 0, "A free chlorine residual was measured or modelled",
                        residualMgPerL.isEmpty() ? "a dose is not a residual" : Checks.shown(residual) + " mg/L"),
                Condition.of("chlorine.contact", contactS > 0, "The water has a contact time",
                        Checks.shown(contactS / 60) + " min"),
                Condition.of("chlorine.ph", entering.ph() <= 9 + 1e-9, "The pH is at most 9, where the tables end",
                        "pH " + Checks.shown(entering.ph())),
                Condition.of("chlorine.temperature", entering.temperatureC() >= 0.5 - 1e-9,
                        "The water has at least 0.5 degC, where the tables begin",
                        Checks.shown(entering.temperatureC()) + " degC"),
                Limits.turbidity("chlorine.turbidity", entering, MAX_TURBIDITY_NTU),
                Condition.of("chlorine.stabilised", !stabilised, "The product is not stabilised with cyanuric acid",
                        stabilised ? "stabilised" : "unstabilised"));
    }

    @Override
    public Credit credit(PathogenGroup group, WaterState entering, Removal removal) {
        double byClass = removal.of(group).low();
        Source classSource = removal.of(group).source();
        ChlorineCredit table = ChlorineCredit.of(contact(entering));
        return switch (group) {
            case BACTERIA -> bacteriaReached(entering) ? Credit.of(byClass, classSource)
                    : Credit.of(0, BACTERIA_SOURCE, byClass, classSource);
            case VIRUSES -> Credit.of(Math.min(table.logVirus(), removal.of(group).high()), VirusContactTable.SOURCE,
                    byClass, classSource);
            case GIARDIA -> Credit.of(Math.min(table.logGiardia(), removal.of(group).high()),
                    GiardiaContactTable.SOURCE, byClass, classSource);
            case CRYPTOSPORIDIUM -> Credit.of(ChlorineCredit.LOG_CRYPTOSPORIDIUM, classSource);
        };
    }

    private boolean bacteriaReached(WaterState entering) {
        return residualMgPerL.orElse(0) >= BACTERIA_RESIDUAL_MG_PER_L - 1e-9
                && contactS * baffling.ratio() >= BACTERIA_CONTACT_S - 1e-6 && entering.ph() < BACTERIA_PH;
    }

    /** The contact in the water that enters. */
    public ChlorineContact contact(WaterState entering) {
        return new ChlorineContact(residualMgPerL.orElse(0), contactS, baffling, entering.ph(),
                entering.temperatureC());
    }

    @Override
    public double freeChlorineAfter(WaterState entering) {
        return residualMgPerL.orElse(entering.freeChlorineMgPerL());
    }
}
