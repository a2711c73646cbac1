package org.roofspring.calc.standard.rain;

import java.io.IOException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.roofspring.quantity.Units;
import org.roofspring.rain.ClimateStress;
import org.roofspring.rain.DonorFilling;
import org.roofspring.rain.DrySeason;
import org.roofspring.rain.GapFilling;
import org.roofspring.rain.GapMethod;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.MonthlyNormals;
import org.roofspring.rain.QualityReport;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.ScaledRain;
import org.roofspring.rain.WeatherSynthesis;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.RainSource;
import org.roofspring.site.SeasonFactor;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * The rain that drives a site, with what was done to it in sentences.
 *
 * @param asRead    before gaps were filled and anything was scaled; the basis of the statistics
 * @param quality   what was found while reading; empty for rain that was invented
 * @param driving   without missing days
 * @param filling   what became of missing days
 * @param origin    where rain that was not read here comes from, how it was scaled and stressed; perhaps empty
 * @param invented  whether there is no record at all, so that the rain is synthetic
 * @param synthesis fitted to the record, where the site asks for synthetic rain beside it
 */
public record SiteRain(RainRecord asRead, Optional<QualityReport> quality, RainRecord driving, String filling,
        List<String> origin, boolean invented, Optional<WeatherSynthesis> synthesis) {
    private static final LocalDate FIRST_INVENTED_DAY = LocalDate.of(2001, 1, 1);

    /** Whether a site says where its rain comes from. */
    public static boolean isGiven(RainSource rain) {
        return rain != null && (RainFiles.isGiven(rain.getFile()) || !rain.getNormals().isEmpty());
    }

    /**
     * @throws IOException          when a file cannot be read
     * @throws MissingRainException when what is there does not make a record; both say why in a sentence
     */
    public static SiteRain of(SiteSnapshot site, BooleanSupplier cancelled) throws IOException {
        RainSource rain = site.site().getRain();
        return RainFiles.isGiven(rain.getFile()) ? read(site, rain, cancelled) : without(site, rain, cancelled);
    }

    private static SiteRain read(SiteSnapshot site, RainSource rain, BooleanSupplier cancelled) throws IOException {
        RainReading reading = RainFiles.own(site, cancelled);
        RainRecord asked = cut(reading.record(), rain);
        List<String> origin = new ArrayList<>();
        String filling;
        RainRecord whole;
        if (rain.getGapMethod() == org.roofspring.site.GapMethod.DONOR) {
            DonorFilling filled = DonorFilling.fill(asked, donor(site, rain, cancelled), donorName(rain));
            whole = filled.record();
            filling = filled.statement();
        } else {
            GapFilling filled = GapFilling.fill(asked, gapMethod(rain));
            whole = filled.record();
            filling = filled.statement();
        }
        if (rain.isScaleToNormals()) {
            whole = scaled(whole, rain, origin);
        }
        Optional<WeatherSynthesis> synthesis = rain.isSynthesize() ? Optional.of(WeatherSynthesis.fit(whole))
                : Optional.empty();
        return new SiteRain(asked, Optional.of(reading.quality()), stressed(whole, rain, origin), filling, origin, false,
                synthesis);
    }

    /** No record of the place: another's scaled to the normals, or rain invented from them. */
    private static SiteRain without(SiteSnapshot site, RainSource rain, BooleanSupplier cancelled) throws IOException {
        List<String> origin = new ArrayList<>();
        MonthlyNormals normals = normals(rain);
        if (RainFiles.isGiven(rain.getDonorFile()) && rain.isScaleToNormals()) {
            RainReading reading = RainFiles.donor(site, cancelled);
            RainRecord asked = cut(reading.record(), rain);
            GapFilling filled = GapFilling.fill(asked, gapMethod(rain));
            origin.add("There is no record of this place: that of " + donorName(rain) + " stands in for it.");
            RainRecord whole = scaled(filled.record(), rain, origin);
            return new SiteRain(asked, Optional.of(reading.quality()), stressed(whole, rain, origin),
                    filled.statement(), origin, false, Optional.empty());
        }
        WeatherSynthesis weather = RainFiles.isGiven(rain.getDonorFile())
                ? WeatherSynthesis.fromNormals(normals, donor(site, rain, cancelled), donorName(rain))
                : WeatherSynthesis.fromNormals(normals);
        int days = (int) (FIRST_INVENTED_DAY.plusYears(rain.getSyntheticYears()).toEpochDay()
                - FIRST_INVENTED_DAY.toEpochDay());
        RainRecord invented = weather.generate(FIRST_INVENTED_DAY, days, rain.getSeed(), cancelled);
        origin.add("There is no record of this place: " + rain.getSyntheticYears() + " years are invented. "
                + weather.basis());
        return new SiteRain(invented, Optional.empty(), stressed(invented, rain, origin), "No day is missing.", origin,
                true, Optional.empty());
    }

    private static RainRecord donor(SiteSnapshot site, RainSource rain, BooleanSupplier cancelled) throws IOException {
        if (!RainFiles.isGiven(rain.getDonorFile())) {
            throw new MissingRainException("Gaps are to be filled from a donor record, and no donor file is named.");
        }
        return RainFiles.donor(site, cancelled).record();
    }

    private static String donorName(RainSource rain) {
        return RainFiles.isGiven(rain.getDonorStation()) ? rain.getDonorStation() : rain.getDonorFile();
    }

    private static RainRecord scaled(RainRecord record, RainSource rain, List<String> origin) {
        ScaledRain scaled = ScaledRain.scaledTo(record, normals(rain));
        origin.add(scaled.statement());
        return scaled.record();
    }

    private static RainRecord stressed(RainRecord record, RainSource rain, List<String> origin) {
        if (rain.getStress() == null) {
            return record;
        }
        ClimateStress stress = ClimateStress.NONE;
        for (Month month : Month.values()) {
            stress = stress.withDepthRatio(java.util.Set.of(month), factor(rain, month));
        }
        int later = rain.getStress().getDrySeasonLonger() == null ? 0
                : (int) Math.round(rain.getStress().getDrySeasonLonger().in(Units.D));
        if (later > 0) {
            stress = stress.withLongerDrySeason(DrySeason.find(record).orElseThrow(() -> new MissingRainException(
                    "The dry season is to last longer, and no month here is dry enough to be called one.")), 0, later);
        }
        origin.add(stress.statement());
        return stress.applyTo(record);
    }

    /** Factor of a month: the mean over its days, each by the first season that holds it, or else the general one. */
    private static double factor(RainSource rain, Month month) {
        double general = rain.getStress().getDepthFactor() == null ? 1 : rain.getStress().getDepthFactor().si();
        double sum = 0;
        int days = month.length(false);
        for (int day = 1; day <= days; day++) {
            MonthDay date = MonthDay.of(month, day);
            sum += rain.getStress().getSeasons().stream().filter(season -> holds(season, date)).findFirst()
                    .map(season -> season.getFactor().si()).orElse(general);
        }
        return sum / days;
    }

    private static boolean holds(SeasonFactor season, MonthDay date) {
        if (season.getFrom() == null || season.getTo() == null || season.getFactor() == null) {
            throw new MissingRainException("A season of the climate stress lacks its first day, last day or factor.");
        }
        boolean overNewYear = season.getTo().isBefore(season.getFrom());
        boolean fromOn = !date.isBefore(season.getFrom());
        boolean until = !date.isAfter(season.getTo());
        return overNewYear ? fromOn || until : fromOn && until;
    }

    private static MonthlyNormals normals(RainSource rain) {
        Double[] depths = new Double[12];
        Double[] wet = new Double[12];
        for (MonthlyNormal normal : rain.getNormals()) {
            int month = normal.getMonth() - 1;
            if (month < 0 || month > 11) {
                throw new MissingRainException("A monthly normal is of month " + normal.getMonth() + "; 1 to 12 are accepted.");
            }
            depths[month] = normal.getDepth() == null ? null : normal.getDepth().in(Units.MM);
            wet[month] = normal.getWetDays() == null ? null : normal.getWetDays().si();
        }
        List<Integer> missing = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            if (depths[i] == null) {
                missing.add(i + 1);
            }
        }
        if (!missing.isEmpty()) {
            throw new MissingRainException("Monthly normals need the depth of all twelve months; missing for months "
                    + missing + ".");
        }
        boolean allWet = java.util.Arrays.stream(wet).allMatch(java.util.Objects::nonNull);
        return new MonthlyNormals(List.of(depths), allWet ? List.of(wet) : List.of());
    }

    private static RainRecord cut(RainRecord record, RainSource rain) {
        LocalDate from = Optional.ofNullable(rain.getFirstDay()).filter(day -> day.isAfter(record.firstDay()))
                .orElse(record.firstDay());
        LocalDate to = Optional.ofNullable(rain.getLastDay()).filter(day -> day.isBefore(record.lastDay()))
                .orElse(record.lastDay());
        if (from.isAfter(to)) {
            throw new MissingRainException("The record (" + record.firstDay() + " to " + record.lastDay()
                    + ") has no day from " + from + " to " + to + ".");
        }
        return record.slice(from, to);
    }

    private static GapMethod gapMethod(RainSource rain) {
        return switch (rain.getGapMethod()) {
            case REFUSE -> GapMethod.REFUSE;
            case ZERO -> GapMethod.ZERO;
            case MEAN -> GapMethod.CLIMATOLOGY;
            case DONOR -> throw new MissingRainException(
                    "Gaps of a record that is itself a donor's cannot be filled from a donor; choose refuse, zero or mean.");
        };
    }

    /** Synthetic rain beside the record, as long as the site asks for. */
    public Optional<RainRecord> synthetic(RainSource rain, BooleanSupplier cancelled) {
        return synthesis.map(weather -> weather.generate(FIRST_INVENTED_DAY, (int) (FIRST_INVENTED_DAY
                .plusYears(rain.getSyntheticYears()).toEpochDay() - FIRST_INVENTED_DAY.toEpochDay()), rain.getSeed(),
                cancelled));
    }
}
