package org.stillroom.reading.table;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.text.Folding;
import org.stillroom.reading.table.Joins.Join;

/**
 * Finds rows of a table that tell of a measure which is not known: “1 zorb = 2 ounces”.
 *
 * <p>Such a row is reported, never guessed.
 */
final class Strangers {

    /** What keeps the two sides of a row apart. */
    private static final Pattern APART = Pattern.compile("=|\\||:|—|…|\\.\\s?\\.|_{2,}|\\s{3,}|,");

    /** A number, if one is there, and one to three words. */
    private static final Pattern NAMED =
            Pattern.compile(
                    "(?:(?:\\d+(?:[ .,/⁄]\\d+)*|[½⅓⅔¼¾⅛]|an?|the|one|two|three|four|five|six|eight|ten"
                            + "|une?|la|le|deux|trois|quatre|eine?|das|der|die|zwei|drei|vier|una?|el"
                            + "|dos|tres|cuatro) ){0,2}"
                            + "((?:(?:small|large|great|little|petite?|grande?|kleines?|gro(?:ss|sz)es?"
                            + "|pequen[oa]) )?[a-z][a-z'-]{2,20}(?: [a-z][a-z'-]{2,20})?)");

    private static final Set<String> NOT_NAMES =
            Set.of(
                    "table",
                    "measures",
                    "measure",
                    "page",
                    "chapter",
                    "note",
                    "equal",
                    "make",
                    "makes",
                    "about",
                    "total",
                    "price",
                    "cost",
                    "mesures",
                    "masse",
                    "medidas",
                    "weight",
                    "contents",
                    "which",
                    "that",
                    "this",
                    "sugar",
                    "water",
                    "and",
                    "with");

    private final Joins joins;
    private final MeasureWords words;

    Strangers(Joins joins, MeasureWords words) {
        this.joins = joins;
        this.words = words;
    }

    /**
     * Returns the unknown word of a row of which the rest is known.
     *
     * @param line the row as printed
     * @param items the amounts and numbers in the folded row
     */
    Optional<String> in(String line, List<Item> items) {
        String folded = Folding.foldWord(line.replaceFirst("^[\\s>|*•·–—-]*", ""));
        List<Item> amounts = items.stream().filter(i -> i.kind() == Item.Kind.AMOUNT).toList();
        if (amounts.size() != 1 || !amounts.get(0).counted()) {
            return Optional.empty();
        }
        Item amount = amounts.get(0);
        boolean apart = APART.matcher(line).find();
        String after = folded.substring(amount.end()).replaceFirst("[ .,;|)]*$", "");
        String before = folded.substring(0, amount.start());
        if (after.isEmpty()) {
            return split(before, apart);
        }
        return before.isBlank() ? first(after, apart) : Optional.empty();
    }

    /** Cuts “1 zorb makes ” into the word and what joins it. */
    private Optional<String> split(String before, boolean apart) {
        for (int at = before.length(); at > 0; at = before.lastIndexOf(' ', at - 1)) {
            if (joins(before.substring(at), apart)) {
                Optional<String> name = name(before.substring(0, at));
                if (name.isPresent()) {
                    return name;
                }
            }
        }
        return Optional.empty();
    }

    /** Cuts “ = 4 zorbs” into what joins and the word. */
    private Optional<String> first(String after, boolean apart) {
        for (int at = after.indexOf(' ', 1); at > 0; at = after.indexOf(' ', at + 1)) {
            if (joins(after.substring(0, at), apart)) {
                Optional<String> name = name(after.substring(at));
                if (name.isPresent()) {
                    return name;
                }
            }
        }
        return Optional.empty();
    }

    private boolean joins(String between, boolean apart) {
        Join join = joins.between(between + " ").join();
        return join == Join.EQUAL || join == Join.IS || join == Join.GAP && apart;
    }

    private Optional<String> name(String side) {
        Matcher m =
                NAMED.matcher(side.replaceAll("[|=:.,…_*]", " ").replaceAll("\\s+", " ").strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        String name = m.group(1);
        boolean taken =
                words.find(name).isPresent()
                        || List.of(name.split(" ")).stream().anyMatch(NOT_NAMES::contains);
        return taken ? Optional.empty() : Optional.of(name);
    }

    /** Returns the report of a word. */
    Problem problem(String file, int line, String row, String word) {
        List<String> near = words.nearest(word, 1);
        String nearest =
                near.isEmpty()
                        ? ""
                        : "The nearest known word is “"
                                + near.get(0)
                                + "”; if that is meant, correct the transcription. ";
        return Problem.warning(
                file,
                line,
                row.strip(),
                "The book's own table of measures tells of “"
                        + word
                        + "”, which is not known as a measure; the row was passed over.",
                nearest
                        + "If it is a measure of its own, write what it held as a row of"
                        + " knowledge/measures.csv; lines that name it are read from then on.");
    }
}
