package org.roofspring.ui.look;

import java.util.List;
import java.util.Objects;

/**
 * An entry of a {@link CardList}: an icon, a heading in words, sentences below it, and links.
 *
 * @param icon      name of the icon
 * @param tone      colour of the heading
 * @param heading   what sort of entry it is, in words
 * @param text      the sentences, wrapped
 * @param footnotes further sentences in small print, such as the source
 * @param links     where the reader can go
 */
public record Card(String icon, Tone tone, String heading, String text, List<String> footnotes, List<Link> links) {

    /** What the colour of a heading stands for. */
    public enum Tone {
        PLAIN, GOOD, WARNING, DANGER, STALE
    }

    /**
     * Somewhere to go.
     *
     * @param target what is handed to the list's listener; compared with equals when the list is refreshed
     */
    public record Link(String text, Object target) {
    }

    public Card {
        Objects.requireNonNull(icon);
        Objects.requireNonNull(tone);
        Objects.requireNonNull(heading);
        Objects.requireNonNull(text);
        footnotes = List.copyOf(footnotes);
        links = List.copyOf(links);
    }
}
