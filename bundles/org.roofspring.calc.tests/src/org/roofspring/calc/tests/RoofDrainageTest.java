package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.standard.StorageBalanceCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.GutterProfile;
import org.roofspring.site.IntensityPoint;
import org.roofspring.site.OutletShape;
import org.roofspring.site.Roof;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The way from roof to tank of the demo household, changed in one thing at a time. */
class RoofDrainageTest {
    private static final int YEARS = 12;
    private static final double[] RAIN = rain();

    /** Showers that differ from day to day and from year to year, one day in three, up to about 90 mm. */
    private static double[] rain() {
        double[] depths = new double[(int) (LocalDate.of(2000 + YEARS, 1, 1).toEpochDay()
                - LocalDate.of(2000, 1, 1).toEpochDay())];
        for (int day = 0; day < depths.length; day++) {
            depths[day] = day % 3 == 0 ? 45 + 45 * Math.sin(day * 0.7717) * Math.sin(day * 0.0113) : 0;
        }
        return depths;
    }

    private static Inputs rainOf(double[] depths, Outcome.Completed... drainage) {
        Finding daily = new Finding("daily", "Daily rain",
                new FindingValue.Daily(LocalDate.of(2000, 1, 1), depths, Units.MM));
        Outcome.Completed record = new Outcome.Completed(List.of(daily), List.of(), List.of());
        return new Inputs(drainage.length == 0 ? Map.of("rain.record", record)
                : Map.of("rain.record", record, "roof.drainage", drainage[0]));
    }

    private static Outcome run(Calculation calculation, Site site, Inputs inputs) {
        return calculation.calculate(SiteSnapshot.of(site, 1, DemoSites.FOLDER), inputs, new CalculationContext() {
            @Override
            public BooleanSupplier cancelled() {
                return () -> false;
            }

            @Override
            public long randomSeed() {
                return 1;
            }
        });
    }

    private static Site household(Consumer<Site> change) {
        Site site = DemoSites.site("household");
        change.accept(site);
        return site;
    }

    private static Outcome.Completed drainage(Site site) {
        return assertInstanceOf(Outcome.Completed.class, run(new RoofDrainageCalculation(), site, rainOf(RAIN)));
    }

    private static String refusal(Consumer<Site> change) {
        Outcome outcome = run(new RoofDrainageCalculation(), household(change), rainOf(RAIN));
        return assertInstanceOf(Outcome.NotComputable.class, outcome).problems().getFirst().text();
    }

    private static double value(Outcome.Completed outcome, String id, String element, Unit unit) {
        FindingValue value = outcome.finding(id, element).orElseThrow(() -> new AssertionError(id + "@" + element))
                .value();
        return ((FindingValue.Number) value).quantity().in(unit);
    }

    private static String caution(Outcome outcome, String code, String element) {
        return outcome.cautions().stream().filter(c -> c.code().equals(code) && element.equals(c.elementId()))
                .map(c -> c.text(QuantityFormat.metric())).findFirst().orElseThrow(() -> new AssertionError(code));
    }

    private static Gutter gutter(Site site) {
        return site.getGutters().getFirst();
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Units.MM);
    }

    private static void enter(Site site, double minutes, double years, double mmPerH) {
        IntensityPoint point = SiteFactory.eINSTANCE.createIntensityPoint();
        point.setDuration(Quantity.of(minutes, Units.MIN));
        point.setReturnPeriod(Quantity.of(years, Units.YR));
        point.setIntensity(Quantity.of(mmPerH, Units.MM_PER_H));
        site.getRain().getIntensities().add(point);
    }

    @Test
    void flowIsIntensityTimesAreaDrivenByWind() {
        Outcome.Completed answer = drainage(household(site -> enter(site, 5, 5, 120)));
        // by hand: 24 m2 on plan, 8 m of eaves, rise 0.8 m: 24 + 8 * 0.8 / 2 = 27.2 m2; 120 mm/h on it is 0.90667 L/s
        assertEquals(27.2, value(answer, "effectiveArea", "gutter", Units.M2), 1e-12);
        assertEquals(27.2 * 120 / 3600, value(answer, "runoff", "gutter", Units.L_PER_S), 1e-12);
        assertEquals(27.2 * 120 / 3600, value(answer, "flow", "downpipe", Units.L_PER_S), 1e-12);
    }

    @Test
    void entersBetweenPointsOnLogPaper() {
        Outcome.Completed answer = drainage(household(site -> {
            enter(site, 2.5, 5, 200);
            enter(site, 10, 5, 50);
        }));
        // half-way between 2.5 and 10 min on log paper is 5 min, and between 200 and 50 it is 100
        assertEquals(100, value(answer, "intensity", "rain", Units.MM_PER_H), 1e-9);
    }

    @Test
    void readsBetweenReturnPeriods() {
        Outcome.Completed answer = drainage(household(site -> {
            enter(site, 5, 2.5, 80);
            enter(site, 5, 10, 120);
        }));
        assertEquals(100, value(answer, "intensity", "rain", Units.MM_PER_H), 1e-9);
    }

    @Test
    void refusesWhatEnteredIntensitiesDoNotReach() {
        String text = refusal(site -> enter(site, 5, 10, 120));
        assertTrue(text.contains("5 min") && text.contains("5 yr"), text);
        assertTrue(refusal(site -> site.getRain().getIntensities()
                .add(SiteFactory.eINSTANCE.createIntensityPoint())).contains("lacks"));
    }

    @Test
    void refusesBurstsShorterThanTheRule() {
        String text = refusal(site -> site.getRain().setPeakDuration(Quantity.of(2, Units.MIN)));
        assertTrue(text.contains("begins at 5 min") && text.contains("2 min"), text);
    }

    @Test
    void takesTheShareOfABurstThatWasEntered() {
        Outcome.Completed answer = drainage(household(site -> {
            site.getRain().setPeakDuration(Quantity.of(2, Units.MIN));
            site.getRain().setDayToShortRatio(Quantity.of(0.05));
        }));
        double day = value(answer, "dayDepth", "rain", Units.MM);
        assertEquals(day * 1.13 * 0.05 * 30, value(answer, "intensity", "rain", Units.MM_PER_H), 1e-9);
        assertTrue(refusal(site -> site.getRain().setDayToShortRatio(Quantity.of(0.001))).contains("even rain"));
        assertTrue(refusal(site -> site.getRain().setDayToShortRatio(Quantity.of(1))).contains("below 1"));
    }

    @Test
    void refusesARecordTooShortForRareStorms() {
        Outcome outcome = run(new RoofDrainageCalculation(), household(site -> { }), rainOf(new double[700]));
        String text = assertInstanceOf(Outcome.NotComputable.class, outcome).problems().getFirst().text();
        assertTrue(text.contains("yearly maxima"), text);
    }

    @Test
    void namesWhatKeepsAGutterFromBeingChecked() {
        Map<String, Consumer<Gutter>> broken = Map.of("width is missing", g -> g.setWidth(null),
                "length is missing", g -> g.setLength(null), "no outlet", g -> g.getOutlets().clear(),
                "is not stated", g -> g.setProfile(GutterProfile.UNSTATED),
                "its depth is missing", g -> g.setProfile(GutterProfile.RECTANGULAR),
                "takes up the whole depth", g -> g.setFreeboard(mm(60)),
                "diameter of its outlet is missing", g -> g.getOutlets().getFirst().setDiameter(null),
                "lies at 9.0 m", g -> g.getOutlets().getFirst().setPosition(Quantity.of(9, Units.M)),
                "a slope towards the outlet", g -> g.setSlope(Quantity.of(0.15)));
        broken.forEach((words, change) -> {
            Outcome.Completed answer = drainage(household(site -> change.accept(gutter(site))));
            String text = caution(answer, "drainage.not-checked", "gutter");
            assertTrue(text.startsWith("Gutter cannot be checked: ") && text.contains(words), text);
            assertTrue(answer.finding("collectionEfficiency", "roof").isEmpty(), "no share of a gutter unknown");
        });
    }

    @Test
    void twoOutletsInOnePlaceAreRefused() {
        Outcome.Completed answer = drainage(household(site -> gutter(site).getOutlets().add(outletAt("second", 8))));
        assertTrue(caution(answer, "drainage.not-checked", "gutter").contains("two outlets lie in one place"));
    }

    private static GutterOutlet outletAt(String id, double placeM) {
        GutterOutlet outlet = SiteFactory.eINSTANCE.createGutterOutlet();
        outlet.setId(id);
        outlet.setShape(OutletShape.SHARP);
        outlet.setDiameter(mm(65));
        outlet.setPosition(Quantity.of(placeM, Units.M));
        return outlet;
    }

    @Test
    void aLevelGutterIsChecked() {
        Outcome.Completed level = drainage(household(site -> gutter(site).setSlope(Quantity.of(0))));
        Outcome.Completed sloping = drainage(household(site -> { }));
        double capacity = value(level, "capacity", "gutter", Units.L_PER_S);
        assertTrue(capacity > 0 && capacity < value(sloping, "capacity", "gutter", Units.L_PER_S),
                "level: " + capacity);
        assertTrue(level.finding("uniformFullFlow", "gutter").isEmpty(), "no even depth without a slope");
    }

    @Test
    void hugeRoofsAreCheckedOrRefused() {
        Outcome.Completed wide = drainage(household(site -> {
            site.getRoofs().getFirst().setPlanArea(Quantity.of(100_000, Units.M2));
            site.getRoofs().getFirst().setEavesLength(Quantity.of(1000, Units.M));
        }));
        assertTrue(value(wide, "wayUtilisation", "gutter", Units.ONE) > 1000, "a barrel's gutter under ten hectares");
        assertTrue(value(wide, "collectionEfficiency", "roof", Units.ONE) < 0.2, "nearly all is lost");
        assertTrue(caution(wide, "gutter.no-spacing", "gutter").contains("larger gutter"));
        Outcome.Completed deep = drainage(household(site -> site.getRoofs().getFirst()
                .setPlanArea(Quantity.of(100_000, Units.M2))));
        assertTrue(caution(deep, "drainage.not-checked", "roof").contains("a width on plan from 0.1 to 1000 m"));
    }

    @Test
    void theNarrowestPartIsNamedAndRulesTheShare() {
        Outcome.Completed usual = drainage(household(site -> { }));
        Outcome.Completed pipe = drainage(household(site -> site.getDownpipes().getFirst().setBore(mm(25))));
        Outcome.Completed outlet = drainage(household(site -> gutter(site).getOutlets().getFirst()
                .setDiameter(mm(25))));
        assertEquals("the gutter", text(usual));
        assertEquals("the downpipe", text(pipe));
        assertEquals("the outlet", text(outlet));
        for (Outcome.Completed narrow : List.of(pipe, outlet)) {
            assertTrue(value(narrow, "collectionEfficiency", "roof", Units.ONE)
                    < value(usual, "collectionEfficiency", "roof", Units.ONE), "a narrow place loses water");
            assertTrue(value(narrow, "largerGutterGain", "gutter", Units.L)
                    <= 0.2 * value(narrow, "lostPerYear", "gutter", Units.L), "a larger gutter does not help there");
        }
    }

    private static String text(Outcome.Completed answer) {
        return ((FindingValue.Text) answer.finding("limit", "gutter").orElseThrow().value()).text();
    }

    @Test
    void anOutletInTheMiddleHalvesTheWay() {
        Outcome.Completed end = drainage(household(site -> { }));
        Outcome.Completed middle = drainage(household(site -> gutter(site).getOutlets().getFirst()
                .setPosition(Quantity.of(4, Units.M))));
        assertEquals(value(end, "runoff", "gutter", Units.L_PER_S) / 2, value(middle, "runoff", "gutter",
                Units.L_PER_S), 1e-12);
        assertEquals(value(end, "flow", "outlet", Units.L_PER_S), value(middle, "flow", "outlet", Units.L_PER_S),
                1e-12);
        assertTrue(value(middle, "collectionEfficiency", "roof", Units.ONE)
                > value(end, "collectionEfficiency", "roof", Units.ONE));
    }

    @Test
    void aFreeEndHasNoOutletToLimitIt() {
        Outcome.Completed free = drainage(household(site -> gutter(site).getOutlets().getFirst()
                .setShape(OutletShape.FREE_END)));
        assertTrue(free.finding("capacity", "outlet").isEmpty());
        assertTrue(value(free, "wayCapacity", "gutter", Units.L_PER_S) > 0);
    }

    @Test
    void lossAndShareBelongTogether() {
        Outcome.Completed answer = drainage(household(site -> gutter(site).setWidth(mm(60))));
        double runoff = 0;
        for (double depth : RAIN) {
            runoff += depth / 1000 * 24 * 0.8;
        }
        double perYear = runoff / RAIN.length * 365.2425;
        double share = value(answer, "collectionEfficiency", "roof", Units.ONE);
        assertTrue(share > 0.3 && share < 0.99, "share " + share);
        assertEquals((1 - share) * perYear, value(answer, "lostPerYear", "roof", Units.M3), 1e-9 * perYear);
    }

    private static double supplied(Site site, Outcome.Completed drainage) {
        return value((Outcome.Completed) run(new StorageBalanceCalculation(), site, rainOf(RAIN, drainage)), "supplied",
                null, Units.M3);
    }

    private static double inflow(Site site, Outcome.Completed drainage) {
        return value((Outcome.Completed) run(new StorageBalanceCalculation(), site, rainOf(RAIN, drainage)), "inflow",
                null, Units.M3);
    }

    @Test
    void aLargerGutterNeverLowersTheSuppliedVolume() {
        List<GutterProfile> profiles = List.of(GutterProfile.HALF_ROUND, GutterProfile.RECTANGULAR,
                GutterProfile.TRIANGULAR);
        for (GutterProfile profile : profiles) {
            List<Double> suppliedM3 = new ArrayList<>();
            double before = 0;
            for (double width = 25; width <= 150; width += 25) {
                double size = width;
                Site site = household(s -> {
                    gutter(s).setProfile(profile);
                    gutter(s).setWidth(mm(size));
                    gutter(s).setDepth(mm(size / 2));
                });
                double supplied = supplied(site, drainage(site));
                assertTrue(supplied >= before, profile + " of " + width + " mm: " + supplied + " after " + before);
                suppliedM3.add(supplied);
                before = supplied;
            }
            assertTrue(suppliedM3.getLast() > suppliedM3.getFirst(), profile + ": the size must matter: " + suppliedM3);
        }
    }

    @Test
    void theGainIsWhatTheWiderGutterBringsIn() {
        Site narrow = household(site -> gutter(site).setWidth(mm(60)));
        Site wide = household(site -> gutter(site).setWidth(mm(85)));
        double gain = value(drainage(narrow), "largerGutterGain", "roof", Units.M3) * RAIN.length / 365.2425;
        assertTrue(gain > 0);
        narrow.getRoofs().getFirst().setInitialLoss(mm(0));
        wide.getRoofs().getFirst().setInitialLoss(mm(0));
        assertEquals(gain, inflow(wide, drainage(wide)) - inflow(narrow, drainage(narrow)), 1e-6 * gain);
    }

    @Test
    void storageTakesAnEnteredShareFirst() {
        Site site = household(s -> gutter(s).setWidth(mm(60)));
        Outcome.Completed drainage = drainage(site);
        double whole = inflow(site, new Outcome.Completed(List.of(), List.of(), List.of()));
        double share = value(drainage, "collectionEfficiency", "roof", Units.ONE);
        assertEquals(whole * share, inflow(site, drainage), 1e-9 * whole);
        Roof roof = site.getRoofs().getFirst();
        roof.setCollectionEfficiency(Quantity.of(0.5));
        assertEquals(whole * 0.5, inflow(site, drainage), 1e-9 * whole);
        roof.setCollectionEfficiency(null);
        roof.setRunoffBasis(RunoffBasis.LONG_TERM);
        assertEquals(whole, inflow(site, drainage), 1e-9 * whole);
    }

    @Test
    void noCautionIsSaidTwiceOfOnePart() {
        List<String> said = new ArrayList<>();
        for (Caution caution : drainage(DemoSites.site("hill-school")).cautions()) {
            String key = caution.code() + "@" + caution.elementId() + caution.arguments();
            assertFalse(said.contains(key), key);
            said.add(key);
        }
    }
}
