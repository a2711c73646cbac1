package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.IntensityAnswer;
import org.roofspring.calc.standard.answer.IntensityAnswer.Law;
import org.roofspring.calc.standard.answer.IntensityAnswer.Storm;
import org.roofspring.drainage.intensity.DesignIntensity;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.drainage.intensity.IntensityRelation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.rain.RainStatistics;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Intensity of a design storm, from a daily record or from a relation that is given. */
@Command(name = "intensity", description = { "Intensity of the storm that gutters are sized for.",
        "Either from a daily record (--rain, --return-period) or from an intensity-duration relation (--relation)." })
public final class IntensityCommand extends AnswerCommand {
    private static final String DEFAULT_DAY_FACTOR = "" + DesignIntensity.DEFAULT_DAY_FACTOR;

    @Option(names = "--rain", paramLabel = "FILE", description = "daily rain record of five complete years or more")
    private Path rain;

    @Mixin
    private RainOptions rainOptions;

    @Option(names = "--return-period", converter = QuantityOption.Duration.class,
            description = "of the storm, such as 10yr; needed with --rain")
    private Quantity returnPeriod;

    @Option(names = "--duration", defaultValue = "5min", converter = QuantityOption.Duration.class,
            description = "of the burst [${DEFAULT-VALUE}, usual for roofs]")
    private Quantity duration;

    @Option(names = "--law", defaultValue = "gumbel",
            description = "of the yearly maxima: gumbel or gev [${DEFAULT-VALUE}]")
    private String law;

    @Option(names = "--day-factor", defaultValue = DEFAULT_DAY_FACTOR, converter = QuantityOption.Ratio.class,
            description = "from a day read at a fixed hour to any 24 hours [${DEFAULT-VALUE}]")
    private Quantity dayFactor;

    @Option(names = "--ratios", defaultValue = "third-power",
            description = "from 24 hours to the burst: third-power or brazilian [${DEFAULT-VALUE}]")
    private String ratios;

    @Option(names = "--relation", description = "talbot a/(t+b), sherman a/(t+b)^n or wenzel a/(t^n+b), t in minutes")
    private String relation;

    @Option(names = "--a", converter = QuantityOption.Ratio.class, description = "coefficient a of the relation")
    private Quantity a;

    @Option(names = "--b", converter = QuantityOption.Ratio.class, description = "coefficient b of the relation")
    private Quantity b;

    @Option(names = "--n", converter = QuantityOption.Ratio.class, description = "exponent n of the relation")
    private Quantity n;

    @Option(names = "--relation-unit", defaultValue = "mm/h",
            description = "unit in which the relation gives the intensity: mm/h or in/h [${DEFAULT-VALUE}]")
    private String relationUnit;

    @Override
    Outcome answer() throws IOException {
        if (rain == null && relation == null) {
            throw new Failures.BadInputException("--rain or --relation is missing; one of them is needed");
        }
        if (rain != null && relation != null) {
            throw new Failures.BadInputException("--rain and --relation exclude each other; give one of them");
        }
        return rain != null ? fromRecord() : fromRelation();
    }

    private Outcome fromRecord() throws IOException {
        Check.between("--return-period", given("--return-period", returnPeriod, "a record needs it, such as 10yr"),
                Quantity.of(1.01, Units.YR), Quantity.of(10_000, Units.YR));
        double durationS = Check.between("--duration", duration, Quantity.of(5, Units.MIN), Quantity.of(24, Units.H));
        DurationRatios shares = Check.word("--ratios", ratios, "third-power", "brazilian").equals("brazilian")
                ? DurationRatios.brazilian() : DurationRatios.thirdPower();
        Storm storm = new Storm(returnPeriod.in(Units.YR), durationS,
                Check.word("--law", law, "gumbel", "gev").equals("gev") ? Law.GEV : Law.GUMBEL,
                Check.between("--day-factor", dayFactor, Quantity.of(1), Quantity.of(2)), shares);
        return IntensityAnswer.fromRecord(null, RainStatistics.of(rainOptions.read(rain).record()), storm);
    }

    private Outcome fromRelation() {
        double durationS = Check.between("--duration", duration, Quantity.of(1, Units.MIN), Quantity.of(7, Units.D));
        IntensityRelation given = switch (Check.word("--relation", relation, "talbot", "sherman", "wenzel")) {
            case "talbot" -> new IntensityRelation.Talbot(first(), second());
            case "sherman" -> new IntensityRelation.Sherman(first(), second(), exponent());
            default -> new IntensityRelation.Wenzel(first(), second(), exponent());
        };
        boolean inches = Check.word("--relation-unit", relationUnit, "mm/h", "in/h").equals("in/h");
        return IntensityAnswer.fromRelation(null, inches ? given.times(IntensityRelation.MM_PER_INCH) : given,
                durationS);
    }

    private double first() {
        return Check.between("--a", given("--a", a, "the relation needs it"), Quantity.of(1e-6), Quantity.of(1e5));
    }

    private double second() {
        return Check.between("--b", given("--b", b, "the relation needs it"), Quantity.of(0), Quantity.of(1e5));
    }

    private double exponent() {
        return Check.between("--n", given("--n", n, "the relation needs it"), Quantity.of(0.01), Quantity.of(3));
    }

    private static Quantity given(String option, Quantity value, String why) {
        if (value == null) {
            throw new Failures.BadInputException(option + " is missing; " + why);
        }
        return value;
    }
}
