package org.roofspring.calc.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;

import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.roofspring.calc.Calculation;

/**
 * The calculations there are. As a service it follows every {@link Calculation} service that comes and goes, listing
 * each by its properties and creating it only when it is first run; in plain Java calculations are added by hand.
 * Safe for use by several threads.
 */
@Component(service = CalculationRegistry.class)
public final class CalculationRegistry {

    /** A calculation that can be run. */
    public record Entry(CalculationDescriptor descriptor, Supplier<Calculation> calculation) {
    }

    /** The entries at one moment, and what could not be listed. */
    public record Listing(List<Entry> entries, List<PluginFault> faults) {
    }

    private final Object lock = new Object();
    private final Map<Long, ServiceReference<Calculation>> services = new LinkedHashMap<>();
    private final List<Entry> added = new ArrayList<>();
    private final Map<String, PluginFault> quarantined = new LinkedHashMap<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private BundleContext bundleContext;

    @Activate
    void activate(BundleContext context) {
        synchronized (lock) {
            bundleContext = context;
        }
    }

    /** The reference is bound without its service: listing must not create it. */
    @Reference(service = Calculation.class, cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addService(ServiceReference<Calculation> reference) {
        synchronized (lock) {
            services.put(serviceId(reference), reference);
        }
        changed();
    }

    void removeService(ServiceReference<Calculation> reference) {
        synchronized (lock) {
            services.remove(serviceId(reference));
            // a plug-in that was set aside gets a new chance when it is installed anew
            quarantined.values().removeIf(fault -> fault.provider().equals(provider(reference)));
        }
        changed();
    }

    /** Adds a calculation by hand, where there is no framework. */
    public void add(Calculation calculation) {
        add(CalculationDescriptor.of(calculation.getClass()), calculation);
    }

    /** Adds a calculation by hand with a descriptor of the caller's. */
    public void add(CalculationDescriptor descriptor, Calculation calculation) {
        Objects.requireNonNull(calculation);
        synchronized (lock) {
            added.add(new Entry(descriptor, () -> calculation));
        }
        changed();
    }

    /** Removes a calculation that was added by hand. */
    public void remove(String calculationId) {
        synchronized (lock) {
            added.removeIf(entry -> entry.descriptor().id().equals(calculationId));
        }
        changed();
    }

    /**
     * The calculations that can run now. Where two claim one id, the one that was there first keeps it and the other
     * is reported.
     */
    public Listing list() {
        List<PluginFault> faults = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        synchronized (lock) {
            Set<String> ids = new HashSet<>();
            List<Entry> all = new ArrayList<>(added);
            services.entrySet().stream().sorted(Map.Entry.comparingByKey(Comparator.naturalOrder()))
                    .forEach(service -> listService(service.getValue(), all, faults));
            for (Entry entry : all) {
                CalculationDescriptor descriptor = entry.descriptor();
                PluginFault fault = quarantined.get(descriptor.id());
                if (!ids.add(descriptor.id())) {
                    faults.add(new PluginFault(descriptor.id(), descriptor.provider(), "The plug-in " + descriptor.provider()
                            + " offers a calculation named " + descriptor.id() + ", which is taken; it is left out.", null));
                } else if (fault != null) {
                    faults.add(fault);
                } else {
                    entries.add(entry);
                }
            }
        }
        return new Listing(List.copyOf(entries), List.copyOf(faults));
    }

    private void listService(ServiceReference<Calculation> reference, List<Entry> all, List<PluginFault> faults) {
        String provider = provider(reference);
        try {
            Map<String, Object> properties = new LinkedHashMap<>();
            for (String key : reference.getPropertyKeys()) {
                properties.put(key, reference.getProperty(key));
            }
            BundleContext context = bundleContext;
            all.add(new Entry(CalculationDescriptor.of(properties, provider), () -> context.getService(reference)));
        } catch (IllegalArgumentException e) {
            faults.add(new PluginFault("unnamed", provider, "The plug-in " + provider + " cannot be listed: " + e.getMessage() + ".", e));
        }
    }

    /** Sets a calculation aside for the rest of the session, with the reason to show. */
    void quarantine(PluginFault fault) {
        synchronized (lock) {
            quarantined.put(fault.calculationId(), fault);
        }
    }

    /** Is told, on any thread, when calculations come or go. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void changed() {
        listeners.forEach(Runnable::run);
    }

    private static Long serviceId(ServiceReference<Calculation> reference) {
        return (Long) reference.getProperty(org.osgi.framework.Constants.SERVICE_ID);
    }

    private static String provider(ServiceReference<Calculation> reference) {
        return reference.getBundle() == null ? "an uninstalled bundle" : reference.getBundle().getSymbolicName();
    }
}
