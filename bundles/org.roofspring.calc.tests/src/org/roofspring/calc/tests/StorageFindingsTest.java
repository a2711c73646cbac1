package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.StorageBalanceCalculation;
import org.roofspring.calc.standard.StorageSizingCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.CostCategory;
import org.roofspring.site.CostItem;
import org.roofspring.site.NamedElement;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.TopUp;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * The balance and the surface of the demo sites under rain that is simple enough to work the figures by hand. The
 * household: a barrel of 210 L, 8 L of them below the tap; 24 L a day, and from 15 April to 15 October 15 L more;
 * 24 m2 of roof, of each wet day 0.5 mm are lost and then a fifth.
 */
class StorageFindingsTest {
    private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);
    private static final int YEARS = 3;
    private static final int DAYS = (int) (FIRST.plusYears(YEARS).toEpochDay() - FIRST.toEpochDay());

    private static double[] everyDay(double depthMm) {
        return IntStream.range(0, DAYS).mapToDouble(day -> depthMm).toArray();
    }

    /** Rain on one day of each week, with dry months from June to August. */
    private static double[] seasons() {
        return IntStream.range(0, DAYS).mapToDouble(day -> {
            int month = FIRST.plusDays(day).getMonthValue();
            return day % 7 == 3 && (month < 6 || month > 8) ? 14 : 0;
        }).toArray();
    }

    private static Outcome.Completed run(Calculation calculation, Site site, double[] depthMm) {
        return run(calculation, site, List.of(rain("daily", depthMm)));
    }

    private static Finding rain(String id, double[] depthMm) {
        return new Finding(id, "Rain", new FindingValue.Daily(FIRST, depthMm, Units.MM));
    }

    private static Outcome.Completed run(Calculation calculation, Site site, List<Finding> rains) {
        Outcome.Completed rain = new Outcome.Completed(rains, List.of(), List.of());
        Outcome.Completed duty = new Outcome.Completed(List.of(new Finding("flow", "Flow", "pump",
                new FindingValue.Number(Quantity.of(2, Units.L_PER_S)))), List.of(), List.of());
        return assertInstanceOf(Outcome.Completed.class, calculation.calculate(SiteSnapshot.of(site, 1,
                DemoSites.FOLDER), new Inputs(Map.of("rain.record", rain, "pump.duty", duty)),
                new CalculationContext() {
                    @Override
                    public BooleanSupplier cancelled() {
                        return () -> false;
                    }

                    @Override
                    public long randomSeed() {
                        return 1;
                    }
                }));
    }

    private static Outcome.Completed balance(Site site, double[] depthMm) {
        return run(new StorageBalanceCalculation(), site, depthMm);
    }

    private static Outcome.Completed sizing(Site site, double[] depthMm) {
        return run(new StorageSizingCalculation(), site, depthMm);
    }

    private static double number(Outcome.Completed outcome, String id, Unit unit) {
        return outcome.finding(id).map(finding -> ((FindingValue.Number) finding.value()).quantity().in(unit))
                .orElseThrow(() -> new AssertionError("no finding " + id));
    }

    private static double orNone(Outcome.Completed outcome, String id) {
        return outcome.finding(id).isPresent() ? number(outcome, id, Units.M3) : 0;
    }

    private static List<List<Object>> rows(Outcome.Completed outcome, String id) {
        return ((FindingValue.Table) outcome.finding(id).orElseThrow().value()).rows();
    }

    private static double cell(List<Object> row, int column, Unit unit) {
        return ((Quantity) row.get(column)).in(unit);
    }

    private static boolean cautioned(Outcome outcome, String code) {
        return outcome.cautions().stream().map(Caution::code).anyMatch(code::equals);
    }

    /** What comes in is what goes out and what is left, whatever the site and the rain. */
    @Test
    void massCloses() {
        massCloses("household");
        massCloses("hill-school");
    }

    private static void massCloses(String name) {
        for (double[] depthMm : List.of(everyDay(0), everyDay(10), seasons())) {
            Outcome.Completed balance = balance(DemoSites.site(name), depthMm);
            double[] volumes = ((FindingValue.Daily) balance.finding("volumeTrace").orElseThrow().value()).values();
            double end = number(balance, "endVolume", Units.M3);
            assertEquals(end, volumes[volumes.length - 1], 1e-9);
            double in = number(balance, "inflow", Units.M3) + orNone(balance, "toppedUp");
            double out = number(balance, "supplied", Units.M3) + number(balance, "spilled", Units.M3)
                    + orNone(balance, "evaporated") + orNone(balance, "leaked");
            double start = balance.workings().stream().filter(working -> working.findingId().equals("spilled"))
                    .flatMap(working -> working.steps().getLast().inputs().stream())
                    .filter(input -> input.symbol().equals("V0")).findFirst().orElseThrow().value().in(Units.M3);
            assertEquals(0, in + start - out - end, 1e-9 * Math.max(in, 210e-3), name);
        }
    }

    /** A dry year of 24 L a day, 39 L in the growing season: what is missing is counted month by month. */
    @Test
    void shortageOfEachMonth() {
        List<List<Object>> months = rows(balance(DemoSites.site("household"), everyDay(0)), "shortageByMonth");
        assertEquals(12 * YEARS, months.size());
        for (List<Object> row : months) {
            YearMonth month = YearMonth.parse((String) row.get(0));
            long growing = IntStream.rangeClosed(1, month.lengthOfMonth()).mapToObj(month::atDay)
                    .filter(day -> !day.isBefore(LocalDate.of(day.getYear(), 4, 15))
                            && !day.isAfter(LocalDate.of(day.getYear(), 10, 15))).count();
            double demandL = 24 * month.lengthOfMonth() + 15 * growing;
            assertEquals(demandL, cell(row, 3, Units.L), 1e-6, month.toString());
            assertEquals(demandL, cell(row, 4, Units.L), 1e-6, month.toString());
            assertEquals(100, cell(row, 5, Units.PERCENT), 1e-9);
            assertEquals(month.lengthOfMonth(), cell(row, 2, Units.D));
        }
    }

    /** Days and months in which nothing is asked for are not counted as met, and have no share. */
    @Test
    void monthsWithoutDemandHaveNoShare() {
        Site site = DemoSites.site("household");
        site.getUses().forEach(use -> use.setInUse(use.getCalendar() != null));
        List<List<Object>> months = rows(balance(site, everyDay(0)), "shortageByMonth");
        List<Object> january = months.get(0);
        assertEquals(0, cell(january, 1, Units.D));
        assertNull(january.get(5));
        assertEquals(100, cell(months.get(6), 5, Units.PERCENT), 1e-9);
    }

    /** 24 and 39 L a day from loads of 100 L at 5 each, ordered when less than half of 210 L can be drawn. */
    @Test
    void loadsAreCountedAndPriced() {
        Site site = DemoSites.site("household");
        TopUp topUp = SiteFactory.eINSTANCE.createTopUp();
        topUp.setId("carrier");
        topUp.setName("Water carrier");
        topUp.setTank(site.getTanks().getFirst());
        topUp.setLoad(Quantity.of(100, Units.L));
        topUp.setOrderBelow(Quantity.of(50, Units.PERCENT));
        topUp.setDelay(Quantity.of(0, Units.D));
        topUp.setPrice(Quantity.of(5, Units.MONEY));
        site.getTopUps().add(topUp);
        Outcome.Completed balance = balance(site, everyDay(0));
        double loads = number(balance, "topUpLoads", Units.ONE);
        double askedL = 24.0 * DAYS + 15 * 184 * YEARS;
        assertEquals(askedL, number(balance, "supplied", Units.L), 1e-6, "loads come as fast as water is used");
        assertEquals(askedL / 100, loads, 2);
        assertEquals(loads * 100, number(balance, "toppedUp", Units.L), 1e-6);
        assertEquals(loads * 5, number(balance, "topUpCost", Units.MONEY), 1e-9);
        assertEquals(loads * 5 * 365.2425 / DAYS, number(balance, "topUpYearlyCost", Units.MONEY), 1e-9);
        topUp.setPrice(null);
        topUp.setMostPerYear(20);
        Outcome.Completed unpriced = balance(site, everyDay(0));
        assertEquals(loads, number(unpriced, "topUpLoads", Units.ONE));
        assertTrue(unpriced.finding("topUpCost").isEmpty());
        assertTrue(cautioned(unpriced, "topup.no-price"));
        assertTrue(cautioned(unpriced, "topup.simplified"));
        topUp.setInUse(false);
        assertTrue(balance(site, everyDay(0)).finding("topUpLoads").isEmpty());
    }

    /** A coefficient of whole years holds the losses already. */
    @Test
    void lossesAreNotTakenTwiceUnsaid() {
        Site site = DemoSites.site("household");
        assertFalse(cautioned(balance(site, everyDay(1)), "roof.losses-twice"));
        site.getRoofs().getFirst().setRunoffBasis(RunoffBasis.LONG_TERM);
        assertTrue(cautioned(balance(site, everyDay(1)), "roof.losses-twice"));
        site.getRoofs().getFirst().setInitialLoss(null);
        assertFalse(cautioned(balance(site, everyDay(1)), "roof.losses-twice"));
    }

    /** Yield is of the plan area: neither slope nor height of a roof nor the wind on it change it. */
    @Test
    void yieldIsOfThePlanArea() {
        Site site = DemoSites.site("household");
        double before = number(balance(site, everyDay(10)), "inflow", Units.M3);
        assertEquals(9.5 * 0.8 * 24e-3 * DAYS, before, 1e-6);
        site.getRoofs().getFirst().setPitch(Quantity.of(45, Units.DEG));
        site.getRoofs().getFirst().setSlopeHeight(Quantity.of(4, Units.M));
        assertEquals(before, number(balance(site, everyDay(10)), "inflow", Units.M3));
    }

    /** At the roof there is, the surface is the curve; at every pair, what a plain loop over the days gives. */
    @Test
    void surfaceIsEachPairRunDayByDay() {
        Outcome.Completed sizing = sizing(DemoSites.site("household"), seasons());
        assertEquals(24, number(sizing, "presentRoof", Units.M2), 1e-12);
        assertSameCurve(sizing, sizing, 24);
        List<List<Object>> pairs = rows(sizing, "surface");
        assertEquals(2, cell(pairs.getFirst(), 0, Units.M2), 1e-12);
        assertEquals(48, cell(pairs.getLast(), 0, Units.M2), 1e-12);
        for (int i = 0; i < pairs.size(); i += 7) {
            List<Object> row = pairs.get(i);
            double share = plainShare(cell(row, 0, Units.M2), cell(row, 1, Units.L));
            assertEquals(share, cell(row, 2, Units.ONE), 1e-12, row.toString());
            assertEquals(share >= number(sizing, "target", Units.ONE), row.get(4));
        }
    }

    /** Yield after spillage in litres, over the record twice, days met in full of the second time. */
    private static double plainShare(double areaM2, double capacityL) {
        double[] rain = seasons();
        double volume = 0;
        int met = 0;
        for (int day = 0; day < 2 * DAYS; day++) {
            LocalDate date = FIRST.plusDays(day % DAYS);
            boolean growing = !date.isBefore(LocalDate.of(date.getYear(), 4, 15))
                    && !date.isAfter(LocalDate.of(date.getYear(), 10, 15));
            double demand = growing ? 39 : 24;
            double inflow = Math.max(0, rain[day % DAYS] - 0.5) * 0.8 * areaM2;
            double yield = Math.min(demand, volume);
            volume = Math.min(volume + inflow - yield, capacityL - yield);
            met += day >= DAYS && yield >= demand - 1e-9 ? 1 : 0;
        }
        return (double) met / DAYS;
    }

    private static void assertSameCurve(Outcome.Completed surface, Outcome.Completed curve, double areaM2) {
        List<List<Object>> points = rows(curve, "reliabilityTable");
        List<List<Object>> at = rows(surface, "surface").stream()
                .filter(row -> Math.abs(cell(row, 0, Units.M2) - areaM2) < 1e-9).toList();
        assertEquals(points.size() - 1, at.size(), "all volumes but none at all");
        for (int i = 0; i < at.size(); i++) {
            for (int column = 1; column < 4; column++) {
                assertEquals(((Quantity) points.get(i + 1).get(column - 1)).si(), ((Quantity) at.get(i).get(column)).si(),
                        1e-12);
            }
        }
    }

    private static void price(Site site, NamedElement element, double amount, Double count) {
        CostItem cost = SiteFactory.eINSTANCE.createCostItem();
        cost.setId("price-" + element.getId());
        cost.setName("Price of " + element.getName());
        cost.setCategory(CostCategory.CAPITAL);
        cost.setAmount(Quantity.of(amount, Units.MONEY));
        cost.setQuantity(count == null ? null : Quantity.of(count));
        cost.setElement(element);
        site.getCosts().add(cost);
    }

    /** Least cost of the pairs that reach the target, looked for one by one. */
    @Test
    void cheapestPair() {
        Site site = DemoSites.site("household");
        site.getCosts().clear();
        assertEquals("Not known: no capital cost of the site names a tank.", text(sizing(site, seasons())));
        price(site, site.getTanks().getFirst(), 42, null);
        Outcome.Completed tankOnly = sizing(site, seasons());
        assertTrue(text(tankOnly).startsWith("With the roof there is"), text(tankOnly));
        check(tankOnly, 0, 200);
        price(site, site.getRoofs().getFirst(), 40, 3.0);
        Outcome.Completed both = sizing(site, seasons());
        assertTrue(text(both).startsWith("Of all pairs"), text(both));
        check(both, 120.0 / 24, 200);
        site.getTarget().setTimeReliability(Quantity.of(100, Units.PERCENT));
        Outcome.Completed none = sizing(site, everyDay(0.6));
        assertTrue(text(none).startsWith("No pair reaches the target."), text(none));
        assertTrue(none.finding("cheapestCost").isEmpty());
    }

    /** Synthetic rain beside the record has an answer of its own, which never takes the place of the first. */
    @Test
    void syntheticRainStandsBeside() {
        Site site = DemoSites.site("household");
        double[] enough = Arrays.stream(seasons()).map(mm -> 2 * mm).toArray();
        Outcome.Completed alone = sizing(site, enough);
        assertTrue(alone.finding("requiredVolumeSynthetic").isEmpty());
        Outcome.Completed beside = run(new StorageSizingCalculation(), site,
                List.of(rain("daily", enough), rain("synthetic", everyDay(10))));
        assertEquals(number(alone, "requiredVolume", Units.L), number(beside, "requiredVolume", Units.L));
        assertTrue(number(beside, "requiredVolumeSynthetic", Units.L) <= 78 + 1e-5, "tomorrow's use beside today's");
        assertTrue(cautioned(beside, "storage.synthetic-beside"));
    }

    private static String text(Outcome.Completed sizing) {
        return ((FindingValue.Text) sizing.finding("cheapestPair").orElseThrow().value()).text();
    }

    private static void check(Outcome.Completed sizing, double perM2, double perM3) {
        double least = rows(sizing, "surface").stream().filter(row -> (Boolean) row.get(4))
                .filter(row -> perM2 > 0 || Math.abs(cell(row, 0, Units.M2) - 24) < 1e-9)
                .mapToDouble(row -> perM2 * cell(row, 0, Units.M2) + perM3 * cell(row, 1, Units.M3)).min().orElseThrow();
        assertEquals(least, number(sizing, "cheapestCost", Units.MONEY), 1e-9 * least);
        assertEquals(least, perM2 * number(sizing, "cheapestRoof", Units.M2)
                + perM3 * number(sizing, "cheapestTank", Units.M3), 1e-9 * least);
    }

    /** The simple rules stand beside the simulation, and say why they differ. */
    @Test
    void simpleRulesSayWhyTheyDiffer() {
        Outcome.Completed sizing = sizing(DemoSites.site("hill-school"), seasons());
        List<List<Object>> rules = rows(sizing, "rules");
        assertEquals(List.of("ruleFivePercent", "ruleSixPercent", "ruleDemandSide").size(), rules.size());
        for (List<Object> rule : rules) {
            assertTrue(((String) rule.get(4)).length() > 40, rule.toString());
            double met = cell(rule, 3, Units.PERCENT);
            assertTrue(met >= 0 && met <= 100);
        }
        assertEquals(0.06 / 0.05, number(sizing, "ruleSixPercent", Units.M3)
                / number(sizing, "ruleFivePercent", Units.M3), 1e-12);
        // the record's longest time without inflow: from the last rain before June to the first after August
        double[] rain = seasons();
        int last = IntStream.range(0, DAYS).filter(day -> rain[day] > 0 && FIRST.plusDays(day).getMonthValue() < 6
                && FIRST.plusDays(day).getYear() == 2001).max().orElseThrow();
        assertTrue(Arrays.stream(rain, last + 1, last + 90).sum() == 0);
        assertTrue(number(sizing, "ruleDemandSide", Units.M3) > number(sizing, "ruleSixPercent", Units.M3));
    }
}
