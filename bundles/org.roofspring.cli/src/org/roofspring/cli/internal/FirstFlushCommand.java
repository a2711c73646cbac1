package org.roofspring.cli.internal;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.FirstFlushAnswer;
import org.roofspring.drainage.tank.FirstFlush;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How much of the first rain to turn away. */
@Command(name = "firstflush", description = "How much of the first rain to turn away, and the chamber that holds it.")
public final class FirstFlushCommand extends AnswerCommand {
    private static final double MOST_MM = 50;

    @Option(names = "--roof", required = true, converter = QuantityOption.Area.class,
            description = "plan area that drains to the chamber, such as 60m2")
    private Quantity roof;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Aim aim;

    @Option(names = "--half-depth", defaultValue = "1mm", converter = QuantityOption.Length.class,
            description = "rain that halves the contamination [${DEFAULT-VALUE}]")
    private Quantity halfDepth;

    @Option(names = "--storm", converter = QuantityOption.Length.class,
            description = "a whole rain, such as 20mm, to say how clean what gets past is")
    private Quantity storm;

    @ArgGroup(exclusive = false)
    private Chamber chamber;

    /** What is asked of the diverter. */
    static final class Aim {
        @Option(names = "--depth", required = true, converter = QuantityOption.Length.class,
                description = "rain to turn away, such as 1mm")
        private Quantity depth;

        @Option(names = "--share", required = true, converter = QuantityOption.Ratio.class,
                description = "share of the first contamination that may come next, such as 25%%")
        private Quantity share;
    }

    /** A standing pipe with a hole at its foot. */
    static final class Chamber {
        @Option(names = "--bore", required = true, converter = QuantityOption.Length.class,
                description = "inner diameter of a standing pipe as chamber, such as 100mm")
        private Quantity bore;

        @Option(names = "--hole", required = true, converter = QuantityOption.Length.class,
                description = "diameter of the hole at its foot, such as 3mm")
        private Quantity hole;
    }

    @Override
    Outcome answer() {
        double areaM2 = Check.between("--roof", roof, Quantity.of(0.1, Units.M2), Quantity.of(1e6, Units.M2));
        double halfMm = millimetres("--half-depth", halfDepth, 0.1, 50);
        FirstFlushAnswer answer = aim.depth == null
                ? FirstFlushAnswer.ofShare(null, areaM2, share(halfMm), halfMm)
                : FirstFlushAnswer.ofDepth(null, areaM2, millimetres("--depth", aim.depth, 0, MOST_MM), halfMm);
        if (storm != null) {
            answer.inRain(millimetres("--storm", storm, 0, 5000));
        }
        if (chamber != null) {
            double boreM = Check.between("--bore", chamber.bore, Quantity.of(20, Units.MM), Quantity.of(10, Units.M));
            double holeM = Check.between("--hole", chamber.hole, Quantity.of(0.5, Units.MM),
                    Quantity.of(100, Units.MM));
            Check.named("--bore", () -> answer.inPipe(boreM, holeM));
        }
        return answer.build();
    }

    private double share(double halfMm) {
        double share = Check.between("--share", aim.share, Quantity.of(1e-6), Quantity.of(1));
        double depthMm = FirstFlush.depthForShareMm(share, halfMm);
        if (depthMm > MOST_MM) {
            throw new Failures.BadInputException("--share is " + aim.share + ", for which " + Math.round(depthMm)
                    + " mm would have to be turned away; up to " + Quantity.of(MOST_MM, Units.MM) + " is accepted");
        }
        return share;
    }

    private static double millimetres(String option, Quantity given, double least, double most) {
        Check.between(option, given, Quantity.of(least, Units.MM), Quantity.of(most, Units.MM));
        return given.in(Units.MM);
    }
}
