package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.rain.DepthUnit;
import org.roofspring.rain.GapFilling;
import org.roofspring.rain.GapMethod;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.MultiDayPolicy;
import org.roofspring.rain.RainFormat;
import org.roofspring.rain.RainReader;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.ReadOptions;

import picocli.CommandLine.Option;

/** Options that say how a rain file is read; shared by every command that reads one. */
final class RainOptions {
    @Option(names = "--format", defaultValue = "auto", description = "auto, dly, station or csv [${DEFAULT-VALUE}]")
    private String format;

    @Option(names = "--date-column", description = "name of the column with the date")
    private String dateColumn;

    @Option(names = "--depth-column", description = "name of the column with the depth")
    private String depthColumn;

    @Option(names = "--depth-unit", description = "unit of the depth, such as mm or in")
    private String depthUnit;

    @Option(names = "--date-pattern", description = "such as dd/MM/yyyy")
    private String datePattern;

    @Option(names = "--multi-day", defaultValue = "refuse", description = "totals over several days: refuse or spread [${DEFAULT-VALUE}]")
    private String multiDay;

    RainReading read(Path file) throws IOException {
        ReadOptions options = ReadOptions.AUTO.withFormat(Check.named("--format", () -> RainFormat.named(format))).withMultiDay(
                Check.word("--multi-day", multiDay, "refuse", "spread").equals("spread") ? MultiDayPolicy.SPREAD
                        : MultiDayPolicy.REFUSE);
        if (dateColumn != null) {
            options = options.withDateColumn(dateColumn);
        }
        if (depthColumn != null) {
            options = options.withDepthColumn(depthColumn);
        }
        if (depthUnit != null) {
            options = options.withDepthUnit(Check.named("--depth-unit", () -> DepthUnit.named(depthUnit)));
        }
        if (datePattern != null) {
            options = options.withDatePattern(datePattern);
        }
        return RainReader.read(InputFiles.existing("rain file", file), options, () -> false);
    }

    /** A record without gaps, or the reason why there is none. */
    static GapFilling fill(RainRecord record, String method) {
        GapMethod gaps = Check.named("--gaps", () -> GapMethod.named(method));
        try {
            return GapFilling.fill(record, gaps);
        } catch (MissingRainException e) {
            throw new Failures.BadInputException(e.getMessage() + " (--gaps refuse, zero or mean)", e);
        }
    }
}
