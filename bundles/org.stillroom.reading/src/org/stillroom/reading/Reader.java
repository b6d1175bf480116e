package org.stillroom.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.EditedText;
import org.stillroom.model.text.LayeredText;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.anchor.Decided;
import org.stillroom.reading.anchor.LineCorrections;
import org.stillroom.reading.anchor.Readings;
import org.stillroom.reading.anchor.Unplaced;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.reading.cut.BookCutter;
import org.stillroom.reading.cut.Cut;
import org.stillroom.reading.cut.CutCorrections;
import org.stillroom.reading.cut.Furniture;
import org.stillroom.reading.cut.LayeredCut;
import org.stillroom.reading.genre.GenreTeller;
import org.stillroom.reading.grammar.RecipeReader;
import org.stillroom.reading.idiom.Idioms;
import org.stillroom.reading.reference.References;
import org.stillroom.reading.table.OwnStatement;
import org.stillroom.reading.table.OwnTableCut;
import org.stillroom.reading.table.OwnTableFinder;

/**
 * Reads a source: cuts it into recipes, reads each, follows references between them, and carries out
 * what a person decided about words, cuts, lines and the idiom of a book.
 *
 * <p>Immutable, and safe for several threads at once. The same source and decisions give the same
 * reading.
 */
public final class Reader {

    private static final int CHECK = 64;

    private final RecipeReader grammar;
    private final BookCutter cutter = new BookCutter();
    private final GenreTeller genres = GenreTeller.house();

    private final OwnTableFinder tables;

    private Reader(RecipeReader grammar, MeasureWords measures) {
        this.grammar = grammar;
        this.tables = new OwnTableFinder(measures);
    }

    /** Returns a reader that knows ingredients by a thesaurus. */
    public static Reader of(Thesaurus thesaurus) {
        return of(thesaurus, MeasureWords.shipped());
    }

    /** Returns a reader that knows ingredients by a thesaurus, and these measures. */
    public static Reader of(Thesaurus thesaurus, MeasureWords measures) {
        return new Reader(RecipeReader.with(thesaurus), measures);
    }

    /** Returns a reader with the vocabularies that ship with the program. */
    public static Reader standard() {
        return new Reader(RecipeReader.standard(), MeasureWords.shipped());
    }

    /**
     * Reads a source.
     *
     * @param source the source
     * @param decisions what a person decided; those about other sources are passed over
     * @param progress hears one step for each recipe, and can end the work
     */
    public BookReading read(Source source, List<Assertion> decisions, Progress progress) {
        List<Unplaced> unplaced = new ArrayList<>();
        Decided decided = Decided.about(source, decisions);
        Idioms idioms = Idioms.of(decided);
        List<WordCorrection> putRight = WordCorrection.of(decided, unplaced);
        List<EditedText.Edit> edits = putRight.stream().map(WordCorrection::edit).toList();
        Cut first = LayeredCut.cut(cutter, source, LayeredText.of(source.text()).under(edits));
        OwnTableFinder.Found table = tables.find(source, first);
        List<OwnStatement> told = table.statements();
        Cut untabled = OwnTableCut.apply(first, told, source.text());
        Cut cut = CutCorrections.apply(idioms.cut(untabled, source), source, decided, unplaced);
        List<OwnStatement> own = outsideRecipes(told, cut);
        progress.check();
        progress.begin("Reading " + source.bibliography().title(), cut.witnesses().size());
        SourceText blank = OwnTableCut.blank(Furniture.blank(source.text()), own);
        LayeredText right = LayeredText.of(blank).under(edits);
        LayeredText plain = right.under(idioms.respellings(right.text()));
        Circumstances where = source.bibliography().circumstances();
        List<Reading> readings = new ArrayList<>(cut.witnesses().size());
        for (Witness witness : cut.witnesses()) {
            Reading read = recipe(source.text(), plain, witness, where);
            readings.add(idioms.lines(read, source.text()));
            if (readings.size() % CHECK == 0) {
                progress.step(CHECK);
                progress.check();
            }
        }
        List<Reading> corrected = LineCorrections.apply(readings, source, decided, unplaced);
        LayeredText words = LayeredText.of(source.text()).under(edits);
        words = words.under(idioms.respellings(words.text()));
        List<Reading> linked = link(corrected, source, words);
        List<Problem> problems = new ArrayList<>(table.problems());
        unplaced.forEach(u -> problems.add(u.problem()));
        return new BookReading(source, cut.sections(), linked, own, putRight, unplaced, problems);
    }

    /** Rows that a person cut into a recipe are part of that recipe. */
    private static List<OwnStatement> outsideRecipes(List<OwnStatement> told, Cut cut) {
        return told.stream()
                .filter(
                        s ->
                                !s.row()
                                        || cut.witnesses().stream()
                                                .noneMatch(w -> w.span().contains(s.span())))
                .toList();
    }

    /** Reads a single recipe, its title on the first line if it has one. */
    public Reading readRecipe(String text, Circumstances where) {
        Bibliography bibliography =
                new Bibliography(
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        where.place(),
                        where.date(),
                        Optional.empty(),
                        where.language(),
                        where.trade(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        Source source = new Source("", bibliography, SourceText.of(text), List.of(), "");
        Cut cut = cutter.cut(source);
        Witness witness =
                cut.witnesses().size() == 1 ? cut.witnesses().get(0) : Witnesses.whole(source);
        LayeredText plain = LayeredText.of(source.text());
        Reading reading = recipe(source.text(), plain, witness, where);
        return link(List.of(reading), source, plain).get(0);
    }

    /** References are followed in the words put right, where titles and numbers are right too. */
    private List<Reading> link(List<Reading> readings, Source source, LayeredText words) {
        Circumstances where = source.bibliography().circumstances();
        Function<String, List<ReadingLine>> reader = phrase -> grammar.readLine(phrase, where);
        if (words.isBare()) {
            return References.resolve(readings, source.text(), reader);
        }
        List<Reading> there =
                readings.stream().map(r -> Readings.over(r, words::toTop, words.text())).toList();
        return References.resolve(there, words.text(), reader).stream()
                .map(r -> Readings.over(r, words::toBottom, source.text()))
                .toList();
    }

    private Reading recipe(
            SourceText text, LayeredText plain, Witness witness, Circumstances where) {
        boolean edited = !plain.isBare();
        Witness there = edited ? Readings.placed(witness, plain::toTop) : witness;
        Reading r = grammar.read(plain.text(), there, where);
        Reading placed = edited ? Readings.placed(r, plain::toBottom) : r;
        boolean same = !edited && plain.text() == text;
        List<ReadingLine> lines =
                same
                        ? placed.lines()
                        : placed.lines().stream().map(l -> Readings.worded(l, text)).toList();
        return new Reading(
                witness,
                genres.tell(witness.title(), plain.text().slice(there.body())),
                lines,
                placed.inherited(),
                placed.steps(),
                placed.vessels(),
                placed.serves(),
                placed.reference(),
                placed.temperature(),
                placed.doubts(),
                placed.confidence());
    }
}
