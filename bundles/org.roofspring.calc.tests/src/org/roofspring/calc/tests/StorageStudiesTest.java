package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
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
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.OverheadDayCalculation;
import org.roofspring.calc.standard.StorageAccidentsCalculation;
import org.roofspring.calc.standard.StorageOutlookCalculation;
import org.roofspring.calc.standard.StorageSizingCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.Use;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Sizing, outlook and the overhead tank of the demo sites under rain that is simple enough to work the figures by hand.
 * The household: a barrel of 210 L, 8 L of them below the tap, 0.85 m to the overflow; 24 L a day for washing, and from
 * 15 April to 15 October 15 L a day more; 24 m2 of roof, of each wet day 0.5 mm are lost and then a fifth.
 */
class StorageStudiesTest {
    private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);
    private static final int YEARS = 6;
    private static final int DAYS = (int) (FIRST.plusYears(YEARS).toEpochDay() - FIRST.toEpochDay());

    private static double[] everyDay(double depthMm) {
        return IntStream.range(0, DAYS).mapToDouble(day -> depthMm).toArray();
    }

    private static Outcome run(Calculation calculation, Site site, double[] depthMm) {
        Outcome.Completed rain = new Outcome.Completed(List.of(new Finding("daily", "Daily rain",
                new FindingValue.Daily(FIRST, depthMm, Units.MM))), List.of(), List.of());
        Outcome.Completed duty = new Outcome.Completed(List.of(new Finding("flow", "Flow", "pump",
                new FindingValue.Number(Quantity.of(2, Units.L_PER_S)))), List.of(), List.of());
        Inputs inputs = new Inputs(Map.of("rain.record", rain, "pump.duty", duty));
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

    private static Outcome.Completed completed(Calculation calculation, Site site, double[] depthMm) {
        return assertInstanceOf(Outcome.Completed.class, run(calculation, site, depthMm));
    }

    private static double number(Outcome.Completed outcome, String id, String element, Unit unit) {
        return ((FindingValue.Number) outcome.finding(id, element).orElseThrow(() -> new AssertionError(id)).value())
                .quantity().in(unit);
    }

    private static FindingValue.Verdict verdict(Outcome.Completed outcome, String id, String element) {
        return (FindingValue.Verdict) outcome.finding(id, element).orElseThrow().value();
    }

    private static List<List<Object>> rows(Outcome.Completed outcome, String id) {
        return ((FindingValue.Table) outcome.finding(id).orElseThrow().value()).rows();
    }

    private static List<String> cautions(Outcome outcome) {
        return outcome.cautions().stream().map(Caution::code).toList();
    }

    /** 9.5 mm x 0.8 x 24 m2 = 182.4 L a day: tomorrow's use beside today's, 2 x 39 L, is enough and needed. */
    @Test
    void tankForSteadyRain() {
        Site site = DemoSites.site("household");
        site.getTarget().setTimeReliability(Quantity.of(100, Units.PERCENT));
        Outcome.Completed sizing = completed(new StorageSizingCalculation(), site, everyDay(10));
        assertEquals(78, number(sizing, "requiredVolume", null, Units.L), 1e-5);
        assertEquals(86, number(sizing, "requiredCapacity", null, Units.L), 1e-5);
        assertEquals(202, number(sizing, "presentVolume", null, Units.L), 1e-9);
        assertEquals(0, number(sizing, "sequentPeak", null, Units.L), 1e-9);
        assertEquals(Level.GOOD, verdict(sizing, "verdict", null).level());
        double yearL = (24 * DAYS + 15 * 184 * YEARS) / (DAYS / 365.2425);
        assertEquals(0.05 * yearL, number(sizing, "ruleFivePercent", null, Units.L), 1e-6);
        assertEquals(0.06 * yearL, number(sizing, "ruleSixPercent", null, Units.L), 1e-6);
        assertEquals(0, number(sizing, "ruleDemandSide", null, Units.L), "there is no day without inflow");
    }

    /** The six months that are wettest are equal, so the year begins in January: six years, none failed. */
    @Test
    void noFailureIsNotCertainty() {
        Outcome.Completed sizing = completed(new StorageSizingCalculation(), DemoSites.site("household"), everyDay(10));
        assertEquals(YEARS, number(sizing, "hydrologicalYears", null, Units.ONE), 1);
        assertEquals(0, number(sizing, "failedYears", null, Units.ONE));
        double years = number(sizing, "hydrologicalYears", null, Units.ONE);
        assertEquals(0, number(sizing, "failedShareLow", null, Units.ONE));
        assertEquals(1 - Math.pow(0.05, 1 / years), number(sizing, "failedShareHigh", null, Units.ONE), 1e-12);
        assertEquals(1 - Math.pow(0.1, 1 / years), number(sizing, "failedShareLimit", null, Units.ONE), 1e-12);
        assertEquals(1, number(sizing, "timeReliabilityLow", null, Units.ONE));
        assertTrue(cautions(sizing).contains("storage.record-short"));
        assertTrue(rows(sizing, "shortages").isEmpty());
    }

    /** No rain at all: demand above inflow has no tank, and says so, while the rest is still answered. */
    @Test
    void noTankForNoRain() {
        Outcome.Completed sizing = completed(new StorageSizingCalculation(), DemoSites.site("household"), everyDay(0));
        assertTrue(sizing.finding("requiredVolume").isEmpty());
        assertTrue(sizing.finding("sequentPeak").isEmpty());
        assertEquals(Level.BAD, verdict(sizing, "verdict", null).level());
        assertTrue(verdict(sizing, "verdict", null).reasons().get(1).contains("is more than the inflow"));
        assertEquals(100, number(sizing, "failedShareHigh", null, Units.PERCENT));
        assertEquals(1, rows(sizing, "reliabilityTable").stream()
                .map(row -> ((Quantity) row.get(1)).si()).distinct().count(), "no day is met by any volume");
    }

    /** 0.6 of 0.85 m are 148.2 L, less 8: five days of 24 L, in every year, and then the sixth goes short. */
    @Test
    void outlookWithoutRain() {
        Outcome.Completed outlook = completed(new StorageOutlookCalculation(), DemoSites.site("household"),
                everyDay(0));
        assertEquals(210 * 0.6 / 0.85, number(outlook, "volumeToday", null, Units.L), 1e-9);
        for (String id : List.of("daysLeftCautious", "daysLeftMiddle", "daysLeftHopeful")) {
            assertEquals(5, number(outlook, id, null, Units.D));
        }
        assertEquals(100, number(outlook, "chanceDry", null, Units.PERCENT));
        FindingValue.Daily chance = (FindingValue.Daily) outlook.finding("chanceByDate").orElseThrow().value();
        assertEquals(LocalDate.of(2025, 2, 1), chance.firstDay());
        assertEquals(0, chance.value(4));
        assertEquals(100, chance.value(5));
        // a year asks for 24 x 365 + 15 x 184 = 11,520 L; there are 140.2 L above the tap
        assertEquals(1, number(outlook, "ration", null, Units.PERCENT));
        assertEquals(Level.CONDITIONAL, verdict(outlook, "rationVerdict", null).level());
        assertEquals(YEARS, rows(outlook, "years").size());
        FindingValue.Daily fan = (FindingValue.Daily) outlook.finding("fanMiddle").orElseThrow().value();
        assertEquals((210 * 0.6 / 0.85 - 8 - 3 * 24) / 1000, fan.value(2), 1e-9);
        assertTrue(cautions(outlook).contains("outlook.few-years"));
    }

    /** Marks a week ahead without rain: 7 days of 24 L, or of 39 L where the bed is watered too. */
    @Test
    void droughtCardAndDipstickWithoutRain() {
        Outcome.Completed outlook = completed(new StorageOutlookCalculation(), DemoSites.site("household"),
                everyDay(0));
        List<List<Object>> card = rows(outlook, "droughtCard");
        assertTrue(outlook.finding("droughtCard").orElseThrow().title().contains("14 days ahead, chance 10 %"),
                outlook.finding("droughtCard").orElseThrow().title());
        double stepL = 0.21;
        // January: 14 d of 24 L is more than a full barrel has, three quarters and half of it are not
        assertEquals("more than full", card.get(0).get(1));
        assertEquals("more than full", card.get(0).get(3));
        assertEquals(8 + 14 * 12, ((Quantity) card.get(0).get(6)).in(Units.L), stepL);
        assertEquals((8 + 14 * 12) * 0.85 / 210, ((Quantity) card.get(0).get(5)).in(Units.M), stepL * 0.85 / 210);
        List<List<Object>> dipstick = rows(outlook, "dipstick");
        assertEquals(18, dipstick.size(), "every 5 cm up to 0.85 m");
        List<Object> row = dipstick.get(12);
        assertEquals(0.6, ((Quantity) row.get(0)).in(Units.M), 1e-9);
        assertEquals(210 * 0.6 / 0.85, ((Quantity) row.get(1)).in(Units.L), 1e-6);
        for (int column = 2; column < 6; column++) {
            assertEquals(5, ((Quantity) row.get(column)).in(Units.D));
        }
    }

    @Test
    void outlookNeedsAReading() {
        Site site = DemoSites.site("household");
        site.getTanks().getFirst().setCurrentDate(null);
        SiteSnapshot snapshot = SiteSnapshot.of(site, 1, DemoSites.FOLDER);
        assertEquals(List.of("The day on which the water of Rain barrel was read is missing."),
                new StorageOutlookCalculation().check(snapshot).reasons());
        Outcome tooShort = run(new StorageOutlookCalculation(), DemoSites.site("household"), new double[300]);
        assertEquals("The rain record holds 300 days; the outlook needs a year or more.",
                assertInstanceOf(Outcome.NotComputable.class, tooShort).problems().getFirst().text());
    }

    /**
     * The school with its caretaker alone: 80 L a day, with no peak, so from 6 to 20. From the starting height of 0.9 m
     * to the outlet there are 5 x 0.9 / 1.75 - 0.2 = 2.371 m3: 29 days and 9 of the 14 hours. With power from 6 to 10
     * and 14 to 21, the level comes down to the mark at 10 at worst, and the outage begins at 14: 29 days and 5 hours.
     */
    @Test
    void overheadTankOfTheCaretaker() {
        Site site = DemoSites.site("hill-school");
        for (Use use : site.getUses()) {
            use.setInUse(use.getId().equals("use-caretaker"));
        }
        Outcome.Completed day = completed(new OverheadDayCalculation(), site, everyDay(0));
        assertEquals(80, number(day, "busiestDay", "overhead", Units.L), 1e-9);
        assertEquals(29 * 24 + 9, number(day, "tapsFromStart", "overhead", Units.H), 1e-6);
        assertEquals(29 * 24 + 5, number(day, "outageBridged", "overhead", Units.H), 1 / 3600.0);
        assertEquals(Level.GOOD, verdict(day, "verdict", "overhead").level(), "the target is two days");
        // two days from 14, after four hours from 10 without power: 80 L x (2 + 4/14) above the outlet
        double shape = (5 * 0.9 / 1.75 - 0.2) / 5;
        assertEquals(0.08 * (2 + 4 / 14.0) / shape, number(day, "smallestTank", "overhead", Units.M3), 1e-5);
        assertEquals(0, number(day, "dryTime", "overhead", Units.H));
    }

    @Test
    void overheadTankNeedsAFlow() {
        Site site = DemoSites.site("hill-school");
        Outcome none = new OverheadDayCalculation().calculate(SiteSnapshot.of(site, 1, DemoSites.FOLDER), Inputs.none(),
                new CalculationContext() {
                    @Override
                    public BooleanSupplier cancelled() {
                        return () -> false;
                    }

                    @Override
                    public long randomSeed() {
                        return 1;
                    }
                });
        assertEquals("The flow of Lift pump is not known: it has no duty point, or no strokes.",
                assertInstanceOf(Outcome.NotComputable.class, none).problems().getFirst().text());
        Tank overhead = site.getTanks().get(1);
        overhead.setStopHeight(overhead.getStartHeight());
        String text = assertInstanceOf(Outcome.NotComputable.class, run(new OverheadDayCalculation(), site,
                everyDay(0)))
                .problems().getFirst().text();
        assertTrue(text.startsWith("Overhead tank: the heights at which its pump starts and stops do not fit"), text);
        overhead.setStopHeight(null);
        assertFalse(new OverheadDayCalculation().check(SiteSnapshot.of(site, 1, DemoSites.FOLDER)).applies());
    }

    /** With 182.4 L of inflow a day a dumped barrel is missed for one day: yield after spillage has nothing to draw. */
    @Test
    void dumpedBarrelUnderSteadyRain() {
        Outcome.Completed accidents = completed(new StorageAccidentsCalculation(), DemoSites.site("household"),
                everyDay(10));
        assertEquals(39, number(accidents, "contaminated", null, Units.L), 1e-6);
        List<Object> row = rows(accidents, "accidents").stream().filter(r -> r.get(0).toString().contains("let out"))
                .findFirst().orElseThrow();
        assertEquals(1, ((Quantity) row.get(2)).in(Units.D));
        // half of 202 - 39 L + 8 is still there where only one of two tanks is dumped, which is enough for a day
        assertEquals(0, number(accidents, "contaminatedHelped", null, Units.L), 1e-6);
        assertTrue(rows(accidents, "accidents").stream().noneMatch(r -> r.get(0).toString().startsWith("Pump out")));
        assertTrue(cautions(accidents).contains("accident.danger"));
    }

    @Test
    void emptySiteIsRefusedWithReasons() {
        SiteSnapshot empty = SiteSnapshot.of(SiteFactory.eINSTANCE.createSite(), 1, null);
        for (Calculation calculation : List.of(new StorageSizingCalculation(), new StorageOutlookCalculation(),
                new StorageAccidentsCalculation(), new OverheadDayCalculation())) {
            assertFalse(calculation.check(empty).applies());
        }
    }
}
