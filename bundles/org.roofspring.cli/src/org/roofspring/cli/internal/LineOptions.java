package org.roofspring.cli.internal;

import org.roofspring.hydraulics.Atmosphere;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.Suction;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

import picocli.CommandLine.Option;

/** The line a pump works on, and how pumps are arranged on it. */
final class LineOptions {
    @Option(names = "--static-head", required = true, converter = QuantityOption.Length.class,
            description = "from the suction water level to the discharge level, whole")
    private Quantity staticHead;

    @Option(names = "--bore", required = true, converter = QuantityOption.Length.class,
            description = "inner diameter of the delivery")
    private Quantity bore;

    @Option(names = "--length", required = true, converter = QuantityOption.Length.class,
            description = "length of the delivery")
    private Quantity length;

    @Option(names = "--roughness", defaultValue = "0.0015mm", converter = QuantityOption.Length.class,
            description = "of both pipes [${DEFAULT-VALUE}]")
    private Quantity roughness;

    @Option(names = "--fittings", defaultValue = "0", converter = QuantityOption.Ratio.class,
            description = "sum of K of the delivery [${DEFAULT-VALUE}]")
    private Quantity fittings;

    @Option(names = "--temperature", defaultValue = "20degC", converter = QuantityOption.Temperature.class,
            description = "of the water [${DEFAULT-VALUE}]")
    private Quantity temperature;

    @Option(names = "--altitude", defaultValue = "0m", converter = QuantityOption.Length.class,
            description = "above sea level [${DEFAULT-VALUE}]")
    private Quantity altitude;

    @Option(names = "--suction-lift", defaultValue = "0m", converter = QuantityOption.Length.class,
            description = "part of the static head below the pump; negative where flooded [${DEFAULT-VALUE}]")
    private Quantity suctionLift;

    @Option(names = "--suction-bore", converter = QuantityOption.Length.class,
            description = "inner diameter of the suction")
    private Quantity suctionBore;

    @Option(names = "--suction-length", converter = QuantityOption.Length.class, description = "length of the suction")
    private Quantity suctionLength;

    @Option(names = "--suction-fittings", converter = QuantityOption.Ratio.class,
            description = "sum of K of the suction")
    private Quantity suctionFittings;

    @Option(names = "--series", defaultValue = "1", description = "equal pumps in series [${DEFAULT-VALUE}]")
    private int series;

    @Option(names = "--parallel", defaultValue = "1", description = "equal pumps in parallel [${DEFAULT-VALUE}]")
    private int parallel;

    @Option(names = "--speed", defaultValue = "1.0", converter = QuantityOption.Ratio.class,
            description = "speed over the measured speed [${DEFAULT-VALUE}]")
    private Quantity speed;

    @Option(names = "--motor-efficiency", converter = QuantityOption.Ratio.class,
            description = "of the motor, such as 85%%")
    private Quantity motorEfficiency;

    /** What a pump works against. */
    SystemCurve system() {
        double temperatureC = Check.between("--temperature", temperature,
                Quantity.of(WaterProperties.LOWEST_TEMPERATURE_C, Units.DEG_C),
                Quantity.of(WaterProperties.HIGHEST_TEMPERATURE_C, Units.DEG_C));
        double altitudeM = Check.between("--altitude", altitude, Quantity.of(Atmosphere.LOWEST_ALTITUDE_M, Units.M),
                Quantity.of(Atmosphere.HIGHEST_ALTITUDE_M, Units.M));
        WaterProperties water = WaterProperties.at(temperatureC);
        PipeRun delivery = run("--bore", bore, "--length", length, "--fittings", fittings);
        return new SystemCurve(staticHead.si(), delivery.carrying(water), new Suction(suctionLift.si(), suctionLoss(water)),
                water, Atmosphere.pressurePa(altitudeM));
    }

    /** Equal pumps as they are arranged. */
    PumpSet arranged(PumpCurve curve) {
        PumpSet pumps = PumpSet.single(curve).atSpeed(Check.positive("--speed", speed))
                .inSeries(atLeastOne("--series", series)).inParallel(atLeastOne("--parallel", parallel));
        if (motorEfficiency == null) {
            return pumps;
        }
        Check.positive("--motor-efficiency", motorEfficiency);
        return pumps.withMotorEfficiency(
                Check.between("--motor-efficiency", motorEfficiency, Quantity.of(0), Quantity.of(1)));
    }

    private HeadLoss suctionLoss(WaterProperties water) {
        if (suctionBore == null && suctionLength == null && suctionFittings == null) {
            return HeadLoss.none();
        }
        if (suctionBore == null) {
            throw new Failures.BadInputException("--suction-bore is missing; a suction run needs its bore");
        }
        return run("--suction-bore", suctionBore, "--suction-length",
                suctionLength == null ? Quantity.of(0, Units.M) : suctionLength, "--suction-fittings",
                suctionFittings == null ? Quantity.of(0) : suctionFittings).carrying(water);
    }

    private PipeRun run(String boreOption, Quantity runBore, String lengthOption, Quantity runLength,
            String fittingsOption, Quantity runFittings) {
        return new PipeRun(Check.positive(boreOption, runBore), Check.notNegative(lengthOption, runLength),
                Check.notNegative("--roughness", roughness), Check.notNegative(fittingsOption, runFittings));
    }

    private static int atLeastOne(String option, int count) {
        if (count < 1) {
            throw new Failures.BadInputException(option + " is " + count + "; one or more is accepted");
        }
        return count;
    }
}
