package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.StorageBalanceCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.ClimateStress;
import org.roofspring.site.GapMethod;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.RainSource;
import org.roofspring.site.SeasonFactor;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What a site can ask of its rain: another station for gaps or in its place, normals, stress, synthetic rain. */
class RainOptionsTest {
    private static final SiteFactory MODEL = SiteFactory.eINSTANCE;
    private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);
    private static final LocalDate AFTER = LocalDate.of(2007, 1, 1);
    private static final CalculationContext CONTEXT = new CalculationContext() {
        @Override
        public BooleanSupplier cancelled() {
            return () -> false;
        }

        @Override
        public long randomSeed() {
            return 1;
        }
    };
    @TempDir
    Path folder;

    /** Rain of one day in three, more of it from October to March. */
    private static double depth(LocalDate day) {
        return day.toEpochDay() % 3 == 0 ? (day.getMonthValue() < 4 || day.getMonthValue() > 9 ? 12 : 0.5) + day.getDayOfMonth() % 4 : 0;
    }

    private void write(String name, double factor, LocalDate gapFrom, LocalDate gapAfter) throws IOException {
        StringBuilder csv = new StringBuilder("date,precipitation[mm]\n");
        for (LocalDate day = FIRST; day.isBefore(AFTER); day = day.plusDays(1)) {
            boolean gap = gapFrom != null && !day.isBefore(gapFrom) && day.isBefore(gapAfter);
            csv.append(day).append(',').append(gap ? "" : String.format(Locale.ROOT, "%.4f", factor * depth(day))).append('\n');
        }
        Files.writeString(folder.resolve(name), csv);
    }

    private Outcome outcome(Consumer<RainSource> change) {
        Site site = MODEL.createSite();
        site.setId("site");
        RainSource rain = MODEL.createRainSource();
        rain.setId("rain");
        site.setRain(rain);
        change.accept(rain);
        SiteSnapshot snapshot = SiteSnapshot.of(site, 1, folder);
        assertEquals(java.util.List.of(), new RainRecordCalculation().check(snapshot).reasons());
        return new RainRecordCalculation().calculate(snapshot, Inputs.none(), CONTEXT);
    }

    private Outcome.Completed completed(Consumer<RainSource> change) {
        return assertInstanceOf(Outcome.Completed.class, outcome(change), () -> outcome(change).toString());
    }

    private static FindingValue.Daily daily(Outcome.Completed outcome, String id) {
        return (FindingValue.Daily) outcome.finding(id).orElseThrow(() -> new AssertionError("no " + id)).value();
    }

    private static void normals(RainSource rain, double depthMm, Double wetDays) {
        for (int month = 1; month <= 12; month++) {
            MonthlyNormal normal = MODEL.createMonthlyNormal();
            normal.setMonth(month);
            normal.setDepth(Quantity.of(depthMm + month, Units.MM));
            normal.setWetDays(wetDays == null ? null : Quantity.of(wetDays));
            rain.getNormals().add(normal);
        }
    }

    private static double[] monthlyMeans(FindingValue.Daily daily) {
        double[] sums = new double[12];
        for (int day = 0; day < daily.days(); day++) {
            sums[daily.firstDay().plusDays(day).getMonthValue() - 1] += daily.value(day);
        }
        double years = daily.days() / 365.2425;
        return Arrays.stream(sums).map(sum -> sum / years).toArray();
    }

    private static String text(Outcome.Completed outcome, String id) {
        return ((FindingValue.Text) outcome.finding(id).orElseThrow().value()).text();
    }

    @Test
    void gapsAreFilledFromADonorScaledMonthByMonth() throws IOException {
        write("own.csv", 1, LocalDate.of(2003, 2, 1), LocalDate.of(2003, 5, 1));
        write("donor.csv", 2, null, null);
        Outcome.Completed filled = completed(rain -> {
            rain.setFile("own.csv");
            rain.setGapMethod(GapMethod.DONOR);
            rain.setDonorFile("donor.csv");
            rain.setDonorStation("Station beyond the ridge");
        });
        FindingValue.Daily daily = daily(filled, "daily");
        for (int day = 0; day < daily.days(); day++) {
            assertEquals(depth(FIRST.plusDays(day)), daily.value(day), 1e-4, "day " + FIRST.plusDays(day));
        }
        assertTrue(text(filled, "filling").contains("Station beyond the ridge"), text(filled, "filling"));
    }

    @Test
    void aDonorThatIsMissingTooIsNamed() throws IOException {
        write("own.csv", 1, LocalDate.of(2003, 2, 1), LocalDate.of(2003, 5, 1));
        write("donor.csv", 2, LocalDate.of(2003, 4, 1), LocalDate.of(2003, 4, 3));
        Outcome.NotComputable none = assertInstanceOf(Outcome.NotComputable.class, outcome(rain -> {
            rain.setFile("own.csv");
            rain.setGapMethod(GapMethod.DONOR);
            rain.setDonorFile("donor.csv");
        }));
        assertTrue(none.problems().getFirst().text().contains("2003-04-01"), none.problems().toString());
    }

    @Test
    void aDistantRecordIsScaledToTheNormalsOfThePlace() throws IOException {
        write("donor.csv", 3, null, null);
        Outcome.Completed scaled = completed(rain -> {
            rain.setDonorFile("donor.csv");
            rain.setScaleToNormals(true);
            normals(rain, 40, null);
        });
        double[] means = new double[12];
        for (int month = 1; month <= 12; month++) {
            means[month - 1] = 40 + month;
        }
        FindingValue.Daily daily = daily(scaled, "daily");
        double[] found = monthlyMeans(daily);
        for (int month = 0; month < 12; month++) {
            assertEquals(means[month], found[month], 0.02 * means[month]);
        }
        assertTrue(text(scaled, "origin").contains("donor.csv"), text(scaled, "origin"));
        assertTrue(scaled.cautions().stream().noneMatch(caution -> caution.code().equals("rain.invented")));
    }

    @Test
    void normalsWithWetDaysInventRainAndSayThatItIsInvented() {
        Outcome.Completed invented = completed(rain -> {
            normals(rain, 50, 9.0);
            rain.setSyntheticYears(400);
        });
        FindingValue.Daily daily = daily(invented, "daily");
        assertEquals(400 * 365.2425, daily.days(), 1);
        double[] means = monthlyMeans(daily);
        for (int month = 1; month <= 12; month++) {
            assertEquals(50 + month, means[month - 1], 6, "month " + month);
        }
        assertTrue(invented.cautions().stream().anyMatch(caution -> caution.code().equals("rain.invented")
                && caution.text(org.roofspring.quantity.QuantityFormat.metric()).contains("invented")));
        assertEquals(invented, completed(rain -> {
            normals(rain, 50, 9.0);
            rain.setSyntheticYears(400);
        }), "the same seed gives the same rain");
    }

    @Test
    void normalsWithoutWetDaysNeedADonor() {
        Outcome.NotComputable none = assertInstanceOf(Outcome.NotComputable.class, outcome(rain -> normals(rain, 50, null)));
        assertEquals("normals", none.problems().getFirst().feature());
        assertTrue(none.problems().getFirst().text().contains("wet"), none.problems().toString());
    }

    @Test
    void normalsOfElevenMonthsAreRefused() {
        Outcome.NotComputable none = assertInstanceOf(Outcome.NotComputable.class, outcome(rain -> {
            normals(rain, 50, 9.0);
            rain.getNormals().remove(4);
        }));
        assertTrue(none.problems().getFirst().text().contains("[5]"), none.problems().toString());
    }

    @Test
    void stressScalesDepthsBySeason() throws IOException {
        write("own.csv", 1, null, null);
        FindingValue.Daily plain = daily(completed(rain -> rain.setFile("own.csv")), "daily");
        Outcome.Completed stressed = completed(rain -> {
            rain.setFile("own.csv");
            ClimateStress stress = MODEL.createClimateStress();
            stress.setId("stress");
            stress.setDepthFactor(Quantity.of(0.9));
            SeasonFactor summer = MODEL.createSeasonFactor();
            summer.setFrom(MonthDay.of(12, 1));
            summer.setTo(MonthDay.of(1, 31));
            summer.setFactor(Quantity.of(0.5));
            stress.getSeasons().add(summer);
            rain.setStress(stress);
        });
        double[] expected = new double[plain.days()];
        for (int day = 0; day < expected.length; day++) {
            int month = plain.firstDay().plusDays(day).getMonthValue();
            expected[day] = plain.value(day) * (month == 12 || month == 1 ? 0.5 : 0.9);
        }
        assertArrayEquals(expected, daily(stressed, "daily").values(), 1e-9);
    }

    @Test
    void aLongerDrySeasonDropsRain() throws IOException {
        write("own.csv", 1, null, null);
        FindingValue.Daily plain = daily(completed(rain -> rain.setFile("own.csv")), "daily");
        FindingValue.Daily longer = daily(completed(rain -> {
            rain.setFile("own.csv");
            ClimateStress stress = MODEL.createClimateStress();
            stress.setId("stress");
            stress.setDrySeasonLonger(Quantity.of(31, Units.D));
            rain.setStress(stress);
        }), "daily");
        for (int day = 0; day < plain.days(); day++) {
            boolean october = plain.firstDay().plusDays(day).getMonthValue() == 10;
            assertEquals(october ? 0 : plain.value(day), longer.value(day), "day " + plain.firstDay().plusDays(day));
        }
    }

    @Test
    void syntheticRainStandsBesideTheRecordAndNeverInItsPlace() {
        Site plain = DemoSites.site("hill-school");
        Site asked = DemoSites.site("hill-school");
        asked.getRain().setSynthesize(true);
        Inputs without = DemoSites.outcomes(SiteSnapshot.of(plain, 1, DemoSites.FOLDER), new RainRecordCalculation(),
                new StorageBalanceCalculation());
        Inputs with = DemoSites.outcomes(SiteSnapshot.of(asked, 1, DemoSites.FOLDER), new RainRecordCalculation(),
                new StorageBalanceCalculation());
        Outcome.Completed record = without.outcome("rain.record").orElseThrow();
        Outcome.Completed both = with.outcome("rain.record").orElseThrow();
        assertEquals(record.finding("daily").orElseThrow(), both.finding("daily").orElseThrow());
        assertEquals(100 * 365.2425, daily(both, "synthetic").days(), 1);
        FindingValue.Verdict verdict = (FindingValue.Verdict) both.finding("synthesisVerdict").orElseThrow().value();
        assertTrue(verdict.level() != FindingValue.Verdict.Level.GOOD);
        assertTrue(((FindingValue.Table) both.finding("synthesis").orElseThrow().value()).rows().size() >= 15);
        Outcome.Completed storage = with.outcome("storage.balance").orElseThrow();
        assertEquals(without.outcome("storage.balance").orElseThrow().finding("timeReliability").orElseThrow(),
                storage.finding("timeReliability").orElseThrow());
        double share = ((FindingValue.Number) storage.finding("timeReliabilitySynthetic").orElseThrow().value()).quantity().si();
        assertTrue(share > 0.5 && share <= 1, () -> "synthetic " + share);
    }
}
