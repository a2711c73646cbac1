package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Dictionary;
import java.util.Hashtable;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceRegistration;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.engine.CalculationRegistry;

/** The services as the framework sees them. */
class ServicesOsgiTest {
    private final BundleContext context = context();

    private static BundleContext context() {
        return FrameworkUtil.getBundle(ServicesOsgiTest.class).getBundleContext();
    }

    private CalculationRegistry registry() throws Exception {
        for (String name : List.of("org.roofspring.calc.engine", "org.roofspring.calc.standard")) {
            for (Bundle bundle : context.getBundles()) {
                if (name.equals(bundle.getSymbolicName())) {
                    bundle.start();
                }
            }
        }
        var reference = context.getServiceReference(CalculationRegistry.class);
        assertNotNull(reference, "the registry is not a service");
        return context.getService(reference);
    }

    private static Set<String> ids(CalculationRegistry registry) {
        return registry.list().entries().stream().map(entry -> entry.descriptor().id()).collect(Collectors.toSet());
    }

    private static Dictionary<String, Object> properties(String id) {
        Dictionary<String, Object> properties = new Hashtable<>();
        properties.put("roofspring.calculation.id", id);
        properties.put("roofspring.calculation.version", "1");
        properties.put("roofspring.calculation.title", "Probe");
        properties.put("roofspring.calculation.reads", new String[] { "Roof" });
        return properties;
    }

    @Test
    void theBuiltInCalculationsAreListed() throws Exception {
        assertTrue(ids(registry()).containsAll(Set.of("rain.record", "storage.balance", "pump.duty", "site.safety")), ids(registry()).toString());
        assertEquals(List.of(), registry().list().faults());
    }

    @Test
    void listingDoesNotCreateThem() throws Exception {
        CalculationRegistry registry = registry();
        AtomicBoolean created = new AtomicBoolean();
        ServiceRegistration<Calculation> registration = context.registerService(Calculation.class, new org.osgi.framework.ServiceFactory<Calculation>() {
            @Override
            public Calculation getService(Bundle bundle, ServiceRegistration<Calculation> r) {
                created.set(true);
                return Probe.countingRoofs();
            }

            @Override
            public void ungetService(Bundle bundle, ServiceRegistration<Calculation> r, Calculation service) {
                // nothing is held
            }
        }, properties("probe.lazy"));
        try {
            assertTrue(ids(registry).contains("probe.lazy"));
            assertEquals(false, created.get());
        } finally {
            registration.unregister();
        }
        assertEquals(false, ids(registry).contains("probe.lazy"));
    }

    @Test
    void oneWithoutItsPropertiesIsNamed() throws Exception {
        CalculationRegistry registry = registry();
        ServiceRegistration<Calculation> registration = context.registerService(Calculation.class, Probe.countingRoofs(), new Hashtable<>());
        try {
            assertTrue(registry.list().faults().stream().anyMatch(fault -> fault.text().contains("org.roofspring.calc.tests")));
        } finally {
            registration.unregister();
        }
    }

    @Test
    void servicesMayComeAndGoWhileTheyAreListed() throws Exception {
        CalculationRegistry registry = registry();
        int before = registry.list().entries().size();
        ExecutorService threads = Executors.newFixedThreadPool(3);
        AtomicBoolean stop = new AtomicBoolean();
        try {
            Future<?> first = threads.submit(() -> comeAndGo("race.one", stop));
            Future<?> second = threads.submit(() -> comeAndGo("race.two", stop));
            for (int i = 0; i < 2000; i++) {
                int size = registry.list().entries().size();
                assertTrue(size >= before && size <= before + 2, "entries: " + size);
            }
            stop.set(true);
            first.get(10, TimeUnit.SECONDS);
            second.get(10, TimeUnit.SECONDS);
        } finally {
            stop.set(true);
            threads.shutdownNow();
        }
        assertEquals(before, registry.list().entries().size());
    }

    private Void comeAndGo(String id, AtomicBoolean stop) {
        while (!stop.get()) {
            context.registerService(Calculation.class, Probe.countingRoofs(), properties(id)).unregister();
        }
        return null;
    }
}
