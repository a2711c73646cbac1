package org.roofspring.cli.internal;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageAnswer;
import org.roofspring.quantity.Quantity;
import org.roofspring.rain.GapFilling;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.StorageDesign;
import org.roofspring.storage.TankBalance;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Daily balance of one tank over a rain record. */
@Command(name = "storage", description = "Runs a tank day by day over a rain record.")
public final class StorageCommand extends AnswerCommand {
    @Mixin
    private CatchmentOptions catchment;

    @Option(names = "--tank", required = true, converter = QuantityOption.Volume.class, description = "usable volume, such as 5000L")
    private Quantity tank;

    @Option(names = "--start", defaultValue = "0L", converter = QuantityOption.Volume.class, description = "volume as the first day begins [${DEFAULT-VALUE}]")
    private Quantity start;

    @Override
    Outcome answer() throws IOException {
        double capacityM3 = Check.notNegative("--tank", tank);
        double startM3 = Check.between("--start", start, Quantity.of(0, tank.unit()), tank);
        GapFilling rain = catchment.filledRain();
        double[] depthMm = rain.record().completeDepthsMm();
        double[] inflowM3 = catchment.catchment().inflowM3(depthMm);
        StorageDesign design = new StorageDesign(capacityM3, startM3, catchment.rule());
        BalanceResult result = TankBalance.run(inflowM3, catchment.demandM3PerDay(), design);
        AnswerBuilder answer = StorageAnswer.of(null, design.rule(), capacityM3, result,
                catchment.inflowStep(Arrays.stream(depthMm).sum(), result.totals().inflowM3()));
        if (rain.filledDays() > 0) {
            answer.caution(new Caution("rain.filled-days", Caution.Severity.WARNING, null, "{0}", List.of(rain.statement()), "",
                    Source.definition("--gaps")));
        }
        return answer.build();
    }
}
