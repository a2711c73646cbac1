package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.jobs.Job;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.CalculationDescriptor;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.FindingsStore;
import org.roofspring.calc.engine.LiveSite;
import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;

/** Live recalculation with the platform's jobs. */
class LiveSiteOsgiTest {
    private static final long PATIENCE_MS = 10_000;
    private final ExecutorService modelThread = Executors.newSingleThreadExecutor();
    private final CalculationRegistry registry = new CalculationRegistry();
    private final CalculationRunner runner = new CalculationRunner(registry);

    @AfterEach
    void end() {
        modelThread.shutdownNow();
    }

    private <T> T onModel(java.util.concurrent.Callable<T> task) throws Exception {
        return modelThread.submit(task).get(PATIENCE_MS, TimeUnit.MILLISECONDS);
    }

    private static void await(BooleanSupplier condition, String what) throws InterruptedException {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!condition.getAsBoolean()) {
            assertTrue(System.currentTimeMillis() < end, "never: " + what);
            Thread.sleep(5);
        }
    }

    private static Site site(double areaM2) {
        Site site = SiteFactory.eINSTANCE.createSite();
        Roof roof = SiteFactory.eINSTANCE.createRoof();
        roof.setId("roof-1");
        roof.setPlanArea(Quantity.of(areaM2, Units.M2));
        site.getRoofs().add(roof);
        return site;
    }

    private static Probe area() {
        return new Probe((s, c) -> Probe.number(s.site().getRoofs().get(0).getPlanArea().si()));
    }

    private static double n(LiveSite live, String id) {
        return live.results().finding(id, "n").map(f -> ((FindingValue.Number) f.value()).quantity().value()).orElse(-1.0);
    }

    @Test
    void anEditIsFollowedByItsAnswer() throws Exception {
        area().addTo(registry, "a.area", "Roof");
        Site site = site(100);
        LiveSite live = onModel(() -> new LiveSite(site, () -> null, registry, runner, modelThread));
        AtomicInteger told = new AtomicInteger();
        live.addListener(s -> told.incrementAndGet());
        await(() -> n(live, "a.area") == 100, "the first answer");
        boolean outOfDate = onModel(() -> {
            site.getRoofs().get(0).setPlanArea(Quantity.of(250, Units.M2));
            return live.outOfDate("a.area");
        });
        assertTrue(outOfDate, "the old answer stays, marked");
        await(() -> n(live, "a.area") == 250 && !live.outOfDate("a.area"), "the new answer");
        await(() -> told.get() > 0, "the listener");
        onModel(() -> {
            live.close();
            return null;
        });
    }

    @Test
    void aStaleResultIsDropped() {
        FindingsStore store = new FindingsStore();
        CalculationDescriptor descriptor = new CalculationDescriptor("a.a", "1", "A", List.of("Roof"), List.of(), List.of(), 5, "p");
        CalculationResult newer = new CalculationResult(descriptor, CalculationResult.Status.COMPLETED, Probe.number(2), List.of(), null, "f2", 2);
        CalculationResult older = new CalculationResult(descriptor, CalculationResult.Status.COMPLETED, Probe.number(1), List.of(), null, "f1", 1);
        assertTrue(store.publish(newer));
        assertFalse(store.publish(older), "revision 1 after revision 2");
        assertEquals(newer, store.results().result("a.a").orElseThrow());
    }

    @Test
    void aRunOvertakenByAnEditIsCancelledAndNeverShown() throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        AtomicBoolean cancelled = new AtomicBoolean();
        AtomicBoolean first = new AtomicBoolean(true);
        new Probe((s, c) -> {
            double areaM2 = s.site().getRoofs().get(0).getPlanArea().si();
            if (first.getAndSet(false)) {
                started.countDown();
                long end = System.currentTimeMillis() + 3000;
                while (System.currentTimeMillis() < end) {
                    if (c.cancelled().getAsBoolean()) {
                        cancelled.set(true);
                        c.checkCancelled();
                    }
                }
            }
            return Probe.number(areaM2);
        }).addTo(registry, "a.slow", "Roof");
        Site site = site(100);
        LiveSite live = onModel(() -> new LiveSite(site, () -> null, registry, runner, modelThread));
        AtomicBoolean sawOld = new AtomicBoolean();
        live.addListener(s -> sawOld.compareAndSet(false, n(s, "a.slow") == 100));
        assertTrue(started.await(PATIENCE_MS, TimeUnit.MILLISECONDS));
        onModel(() -> {
            site.getRoofs().get(0).setPlanArea(Quantity.of(250, Units.M2));
            return null;
        });
        await(() -> n(live, "a.slow") == 250, "the answer to the edit");
        assertTrue(cancelled.get(), "the overtaken run was asked to stop");
        assertFalse(sawOld.get(), "the overtaken answer was shown");
        onModel(() -> {
            live.close();
            return null;
        });
    }

    @Test
    void closingCancelsTheWork() throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        new Probe((s, c) -> {
            started.countDown();
            try {
                while (true) {
                    c.checkCancelled();
                }
            } finally {
                stopped.countDown();
            }
        }).addTo(registry, "a.long", "Roof");
        LiveSite live = onModel(() -> new LiveSite(site(1), () -> null, registry, runner, modelThread));
        assertTrue(started.await(PATIENCE_MS, TimeUnit.MILLISECONDS));
        onModel(() -> {
            live.close();
            return null;
        });
        assertTrue(stopped.await(PATIENCE_MS, TimeUnit.MILLISECONDS), "it went on after closing");
        await(() -> Job.getJobManager().find(live).length == 0, "the job to end");
    }

    @Test
    void editingOneSiteNeverRunsTheOther() throws Exception {
        Probe probe = area().addTo(registry, "a.area", "Roof");
        Site one = site(1);
        Site two = site(2);
        LiveSite liveOne = onModel(() -> new LiveSite(one, () -> null, registry, runner, modelThread));
        LiveSite liveTwo = onModel(() -> new LiveSite(two, () -> null, registry, runner, modelThread));
        await(() -> n(liveOne, "a.area") == 1 && n(liveTwo, "a.area") == 2, "both first answers");
        int before = probe.runs.get();
        long revision = liveTwo.results().revision();
        onModel(() -> {
            one.getRoofs().get(0).setPlanArea(Quantity.of(3, Units.M2));
            return null;
        });
        await(() -> n(liveOne, "a.area") == 3, "the answer to the edit");
        assertEquals(before + 1, probe.runs.get());
        assertEquals(revision, liveTwo.results().revision());
        onModel(() -> {
            liveOne.close();
            liveTwo.close();
            return null;
        });
    }

    @Test
    void aCalculationThatComesIsRunAndOneThatGoesIsGone() throws Exception {
        Site site = site(5);
        LiveSite live = onModel(() -> new LiveSite(site, () -> null, registry, runner, modelThread));
        area().addTo(registry, "late.area", "Roof");
        await(() -> n(live, "late.area") == 5, "the newcomer's answer");
        registry.remove("late.area");
        await(() -> live.results().result("late.area").isEmpty(), "the leaver's result to go");
        onModel(() -> {
            live.close();
            return null;
        });
    }

    @Test
    void outcomesAreKeptWhole() {
        Outcome outcome = Probe.number(3);
        assertNotNull(outcome.cautions());
        assertEquals(outcome, Probe.number(3));
    }
}
