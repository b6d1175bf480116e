package org.stillroom.ingredients.knowledge;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Finds the word of a closed list that someone probably meant. */
final class Nearest {

    private Nearest() {}

    static String of(String word, Collection<String> known) {
        JaroWinklerSimilarity alike = new JaroWinklerSimilarity();
        String wanted = word.toLowerCase(Locale.ROOT);
        return known.stream()
                .max(Comparator.comparingDouble((String k) -> alike.apply(wanted, k)))
                .orElse("");
    }
}
