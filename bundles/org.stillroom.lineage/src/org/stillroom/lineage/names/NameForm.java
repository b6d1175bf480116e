package org.stillroom.lineage.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.stillroom.model.text.Folding;

/**
 * A drink's name in the form that names are compared by.
 *
 * <p>Capitals, diacritics, articles, possessives, plurals, numbers such as “No. 2”, “(R)”, “à la” and
 * “another way” are folded away; the printed name stays what it is.
 *
 * @param words the words that are left, in order; empty where nothing but such words is there
 */
public record NameForm(List<String> words) {

    private static final Pattern BRACKETS = Pattern.compile("\\((?:r|tm|c|[ivx]+|\\d+)\\)|[®™©]");
    private static final Pattern NUMBER =
            Pattern.compile("\\b(?:no|nr|number)\\.?\\s*\\d+\\b|\\b\\d+\\b");
    private static final Pattern ROMAN = Pattern.compile("[ivx]{2,5}");
    private static final Pattern POSSESSIVE =
            Pattern.compile("(?<=\\p{L})['’]s?\\b|(?<=s)['’](?=\\W|$)");
    private static final Pattern SEPARATOR = Pattern.compile("[^\\p{L}]+");
    private static final int SHORTEST_PLURAL = 4;

    /** Keeps the words as an unchangeable list. */
    public NameForm {
        words = List.copyOf(words);
    }

    /** Returns the form of a printed name. */
    public static NameForm of(String printed) {
        String folded = Folding.foldWord(printed).toLowerCase(java.util.Locale.ROOT);
        String bare = NUMBER.matcher(BRACKETS.matcher(folded).replaceAll(" ")).replaceAll(" ");
        String plain = POSSESSIVE.matcher(bare).replaceAll("");
        List<String> words = new ArrayList<>();
        for (String word : SEPARATOR.split(plain)) {
            if (!word.isEmpty() && !ROMAN.matcher(word).matches() && NameWords.weight(word) > 0) {
                words.add(singular(word));
            }
        }
        return new NameForm(words);
    }

    /** Returns a word without its plural ending and with American endings, for comparing only. */
    private static String singular(String word) {
        String w =
                word.endsWith("our") && word.length() > 5
                        ? word.substring(0, word.length() - 3) + "or"
                        : word;
        if (w.length() < SHORTEST_PLURAL
                || !w.endsWith("s")
                || w.endsWith("ss")
                || w.endsWith("us")) {
            return w;
        }
        String stem =
                w.endsWith("ies")
                        ? w.substring(0, w.length() - 3) + "y"
                        : w.substring(0, w.length() - 1);
        return stem.endsWith("our") && stem.length() > 5
                ? stem.substring(0, stem.length() - 3) + "or"
                : stem;
    }

    /** Returns the words in one, without blanks: the same for “Toll-Gate” and “Tollgate”. */
    public String joined() {
        return String.join("", words);
    }

    /** Returns the words with a blank between them. */
    public String key() {
        return String.join(" ", words);
    }

    /** Returns how much a word of a name says, 0 to 1. */
    public static double weight(String word) {
        return NameWords.weight(word);
    }

    /** Returns the kinds of drink that the name says it is (“punch”, “bishop”). */
    public Set<String> classes() {
        return words.stream()
                .map(NameWords::drinkClass)
                .flatMap(Optional::stream)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Tells whether the name has no word of its own but “punch”, “hot” and the like. */
    public boolean isGeneric() {
        return words.stream().allMatch(w -> NameWords.weight(w) < 1);
    }
}
