package org.roofspring.treatment.risk;

import java.util.List;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * A reference pathogen; every figure may be replaced.
 *
 * @param name             shown to the user
 * @param group            whose log reductions apply
 * @param doseResponse     infection by dose
 * @param illnessRatio     share of the infected who fall ill, above 0 to 1
 * @param dalyPerCase      healthy years lost by a case, above 0 to 100
 * @param susceptibleRatio share of people who can be infected, above 0 to 1
 * @param source           of the figures
 */
public record Pathogen(String name, PathogenGroup group, DoseResponse doseResponse, double illnessRatio,
        double dalyPerCase, double susceptibleRatio, Source source) {

    public static final Source CHAIN_SOURCE = Source.fromMemory("WHO Guidelines for Drinking-water Quality, 3rd ed, "
            + "Table 7.4");

    /** The chain of the WHO guidelines, 3rd edition: r at low dose. */
    public static final Pathogen CRYPTOSPORIDIUM = new Pathogen("Cryptosporidium", PathogenGroup.CRYPTOSPORIDIUM,
            new DoseResponse.Exponential(4.0e-3), 0.7, 1.5e-3, 1, CHAIN_SOURCE);
    public static final Pathogen CAMPYLOBACTER = new Pathogen("Campylobacter", PathogenGroup.BACTERIA,
            new DoseResponse.Exponential(1.8e-2), 0.3, 4.6e-3, 1, CHAIN_SOURCE);
    public static final Pathogen ROTAVIRUS = new Pathogen("rotavirus", PathogenGroup.VIRUSES,
            new DoseResponse.Exponential(0.27), 0.5, 1.4e-2, 0.06, CHAIN_SOURCE);

    /** Medema et al. 1996 (abstract read): alpha and beta. */
    public static final DoseResponse.BetaPoisson CAMPYLOBACTER_CURVE = new DoseResponse.BetaPoisson(0.145, 7.59);
    /** Ward et al. 1986, fitted by Haas et al. 1993: N50 read, alpha from memory. */
    public static final DoseResponse.BetaPoisson ROTAVIRUS_CURVE =
            DoseResponse.BetaPoisson.fromMedianDose(0.253, 6.17);
    /** A public collection of dose-response models, recommended list: the mantissa was read, the exponent not. */
    public static final DoseResponse.Exponential CRYPTOSPORIDIUM_HOMINIS_CURVE = new DoseResponse.Exponential(5.72e-2);
    /** Haas et al. 2000, from memory. */
    public static final DoseResponse.BetaPoisson E_COLI_O157_CURVE =
            DoseResponse.BetaPoisson.fromMedianDose(0.49, 5.96e5);

    public Pathogen {
        Checks.text("name", name);
        Checks.present("group", group);
        Checks.present("doseResponse", doseResponse);
        Checks.positive("share that falls ill (illnessRatio)", illnessRatio, 1, "");
        Checks.positive("burden of a case (dalyPerCase)", dalyPerCase, 100, "DALY");
        Checks.positive("susceptible share (susceptibleRatio)", susceptibleRatio, 1, "");
        Checks.present("source", source);
    }

    /** The reference pathogens of the chain. */
    public static List<Pathogen> references() {
        return List.of(CAMPYLOBACTER, ROTAVIRUS, CRYPTOSPORIDIUM);
    }

    public Pathogen withDoseResponse(DoseResponse other, Source otherSource) {
        return new Pathogen(name, group, other, illnessRatio, dalyPerCase, susceptibleRatio, otherSource);
    }
}
