package org.roofspring.ui.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Texts that were typed into fields and could not be taken over; kept until they can, or are withdrawn. */
public final class Drafts {

    /**
     * A text that could not be taken over.
     *
     * @param text    as typed
     * @param problem one sentence: what is wrong and what is accepted
     */
    public record Draft(EObject element, EStructuralFeature feature, String text, String problem) {
    }

    private record Place(EObject element, EStructuralFeature feature) {
    }

    private final Map<Place, Draft> drafts = new LinkedHashMap<>();
    private final Runnable changed;

    Drafts(Runnable changed) {
        this.changed = changed;
    }

    public Optional<Draft> get(EObject element, EStructuralFeature feature) {
        return Optional.ofNullable(drafts.get(new Place(element, feature)));
    }

    public void put(EObject element, EStructuralFeature feature, String text, String problem) {
        Draft draft = new Draft(element, feature, text, problem);
        if (!draft.equals(drafts.put(new Place(element, feature), draft))) {
            changed.run();
        }
    }

    public void remove(EObject element, EStructuralFeature feature) {
        if (drafts.remove(new Place(element, feature)) != null) {
            changed.run();
        }
    }

    /** In the order they were typed. */
    public List<Draft> all() {
        return List.copyOf(drafts.values());
    }
}
