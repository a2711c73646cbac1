package org.roofspring.site.snapshot;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Change;
import org.roofspring.site.Element;
import org.roofspring.site.Option;
import org.roofspring.site.Site;
import org.roofspring.site.Stage;
import org.roofspring.site.internal.FreezableObject;
import org.roofspring.site.io.SiteFileException;

/**
 * A frozen deep copy of a site, taken on the thread that owns the model. Any number of threads may read it; a write to
 * any object of it throws {@link IllegalStateException} and changes nothing.
 *
 * <p>Elements keep their identifiers. An element without one gets, in the copy, its class and number in document order,
 * such as {@code roof#2}. References to elements outside the site are left out. Long data such as rain records are not
 * part of it: {@link #resolve} says where the file is.
 */
public final class SiteSnapshot {
    private final Site site;
    private final long revision;
    private final Path folder;
    private final Map<String, Element> byId = new HashMap<>();

    private SiteSnapshot(Site copy, long revision, Path folder) {
        this.site = copy;
        this.revision = revision;
        this.folder = folder;
        List<FreezableObject> all = all(copy);
        Map<String, Integer> numbers = new HashMap<>();
        for (FreezableObject object : all) {
            if (object instanceof Element element) {
                register(element, numbers);
            }
        }
        all.forEach(FreezableObject::freeze);
    }

    /**
     * Copies a site. To be called on the thread that owns it.
     *
     * @param site     the site; it is not changed
     * @param revision a number that rises with every change of the site
     * @param folder   folder of the site file, from which paths inside the site start; null where it has no file yet
     * @throws IllegalArgumentException when two elements have the same identifier
     */
    public static SiteSnapshot of(Site site, long revision, Path folder) {
        return new SiteSnapshot(copy(site), revision, folder);
    }

    private static Site copy(Site site) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier(true, false);
        Site copy = (Site) copier.copy(site);
        copier.copyReferences();
        return copy;
    }

    private static List<FreezableObject> all(Site site) {
        List<FreezableObject> all = new ArrayList<>();
        all.add((FreezableObject) site);
        for (TreeIterator<EObject> contents = site.eAllContents(); contents.hasNext();) {
            all.add((FreezableObject) contents.next());
        }
        return all;
    }

    private void register(Element element, Map<String, Integer> numbers) {
        if (element.getId() == null) {
            String type = element.eClass().getName();
            element.setId(type.substring(0, 1).toLowerCase(Locale.ROOT) + type.substring(1) + "#"
                    + numbers.merge(type, 1, Integer::sum));
        }
        Element other = byId.put(element.getId(), element);
        if (other != null) {
            throw new IllegalArgumentException("the identifier \"" + element.getId() + "\" is used by " + other
                    + " and by " + element);
        }
    }

    /** The frozen site. */
    public Site site() {
        return site;
    }

    /** The revision of the site that this is a copy of. */
    public long revision() {
        return revision;
    }

    /** Folder of the site file, when there is one. */
    public Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }

    /** The element with an identifier. */
    public Optional<Element> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The element with an identifier, when it is of a type. */
    public <T extends Element> Optional<T> find(String id, Class<T> type) {
        return find(id).filter(type::isInstance).map(type::cast);
    }

    /** Fingerprint of an object of the snapshot and all that it contains. */
    public String fingerprint(EObject object) {
        return Fingerprint.of(object);
    }

    /** Fingerprint of some features of an object of the snapshot. */
    public String fingerprint(EObject object, Collection<? extends EStructuralFeature> features) {
        return Fingerprint.of(object, features);
    }

    /**
     * The file that a path inside the site means.
     *
     * @param relative path from the folder of the site file, with forward slashes
     * @throws SiteFileException when the path is absolute or leaves the folder, or the site has no file yet
     */
    public Path resolve(String relative) throws SiteFileException {
        Objects.requireNonNull(relative, "relative");
        if (folder == null) {
            throw new SiteFileException("the site is not saved yet, so \"" + relative
                    + "\" has no folder to start from; save the site first");
        }
        Path base = folder.toAbsolutePath().normalize();
        try {
            Path resolved = base.resolve(relative.replace('\\', '/')).normalize();
            if (!relative.isBlank() && !Path.of(relative).isAbsolute() && resolved.startsWith(base)
                    && !resolved.equals(base)) {
                return resolved;
            }
        } catch (InvalidPathException e) {
            throw new SiteFileException("\"" + relative + "\" is not a path: " + e.getReason(), e);
        }
        throw new SiteFileException("\"" + relative + "\" is not accepted: a file is named by its path from the folder"
                + " of the site file and lies in it or below, such as rain/station.csv");
    }

    /**
     * A snapshot of the design as an option would make it. For a stage, the changes of all earlier stages come first.
     *
     * @param id identifier of the option or stage
     * @throws IllegalArgumentException when there is no such option, or one of its changes cannot be made
     */
    public SiteSnapshot with(String id) {
        Option option = find(id, Option.class).orElseThrow(
                () -> new IllegalArgumentException("there is no option with the identifier \"" + id + "\""));
        return new SiteSnapshot(Changes.applied(copy(site), changes(option)), revision, folder);
    }

    /**
     * A snapshot of the design as several options or stages would make it, in the given order and those alone.
     *
     * @param ids identifiers of the options
     * @throws IllegalArgumentException when there is no such option, or one of its changes cannot be made
     */
    public SiteSnapshot withAll(Collection<String> ids) {
        List<Change> changes = new ArrayList<>();
        for (String id : ids) {
            changes.addAll(find(id, Option.class).orElseThrow(() -> new IllegalArgumentException(
                    "there is no option with the identifier \"" + id + "\"")).getChanges());
        }
        return new SiteSnapshot(Changes.applied(copy(site), changes), revision, folder);
    }

    private List<Change> changes(Option option) {
        if (!(option instanceof Stage)) {
            return option.getChanges();
        }
        List<Change> changes = new ArrayList<>();
        for (Stage stage : site.getStages()) {
            changes.addAll(stage.getChanges());
            if (stage == option) {
                break;
            }
        }
        return changes;
    }
}
