package org.roofspring.calc.standard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.RainAnswer;
import org.roofspring.quantity.Units;
import org.roofspring.rain.DepthUnit;
import org.roofspring.rain.GapFilling;
import org.roofspring.rain.GapMethod;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.RainFormat;
import org.roofspring.rain.RainFormatException;
import org.roofspring.rain.RainReader;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.RainStatistics;
import org.roofspring.rain.ReadOptions;
import org.roofspring.site.RainSource;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Reads the site's rain record, mends its gaps and says what it holds. Finding {@code daily} drives the rest. */
@Component
@CalculationInfo(id = "rain.record", version = "1", title = "Rain record", reads = { "RainSource", "MonthlyNormal", "ClimateStress", "SeasonFactor" })
public final class RainRecordCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot site) {
        RainSource rain = site.site().getRain();
        if (rain == null || rain.getFile() == null || rain.getFile().isBlank()) {
            return Applicability.no("The site has no rain record; name a file under Rain.");
        }
        return Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context) {
        RainSource rain = site.site().getRain();
        try {
            Path file = site.resolve(rain.getFile());
            if (!Files.isRegularFile(file)) {
                throw new IOException("There is no rain file " + rain.getFile() + " in the folder of the site.");
            }
            RainReading reading = RainReader.read(file, options(rain), context.cancelled());
            RainRecord asked = cut(reading.record(), rain);
            GapFilling filled = GapFilling.fill(asked, gapMethod(rain));
            RainRecord record = filled.record();
            AnswerBuilder answer = new AnswerBuilder(null);
            answer.include(RainAnswer.of(null, RainStatistics.of(asked), reading.quality()));
            answer.text("filling", "Missing days", filled.statement());
            answer.add("daily", "Daily rain", new FindingValue.Daily(record.firstDay(), record.completeDepthsMm(), Units.MM));
            return answer.build();
        } catch (RainFormatException | MissingRainException | IOException e) {
            return new Outcome.NotComputable(new Outcome.Problem(rain.getId(), "file", e.getMessage()));
        }
    }

    private static RainRecord cut(RainRecord record, RainSource rain) {
        var from = Optional.ofNullable(rain.getFirstDay()).filter(day -> day.isAfter(record.firstDay())).orElse(record.firstDay());
        var to = Optional.ofNullable(rain.getLastDay()).filter(day -> day.isBefore(record.lastDay())).orElse(record.lastDay());
        if (from.isAfter(to)) {
            throw new MissingRainException("The record (" + record.firstDay() + " to " + record.lastDay() + ") has no day from " + from + " to " + to + ".");
        }
        return record.slice(from, to);
    }

    private static GapMethod gapMethod(RainSource rain) {
        return switch (rain.getGapMethod()) {
            case REFUSE -> GapMethod.REFUSE;
            case ZERO -> GapMethod.ZERO;
            case MEAN -> GapMethod.CLIMATOLOGY;
            case DONOR -> throw new MissingRainException("Gaps are to be filled from a donor record, which this version cannot do; choose refuse, zero or mean.");
        };
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
            case HUNDREDTH_INCH -> throw new MissingRainException("Depths in hundredths of an inch cannot be read yet; give them in inches.");
        };
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isEmpty();
    }
}
