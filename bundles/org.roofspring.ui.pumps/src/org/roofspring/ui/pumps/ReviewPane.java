package org.roofspring.ui.pumps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.look.Card;
import org.roofspring.ui.look.Card.Link;
import org.roofspring.ui.look.Card.Tone;
import org.roofspring.ui.look.CardList;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.session.SiteSession;

/** What reviewers have said about the pump that is selected, and a place to say more: ask, object, answer, sign off. */
public final class ReviewPane {
    private static final List<RemarkKind> KINDS = List.of(RemarkKind.QUESTION, RemarkKind.OBJECTION,
            RemarkKind.ACCEPTED);
    private static final String[] KIND_WORDS = {"Question", "Objection", "Sign-off"};
    private static final String HINT = "A question or an objection in words; a sign-off may go without.";
    private static final int NAME_WIDTH = 90;

    /** What a link of a card does. */
    private enum Deed {
        ANSWER, SETTLE, REOPEN, REMOVE
    }

    private record Go(Deed deed, String remarkId) {
    }

    private final Composite whole;
    private final CardList cards;
    private final Combo kind;
    private final Text author;
    private final Text role;
    private final Text words;
    private final Button say;
    private final Label said;
    private SiteSession session;
    private NamedElement about;
    private Remark answered;

    ReviewPane(Composite parent) {
        whole = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(whole);
        cards = new CardList(whole, target -> follow((Go) target));
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 60).applyTo(cards.control());
        Composite composer = new Composite(whole, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).margins(8, 6).spacing(6, 4).applyTo(composer);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(composer);
        kind = new Combo(composer, SWT.READ_ONLY | SWT.DROP_DOWN);
        kind.setItems(KIND_WORDS);
        kind.select(0);
        kind.addListener(SWT.Selection, event -> changeKind());
        author = line(composer, "Your name", "Name of who says it");
        role = line(composer, "In what capacity", "Role, and licence number where it matters");
        words = new Text(composer, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        words.setMessage("What is said");
        words.setToolTipText("What is said; a sign-off may go without words");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(NAME_WIDTH, 2 * words.getLineHeight())
                .applyTo(words);
        say = new Button(composer, SWT.PUSH);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(say);
        say.addListener(SWT.Selection, event -> say());
        said = new Label(composer, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(NAME_WIDTH, SWT.DEFAULT).applyTo(said);
        changeKind();
    }

    private static Text line(Composite parent, String message, String help) {
        Text text = new Text(parent, SWT.BORDER);
        text.setMessage(message);
        text.setToolTipText(help);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(NAME_WIDTH, SWT.DEFAULT)
                .applyTo(text);
        return text;
    }

    private void changeKind() {
        answered = null;
        tell(HINT, false);
        name();
    }

    private void name() {
        say.setText(answered != null ? "Answer" : switch (KINDS.get(kind.getSelectionIndex())) {
            case QUESTION -> "Ask";
            case OBJECTION -> "Object";
            default -> "Sign off";
        });
        say.getParent().layout();
    }

    private void tell(String sentence, boolean wrong) {
        String shown = sentence.replace("&", "&&");
        said.setForeground(wrong ? Palette.of(said).danger() : Palette.of(said).muted());
        if (!shown.equals(said.getText())) {
            said.setText(shown);
            said.requestLayout();
        }
    }

    /**
     * @param newAbout the pump or candidate that is selected, or null
     * @param verdict  on it, in words with its reasons
     */
    void show(SiteSession newSession, NamedElement newAbout, String verdict, Optional<ReviewAnswer> answer) {
        if (newAbout != about || answered != null && !newSession.contains(answered)) {
            answered = null;
            tell(HINT, false);
            name();
        }
        session = newSession;
        about = newAbout;
        for (Control part : new Control[] {kind, author, role, words, say}) {
            part.setEnabled(about != null);
        }
        if (about == null) {
            cards.show("Select a pump to see what reviewers say of it.", List.of());
            return;
        }
        List<Card> list = session.site().getRemarks().stream().filter(remark -> remark.getElement() == about)
                .map(remark -> card(remark, answer)).toList();
        cards.show(verdict + (list.isEmpty() ? " Nobody has remarked on it yet." : ""), list);
    }

    private Card card(Remark remark, Optional<ReviewAnswer> answer) {
        List<String> notes = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        String text = remark.getText() == null ? "" : remark.getText();
        remark.getReplies().forEach(reply -> notes.add("Answer" + by(reply) + ": " + reply.getText()));
        String heading = first(Words.choice(remark.getKind())) + by(remark);
        String icon = "remark";
        Tone tone = Tone.PLAIN;
        if (remark.getKind() == RemarkKind.ACCEPTED) {
            Optional<Verdict> verdict = answer.flatMap(found -> found.signOff(remark.getId()));
            boolean good = verdict.filter(given -> given.level() == Level.GOOD).isPresent();
            icon = good ? "shield" : "warning";
            tone = verdict.isEmpty() ? Tone.STALE : good ? Tone.GOOD : Tone.DANGER;
            heading = "Signed off" + by(remark) + ": " + verdict.map(Verdict::text).orElse("being checked").toLowerCase(
                    java.util.Locale.ROOT);
            verdict.ifPresent(given -> given.reasons().forEach(reason -> notes.add(first(reason) + ".")));
        } else {
            tone = remark.isSettled() ? Tone.STALE
                    : remark.getKind() == RemarkKind.OBJECTION ? Tone.WARNING : Tone.PLAIN;
            heading += remark.isSettled() ? " (settled)" : "";
            links.add(new Link("Answer", new Go(Deed.ANSWER, remark.getId())));
            links.add(remark.isSettled() ? new Link("Reopen", new Go(Deed.REOPEN, remark.getId()))
                    : new Link("Settle", new Go(Deed.SETTLE, remark.getId())));
        }
        links.add(new Link("Remove", new Go(Deed.REMOVE, remark.getId())));
        return new Card(icon, tone, heading, text, notes, links);
    }

    private static String by(Remark remark) {
        return (remark.getAuthor() == null ? "" : " by " + remark.getAuthor())
                + (remark.getRole() == null ? "" : ", " + remark.getRole())
                + (remark.getDate() == null ? "" : ", " + remark.getDate());
    }

    private static String first(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private void follow(Go go) {
        session.element(go.remarkId()).map(Remark.class::cast).ifPresent(remark -> {
            switch (go.deed()) {
                case ANSWER -> answerTo(remark);
                case SETTLE -> PumpEdits.settle(session, remark, true);
                case REOPEN -> PumpEdits.settle(session, remark, false);
                case REMOVE -> PumpEdits.remove(session, remark);
            }
        });
    }

    /** The next words answer a remark. */
    public void answerTo(Remark remark) {
        answered = remark;
        name();
        tell("Answering the " + Words.choice(remark.getKind()) + by(remark) + ".", false);
        words.setFocus();
    }

    private void say() {
        if (about == null || session.closed() || !session.contains(about)) {
            return;
        }
        PumpEdits.Reviewer by = new PumpEdits.Reviewer(author.getText(), role.getText());
        String text = words.getText();
        try {
            if (answered != null) {
                PumpEdits.answer(session, answered, by, text);
            } else if (KINDS.get(kind.getSelectionIndex()) == RemarkKind.ACCEPTED) {
                PumpEdits.signOff(session, about, by, text);
            } else {
                PumpEdits.remark(session, about, KINDS.get(kind.getSelectionIndex()), by, text);
            }
            answered = null;
            words.setText("");
            tell(HINT, false);
            name();
        } catch (IllegalArgumentException | IllegalStateException e) {
            tell("\u26a0 " + e.getMessage() + ".", true);
        }
    }

    Control control() {
        return whole;
    }

    /** What is shown, for tests. */
    public List<Card> cards() {
        return cards.cards();
    }

    /** Says something as a person would: chooses, types, presses the button; for tests. */
    public void say(String kindWords, String name, String text) {
        if (answered == null) {
            kind.setText(kindWords);
            kind.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        }
        author.setText(name);
        words.setText(text);
        say.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
    }

    /** The sentence below the button, for tests. */
    public String told() {
        return said.getText();
    }
}
