package org.stillroom.ingredients.spelling;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.stillroom.model.text.Folding;

/**
 * Cuts a name into plain words and makes the key under which equal names meet.
 *
 * <p>Equal are names that differ only in capitals, long s, ligatures, diacritics, plural endings,
 * hyphens, blanks, apostrophes and articles: “pine-apples”, “Pineapple”, “pine apple”.
 */
public final class Words {

    private static final Set<String> ARTICLES = Set.of("a", "an", "the");
    private static final Set<String> LEAVES = Set.of("leaves", "halves", "loaves", "knives");
    private static final Set<String> SAME = Set.of("molasses", "vermouths", "swiss");

    private Words() {}

    /** Returns the folded words of a printed name, parted at blanks and hyphens. */
    public static List<String> of(String printed) {
        return split(Folding.foldWord(printed));
    }

    /** Returns the words of a folded name, parted at blanks and hyphens, without punctuation. */
    public static List<String> split(String folded) {
        List<String> words = new ArrayList<>(4);
        StringBuilder word = new StringBuilder();
        for (int i = 0; i <= folded.length(); i++) {
            char c = i < folded.length() ? folded.charAt(i) : ' ';
            if (Character.isLetterOrDigit(c)) {
                word.append(c);
            } else if (c == ' ' || c == '-' || c == '–' || c == '/' || c == ',' || c == ';') {
                if (!word.isEmpty()) {
                    words.add(word.toString());
                    word.setLength(0);
                }
            } else if (c == '&') {
                word.append("and");
            }
        }
        return words;
    }

    /** Returns the key of a name given as folded words. */
    public static String key(List<String> words) {
        StringBuilder key = new StringBuilder(24);
        words.forEach(w -> append(key, w));
        return key.toString();
    }

    /** Adds one folded word to a key. */
    public static void append(StringBuilder key, String word) {
        if (!isArticle(word)) {
            key.append(singular(word));
        }
    }

    /** Tells whether a folded word is an article, which no key holds. */
    public static boolean isArticle(String word) {
        return word.length() <= 3 && ARTICLES.contains(word);
    }

    /**
     * Returns the singular of a folded English word by its ending.
     *
     * <p>It need not be a word, only the same for both numbers: “molasse” for “molasses” would do.
     */
    public static String singular(String word) {
        int n = word.length();
        if (n < 4 || word.charAt(n - 1) != 's' || SAME.contains(word)) {
            return word;
        }
        if (LEAVES.contains(word)) {
            return word.substring(0, n - 3) + (word.equals("knives") ? "fe" : "f");
        }
        if (word.endsWith("ies") && n > 4) {
            return word.substring(0, n - 3) + "y";
        }
        if (hasEnding(word, "oes", "ches", "shes", "xes", "sses", "zzes") && n > 5) {
            return word.substring(0, n - 2);
        }
        return hasEnding(word, "ss", "us", "is") ? word : word.substring(0, n - 1);
    }

    private static boolean hasEnding(String word, String... endings) {
        for (String ending : endings) {
            if (word.endsWith(ending)) {
                return true;
            }
        }
        return false;
    }
}
