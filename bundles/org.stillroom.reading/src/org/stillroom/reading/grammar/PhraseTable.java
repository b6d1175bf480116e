package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the longest of many phrases that starts at a token. */
final class PhraseTable {

    /**
     * A phrase that was found.
     *
     * @param value what the vocabulary says about it
     * @param next the token after it
     */
    record Match(String value, int next) {}

    private record Entry(String[] words, String value) {}

    /** Bits of a filter that answers most questions about other words without a look-up. */
    private static final int FILTER_BITS = 4096;

    private final Map<String, List<Entry>> byFirst = new HashMap<>();
    private final long[] filter = new long[FILTER_BITS / Long.SIZE];

    void add(String form, String value) {
        String[] words = form.split("[ -]+");
        int bit = bit(words[0]);
        filter[bit >>> 6] |= 1L << bit;
        byFirst.computeIfAbsent(words[0], w -> new ArrayList<>()).add(new Entry(words, value));
    }

    /** Sorts the phrases, longest first; to be called once after the last was added. */
    void close() {
        Comparator<Entry> longest = Comparator.comparingInt(e -> -e.words().length);
        byFirst.values().forEach(list -> list.sort(longest));
    }

    private static int bit(String word) {
        int hash = word.hashCode();
        return (hash ^ hash >>> 12) & FILTER_BITS - 1;
    }

    private boolean mayStart(String word) {
        int bit = bit(word);
        return (filter[bit >>> 6] & 1L << bit) != 0;
    }

    boolean has(String word) {
        if (!mayStart(word)) {
            return false;
        }
        List<Entry> entries = byFirst.get(word);
        return entries != null && entries.get(entries.size() - 1).words().length == 1;
    }

    Optional<String> value(String word) {
        List<Entry> entries = byFirst.getOrDefault(word, List.of());
        return entries.stream().filter(e -> e.words().length == 1).map(Entry::value).findFirst();
    }

    Optional<Match> at(Passage passage, int index) {
        if (!mayStart(passage.word(index))) {
            return Optional.empty();
        }
        List<Entry> entries = byFirst.get(passage.word(index));
        if (entries == null) {
            return Optional.empty();
        }
        for (Entry e : entries) {
            int next = end(passage, index, e.words());
            if (next > 0) {
                return Optional.of(new Match(e.value(), next));
            }
        }
        return Optional.empty();
    }

    /** Returns the token after the words, or -1; full stops of abbreviations are passed over. */
    private static int end(Passage passage, int index, String[] words) {
        int at = index;
        for (int i = 0; i < words.length; i++) {
            if (i > 0 && passage.at(at).isMark('.') && words[i - 1].length() <= 5) {
                at++;
            }
            if (!passage.word(at).equals(words[i])) {
                return -1;
            }
            at++;
        }
        return at;
    }
}
