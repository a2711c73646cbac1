package org.roofspring.ui.session;

import java.nio.file.Path;
import java.util.EventObject;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.calc.engine.LiveSite;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.site.Element;
import org.roofspring.site.Site;
import org.roofspring.site.edit.SiteCommand;
import org.roofspring.site.edit.SiteCommandStack;
import org.roofspring.site.edit.SiteEdits;
import org.roofspring.site.io.FileState;
import org.roofspring.site.io.Saved;
import org.roofspring.site.io.SiteChangedException;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.ui.field.DisplayUnits;

/**
 * One open site: its model, its file, its edits, its results and what is selected in it. Made by
 * {@link SessionService}. Call on the model thread only.
 */
public final class SiteSession {
    private final SessionService owner;
    private final Site site;
    private final SiteCommandStack commands = new SiteCommandStack();
    private final SiteEdits edits;
    private final LiveSite live;
    private final Drafts drafts = new Drafts(() -> fire(Aspect.DRAFTS));
    private final List<Runnable> pendingInput = new CopyOnWriteArrayList<>();
    private final CommandStackListener commandListener = this::commandDone;
    private Path file;
    /** What the file held when it was last read or written here. */
    private FileState onDisk;
    private SiteSelection selection;
    /** Elements by identifier; made when first asked for after an edit. */
    private Map<String, Element> byId;
    private boolean wasDirty;
    private boolean closed;

    SiteSession(SessionService owner, Site site, Path file, FileState onDisk) {
        this.owner = owner;
        this.site = site;
        this.file = file;
        this.onDisk = onDisk;
        this.edits = new SiteEdits(site, commands);
        this.selection = new SiteSelection(site, null, null, null);
        this.live = owner.follow(site, () -> this.file == null ? null : this.file.getParent());
        commands.addCommandStackListener(commandListener);
        live.addListener(source -> fire(Aspect.RESULTS));
    }

    public Site site() {
        return site;
    }

    /** The file it was opened from or saved to; empty while it has never been saved. */
    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** What the site is called where several are open: the name of its file. */
    public String title() {
        return file == null ? "New site" : file.getFileName().toString();
    }

    /** The edits there are; each goes on the stack of this site. */
    public SiteEdits edits() {
        return edits;
    }

    public SiteCommandStack commands() {
        return commands;
    }

    /** Results, kept up to date in the background. */
    public LiveSite live() {
        return live;
    }

    public Drafts drafts() {
        return drafts;
    }

    /** How values of this site are shown. */
    public QuantityFormat format() {
        return DisplayUnits.format(site);
    }

    /** Whether the site differs from its file. */
    public boolean dirty() {
        return commands.isSaveNeeded();
    }

    /** Takes back the last edit and selects what it was about. */
    public void undo() {
        takeOverInput();
        if (commands.canUndo()) {
            Command command = commands.getUndoCommand();
            commands.undo();
            selectSubject(command);
        }
    }

    /** Does again what was undone last and selects what it is about. */
    public void redo() {
        takeOverInput();
        if (commands.canRedo()) {
            Command command = commands.getRedoCommand();
            commands.redo();
            selectSubject(command);
        }
    }

    private void selectSubject(Command command) {
        if (command instanceof SiteCommand edit && contains(edit.subject())) {
            EObject subject = edit.subject();
            while (!(subject instanceof Element)) {
                subject = subject.eContainer();
            }
            if (subject != selection.element() || selection.group() != null) {
                select(selection.to(subject));
            }
        }
    }

    /**
     * Saves to the file of this session. What can be undone is kept.
     *
     * @return sentences that the person should read about where it was saved; mostly none
     * @throws SiteChangedException  when another program has changed the file; see {@link #saveOver()}
     * @throws SiteFileException     when the file cannot be written
     * @throws IllegalStateException while there is no file
     */
    public List<String> save() throws SiteFileException {
        takeOverInput();
        return saved(SiteFiles.save(site, requireFile(), onDisk));
    }

    /**
     * As {@link #save()}, and replaces what another program has written there; that stays beside it as the previous
     * version.
     */
    public List<String> saveOver() throws SiteFileException {
        takeOverInput();
        return saved(SiteFiles.save(site, requireFile()));
    }

    private Path requireFile() {
        return file().orElseThrow(() -> new IllegalStateException("the site has no file yet"));
    }

    /**
     * Saves to another file, which is this session's from then on. What that file held stays beside it.
     *
     * @return as {@link #save()}
     * @throws SiteFileException when the file cannot be written; then nothing has changed
     */
    public List<String> saveAs(Path newFile) throws SiteFileException {
        takeOverInput();
        Saved saved = SiteFiles.save(site, newFile);
        boolean moved = file == null || !Objects.equals(newFile.toAbsolutePath().getParent(), file.getParent());
        file = newFile.toAbsolutePath().normalize();
        saved(saved);
        if (moved) {
            live.recalculateAll();
        }
        return saved.messages();
    }

    private List<String> saved(Saved saved) {
        onDisk = saved.state();
        commands.saveIsDone();
        wasDirty = false;
        fire(Aspect.FILE);
        return saved.messages();
    }

    /** Registers something that can hold input that was typed but not taken over yet, such as a field with the focus. */
    public void addPendingInput(Runnable takeOver) {
        pendingInput.add(takeOver);
    }

    public void removePendingInput(Runnable takeOver) {
        pendingInput.remove(takeOver);
    }

    /** Takes over what is being typed. */
    public void takeOverInput() {
        pendingInput.forEach(Runnable::run);
    }

    public SiteSelection selection() {
        return selection;
    }

    /** Selects; a field that is asked for again gets the focus again. */
    public void select(SiteSelection newSelection) {
        if (newSelection.feature() != null || !newSelection.equals(selection)) {
            selection = newSelection;
            fire(Aspect.SELECTION);
        }
    }

    /** Selects the field of an element; of a row, the table it stands in. */
    public void reveal(EObject object, EStructuralFeature feature) {
        EObject element = object;
        EStructuralFeature field = feature;
        while (!(element instanceof Element)) {
            field = element.eContainingFeature();
            element = element.eContainer();
        }
        select(selection.to(element, field));
    }

    /** The element with this identifier. */
    public Optional<Element> element(String id) {
        if (id == null || id.equals(site.getId())) {
            return id == null ? Optional.empty() : Optional.of(site);
        }
        if (byId == null) {
            byId = new HashMap<>();
            for (Iterator<EObject> all = site.eAllContents(); all.hasNext();) {
                if (all.next() instanceof Element element) {
                    byId.put(element.getId(), element);
                }
            }
        }
        return Optional.ofNullable(byId.get(id));
    }

    /** Whether the object is part of the site now, and not removed. */
    public boolean contains(EObject object) {
        return EcoreUtil.isAncestor(site, object);
    }

    private void commandDone(EventObject event) {
        if (closed) {
            return;
        }
        byId = null;
        if (!contains(selection.element())) {
            select(selection.to(site));
        }
        fire(Aspect.MODEL);
        if (wasDirty != dirty()) {
            wasDirty = dirty();
            fire(Aspect.FILE);
        }
    }

    private void fire(Aspect aspect) {
        if (!closed) {
            owner.fire(this, aspect);
        }
    }

    public boolean closed() {
        return closed;
    }

    /** Stops all work for this site; called by the service. */
    void close() {
        closed = true;
        commands.removeCommandStackListener(commandListener);
        live.close();
        pendingInput.clear();
    }
}
