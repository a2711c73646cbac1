package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationResult.Status;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.snapshot.SiteSnapshot;

class CalculationRunnerTest {
    private final CalculationRegistry registry = new CalculationRegistry();
    private final CalculationRunner runner = new CalculationRunner(registry);

    private static Site site() {
        Site site = SiteFactory.eINSTANCE.createSite();
        Roof roof = SiteFactory.eINSTANCE.createRoof();
        roof.setId("roof-1");
        roof.setName("Hall");
        roof.setPlanArea(Quantity.of(100, Units.M2));
        site.getRoofs().add(roof);
        return site;
    }

    private SiteResults run(Site site) {
        return runner.run(SiteSnapshot.of(site, 7, null));
    }

    private static double n(SiteResults results, String id) {
        return ((FindingValue.Number) results.finding(id, "n").orElseThrow().value()).quantity().value();
    }

    @Test
    void aPluginThatThrowsIsNamedAndTheRestComputes() {
        new Probe((s, c) -> {
            throw new IllegalStateException("broken");
        }).addTo(registry, "a.broken", "Roof");
        Probe.countingRoofs().addTo(registry, "b.fine", "Roof");
        SiteResults results = run(site());
        assertEquals(1, n(results, "b.fine"));
        CalculationResult broken = results.result("a.broken").orElseThrow();
        assertEquals(Status.FAULT, broken.status());
        assertTrue(broken.fault().text().contains("plugin.of.a.broken") && broken.fault().text().contains("broken"), broken.fault().text());
        assertEquals(1, results.allFaults().size());
    }

    @Test
    void whatNeedsAFailedOneSaysSo() {
        new Probe((s, c) -> {
            throw new IllegalStateException();
        }).addTo(registry, "a.broken", "Roof");
        Probe dependent = Probe.countingRoofs().addTo(registry, "b.dependent", "Roof", "a.broken");
        Probe.countingRoofs().addTo(registry, "c.lonely", "Roof", "not.installed");
        SiteResults results = run(site());
        assertEquals(Status.NOT_APPLICABLE, results.result("b.dependent").orElseThrow().status());
        assertEquals(0, dependent.runs.get());
        assertTrue(results.result("c.lonely").orElseThrow().reasons().get(0).contains("not.installed"));
    }

    @Test
    void nothingAndNotANumberAreFaults() {
        new Probe((s, c) -> null).addTo(registry, "a.nothing", "Roof");
        new Probe((s, c) -> new Outcome.Completed(List.of(new Finding("d", "Days",
                new FindingValue.Daily(LocalDate.of(2020, 1, 1), new double[] { 1, Double.NaN }, Units.MM))), List.of(), List.of())).addTo(registry, "b.nan", "Roof");
        SiteResults results = run(site());
        assertEquals(Status.FAULT, results.result("a.nothing").orElseThrow().status());
        assertTrue(results.result("b.nan").orElseThrow().fault().text().contains("not a number"));
    }

    @Test
    void circlesAreRefusedAndSpeltOut() {
        Probe.countingRoofs().addTo(registry, "a.one", "Roof", "b.two");
        Probe.countingRoofs().addTo(registry, "b.two", "Roof", "a.one");
        Probe.countingRoofs().addTo(registry, "c.free", "Roof");
        SiteResults results = run(site());
        assertEquals(1, n(results, "c.free"));
        assertEquals(2, results.faults().size());
        assertTrue(results.faults().get(0).text().contains("a.one needs b.two needs a.one"), results.faults().get(0).text());
    }

    @Test
    void theSecondToClaimAnIdIsLeftOutAndNamed() {
        new Probe((s, c) -> Probe.number(1)).addTo(registry, "same.id", "Roof");
        new Probe((s, c) -> Probe.number(2)).addTo(registry, "same.id", "Roof");
        SiteResults results = run(site());
        assertEquals(1, n(results, "same.id"));
        assertTrue(results.allFaults().get(0).text().contains("taken"));
    }

    @Test
    void oneThatNeverComesBackIsAbandonedAndSetAside() {
        AtomicBoolean stop = new AtomicBoolean();
        Probe endless = new Probe((s, c) -> {
            while (!stop.get()) {
                Thread.onSpinWait();
            }
            return Probe.number(0);
        }).addTo(registry, "a.endless", 1, "Roof");
        Probe.countingRoofs().addTo(registry, "b.fine", "Roof");
        try {
            SiteResults first = run(site());
            assertEquals(Status.FAULT, first.result("a.endless").orElseThrow().status());
            assertEquals(1, n(first, "b.fine"));
            SiteResults second = run(site());
            assertEquals(1, endless.runs.get(), "set aside, so not run again");
            assertTrue(second.allFaults().get(0).text().contains("1 s"), second.allFaults().get(0).text());
        } finally {
            stop.set(true);
        }
    }

    @Test
    void cancelStopsWithinABound() throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        AtomicBoolean cancel = new AtomicBoolean();
        new Probe((s, c) -> {
            started.countDown();
            while (true) {
                c.checkCancelled();
            }
        }).addTo(registry, "a.long", "Roof");
        Thread canceller = new Thread(() -> {
            try {
                started.await();
                cancel.set(true);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        canceller.start();
        SiteSnapshot snapshot = SiteSnapshot.of(site(), 1, null);
        long start = System.nanoTime();
        assertThrows(CancellationException.class, () -> runner.run(snapshot, cancel::get, r -> { }));
        assertTrue(System.nanoTime() - start < 2_000_000_000L, "cancelling took too long");
        canceller.join();
    }

    @Test
    void undoIsACacheHitAndOtherEditsDoNotRunIt() {
        Probe roofs = Probe.countingRoofs().addTo(registry, "a.roofs", "Roof");
        Probe area = Probe.countingRoofs().addTo(registry, "b.altitude", "Site.altitude");
        Site site = site();
        run(site);
        site.getRoofs().get(0).setPlanArea(Quantity.of(120, Units.M2));
        run(site);
        assertEquals(2, roofs.runs.get());
        assertEquals(1, area.runs.get(), "a roof is not what it reads");
        site.getRoofs().get(0).setPlanArea(Quantity.of(100, Units.M2));
        SiteResults undone = run(site);
        assertEquals(2, roofs.runs.get(), "the old answer was kept");
        assertEquals(7, undone.result("a.roofs").orElseThrow().revision());
        site.setAltitude(Quantity.of(900, Units.M));
        run(site);
        assertEquals(2, area.runs.get());
    }

    @Test
    void aValueOutOfRangeGivesNoAnswerWhereItIsRead() {
        Probe.countingRoofs().addTo(registry, "a.roofs", "Roof");
        Probe.countingRoofs().addTo(registry, "b.altitude", "Site.altitude");
        Site site = site();
        site.getRoofs().get(0).setPlanArea(Quantity.of(-3, Units.M2));
        SiteResults results = run(site);
        assertEquals(Status.NOT_APPLICABLE, results.result("a.roofs").orElseThrow().status());
        assertTrue(results.result("a.roofs").orElseThrow().reasons().get(0).contains("-3 m2"));
        assertEquals(Status.COMPLETED, results.result("b.altitude").orElseThrow().status());
    }

    @Test
    void aPluginCannotWriteToTheSnapshot() {
        new Probe((s, c) -> {
            s.site().getRoofs().clear();
            return Probe.number(0);
        }).addTo(registry, "a.vandal", "Roof");
        Probe.countingRoofs().addTo(registry, "b.roofs", "Roof");
        SiteResults results = run(site());
        assertEquals(Status.FAULT, results.result("a.vandal").orElseThrow().status());
        assertEquals(1, n(results, "b.roofs"));
    }
}
