package org.stillroom.ingredients.spelling;

import java.util.List;

/**
 * Rules that bring the spellings of older print to one form, never to be shown.
 *
 * <p>The rules are rows of {@code spelling-rules.csv}; each replaces letters wherever they stand,
 * at the beginning ({@code ^}) or at the end ({@code $}) of a name. They are applied in order. The
 * form is coarse on purpose: it only proposes, and an edit distance decides.
 *
 * @param rules the rules in their order
 */
public record SpellingRules(List<Rule> rules) {

    /** Keeps the list unchangeable. */
    public SpellingRules {
        rules = List.copyOf(rules);
    }

    /**
     * One rule.
     *
     * @param letters letters to replace
     * @param by what takes their place
     * @param atStart whether it holds at the beginning of a name alone
     * @param atEnd whether it holds at the end of a name alone
     */
    public record Rule(String letters, String by, boolean atStart, boolean atEnd) {

        /** Returns the rule of a pattern such as {@code ^kn}, {@code ck}, {@code e$}. */
        public static Rule of(String pattern, String by) {
            boolean start = pattern.startsWith("^");
            boolean end = pattern.endsWith("$");
            String letters = pattern.substring(start ? 1 : 0, pattern.length() - (end ? 1 : 0));
            return new Rule(letters, by, start, end);
        }

        String apply(String word) {
            if (!atStart && !atEnd) {
                return word.replace(letters, by);
            }
            if (atStart && word.startsWith(letters)) {
                return by + word.substring(letters.length());
            }
            if (atEnd && word.endsWith(letters) && word.length() > letters.length() + 1) {
                return word.substring(0, word.length() - letters.length()) + by;
            }
            return word;
        }
    }

    /** Returns the coarse form of a key made by {@link Words#key(List)}. */
    public String skeleton(String key) {
        String form = key;
        for (Rule rule : rules) {
            form = rule.apply(form);
        }
        return singleLetters(form);
    }

    private static String singleLetters(String word) {
        StringBuilder out = new StringBuilder(word.length());
        for (int i = 0; i < word.length(); i++) {
            if (i == 0 || word.charAt(i) != word.charAt(i - 1)) {
                out.append(word.charAt(i));
            }
        }
        return out.toString();
    }
}
