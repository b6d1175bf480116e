package org.stillroom.reading.reference;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pattern that need only be looked for where one of some words stands.
 *
 * <p>Most recipes send to no other one; their words are counted once, which is quicker than to look
 * for every pattern.
 *
 * @param pattern the pattern, over folded words
 * @param words of which every match holds at least one
 */
record Trigger(Pattern pattern, Set<String> words) {

    static Trigger of(String words, String pattern) {
        return new Trigger(Pattern.compile(pattern), Set.of(words.split(" ")));
    }

    /** Tells whether the pattern may be found in a text of these words. */
    boolean mayMatch(Set<String> present) {
        return words.stream().anyMatch(present::contains);
    }

    Matcher matcher(String text) {
        return pattern.matcher(text);
    }

    /** Returns the words of a folded text: its runs of letters. */
    static Set<String> words(String folded) {
        Set<String> words = new HashSet<>();
        int from = -1;
        for (int i = 0; i <= folded.length(); i++) {
            boolean letter = i < folded.length() && Character.isLetter(folded.charAt(i));
            if (letter && from < 0) {
                from = i;
            } else if (!letter && from >= 0) {
                words.add(folded.substring(from, i));
                from = -1;
            }
        }
        return words;
    }
}
