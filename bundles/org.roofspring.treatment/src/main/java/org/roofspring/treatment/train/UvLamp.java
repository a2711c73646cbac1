package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.disinfection.UvDoseTable;
import org.roofspring.treatment.internal.Checks;

/**
 * An ultraviolet lamp. Protozoa and viruses are credited by the dose table or by the class of technology, as chosen;
 * bacteria, which the table leaves out, by the class where the dose is at least 40 mJ/cm2.
 *
 * @param uvDoseMjPerCm2 validated dose at the peak flow and the lamp's end of life, 0 to 1e6 [mJ/cm2]
 * @param basis          which source credits protozoa and viruses
 * @param powered        has a power supply; for power that fails at times see the share of time out of {@link Running}
 */
public record UvLamp(double uvDoseMjPerCm2, Basis basis, boolean powered) implements Treatment {

    /** Which of two sources credits a step. */
    public enum Basis { DOSE_TABLE, TECHNOLOGY_CLASS, LOWER_OF_BOTH }

    /** Dose of household lamps' validation [mJ/cm2]; from memory, verify against NSF/ANSI 55 class A. */
    public static final double CLASS_DOSE_MJ_PER_CM2 = 40;
    /** From memory, verify against WHO Guidelines for Drinking-water Quality: turbidity before disinfection [NTU]. */
    public static final double MAX_TURBIDITY_NTU = 1;
    /** Common practice, no source [ratio]. */
    public static final double MIN_TRANSMITTANCE = 0.75;
    public static final Source BELOW_CLASS_SOURCE = Source.assumed("no class credit below a validated 40 mJ/cm2");

    public UvLamp {
        Checks.within("UV dose (uvDoseMjPerCm2)", uvDoseMjPerCm2, 0, UvDoseTable.MAX_DOSE_MJ_PER_CM2, "mJ/cm2");
        Checks.present("basis", basis);
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.ULTRAVIOLET;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of(
                Condition.of("uv.power", powered, "The lamp has power", powered ? "connected" : "no supply"),
                Condition.of("uv.turbidity", entering.turbidityNtu() <= MAX_TURBIDITY_NTU + 1e-9,
                        "The water that enters has at most 1 NTU", Checks.shown(entering.turbidityNtu()) + " NTU"),
                Condition.of("uv.transmittance", entering.uvTransmittanceRatio() >= MIN_TRANSMITTANCE,
                        "At least 75 % of the light passes 10 mm of the water",
                        Checks.shown(entering.uvTransmittanceRatio() * 100) + " %"));
    }

    @Override
    public Credit credit(PathogenGroup group, WaterState entering, Removal removal) {
        boolean inClass = uvDoseMjPerCm2 >= CLASS_DOSE_MJ_PER_CM2 - 1e-9;
        double byClass = inClass ? removal.of(group).low() : 0;
        Source classSource = inClass ? removal.of(group).source() : BELOW_CLASS_SOURCE;
        if (group == PathogenGroup.BACTERIA) {
            return Credit.of(byClass, classSource);
        }
        double byDose = Math.min(table(group).credit(uvDoseMjPerCm2), removal.of(group).high());
        boolean dose = basis == Basis.DOSE_TABLE || basis == Basis.LOWER_OF_BOTH && byDose <= byClass;
        return dose ? Credit.of(byDose, UvDoseTable.SOURCE, byClass, classSource)
                : Credit.of(byClass, classSource, byDose, UvDoseTable.SOURCE);
    }

    private static UvDoseTable table(PathogenGroup group) {
        return switch (group) {
            case VIRUSES -> UvDoseTable.VIRUS;
            case GIARDIA -> UvDoseTable.GIARDIA;
            case CRYPTOSPORIDIUM -> UvDoseTable.CRYPTOSPORIDIUM;
            case BACTERIA -> throw new IllegalArgumentException("group must not be bacteria: the dose table has none");
        };
    }
}
