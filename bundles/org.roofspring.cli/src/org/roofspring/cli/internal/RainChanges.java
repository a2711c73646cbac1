package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.rain.ClimateStress;
import org.roofspring.rain.DonorFilling;
import org.roofspring.rain.DrySeason;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.RainReader;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.ReadOptions;
import org.roofspring.rain.ScaledRain;

import picocli.CommandLine.Option;

/** Options that mend, scale or stress a record, in that order. */
final class RainChanges {
    private static final Quantity MOST_FACTOR = Quantity.of(5);

    @Option(names = "--donor", paramLabel = "FILE", description = "record of another station; missing days are taken "
            + "from it, scaled month by month to this one")
    private Path donor;

    @Option(names = "--normals", paramLabel = "FILE", description = "monthly normals (columns month and "
            + "precipitation[mm]) that the record is scaled to")
    private Path normals;

    @Option(names = "--depth-factor", converter = QuantityOption.Ratio.class,
            description = "what if every depth were so many times as large, 0 to 5")
    private Quantity depthFactor;

    @Option(names = "--dry-season-longer", converter = QuantityOption.Duration.class,
            description = "what if the dry season ended so much later, such as 20d")
    private Quantity longer;

    /** Whether anything is to be changed. */
    boolean any() {
        return donor != null || normals != null || depthFactor != null || longer != null;
    }

    /**
     * The record after all changes.
     *
     * @param done a sentence is added for each change
     * @throws MissingRainException when a change cannot be made, with the reason
     */
    RainRecord apply(RainRecord read, RainOptions options, List<String> done) throws IOException {
        RainRecord record = read;
        if (donor != null) {
            DonorFilling filled = DonorFilling.fill(record, options.read(donor).record(),
                    donor.getFileName().toString());
            record = filled.record();
            done.add(filled.statement());
        }
        if (normals != null) {
            ScaledRain scaled = ScaledRain.scaledTo(record, RainReader.readNormals(
                    InputFiles.existing("file of normals", normals), ReadOptions.AUTO));
            record = scaled.record();
            done.add(scaled.statement());
        }
        if (depthFactor != null || longer != null) {
            ClimateStress stress = stress(record);
            record = stress.applyTo(record);
            done.add(stress.statement());
        }
        return record;
    }

    private ClimateStress stress(RainRecord record) {
        ClimateStress stress = ClimateStress.NONE;
        if (depthFactor != null) {
            Check.between("--depth-factor", depthFactor, Quantity.of(0), MOST_FACTOR);
            stress = stress.withDepthRatio(EnumSet.allOf(Month.class), depthFactor.si());
        }
        if (longer != null) {
            DrySeason season = DrySeason.find(record).orElseThrow(() -> new MissingRainException(
                    "The dry season is to last longer, and no month here is dry enough to be called one."));
            ClimateStress plain = stress;
            int days = (int) Math.round(longer.in(Units.D));
            stress = Check.named("--dry-season-longer", () -> plain.withLongerDrySeason(season, 0, days));
        }
        return stress;
    }
}
