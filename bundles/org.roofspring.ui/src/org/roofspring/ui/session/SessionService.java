package org.roofspring.ui.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.LiveSite;
import org.roofspring.site.Ids;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.io.FileState;
import org.roofspring.site.io.Loaded;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.ui.internal.DisplayThread;

/** The sites that are open, and which of them the parts show. Call on the model thread only. */
@Component(service = SessionService.class)
public final class SessionService {
    private final CalculationRegistry registry;
    private final CalculationRunner runner;
    private final Executor modelThread;
    private final List<SiteSession> sessions = new ArrayList<>();
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private SiteSession active;

    /** As a service: the display's thread is the model thread. */
    @Activate
    public SessionService(@Reference CalculationRegistry registry) {
        this(registry, new DisplayThread());
    }

    /** @param modelThread runs a task later on the thread that edits the models */
    public SessionService(CalculationRegistry registry, Executor modelThread) {
        this.registry = Objects.requireNonNull(registry);
        this.runner = new CalculationRunner(registry);
        this.modelThread = Objects.requireNonNull(modelThread);
    }

    LiveSite follow(Site site, Supplier<Path> baseFolder) {
        return new LiveSite(site, baseFolder, registry, runner, modelThread);
    }

    /**
     * Opens a site file, or returns the session that has it open already.
     *
     * @throws SiteFileException with one sentence when the file cannot be read
     */
    public SiteSession open(Path file) throws SiteFileException {
        Path path = file.toAbsolutePath().normalize();
        for (SiteSession session : sessions) {
            if (session.file().filter(open -> same(open, path)).isPresent()) {
                return session;
            }
        }
        Loaded loaded = SiteFiles.open(path);
        return add(loaded.site(), path, loaded.state());
    }

    /** Begins a new site that has no file yet. */
    public SiteSession create() {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setName("New site");
        Ids.assignMissing(site);
        return add(site, null, FileState.NONE);
    }

    private SiteSession add(Site site, Path file, FileState onDisk) {
        SiteSession session = new SiteSession(this, site, file, onDisk);
        sessions.add(session);
        fire(session, Aspect.OPENED);
        return session;
    }

    private static boolean same(Path one, Path other) {
        try {
            return one.equals(other) || Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false; // one of the two cannot be looked at, so it is not known to be the other
        }
    }

    /** Closes a session: its work is cancelled and what was not saved is dropped. */
    public void close(SiteSession session) {
        if (!sessions.remove(session)) {
            return;
        }
        session.close();
        fire(session, Aspect.CLOSED);
        if (session == active) {
            activate(null);
        }
    }

    /** Makes a session the one that all parts show; null for none. */
    public void activate(SiteSession session) {
        if (session != active) {
            active = session;
            fire(session, Aspect.ACTIVE);
        }
    }

    /** The session that all parts show. */
    public Optional<SiteSession> active() {
        return Optional.ofNullable(active);
    }

    /** All open sessions, in the order they were opened. */
    public List<SiteSession> sessions() {
        return List.copyOf(sessions);
    }

    /** Tells every part that values are shown in other units now. */
    public void unitsChanged() {
        fire(active, Aspect.UNITS);
    }

    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    void fire(SiteSession session, Aspect aspect) {
        listeners.forEach(listener -> listener.changed(session, aspect));
    }
}
