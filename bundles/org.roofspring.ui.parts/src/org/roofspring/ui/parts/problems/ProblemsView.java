package org.roofspring.ui.parts.problems;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.PluginFault;
import org.roofspring.site.edit.SiteChecks;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.Violation;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.look.Card.Link;
import org.roofspring.ui.look.Card.Tone;
import org.roofspring.ui.look.CardList;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.Drafts;
import org.roofspring.ui.session.SiteSession;

/** Everything that stands in the way of an answer, named and with a link to where it can be mended. */
public final class ProblemsView extends SessionView {
    private record Place(EObject object, EStructuralFeature feature) {
    }

    private CardList list;

    public ProblemsView() {
        super(Aspect.RESULTS, Aspect.MODEL, Aspect.DRAFTS);
    }

    @Override
    protected void createContent(Composite parent) {
        list = new CardList(parent, target -> session().ifPresent(session -> {
            Place place = (Place) target;
            if (session.contains(place.object())) {
                session.reveal(place.object(), place.feature());
            }
        }));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(list.control());
    }

    @Override
    protected void show(SiteSession session) {
        List<Card> cards = toMend(session);
        boolean nothingToMend = cards.isEmpty();
        Set<String> listed = new HashSet<>();
        Violation.in(session.site()).forEach(violation -> listed.add(violation.sentence().toLowerCase(Locale.ROOT) + "."));
        session.live().results().results().forEach(result -> add(session, result, listed, cards));
        int answered = (int) session.live().results().results().stream().filter(result -> result.completed().isPresent()).count();
        list.show(answered + " of " + session.live().results().results().size() + " calculations have an answer."
                + (nothingToMend ? " No value of the site is missing or out of range." : ""), cards);
    }

    /** Plug-ins that failed, texts that were not taken over, values that are missing or out of range. */
    private static List<Card> toMend(SiteSession session) {
        List<Card> cards = new ArrayList<>();
        session.live().results().allFaults().forEach(fault -> cards.add(card(fault)));
        session.drafts().all().stream().filter(draft -> session.contains(draft.element())).forEach(draft -> cards.add(card(draft)));
        SiteChecks.of(session.site()).forEach(fault -> cards.add(new Card("warning", Tone.WARNING, "Value to mend", fault.sentence(),
                List.of(), List.of(new Link("Go to", new Place(fault.object(), fault.feature()))))));
        return cards;
    }

    @Override
    protected void summarise(SiteSession session) {
        int toMend = toMend(session).size();
        String title = toMend == 0 ? "Problems" : "Problems (" + toMend + ")";
        if (!title.equals(getPartName())) {
            setPartName(title);
        }
    }

    private static Card card(PluginFault fault) {
        List<String> notes = new ArrayList<>();
        notes.add("The other calculations are not affected. Tell whoever provides " + fault.provider() + ".");
        return new Card("danger", Tone.DANGER, "Plug-in failed", fault.text(), notes, List.of());
    }

    private static Card card(Drafts.Draft draft) {
        return new Card("warning", Tone.WARNING, "Not taken over", Words.feature(draft.feature()) + " of " + Words.name(draft.element())
                + ": " + draft.problem() + ". The value from before holds.", List.of(),
                List.of(new Link("Go to", new Place(draft.element(), draft.feature()))));
    }

    /** @param listed sentences about values that are listed already, which a calculation gives as its reason */
    private static void add(SiteSession session, CalculationResult result, Set<String> listed, List<Card> cards) {
        boolean stale = session.live().outOfDate(result.descriptor().id());
        String title = result.descriptor().title() + (stale ? " (out of date)" : "");
        switch (result.status()) {
            case NO_ANSWER -> {
                List<Outcome.Problem> problems = ((Outcome.NotComputable) result.outcome()).problems();
                List<Link> links = problems.stream().flatMap(problem -> session.element(problem.elementId()).stream()
                        .map(element -> new Link(Words.name(element), new Place(element, feature(element, problem.feature()))))).distinct().toList();
                cards.add(new Card("problem", stale ? Tone.STALE : Tone.WARNING, "No answer: " + title,
                        String.join("\n", problems.stream().map(Outcome.Problem::text).toList()), List.of(), links));
            }
            case NOT_APPLICABLE -> cards.add(new Card("info", stale ? Tone.STALE : Tone.PLAIN, "Does not apply: " + title,
                    result.reasons().stream().allMatch(reason -> listed.contains(reason.toLowerCase(Locale.ROOT))) ? "It waits for values that are to be mended." : String.join("\n", result.reasons()),
                    List.of(), List.of()));
            default -> {
                // an answer, or a fault that is listed with the others
            }
        }
    }

    private static EStructuralFeature feature(EObject element, String name) {
        return name == null ? null : element.eClass().getEStructuralFeature(name);
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
    }

    @Override
    protected void forget() {
        setPartName("Problems");
    }

    /** The entries that are shown, for tests. */
    public List<Card> cards() {
        return list.cards();
    }

    @Override
    public void setFocus() {
        list.setFocus();
    }
}
