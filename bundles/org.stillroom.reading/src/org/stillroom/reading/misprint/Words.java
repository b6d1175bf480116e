package org.stillroom.reading.misprint;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ObjIntConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.stillroom.reading.grammar.VocabularyRow;

/**
 * How often words occur: those of a library's own texts, and those that the vocabularies know.
 *
 * <p>Holds the triples of letters of the known words too, since a damaged word often has one that
 * no word has.
 */
public final class Words {

    /** A vocabulary's word counts as if it had been met so often. */
    private static final int KNOWN = 4;

    /** A word met so often in a library is a word of it. */
    private static final int FEWEST = 2;

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\d][\\p{L}\\d'’]*");

    private final Map<String, Integer> counts = new HashMap<>();
    private final Set<String> taught = new HashSet<>();
    private final Map<String, Integer> triples = new HashMap<>();
    private final Map<String, Integer> pairs = new HashMap<>();

    private Words() {}

    /**
     * Counts the words of a library.
     *
     * @param texts the texts of its sources
     * @param names names of ingredients
     */
    public static Words of(Collection<String> texts, Collection<String> names) {
        Words words = new Words();
        for (String language : VocabularyRow.LANGUAGES) {
            VocabularyRow.of(language).forEach(r -> words.know(r.form()));
        }
        names.forEach(words::know);
        plain().forEach(words.taught::add);
        Map<String, Integer> met = new HashMap<>();
        texts.forEach(t -> each(t, (w, at) -> met.merge(w, 1, Integer::sum)));
        texts.forEach(words::pair);
        met.forEach((w, n) -> words.counts.merge(w, n, Integer::sum));
        words.counts.forEach(
                (w, n) -> {
                    if (n >= FEWEST) {
                        words.spell(w);
                    }
                });
        return words;
    }

    private static List<String> plain() {
        try (InputStream in = Words.class.getResourceAsStream("plain-words.txt");
                BufferedReader rows =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.lines()
                    .filter(l -> !l.startsWith("#"))
                    .flatMap(l -> Stream.of(l.split(" ")))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The plain words cannot be read", e);
        }
    }

    private void pair(String text) {
        String[] before = {""};
        each(
                text,
                (w, at) -> {
                    pairs.merge(before[0] + " " + w, 1, Integer::sum);
                    before[0] = w;
                });
    }

    private void know(String form) {
        each(form, (w, at) -> counts.merge(w, KNOWN, (a, b) -> KNOWN));
        each(form, (w, at) -> taught.add(w));
    }

    private void spell(String word) {
        String framed = "^" + word + "$";
        for (int i = 0; i + 3 <= framed.length(); i++) {
            triples.merge(framed.substring(i, i + 3), 1, Integer::sum);
        }
    }

    /** Gives every word of a text in small letters with its place. */
    static void each(String text, ObjIntConsumer<String> taker) {
        Matcher m = WORD.matcher(text);
        while (m.find()) {
            taker.accept(plain(m.group()), m.start());
        }
    }

    static String plain(String printed) {
        return printed.toLowerCase(Locale.ROOT).replace('’', '\'').replace('ſ', 's');
    }

    /** Returns how often a word occurs. */
    int count(String word) {
        return counts.getOrDefault(word, 0);
    }

    /** Tells whether a vocabulary or the thesaurus has a word; how often a library prints it tells less. */
    boolean isTaught(String word) {
        return taught.contains(word);
    }

    /** Returns how often a word stood right before another one. */
    int pair(String before, String word) {
        return pairs.getOrDefault(before + " " + word, 0);
    }

    /** Tells whether a word is one: met often enough, or known. */
    boolean isKnown(String word) {
        return count(word) >= FEWEST;
    }

    /** Returns how many triples of a word no known word has. */
    int strange(String word) {
        String framed = "^" + word + "$";
        int strange = 0;
        for (int i = 0; i + 3 <= framed.length(); i++) {
            strange += triples.containsKey(framed.substring(i, i + 3)) ? 0 : 1;
        }
        return strange;
    }
}
