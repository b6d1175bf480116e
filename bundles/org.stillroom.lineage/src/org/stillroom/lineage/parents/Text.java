package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.stillroom.lineage.collation.Token;
import org.stillroom.lineage.collation.Tokens;
import org.stillroom.lineage.reuse.Names;
import org.stillroom.lineage.reuse.Shingles;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Folding;

/**
 * What a version is compared by when its parents are sought.
 *
 * @param id the version’s id
 * @param source id of its source
 * @param date when its words were written, if that is known
 * @param tokens its words, typed
 * @param wording its words as short stretches
 * @param order families of its ingredients in the order in which they stand
 * @param amounts amount of each ingredient in units that are the same for one text
 * @param cites ids of the versions that it sends the reader to
 * @param words its words folded, title included, for finding an author’s name
 * @param author what its source’s author is called by, folded
 */
public record Text(
        String id,
        String source,
        Optional<UncertainDate> date,
        List<Token> tokens,
        Shingles wording,
        List<String> order,
        Map<String, Double> amounts,
        Set<String> cites,
        Set<String> words,
        Optional<String> author) {

    private static final Pattern SEPARATOR = Pattern.compile("[^\\p{L}]+");

    /** Keeps the collections unchangeable. */
    public Text {
        tokens = List.copyOf(tokens);
        order = List.copyOf(order);
        amounts = Map.copyOf(amounts);
        cites = Set.copyOf(cites);
        words = Set.copyOf(words);
    }

    /** Returns a text of which only words and date are known, in a source of its own. */
    public static Text of(String id, UncertainDate date, List<Token> tokens) {
        StringBuilder plain = new StringBuilder();
        tokens.forEach(t -> plain.append(t.value()).append(' '));
        return new Text(
                id,
                id,
                Optional.of(date),
                tokens,
                Shingles.ofCharacters(plain.toString()),
                List.of(),
                Map.of(),
                Set.of(),
                Set.of(),
                Optional.empty());
    }

    /** Returns what a version is compared by. */
    public static Text of(Version version) {
        List<String> order = new ArrayList<>();
        Map<String, Double> amounts = new HashMap<>();
        for (SpecLine line : version.spec().lines()) {
            LineKind kind = line.line().kind();
            if (kind == LineKind.ICE || kind == LineKind.GARNISH) {
                continue;
            }
            order.add(line.ingredient().family());
            amount(line).ifPresent(a -> amounts.merge(line.ingredient().family(), a, Double::sum));
        }
        return new Text(
                version.id(),
                version.source().id(),
                version.source().bibliography().date(),
                Tokens.of(version),
                Shingles.ofCharacters(version.source().text().slice(version.witness().body())),
                order,
                amounts,
                version.reading()
                        .reference()
                        .map(Reference::chain)
                        .map(Set::copyOf)
                        .orElse(Set.of()),
                words(version.wordsPutRight()),
                Names.author(version.source()));
    }

    private static Optional<Double> amount(SpecLine line) {
        Optional<Double> share = line.share().map(Rational::toDouble);
        return line.millilitres()
                .map(v -> v.likely())
                .or(() -> line.grams().map(g -> g.likely()))
                .or(() -> share)
                .filter(a -> a > 0);
    }

    private static Set<String> words(String printed) {
        String folded = Folding.fold(printed).folded().toLowerCase(Locale.ROOT);
        Set<String> words = new HashSet<>();
        for (String word : SEPARATOR.split(folded)) {
            words.add(word);
        }
        return words;
    }

    /**
     * Tells whether the words name the author of another text. A name that the other text has too
     * is the drink's, not its author's.
     */
    boolean names(Text other) {
        return !source.equals(other.source)
                && !author.equals(other.author)
                && other.author
                        .filter(a -> words.contains(a) && !other.words.contains(a))
                        .isPresent();
    }
}
