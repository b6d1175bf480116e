package org.stillroom.lineage.reuse;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Folding;

/** Which authors a text names: a writer who thanks another, or blames him, had read him. */
public final class Names {

    private static final Pattern SEPARATOR = Pattern.compile("[^\\p{L}]+");
    private static final int SHORTEST = 4;
    private static final String NOBODY = "anonymous";

    private Names() {}

    /** Returns the surname of a source's author, folded; nothing where it is short or missing. */
    public static Optional<String> author(Source source) {
        return source.bibliography()
                .author()
                .map(a -> surname(a.strip()))
                .map(a -> Folding.foldWord(a).toLowerCase(Locale.ROOT))
                .map(a -> SEPARATOR.matcher(a).replaceAll(""))
                .filter(a -> a.length() >= SHORTEST && !a.equals(NOBODY));
    }

    /** The last word before a comma, after which a trade or the given names stand. */
    private static String surname(String author) {
        int comma = author.indexOf(',');
        String name = comma < 0 ? author : author.substring(0, comma).strip();
        return name.substring(name.lastIndexOf(' ') + 1);
    }

    /** Returns which of some surnames stand in a text. */
    public static Set<String> named(String printed, Set<String> surnames) {
        Set<String> named = new TreeSet<>();
        if (!surnames.isEmpty()) {
            String folded = Folding.fold(printed).folded().toLowerCase(Locale.ROOT);
            for (String word : SEPARATOR.split(folded)) {
                if (surnames.contains(word)) {
                    named.add(word);
                }
            }
        }
        return named;
    }
}
