package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Scaling to normals and climate stress. */
class ClimateTest {
    private static final LocalDate START = LocalDate.of(2001, 1, 1);

    private static RainRecord upland() throws IOException {
        return RainReader.read(Path.of("../../demo-data/rain/upland-40y.csv")).record();
    }

    @Test
    void scaledSeriesHasTheNormals() throws IOException {
        MonthlyNormals normals = RainReader.readNormals(TestFiles.RESOURCES.resolve("normals.csv"), ReadOptions.AUTO);
        double[] depthMm = upland().completeDepthsMm();
        depthMm[5] = Double.NaN;
        RainRecord distant = RainRecord.of(START, depthMm);
        ScaledRain scaled = ScaledRain.scaledTo(distant, normals);
        MonthlyNormals back = MonthlyNormals.of(scaled.record());
        for (Month month : Month.values()) {
            assertEquals(normals.depthMm(month), back.depthMm(month), 1e-9);
            assertEquals(MonthlyNormals.of(distant).wetDays(month), back.wetDays(month));
        }
        assertEquals(1, scaled.record().missingDays());
        assertEquals(distant.days() - 1, scaled.record().count(DayMark.SCALED));
        assertTrue(scaled.statement().contains("dry spells are those of the other place"));
    }

    @Test
    void seriesWithoutRainCannotBeScaled() {
        double[] depthMm = new double[365];
        Arrays.fill(depthMm, 31, 365, 1);
        RainRecord dryJanuary = RainRecord.of(START, depthMm);
        MonthlyNormals normals = new MonthlyNormals(Collections.nCopies(12, 50.0), List.of());
        assertTrue(assertThrows(MissingRainException.class, () -> ScaledRain.scaledTo(dryJanuary, normals))
                .getMessage().contains("month 1"));
        List<Double> dry = new ArrayList<>(Collections.nCopies(12, 50.0));
        dry.set(0, 0.0);
        assertEquals(550, MonthlyNormals.of(ScaledRain.scaledTo(dryJanuary, new MonthlyNormals(dry, List.of()))
                .record()).annualMm(), 1e-9);
    }

    @Test
    void drySeasonIsFound() throws IOException {
        assertEquals(Optional.of(new DrySeason(Month.MAY, Month.SEPTEMBER)), DrySeason.find(upland()));
        assertEquals(Set.of(Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER),
                DrySeason.find(upland()).orElseThrow().months());
        assertEquals(Set.of(Month.NOVEMBER, Month.DECEMBER, Month.JANUARY),
                new DrySeason(Month.NOVEMBER, Month.JANUARY).months());
        double[] even = new double[365];
        Arrays.fill(even, 1);
        assertTrue(DrySeason.find(RainRecord.of(START, even)).isEmpty());
    }

    @Test
    void depthsBySeason() {
        double[] ones = new double[365];
        Arrays.fill(ones, 1);
        RainRecord stressed = ClimateStress.NONE.withDepthRatio(Set.of(Month.JULY, Month.AUGUST), 0.7)
                .applyTo(RainRecord.of(START, ones));
        double[] monthsMm = RainStatistics.of(stressed).monthlyMeansMm();
        assertEquals(31, monthsMm[0], 1e-12);
        assertEquals(21.7, monthsMm[6], 1e-12);
        assertEquals(21.7, monthsMm[7], 1e-12);
        assertEquals(62, stressed.count(DayMark.SCALED));
        assertEquals(RainRecord.of(START, ones), ClimateStress.NONE.applyTo(RainRecord.of(START, ones)));
        assertEquals("No climate stress.", ClimateStress.NONE.statement());
    }

    @Test
    void longerDrySeason() {
        double[] ones = new double[730];
        Arrays.fill(ones, 1);
        ones[3] = Double.NaN;
        DrySeason season = new DrySeason(Month.NOVEMBER, Month.JANUARY);
        ClimateStress stress = ClimateStress.NONE.withLongerDrySeason(season, 2, 3);
        RainRecord stressed = stress.applyTo(RainRecord.of(START, ones));
        List<LocalDate> dried = new ArrayList<>();
        for (int day = 0; day < 730; day++) {
            if (stressed.depthMmOr(day, 1) == 0) {
                dried.add(stressed.date(day));
            }
        }
        assertEquals(List.of(LocalDate.of(2001, 2, 1), LocalDate.of(2001, 2, 2), LocalDate.of(2001, 2, 3),
                LocalDate.of(2001, 10, 30), LocalDate.of(2001, 10, 31),
                LocalDate.of(2002, 2, 1), LocalDate.of(2002, 2, 2), LocalDate.of(2002, 2, 3),
                LocalDate.of(2002, 10, 30), LocalDate.of(2002, 10, 31)), dried);
        assertEquals(1, stressed.missingDays());
        assertEquals("What if: the dry season begins 2 days earlier, the dry season ends 3 days later. Rain that "
                + "would have fallen then is lost.", stress.statement());
    }

    @Test
    void wrongStress() {
        assertThrows(IllegalArgumentException.class, () -> ClimateStress.NONE.withDepthRatio(Set.of(Month.MAY), -1));
        assertThrows(IllegalArgumentException.class,
                () -> ClimateStress.NONE.withDepthRatio(Set.of(Month.MAY), Double.NaN));
        DrySeason season = new DrySeason(Month.MAY, Month.JUNE);
        assertThrows(IllegalArgumentException.class, () -> ClimateStress.NONE.withLongerDrySeason(season, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> ClimateStress.NONE.withLongerDrySeason(season, 0, 121));
        assertThrows(NullPointerException.class, () -> ClimateStress.NONE.withLongerDrySeason(null, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new ClimateStress(List.of(1.0), season, 0, 0));
        RainRecord wet = RainRecord.of(START, new double[] {9000});
        assertThrows(IllegalArgumentException.class,
                () -> ClimateStress.NONE.withDepthRatio(Set.of(Month.JANUARY), 5).applyTo(wet));
        assertArrayEquals(new double[] {9000}, ClimateStress.NONE.applyTo(wet).completeDepthsMm());
    }
}
