package org.roofspring.cli.internal;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.GutterAnswer;
import org.roofspring.drainage.Gutter;
import org.roofspring.drainage.GutterCapacity;
import org.roofspring.drainage.GutterSection;
import org.roofspring.drainage.HalfRoundSection;
import org.roofspring.drainage.RectangularSection;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What a gutter carries, and what the roof sends it. */
@Command(name = "gutter", description = "Capacity of a gutter against the flow off its roof in a storm.")
public final class GutterCommand extends AnswerCommand {
    @Option(names = "--profile", required = true, description = "half-round or rectangular")
    private String profile;

    @Option(names = "--width", required = true, converter = QuantityOption.Length.class,
            description = "between the brims, such as 125mm")
    private Quantity width;

    @Option(names = "--depth", converter = QuantityOption.Length.class,
            description = "from the sole to the brim; needed for rectangular [half the width of a half-round]")
    private Quantity depth;

    @Option(names = "--length", required = true, converter = QuantityOption.Length.class,
            description = "from the closed end, or from midway between two outlets, to the outlet")
    private Quantity length;

    @Option(names = "--slope", required = true, converter = QuantityOption.Ratio.class,
            description = "fall for each length, such as 0.005 or 0.5%%; 0 is level")
    private Quantity slope;

    @Option(names = "--roof", required = true, converter = QuantityOption.Area.class,
            description = "effective area that drains to this outlet, such as 60m2")
    private Quantity roof;

    @Option(names = "--intensity", required = true, converter = QuantityOption.Intensity.class,
            description = "of the design storm, such as 150mm/h")
    private Quantity intensity;

    @Option(names = "--runoff", defaultValue = "1", converter = QuantityOption.Ratio.class,
            description = "share that runs off at the peak [${DEFAULT-VALUE}, a wet roof sheds everything]")
    private Quantity runoff;

    @Option(names = "--manning", defaultValue = "" + Gutter.DEFAULT_MANNING_N,
            converter = QuantityOption.Ratio.class, description = "Manning's roughness, s/m^(1/3) [${DEFAULT-VALUE}]")
    private Quantity manning;

    @Override
    Outcome answer() {
        Gutter gutter = new Gutter(section(),
                Check.between("--length", length, Quantity.of(0.1, Units.M), Quantity.of(500, Units.M)),
                Check.between("--slope", slope, Quantity.of(0), Quantity.of(10, Units.PERCENT)),
                Check.between("--manning", manning, Quantity.of(0.001), Quantity.of(0.1)));
        double areaM2 = Check.between("--roof", roof, Quantity.of(0, Units.M2), Quantity.of(1e6, Units.M2));
        double intensityMmPerH = Check.between("--intensity", intensity, Quantity.of(0, Units.MM_PER_H),
                Quantity.of(3000, Units.MM_PER_H));
        double runoffRatio = Check.between("--runoff", runoff, Quantity.of(0), Quantity.of(1));
        return GutterAnswer.of(null, GutterCapacity.of(gutter), areaM2, intensityMmPerH, runoffRatio);
    }

    private GutterSection section() {
        boolean round = Check.word("--profile", profile, "half-round", "rectangular").equals("half-round");
        double widthM = Check.between("--width", width, Quantity.of(20, Units.MM), Quantity.of(2, Units.M));
        if (depth == null && !round) {
            throw new Failures.BadInputException("--depth is missing; a rectangular gutter needs it");
        }
        double depthM = depth == null ? widthM / 2
                : Check.between("--depth", depth, Quantity.of(10, Units.MM), Quantity.of(1, Units.M));
        return round ? new HalfRoundSection(widthM, depthM) : new RectangularSection(widthM, depthM);
    }
}
