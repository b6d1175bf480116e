package org.stillroom.measures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.stillroom.measures.book.Equation;
import org.stillroom.measures.book.KnownMeasures;
import org.stillroom.measures.book.OwnTable;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.AuthorityReader;
import org.stillroom.measures.knowledge.LegalUnit;
import org.stillroom.measures.knowledge.MeasureSystem;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.rows.Rows;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.measures.system.Where;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Circumstances;

/**
 * What words of measure meant, by place, date and trade.
 *
 * <p>A table never changes: adding a library's own rows, or what one book tells about itself, gives
 * another table. It may be used by any number of threads.
 */
public final class MeasureTable {

    private static final int REMEMBERED = 50_000;

    private final Knowledge knowledge;
    private final BookContext book;
    private final Map<MeasureQuestion, MeasureMeaning> remembered = new ConcurrentHashMap<>();
    private final Map<Circumstances, Setting> settings = new ConcurrentHashMap<>();

    private MeasureTable(Knowledge knowledge, BookContext book) {
        this.knowledge = knowledge;
        this.book = book;
    }

    /** Returns the table that ships with the program. */
    public static MeasureTable shipped() {
        return new MeasureTable(Knowledge.shipped(), BookContext.NONE);
    }

    /**
     * A table with what was wrong in the rows that were added to it.
     *
     * @param table the table
     * @param problems rows left out or doubtful
     */
    public record Extended(MeasureTable table, List<Problem> problems) {

        /** Keeps the problems unchangeable. */
        public Extended {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Returns this table with the rows of a library's {@code knowledge/measures.csv}.
     *
     * @param file the file's name for messages
     * @param csv its text
     */
    public Extended with(String file, String csv) {
        Rows rows = Rows.read(file, csv, List.of("word", "source"));
        AuthorityReader.Result read = reader().read(rows.rows());
        List<Problem> problems = new ArrayList<>(rows.problems());
        problems.addAll(read.problems());
        return new Extended(
                new MeasureTable(knowledge.with(read.authorities(), read.words()), book), problems);
    }

    /**
     * Returns this table with the rows of a library's {@code knowledge/places.csv}.
     *
     * @param file the file's name for messages
     * @param csv its text
     */
    public Extended withPlaces(String file, String csv) {
        Rows rows = Rows.read(file, csv);
        Gazetteer.Extended more = knowledge.places().with(rows.rows());
        List<Problem> problems = new ArrayList<>(rows.problems());
        problems.addAll(more.problems());
        return new Extended(new MeasureTable(knowledge.with(more.gazetteer()), book), problems);
    }

    /**
     * Returns this table with the measurements of a library's {@code knowledge/yields.csv}: what
     * the user's own fruits and eggs gave.
     *
     * @param file the file's name for messages
     * @param csv its text
     */
    public Extended withYields(String file, String csv) {
        Rows rows = Rows.read(file, csv, List.of("of", "amount", "unit"));
        OwnYields.Result read = new OwnYields(this).read(rows.rows());
        List<Problem> problems = new ArrayList<>(rows.problems());
        problems.addAll(read.problems());
        return new Extended(
                new MeasureTable(knowledge.with(read.authorities(), knowledge.words()), book),
                problems);
    }

    private AuthorityReader reader() {
        return new AuthorityReader(
                knowledge.units(), knowledge.works(), knowledge.words(), knowledge.places());
    }

    /** Returns this table for a book of which something is known. */
    public MeasureTable forBook(BookContext newBook) {
        return new MeasureTable(knowledge, newBook);
    }

    /**
     * Returns the table that a book itself prints, as one system, with the rows that the library
     * has for that book; give it to {@link BookContext}.
     *
     * @param source the source's id
     * @param statements what the book says, in its order
     */
    public OwnTable.Built ownTable(String source, List<Equation> statements) {
        KnownMeasures known =
                new KnownMeasures(
                        knowledge.words(),
                        knowledge.units(),
                        w -> knowledge.of(w).stream().anyMatch(Authority::counts));
        OwnTable.Built built = OwnTable.of(statements, known);
        List<Authority> rows =
                authorities().stream()
                        .filter(a -> a.role() == Authority.Role.OWN_TABLE)
                        .filter(a -> a.book().equals(source))
                        .toList();
        return new OwnTable.Built(built.table().with(rows), built.problems());
    }

    /** Returns what a word meant in these circumstances. */
    public MeasureMeaning resolve(String word, Optional<Size> size, Circumstances where) {
        return resolve(new MeasureQuestion(word, size, Matter.UNKNOWN, "", where));
    }

    /** Returns what a word meant for this stuff in these circumstances. */
    public MeasureMeaning resolve(MeasureQuestion question) {
        MeasureMeaning known = remembered.get(question);
        if (known != null) {
            return known;
        }
        MeasureQuestion plain = knowledge.plain(question);
        MeasureMeaning meaning =
                Optional.ofNullable(remembered.get(plain))
                        .orElseGet(
                                () ->
                                        new Resolver(knowledge, book, setting(plain.where()), plain)
                                                .resolve());
        remember(remembered, plain, meaning);
        remember(remembered, question, meaning);
        return meaning;
    }

    private Setting setting(Circumstances where) {
        Setting known = settings.get(where);
        if (known != null) {
            return known;
        }
        Where looked = Where.of(where, knowledge.places());
        Setting setting = new Setting(looked, knowledge.inference().posterior(looked, book));
        remember(settings, where, setting);
        return setting;
    }

    private static <K, V> void remember(Map<K, V> map, K key, V value) {
        if (map.size() >= REMEMBERED) {
            map.clear();
        }
        map.put(key, value);
    }

    /** Returns how likely each system of measures is in these circumstances. */
    public SystemPosterior systems(Circumstances where) {
        return setting(where).systems();
    }

    /** Returns a system by its id. */
    public Optional<MeasureSystem> system(String id) {
        return knowledge.systems().find(id);
    }

    /** Returns every system of measures. */
    public List<MeasureSystem> allSystems() {
        return knowledge.systems().all();
    }

    /** Returns the places that are known. */
    public Gazetteer places() {
        return knowledge.places();
    }

    /** Returns the vocabulary of measures. */
    public MeasureWords words() {
        return knowledge.words();
    }

    /** Returns a legal unit by its code. */
    public Optional<LegalUnit> unit(String code) {
        return knowledge.units().find(code);
    }

    /** Returns every legal unit. */
    public Collection<LegalUnit> units() {
        return knowledge.units().all();
    }

    /** Returns everything that is said about a word, whatever the circumstances. */
    public List<Authority> authorities(String word) {
        return knowledge
                .words()
                .find(word)
                .map(MeasureWord::word)
                .map(knowledge::of)
                .orElse(List.of());
    }

    /** Returns every statement. */
    public List<Authority> authorities() {
        return knowledge.authorities().values().stream()
                .flatMap(List::stream)
                .sorted((a, b) -> a.id().compareTo(b.id()))
                .toList();
    }
}
