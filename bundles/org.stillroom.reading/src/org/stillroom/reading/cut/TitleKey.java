package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * What two printings of one title have in common.
 *
 * <p>Small words, plural endings, punctuation, accents, long s and the order of the words do not
 * count, so that “Absinthe, Dripped” in a table of contents is “Dripped Absinthe” on the page.
 *
 * @param text the words that count, sorted, with a blank between them
 */
public record TitleKey(String text) {

    /** A remark behind a title that is no part of it: “(for six)”. */
    private static final Pattern REMARK =
            Pattern.compile("(?<=\\w\\W{0,2}) ?\\(for [^()]*\\)\\W*$");

    private static final Set<String> SMALL =
            Set.of(
                    "the",
                    "a",
                    "an",
                    "and",
                    "of",
                    "to",
                    "make",
                    "how",
                    "for",
                    "or",
                    "with",
                    "no",
                    "number",
                    "style",
                    "la",
                    "le",
                    "les",
                    "de",
                    "du",
                    "des",
                    "der",
                    "die",
                    "das",
                    "prepare",
                    "brew",
                    "as",
                    "in",
                    "on",
                    "il",
                    "el",
                    "y",
                    "et",
                    "und",
                    "per",
                    "ye",
                    "another",
                    "good",
                    "very",
                    "recipe",
                    "receipt",
                    "making",
                    "called",
                    "otherwise",
                    "l",
                    "d",
                    "s",
                    "same",
                    "fashion",
                    "fashioned",
                    "following");

    /** Returns the key of a printed title. */
    public static TitleKey of(String title) {
        List<String> all = words(REMARK.matcher(title).replaceFirst(""));
        TreeSet<String> kept = new TreeSet<>();
        for (String word : all) {
            if (!SMALL.contains(word)) {
                kept.add(singular(word));
            }
        }
        if (kept.isEmpty()) {
            kept.addAll(all);
        }
        return new TitleKey(String.join(" ", kept));
    }

    /** Returns the words that count. */
    public Set<String> words() {
        return text.isEmpty() ? Set.of() : Set.of(text.split(" "));
    }

    /** Tells whether no word is left. */
    public boolean isEmpty() {
        return text.isEmpty();
    }

    private static List<String> words(String title) {
        List<String> words = new ArrayList<>();
        int at = 0;
        while (at < title.length()) {
            if (!Character.isLetterOrDigit(title.charAt(at))) {
                at++;
                continue;
            }
            int end = at;
            while (end < title.length() && Character.isLetterOrDigit(title.charAt(end))) {
                end++;
            }
            String word = BodyScore.fold(title, at, end);
            boolean possessive = end < title.length() && "'’".indexOf(title.charAt(end)) >= 0;
            words.add(word);
            at =
                    possessive && end + 1 < title.length() && title.charAt(end + 1) == 's'
                            ? end + 2
                            : end;
        }
        return words;
    }

    private static String singular(String word) {
        int n = word.length();
        if (n > 4 && word.endsWith("ies")) {
            return word.substring(0, n - 3) + "y";
        }
        if (n > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us")) {
            return word.substring(0, n - 1);
        }
        return switch (word) {
            case "whisky" -> "whiskey";
            case "nogg" -> "nog";
            case "flipp" -> "flip";
            case "julap" -> "julep";
            case "sangeree" -> "sangaree";
            case "curacoa" -> "curacao";
            case "noyeau" -> "noyau";
            default -> word;
        };
    }
}
