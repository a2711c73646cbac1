package org.roofspring.cli.internal;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.ChlorineAnswer;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.ChlorineContact;
import org.roofspring.treatment.disinfection.ChlorineDose;
import org.roofspring.treatment.disinfection.ChlorineProduct;
import org.roofspring.treatment.disinfection.ChlorineProduct.Basis;
import org.roofspring.treatment.disinfection.ChlorineProduct.Form;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Dose of a chlorine product and the credit of its contact. */
@Command(name = "chlorine", description = {
        "How much chlorine product a volume of water takes, and what the contact earns.",
        "Only a measured residual earns a credit." })
public final class ChlorineCommand extends AnswerCommand {
    @Option(names = "--volume", required = true, converter = QuantityOption.Volume.class,
            description = "water to treat, such as 5000L")
    private Quantity volume;

    @Option(names = "--dose", required = true, converter = QuantityOption.Concentration.class,
            description = "available chlorine to add, such as 5mg/L")
    private Quantity dose;

    @Option(names = "--strength", required = true, converter = QuantityOption.Ratio.class,
            description = "available chlorine on the label, such as 12.5%%")
    private Quantity strength;

    @Option(names = "--product", defaultValue = "liquid", description = "liquid or granules [${DEFAULT-VALUE}]")
    private String product;

    @Option(names = "--basis", description = "of the strength: wv (g in 100 mL) or ww (g in 100 g) "
            + "[wv for liquid, ww for granules]")
    private String basis;

    @Option(names = "--density", defaultValue = "1.2kg/L", converter = QuantityOption.Density.class,
            description = "of a liquid, to turn mass into volume [${DEFAULT-VALUE}]")
    private Quantity density;

    @Option(names = "--drop", defaultValue = "0.05mL", converter = QuantityOption.Volume.class,
            description = "volume of a drop [${DEFAULT-VALUE}]")
    private Quantity drop;

    @Option(names = "--residual", converter = QuantityOption.Concentration.class,
            description = "free chlorine measured at the end of the contact; without it nothing is credited")
    private Quantity residual;

    @Option(names = "--contact", defaultValue = "30min", converter = QuantityOption.Duration.class,
            description = "time the water stands before use [${DEFAULT-VALUE}]")
    private Quantity contact;

    @Option(names = "--ph", defaultValue = "7", converter = QuantityOption.Ratio.class,
            description = "of the water [${DEFAULT-VALUE}]")
    private Quantity ph;

    @Option(names = "--temperature", defaultValue = "20degC", converter = QuantityOption.Temperature.class,
            description = "of the water [${DEFAULT-VALUE}]")
    private Quantity temperature;

    @Override
    Outcome answer() {
        Check.positive("--volume", volume);
        double volumeM3 = Check.between("--volume", volume, Quantity.of(0, Units.L),
                Quantity.of(ChlorineDose.MAX_VOLUME_M3, Units.M3));
        Check.positive("--dose", dose);
        double doseMgPerL = Check.between("--dose", dose, Quantity.of(0, Units.MG_PER_L),
                Quantity.of(ChlorineDose.MAX_DOSE_MG_PER_L, Units.MG_PER_L));
        Check.positive("--drop", drop);
        double dropM3 = Check.between("--drop", drop, Quantity.of(0, Units.ML), Quantity.of(1, Units.ML));
        return ChlorineAnswer.of(null, volumeM3, doseMgPerL, product(), dropM3, contact());
    }

    private ChlorineProduct product() {
        Form form = Check.word("--product", product, "liquid", "granules").equals("liquid") ? Form.LIQUID
                : Form.GRANULES;
        Basis given = basis == null ? ChlorineProduct.defaultBasis(form)
                : Check.word("--basis", basis, "wv", "ww").equals("wv") ? Basis.WEIGHT_PER_VOLUME
                        : Basis.WEIGHT_PER_WEIGHT;
        if (form == Form.GRANULES && given == Basis.WEIGHT_PER_VOLUME) {
            throw new Failures.BadInputException("--basis wv is of liquids; ww is accepted for granules");
        }
        if (!(strength.si() > 0 && strength.si() <= 1)) {
            throw new Failures.BadInputException("--strength is " + strength
                    + "; more than 0 up to 1 is accepted, or with a percent sign as in 65%");
        }
        double densityKgPerM3 = Check.between("--density", density, Quantity.of(0.5, Units.KG_PER_L),
                Quantity.of(3, Units.KG_PER_L));
        return new ChlorineProduct(form, strength.si(), given, densityKgPerM3);
    }

    private ChlorineContact contact() {
        double residualMgPerL = residual == null ? 0
                : Check.between("--residual", residual, Quantity.of(0, Units.MG_PER_L),
                        Quantity.of(ChlorineContact.MAX_RESIDUAL_MG_PER_L, Units.MG_PER_L));
        return new ChlorineContact(residualMgPerL,
                Check.between("--contact", contact, Quantity.of(0, Units.MIN), Quantity.of(1000, Units.D)),
                Baffling.STANDING, Check.between("--ph", ph, Quantity.of(0), Quantity.of(14)),
                Check.between("--temperature", temperature, Quantity.of(-5, Units.DEG_C),
                        Quantity.of(100, Units.DEG_C)));
    }
}
