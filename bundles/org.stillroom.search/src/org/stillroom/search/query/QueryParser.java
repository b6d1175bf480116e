package org.stillroom.search.query;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.search.spell.LevenshteinDistance;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.search.SearchException;

/**
 * Reads what a person types into the search field.
 *
 * <p>Words must all occur; words in quotes must stand side by side; {@code -} before a word keeps
 * versions out that have it; {@code or} between two makes one of them enough; {@code field:value}
 * asks a field: ingredient, measure, title, vessel, place, trade, source, date.
 */
public final class QueryParser {

    /** The fields that a query can ask, in the order in which they are explained. */
    public static final List<String> FIELDS =
            List.of("ingredient", "measure", "title", "vessel", "place", "trade", "source", "date");

    private static final Pattern PIECE =
            Pattern.compile("(-)?(?:([\\p{L}]+):)?(?:\"([^\"]*)\"?|(\\S+))");

    private QueryParser() {}

    /**
     * Reads a query.
     *
     * @throws SearchException where a field is unknown or a date is none
     */
    public static Condition parse(String query) {
        List<Condition> all = new ArrayList<>();
        Matcher m = PIECE.matcher(query.strip());
        boolean or = false;
        while (m.find()) {
            boolean bare = m.group(2) == null && m.group(3) == null && m.group(1) == null;
            if (bare && m.group(4).equalsIgnoreCase("or") && !all.isEmpty()) {
                or = true;
                continue;
            }
            Condition piece = piece(m);
            if (or) {
                Condition before = all.remove(all.size() - 1);
                all.add(either(before, piece));
                or = false;
            } else {
                all.add(piece);
            }
        }
        return new Condition.All(all);
    }

    private static Condition either(Condition before, Condition piece) {
        List<Condition> any = new ArrayList<>();
        if (before instanceof Condition.Any(List<Condition> conditions)) {
            any.addAll(conditions);
        } else {
            any.add(before);
        }
        any.add(piece);
        return new Condition.Any(any);
    }

    private static Condition piece(Matcher m) {
        String field = m.group(2) == null ? "words" : m.group(2).toLowerCase(Locale.ROOT);
        boolean phrase = m.group(3) != null;
        String words = phrase ? m.group(3) : m.group(4);
        Condition condition =
                switch (field) {
                    case "words" -> new Condition.Words(field, words, phrase);
                    case "date" -> years(words);
                    default -> {
                        if (!FIELDS.contains(field)) {
                            throw unknown(field);
                        }
                        yield new Condition.Words(field, words, phrase);
                    }
                };
        return m.group(1) == null ? condition : new Condition.Not(condition);
    }

    private static SearchException unknown(String field) {
        LevenshteinDistance near = new LevenshteinDistance();
        String nearest =
                FIELDS.stream()
                        .max(Comparator.comparing(f -> near.getDistance(field, f)))
                        .orElseThrow();
        return new SearchException(
                "No field is called “" + field + "”.",
                "Perhaps “"
                        + nearest
                        + ":” is meant; the fields are "
                        + String.join(", ", FIELDS)
                        + ".");
    }

    private static Condition years(String words) {
        UncertainDate date =
                UncertainDate.parse(words)
                        .orElseThrow(
                                () ->
                                        new SearchException(
                                                "“" + words + "” is not a date in EDTF.",
                                                "Write date:1862, date:186X or date:1800/1880."));
        return new Condition.Years(
                date.earliestYear().orElse(0), date.latestYear().orElse(9999), words);
    }
}
