package org.roofspring.treatment.disinfection;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.treatment.Caution;
import org.roofspring.treatment.Source;

/** What has to be said beside a dose, a time or a credit. */
public final class DisinfectionCautions {
    /** Chlorine above this may not be drunk [mg/L]. */
    public static final double MAX_CHLORINE_MG_PER_L = 5;
    public static final Source MAX_CHLORINE_SOURCE = Source.fromMemory("WHO Guidelines for Drinking-water Quality, "
            + "4th ed: chlorine 5 mg/L");
    public static final Source TANK_DOSE_SOURCE = Source.read("enHealth, Guidance on Use of Rainwater Tanks 5.2: about "
            + "5 mg/L, at least 0.5 mg/L free after 30 minutes, no stabilised chlorine");
    public static final Source DROPS_SOURCE = Source.commonPractice("one or two drops of 5 % unscented bleach a litre, "
            + "then a wait of 30 to 60 minutes");

    private DisinfectionCautions() {
    }

    /**
     * @param doseMgPerL    what is dosed [mg/L]
     * @param residualKnown whether a residual was measured or modelled
     */
    public static List<Caution> chlorine(double doseMgPerL, boolean residualKnown) {
        List<Caution> cautions = new ArrayList<>();
        if (!residualKnown) {
            cautions.add(Caution.warning("chlorine.dose-is-not-residual", "A dose earns no credit: measure the free "
                    + "chlorine left after the contact time, at least 0.5 mg/L after 30 minutes ("
                    + TANK_DOSE_SOURCE.text() + ")."));
        }
        if (doseMgPerL > MAX_CHLORINE_MG_PER_L) {
            cautions.add(Caution.warning("chlorine.high-dose", "Above 5 mg/L of chlorine the water is not for drinking "
                    + "until it has fallen below (" + MAX_CHLORINE_SOURCE.text() + ")."));
        }
        cautions.add(Caution.danger("chlorine.handling", "Never mix chlorine with acid or other cleaners, and never "
                + "add water to granules; wear gloves and goggles, and use plain unscented product without stabiliser, "
                + "labelled for water. Follow the label and your local health authority."));
        cautions.add(Caution.warning("chlorine.cryptosporidium", "Chlorine does not reach Cryptosporidium; where it "
                + "can be present, boil or filter as well."));
        return cautions;
    }

    public static List<Caution> uv() {
        return List.of(Caution.warning("uv.validated-dose", "The credits hold for the validated dose of the unit at "
                + "its flow and lamp age and the water's transmittance, and only while it is lit; the lamp leaves no "
                + "residual. Have mains wiring near water done by a licensed electrician."));
    }

    public static List<Caution> boil() {
        return List.of(
                Caution.warning("boil.chemicals", "Boiling removes no metals or pesticides and concentrates them."),
                Caution.warning("boil.scald", "Boiling water scalds: keep children away, let it cool covered in "
                        + "the pot it was boiled in."));
    }

    public static List<Caution> solar() {
        return List.of(Caution.warning("solar.viruses", "Some viruses resist the sun ("
                + "adenovirus, PMC4702646); it is no barrier against chemicals, and cloudy bottles or rain all day "
                + "defeat it. Boil instead where someone is ill."));
    }
}
