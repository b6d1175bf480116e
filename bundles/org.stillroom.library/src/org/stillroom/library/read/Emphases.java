package org.stillroom.library.read;

import org.stillroom.model.source.Mark;

/** Adds words that a file gives run by run, and marks the stretches of italic and bold ones. */
final class Emphases {

    private final BlockText words;
    private int italicFrom = -1;
    private int boldFrom = -1;

    Emphases(BlockText words) {
        this.words = words;
    }

    /** Adds words; the blank before them is not emphasised. */
    void add(String characters, boolean italic, boolean bold, boolean raised) {
        int from = 0;
        while (from < characters.length() && isBlank(characters.charAt(from))) {
            from++;
        }
        words.words(characters.substring(0, from));
        if (from == characters.length()) {
            return;
        }
        italicFrom = turn(italic, italicFrom, "italic");
        boldFrom = turn(bold, boldFrom, "bold");
        String rest = characters.substring(from);
        if (raised) {
            words.raised(rest);
        } else {
            words.words(rest);
        }
    }

    /** Ends the stretches, as the end of a paragraph does. */
    void end() {
        italicFrom = turn(false, italicFrom, "italic");
        boldFrom = turn(false, boldFrom, "bold");
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || c == 0xA0;
    }

    private int turn(boolean on, int from, String label) {
        if (on) {
            return from < 0 ? words.place() : from;
        }
        if (from >= 0) {
            words.mark(Mark.Kind.EMPHASIS, label, from);
        }
        return -1;
    }
}
