package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Serves;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Reads a recipe’s words into lines with amounts, steps, vessels and doubts.
 *
 * <p>One grammar serves lists and running prose; what differs between languages stands in vocabulary
 * files. Immutable, and safe for several threads at once. Any text can be read: words that are no
 * recipe give no lines and a doubt.
 */
public final class RecipeReader {

    private final Knowledge knowledge;
    private final ConfidenceModel model;

    private RecipeReader(Knowledge knowledge, ConfidenceModel model) {
        this.knowledge = knowledge;
        this.model = model;
    }

    /** Returns a reader with the vocabularies and the thesaurus that come with the program. */
    public static RecipeReader standard() {
        return with(Thesaurus.shipped());
    }

    /** Returns a reader that knows the names of a thesaurus. */
    public static RecipeReader with(Thesaurus thesaurus) {
        return new RecipeReader(new Knowledge(thesaurus), ConfidenceModel.standard());
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
        Passage title =
                new Tokenizer(scan.words::knows, w -> 0).tokenize(text, witness.titleSpan());
        return scan.reading(witness, title);
    }

    /** Reads a single line or clause; spans are places in it. */
    public List<ReadingLine> readLine(String line, Circumstances where) {
        SourceText text = SourceText.of(line);
        return scan(text, text.span(), where, true).lines;
    }

    private Scan scan(SourceText text, Span body, Circumstances where, boolean line) {
        String language = language(text, body, where);
        Vocabulary words = knowledge.vocabulary(language);
        Predicate<String> known = w -> words.knows(w) || knowledge.knowsWord(w);
        Tokenizer tokenizer = new Tokenizer(known, w -> words.cut(w, known));
        Passage passage = tokenizer.tokenize(text, body);
        Names names = knowledge.names(language, passage);
        boolean pharmacy =
                where.trade().filter(t -> t == Trade.PHARMACY || t == Trade.DISTILLING).isPresent();
        ClauseScanner.Settings settings = new ClauseScanner.Settings(line, pharmacy);
        Found found = new ClauseScanner(words, passage, names, settings).scan();
        List<ReadingLine> lines = new LineBuilder(passage, text, model).build(found.drafts);
        return new Scan(words, passage, found, lines);
    }

    /** The language that the book declares, unless the small words are clearly of another one. */
    private static String language(SourceText text, Span body, Circumstances where) {
        Optional<String> declared =
                where.language()
                        .map(t -> t.toLowerCase(Locale.ROOT).split("[-_]")[0])
                        .filter(Knowledge.LANGUAGES::contains);
        return LanguageGuess.of(text.slice(body), declared);
    }

    /** What one pass found, ready to be made a reading. */
    private record Scan(Vocabulary words, Passage passage, Found found, List<ReadingLine> lines) {

        Reading reading(Witness witness, Passage title) {
            Optional<Serves> serves = new ServesFinder(words, passage).find();
            List<Doubt> doubts =
                    new DoubtFinder(words, passage).find(lines, serves.map(Serves::span));
            return new Reading(
                    witness,
                    Reading.Genre.RECIPE,
                    lines,
                    List.of(),
                    new StepBuilder(words, passage).build(found, lines.size()),
                    vessels(),
                    serves.or(() -> new ServesFinder(words, title).findInTitle()),
                    Optional.empty(),
                    Temperature.of(words, passage, found, Folding.foldWord(witness.title())),
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
                boolean mixing =
                        pot.mixing() && (later || isMixed(k))
                                || later && !pot.mixing() && pours(found.pots.get(last));
                Vessel.Use use = mixing ? Vessel.Use.MIXING : Vessel.Use.SERVING;
                vessels.add(new Vessel(pot.word(), passage.span(pot.from(), pot.to()), use));
            }
            return vessels;
        }

        private boolean isMixed(int k) {
            String word = found.pots.get(k).word();
            boolean shaken = word.endsWith("mixing glass") || word.endsWith("shaker");
            return shaken || !word.endsWith("glass") && !word.endsWith("bowl");
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
