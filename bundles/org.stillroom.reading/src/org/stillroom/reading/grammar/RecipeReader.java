package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;

/**
 * Reads a recipe’s words into lines with amounts, steps, vessels and doubts.
 *
 * <p>One grammar serves lists and running prose; what differs between languages stands in vocabulary
 * files. Immutable, and safe for several threads at once. Any text can be read: words that are no
 * recipe give no lines and a doubt.
 */
public final class RecipeReader {

    private final Map<String, Vocabulary> vocabularies;
    private final Names names;
    private final ConfidenceModel model;

    private RecipeReader(Map<String, Vocabulary> vocabularies, Names names) {
        this.vocabularies = Map.copyOf(vocabularies);
        this.names = names;
        this.model = ConfidenceModel.standard();
    }

    /** Returns a reader with the vocabularies and the thesaurus that come with the program. */
    public static RecipeReader standard() {
        return new RecipeReader(vocabularies(), Names.NONE);
    }

    private static Map<String, Vocabulary> vocabularies() {
        Map<String, Vocabulary> all = new HashMap<>();
        for (String language : List.of("en")) {
            all.put(language, Vocabulary.of(language));
        }
        return all;
    }

    /**
     * Reads one recipe.
     *
     * @param text the source’s words
     * @param witness where the recipe stands in them
     * @param where when, where and for whose work it was written
     */
    public Reading read(SourceText text, Witness witness, Circumstances where) {
        Scan scan = scan(text, witness.body(), where, false);
        String title = Folding.foldWord(witness.title());
        return scan.reading(witness, title);
    }

    /** Reads a single line or clause; spans are places in it. */
    public List<ReadingLine> readLine(String line, Circumstances where) {
        SourceText text = SourceText.of(line);
        return scan(text, text.span(), where, true).lines;
    }

    private Scan scan(
            SourceText text,
            org.stillroom.model.text.Span body,
            Circumstances where,
            boolean line) {
        Vocabulary words = vocabulary(where);
        Predicate<String> known = w -> words.knows(w) || names.knowsWord(w);
        Tokenizer tokenizer = new Tokenizer(known, w -> words.cut(w, known));
        Passage passage = tokenizer.tokenize(text, body);
        boolean pharmacy = where.trade()
                .filter(t -> t == Trade.PHARMACY || t == Trade.DISTILLING).isPresent();
        ClauseScanner.Settings settings = new ClauseScanner.Settings(line, pharmacy);
        Found found = new ClauseScanner(words, passage, names, settings).scan();
        List<ReadingLine> lines =
                new LineBuilder(passage, text, model).build(found.drafts);
        return new Scan(words, passage, found, lines);
    }

    private Vocabulary vocabulary(Circumstances where) {
        String language = where.language().map(t -> t.toLowerCase(Locale.ROOT).split("[-_]")[0])
                .orElse("en");
        return vocabularies.getOrDefault(language, vocabularies.get("en"));
    }

    /** What one pass found, ready to be made a reading. */
    private record Scan(
            Vocabulary words, Passage passage, Found found, List<ReadingLine> lines) {

        Reading reading(Witness witness, String title) {
            List<Doubt> doubts = new DoubtFinder(words, passage).find(lines, false);
            return new Reading(
                    witness,
                    Reading.Genre.RECIPE,
                    lines,
                    List.of(),
                    new StepBuilder(words, passage).build(found, lines.size()),
                    vessels(),
                    new ServesFinder(words, passage).find(),
                    Optional.empty(),
                    Temperature.of(words, passage, found, title),
                    doubts,
                    overall());
        }

        /** The vessel that receives last serves; a glass without another vessel serves too. */
        private List<Vessel> vessels() {
            List<Vessel> vessels = new ArrayList<>();
            int last = found.pots.size() - 1;
            for (int k = 0; k <= last; k++) {
                Found.Pot pot = found.pots.get(k);
                boolean later = k < last;
                boolean mixing = pot.mixing() && (later || isMixed(k)) || later && !pot.mixing()
                        && pours(found.pots.get(last));
                Vessel.Use use = mixing ? Vessel.Use.MIXING : Vessel.Use.SERVING;
                vessels.add(new Vessel(
                        pot.word(), passage.span(pot.from(), pot.to()), use));
            }
            return vessels;
        }

        private boolean isMixed(int k) {
            String word = found.pots.get(k).word();
            return !word.endsWith("glass") && !word.endsWith("bowl");
        }

        private static boolean pours(Found.Pot pot) {
            return pot.receives() && !pot.mixing();
        }

        private Confidence overall() {
            double product = 1;
            int count = 0;
            for (ReadingLine line : lines) {
                if (line.kind() != LineKind.ALTERNATIVE) {
                    product *= line.confidence().probability();
                    count++;
                }
            }
            return Confidence.of(count == 0 ? 0 : Math.pow(product, 1.0 / count));
        }
    }
}
