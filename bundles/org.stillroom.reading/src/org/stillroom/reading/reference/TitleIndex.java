package org.stillroom.reading.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.source.Witness;
import org.stillroom.reading.cut.TitleKey;

/** The recipes of one source by title, by the words of their titles, and by number. */
final class TitleIndex {

    private final List<TitleKey> keys = new ArrayList<>();
    private final Map<TitleKey, List<Integer>> byKey = new HashMap<>();
    private final Map<String, List<Integer>> byWord = new HashMap<>();
    private final Map<String, List<Integer>> byNumber = new HashMap<>();

    private static final Pattern NUMBERED = Pattern.compile("(?i)\\bno\\. ?(\\d{1,3})\\W*$");

    TitleIndex(List<Witness> witnesses) {
        for (int i = 0; i < witnesses.size(); i++) {
            Witness witness = witnesses.get(i);
            TitleKey key = TitleKey.of(witness.title());
            keys.add(key);
            byKey.computeIfAbsent(key, k -> new ArrayList<>(1)).add(i);
            for (String word : key.words()) {
                byWord.computeIfAbsent(word, k -> new ArrayList<>(1)).add(i);
            }
            int at = i;
            witness.number()
                    .or(() -> numberIn(witness.title()))
                    .ifPresent(n -> byNumber.computeIfAbsent(n, k -> new ArrayList<>(1)).add(at));
        }
    }

    /** Returns the number of “Moselle Cup, No. 2”. */
    private static Optional<String> numberIn(String title) {
        Matcher m = NUMBERED.matcher(title);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    /** Returns the recipe with this number that stands nearest. */
    OptionalInt number(String number, int from) {
        return nearest(byNumber.getOrDefault(number, List.of()), from);
    }

    /** Returns the recipe whose title has the same words, in any order, and stands nearest. */
    OptionalInt exact(String words, int from) {
        TitleKey key = TitleKey.of(words);
        return key.isEmpty()
                ? OptionalInt.empty()
                : nearest(byKey.getOrDefault(key, List.of()), from);
    }

    /** Returns the recipe whose title holds all these words and stands nearest. */
    OptionalInt partly(String words, int from) {
        Set<String> sought = TitleKey.of(words).words();
        if (sought.isEmpty()) {
            return OptionalInt.empty();
        }
        List<Integer> rarest = null;
        for (String word : sought) {
            List<Integer> with = byWord.getOrDefault(word, List.of());
            rarest = rarest == null || with.size() < rarest.size() ? with : rarest;
        }
        List<Integer> all = new ArrayList<>();
        Set<TitleKey> different = new HashSet<>();
        for (int i : rarest) {
            if (keys.get(i).words().containsAll(sought)) {
                all.add(i);
                different.add(keys.get(i));
            }
        }
        return different.size() > 3 ? OptionalInt.empty() : nearest(all, from);
    }

    /** Tells whether a title shares a word with the title before it. */
    boolean variesTheOneBefore(int at) {
        return at > 0 && keys.get(at).words().stream().anyMatch(keys.get(at - 1).words()::contains);
    }

    /** Returns the last one before a place, else the first one after it. */
    private OptionalInt nearest(List<Integer> all, int from) {
        int best = -1;
        for (int i : all) {
            if (i < from) {
                best = i;
            } else if (i > from) {
                best = best < 0 ? i : best;
                break;
            }
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }
}
