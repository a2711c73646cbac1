package org.roofspring.ui.parts.cautions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;
import org.roofspring.calc.Caution;
import org.roofspring.site.Element;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.look.CardList;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SiteSession;

/** The cautions of all calculations, the gravest first, each with whom to ask and where it comes from. */
public final class CautionsView extends SessionView {
    private CardList list;

    public CautionsView() {
        super(Aspect.RESULTS, Aspect.MODEL);
    }

    @Override
    protected void createContent(Composite parent) {
        list = new CardList(parent, target -> session().ifPresent(session -> session.element((String) target)
                .ifPresent(element -> session.select(session.selection().to(element)))));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(list.control());
    }

    @Override
    protected void show(SiteSession session) {
        List<Caution> all = cautions(session);
        boolean stale = session.live().results().results().stream()
                .anyMatch(result -> !result.cautions().isEmpty() && session.live().outOfDate(result.descriptor().id()));
        list.show(introduction(all.size(), dangers(all)) + (stale ? " Out of date: they are being worked out anew." : ""),
                all.stream().map(caution -> card(session, caution)).toList());
    }

    /** Each caution once, the gravest first. */
    private static List<Caution> cautions(SiteSession session) {
        Set<Caution> all = new LinkedHashSet<>();
        session.live().results().results().forEach(result -> all.addAll(result.cautions()));
        return all.stream().sorted(Comparator.comparing(Caution::severity).reversed()).toList();
    }

    private static long dangers(List<Caution> cautions) {
        return cautions.stream().filter(caution -> caution.severity() == Caution.Severity.DANGER).count();
    }

    private static String introduction(int all, long dangers) {
        if (all == 0) {
            return "No calculation has anything to caution about.";
        }
        return all + (all == 1 ? " caution" : " cautions") + (dangers == 0 ? "" : ", of which " + dangers
                + (dangers == 1 ? " is about people being hurt or made ill" : " are about people being hurt or made ill")) + ".";
    }

    @Override
    protected void summarise(SiteSession session) {
        List<Caution> all = cautions(session);
        long dangers = dangers(all);
        String title = all.isEmpty() ? "Cautions" : "Cautions (" + all.size()
                + (dangers == 0 ? ")" : dangers == 1 ? ", 1 danger)" : ", " + dangers + " dangers)");
        if (!title.equals(getPartName())) {
            setPartName(title);
        }
    }

    private static Card card(SiteSession session, Caution caution) {
        Optional<Element> element = session.element(caution.elementId());
        String word = switch (caution.severity()) {
            case INFO -> "Note";
            case WARNING -> "Warning";
            case DANGER -> "Danger";
        };
        String text = caution.text(session.format());
        List<String> notes = new ArrayList<>();
        if (!caution.askWhom().isBlank()) {
            text = text.substring(0, text.length() - caution.askWhom().length()).strip();
            notes.add("Whom to ask: " + caution.askWhom());
        }
        notes.add("Why: " + caution.source());
        List<Card.Link> links = element.map(found -> List.of(new Card.Link(Words.name(found), found.getId()))).orElse(List.of());
        return new Card(caution.severity().word(), tone(caution.severity()), word, text, notes, links);
    }

    private static Card.Tone tone(Caution.Severity severity) {
        return switch (severity) {
            case INFO -> Card.Tone.PLAIN;
            case WARNING -> Card.Tone.WARNING;
            case DANGER -> Card.Tone.DANGER;
        };
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
    }

    @Override
    protected void forget() {
        setPartName("Cautions");
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
