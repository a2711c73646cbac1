package org.roofspring.ui.look;

/** Words of a finding cut to the width of a column. */
public final class FindingWords {
    /** Characters of a value that a column of findings shows. */
    public static final int BRIEF = 34;

    private FindingWords() {
    }

    /** Words short enough for a column, ended at a word by an ellipsis where there are more. */
    public static String brief(String words) {
        if (words.length() <= BRIEF) {
            return words;
        }
        int end = words.lastIndexOf(' ', BRIEF - 1);
        return words.substring(0, end < BRIEF / 2 ? BRIEF - 1 : end) + "\u2026";
    }
}
