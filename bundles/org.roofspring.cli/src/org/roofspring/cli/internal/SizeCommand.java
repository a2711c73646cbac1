package org.roofspring.cli.internal;

import java.io.IOException;
import java.util.List;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageTerms;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.SequentPeak;
import org.roofspring.storage.SizingAnswer;
import org.roofspring.storage.TankBalance;
import org.roofspring.storage.TankSizing;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Smallest tank that reaches a target. */
@Command(name = "size", description = "Smallest tank that reaches a time reliability over a rain record.")
public final class SizeCommand extends AnswerCommand {
    @Mixin
    private CatchmentOptions catchment;

    @Option(names = "--target", required = true, converter = QuantityOption.Ratio.class, description = "share of days met in full, such as 95%%")
    private Quantity target;

    @Override
    Outcome answer() throws IOException {
        Check.positive("--target", target);
        double targetRatio = Check.between("--target", target, Quantity.of(0), Quantity.of(1));
        double[] inflowM3 = catchment.catchment().inflowM3(catchment.filledRain().record().completeDepthsMm());
        double[] demandM3 = TankBalance.constantDemand(catchment.demandM3PerDay(), inflowM3.length);
        return switch (TankSizing.smallestTank(inflowM3, demandM3, catchment.rule(), targetRatio, () -> false)) {
            case SizingAnswer.NoAnswer none -> new Outcome.NotComputable(List.of(new Outcome.Problem(StorageTerms.reason(none))), List.of());
            case SizingAnswer.Sized sized -> sized(sized, SequentPeak.of(inflowM3, demandM3, 2));
        };
    }

    private Outcome sized(SizingAnswer.Sized sized, SequentPeak peak) {
        Quantity volume = Quantity.of(sized.volumeM3(), Units.M3);
        Quantity peakVolume = Quantity.of(peak.volumeM3(), Units.M3);
        return new AnswerBuilder(null)
                .number("requiredVolume", "Smallest tank that reaches the target", volume,
                        Step.of("S", "bisection on the exact daily simulation, warmed up over one pass", "smallest S with Rt(S) >= R", volume,
                                Source.definition("search over the simulation"), new Input("R", "target", target)))
                .number("timeReliability", "Share of days met in full with it", sized.timeReliability(), Units.ONE,
                        Step.of("Rt", "time reliability of the counted pass", "full days / days with demand", Quantity.of(sized.timeReliability()),
                                Source.definition("counted over the record")))
                .number("sequentPeakVolume", "Sequent-peak storage", peakVolume,
                        Step.of("K", "largest running deficit, the record taken twice", "K(t) = max(0, K(t-1) + D - Q); max K", peakVolume,
                                StorageTerms.SEQUENT_PEAK))
                .build();
    }
}
