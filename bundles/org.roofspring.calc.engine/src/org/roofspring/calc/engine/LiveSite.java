package org.roofspring.calc.engine;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Keeps the findings of one open site up to date. Every edit is answered from a frozen copy taken on the model thread;
 * the job never touches the live model, and nothing it finds flows back into it.
 */
public final class LiveSite implements AutoCloseable {
    /** Keystrokes closer together than this are answered together. */
    private static final long COALESCE_NS = TimeUnit.MILLISECONDS.toNanos(15);
    /** Under continuous edits a run is let through at least this often. */
    private static final long LET_THROUGH_NS = TimeUnit.SECONDS.toNanos(1);

    /** Is told on the model thread. */
    public interface Listener {
        /** Results have landed, or what is shown has become out of date. */
        void resultsChanged(LiveSite site);
    }

    /** A run in progress and the flag that asks it to stop. */
    private record Run(SiteSnapshot snapshot, AtomicBoolean cancelled) {
    }

    private final Site site;
    private final Supplier<Path> baseFolder;
    private final CalculationRegistry registry;
    private final CalculationRunner runner;
    private final Executor modelThread;
    private final FindingsStore store = new FindingsStore();
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private final Runnable registryListener = this::recalculateAll;
    private final AtomicBoolean notifyPending = new AtomicBoolean();
    private final AtomicBoolean beginPending = new AtomicBoolean();
    private final EContentAdapter adapter = new EContentAdapter() {
        @Override
        public void notifyChanged(Notification notification) {
            super.notifyChanged(notification);
            if (!notification.isTouch() && notification.getFeature() instanceof EStructuralFeature feature) {
                edited(notification, feature);
            }
        }
    };
    private final Job job;
    private final Object lock = new Object();
    private Run waiting;
    private Run running;
    private long revision = 1;
    private long lastBegin;
    private long lastFinish = System.nanoTime();
    private volatile boolean closed;

    /**
     * Starts following the site. Call on the model thread.
     *
     * @param site        the live model
     * @param baseFolder  gives the folder of the site file, or null while it has none
     * @param registry    which calculations there are
     * @param runner      shared by all sites
     * @param modelThread runs a task later on the thread that edits the model
     */
    public LiveSite(Site site, Supplier<Path> baseFolder, CalculationRegistry registry, CalculationRunner runner,
            Executor modelThread) {
        this.site = site;
        this.baseFolder = baseFolder;
        this.registry = registry;
        this.runner = runner;
        this.modelThread = modelThread;
        this.job = new RecalculationJob("Calculating " + (site.getName() == null ? "the site" : site.getName()));
        site.eAdapters().add(adapter);
        registry.addListener(registryListener);
        begin();
    }

    private void edited(Notification notification, EStructuralFeature feature) {
        revision++;
        store.touch(dirtiedBy(notification, feature), revision);
        notifyLater();
        beginLater();
    }

    private Set<String> dirtiedBy(Notification notification, EStructuralFeature feature) {
        List<CalculationRegistry.Entry> order = CalculationGraph.of(registry.list().entries()).order();
        Set<String> dirty = new HashSet<>();
        for (CalculationRegistry.Entry entry : order) {
            CalculationDescriptor descriptor = entry.descriptor();
            if (Reads.of(descriptor).touchedBy(notification, feature)
                    || descriptor.dependencies().stream().anyMatch(dirty::contains)) {
                dirty.add(descriptor.id());
            }
        }
        return dirty;
    }

    /** Runs everything again, as after a plug-in came or a data file changed. May be called on any thread. */
    public void recalculateAll() {
        modelThread.execute(() -> {
            if (!closed) {
                revision++;
                beginLater();
            }
        });
    }

    /** The command that is being executed ends before the copy is taken, since the model thread is busy with it. */
    private void beginLater() {
        if (beginPending.compareAndSet(false, true)) {
            long wait = COALESCE_NS - (System.nanoTime() - lastBegin);
            Runnable begin = () -> {
                beginPending.set(false);
                begin();
            };
            if (wait <= 0) {
                modelThread.execute(begin);
            } else {
                java.util.concurrent.CompletableFuture.delayedExecutor(wait, TimeUnit.NANOSECONDS, modelThread).execute(begin);
            }
        }
    }

    private void begin() {
        if (closed) {
            return;
        }
        lastBegin = System.nanoTime();
        SiteSnapshot snapshot = SiteSnapshot.of(site, revision, baseFolder.get());
        synchronized (lock) {
            waiting = new Run(snapshot, new AtomicBoolean());
            if (running != null && lastBegin - lastFinish < LET_THROUGH_NS) {
                running.cancelled().set(true);
            }
        }
        job.schedule();
    }

    private final class RecalculationJob extends Job {
        RecalculationJob(String name) {
            super(name);
        }

        @Override
        public boolean belongsTo(Object family) {
            return family == LiveSite.this || family == LiveSite.class;
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Run run;
            synchronized (lock) {
                run = waiting;
                waiting = null;
                running = run;
            }
            if (run == null) {
                return Status.OK_STATUS;
            }
            try {
                SiteResults results = runner.run(run.snapshot(), () -> run.cancelled().get() || monitor.isCanceled() || closed,
                        result -> {
                            if (store.publish(result)) {
                                notifyLater();
                            }
                        });
                store.finish(results);
                notifyLater();
                return Status.OK_STATUS;
            } catch (CancellationException e) {
                return Status.CANCEL_STATUS;
            } finally {
                synchronized (lock) {
                    running = null;
                    if (!run.cancelled().get()) {
                        lastFinish = System.nanoTime();
                    }
                }
            }
        }
    }

    private void notifyLater() {
        if (notifyPending.compareAndSet(false, true)) {
            modelThread.execute(() -> {
                notifyPending.set(false);
                if (!closed) {
                    listeners.forEach(listener -> listener.resultsChanged(this));
                }
            });
        }
    }

    /** What is shown now; old results stay until newer ones land. */
    public SiteResults results() {
        return store.results();
    }

    /** Whether the result shown of this calculation is of before an edit that bears on it. */
    public boolean outOfDate(String calculationId) {
        return store.outOfDate(calculationId);
    }

    /** Whether anything shown is out of date. */
    public boolean anyOutOfDate() {
        return store.anyOutOfDate();
    }

    /** The revision of the live model; read on the model thread. */
    public long revision() {
        return revision;
    }

    public void addListener(Listener listener) {
        listeners.add(listener);
    }

    public void removeListener(Listener listener) {
        listeners.remove(listener);
    }

    /** Stops following the site and asks its work to stop. Call on the model thread. */
    @Override
    public void close() {
        closed = true;
        registry.removeListener(registryListener);
        site.eAdapters().remove(adapter);
        synchronized (lock) {
            waiting = null;
            if (running != null) {
                running.cancelled().set(true);
            }
        }
        job.cancel();
        listeners.clear();
    }
}
