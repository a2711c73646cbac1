package org.roofspring.calc.standard.rain;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;

import org.roofspring.rain.DepthUnit;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.RainFormat;
import org.roofspring.rain.RainReader;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.ReadOptions;
import org.roofspring.site.RainSource;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Reads the rain files that a site names. */
final class RainFiles {
    private RainFiles() {
    }

    /** The record of the place, read as the site says. */
    static RainReading own(SiteSnapshot site, BooleanSupplier cancelled) throws IOException {
        return read(site, site.site().getRain().getFile(), options(site.site().getRain()), cancelled);
    }

    /** The record of another place; how it is written is found. */
    static RainReading donor(SiteSnapshot site, BooleanSupplier cancelled) throws IOException {
        return read(site, site.site().getRain().getDonorFile(), ReadOptions.AUTO, cancelled);
    }

    private static RainReading read(SiteSnapshot site, String name, ReadOptions options, BooleanSupplier cancelled)
            throws IOException {
        Path file = site.resolve(name);
        if (!Files.isRegularFile(file)) {
            throw new IOException("There is no rain file " + name + " in the folder of the site.");
        }
        return RainReader.read(file, options, cancelled);
    }

    private static ReadOptions options(RainSource rain) {
        ReadOptions options = ReadOptions.AUTO.withFormat(switch (rain.getFormat()) {
            case AUTO -> RainFormat.AUTO;
            case GHCN_DAILY -> RainFormat.GHCN_DLY;
            case GHCN_STATION_CSV -> RainFormat.GHCN_STATION_CSV;
            case CSV -> RainFormat.GENERIC_CSV;
        });
        if (isGiven(rain.getDateColumn())) {
            options = options.withDateColumn(rain.getDateColumn());
        }
        if (isGiven(rain.getDepthColumn())) {
            options = options.withDepthColumn(rain.getDepthColumn());
        }
        if (isGiven(rain.getDatePattern())) {
            options = options.withDatePattern(rain.getDatePattern());
        }
        if (isGiven(rain.getDelimiter())) {
            options = options.withDelimiter(rain.getDelimiter().charAt(0));
        }
        if (rain.isDecimalComma()) {
            options = options.withDecimalMark(',');
        }
        return switch (rain.getDepthUnit()) {
            case AUTO -> options;
            case MILLIMETRE -> options.withDepthUnit(DepthUnit.MM);
            case TENTH_MILLIMETRE -> options.withDepthUnit(DepthUnit.TENTHS_OF_MM);
            case INCH -> options.withDepthUnit(DepthUnit.IN);
            case HUNDREDTH_INCH -> throw new MissingRainException(
                    "Depths in hundredths of an inch cannot be read yet; give them in inches.");
        };
    }

    static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }
}
