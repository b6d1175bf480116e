package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.stillroom.drift.Drift;
import org.stillroom.drift.DriftAnalysis;
import org.stillroom.drift.Observation;
import org.stillroom.library.Library;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.DrinkFinder;
import org.stillroom.lineage.DrinkGrouping;
import org.stillroom.lineage.Drinks;
import org.stillroom.lineage.Lineage;
import org.stillroom.lineage.LineageTracer;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.search.SearchIndex;
import org.stillroom.search.SearchResult;

/**
 * An open library with everything that was read in it, as it was at one moment.
 *
 * <p>Immutable as far as anybody can see; what is costly (drinks, index, lineages) is worked out
 * when first asked for and kept. Safe on any thread.
 */
public final class Study implements AutoCloseable {

    private final Library library;
    private final Knowledge knowledge;
    private final List<BookStudy> books;
    private final List<Version> versions;
    private final Map<String, Version> byId;
    private final IndexKeeper keeper;
    private final Map<String, Lineage> lineages = new ConcurrentHashMap<>();
    private Optional<Drinks> drinks = Optional.empty();

    Study(Library library, Knowledge knowledge, List<BookStudy> books, IndexKeeper keeper) {
        this.library = library;
        this.knowledge = knowledge;
        this.books = List.copyOf(books);
        this.keeper = keeper;
        this.versions = books.stream().flatMap(b -> b.versions().stream()).toList();
        this.byId = new HashMap<>();
        versions.forEach(v -> byId.put(v.id(), v));
    }

    /** Returns the library on disk. */
    public Library library() {
        return library;
    }

    /** Returns what is known, the library's own rows included. */
    public Knowledge knowledge() {
        return knowledge;
    }

    /** Returns the library's name for its user. */
    public String title() {
        return library.settings().title();
    }

    /** Returns every source with what was read in it, by id. */
    public List<BookStudy> books() {
        return books;
    }

    /** Returns a source with what was read in it. */
    public Optional<BookStudy> book(String sourceId) {
        return books.stream().filter(b -> b.source().id().equals(sourceId)).findFirst();
    }

    /** Returns every source, by id. */
    public List<Source> sources() {
        return books.stream().map(BookStudy::source).toList();
    }

    /** Returns every version in the library, source by source. */
    public List<Version> versions() {
        return versions;
    }

    /** Returns a version by its id. */
    public Optional<Version> version(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** Returns what could not be read or done. */
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>(library.allProblems());
        all.addAll(knowledge.problems());
        books.forEach(b -> all.addAll(b.reading().problems()));
        all.addAll(indexProblems());
        return List.copyOf(all);
    }

    /** Returns why the index is not kept as it should be; empty where it is, or is not yet made. */
    public List<Problem> indexProblems() {
        return keeper.problems();
    }

    /** Returns the drinks that the versions make. */
    public synchronized Drinks drinks(Progress progress) {
        if (drinks.isEmpty()) {
            drinks =
                    Optional.of(new DrinkGrouping().group(versions, library.decisions(), progress));
        }
        return drinks.get();
    }

    /** Returns drinks whose names resemble some words, likeliest first. */
    public List<Drink> findDrinks(String name, Progress progress) {
        return new DrinkFinder().find(drinks(progress), name);
    }

    /** Returns who took a drink from whom. */
    public Lineage lineage(Drink drink, Progress progress) {
        Lineage known = lineages.get(drink.id());
        if (known == null) {
            known = new LineageTracer().trace(drink, progress);
            lineages.put(drink.id(), known);
        }
        return known;
    }

    /** Returns how a drink's proportions moved; copies of one text count once. */
    public Drift drift(Drink drink, Progress progress) {
        Map<String, String> roots = lineage(drink, progress).roots();
        List<Observation> observations =
                drink.versions().stream()
                        .map(v -> new Observation(v, roots.getOrDefault(v.id(), v.id())))
                        .toList();
        return new DriftAnalysis().analyse(observations, progress);
    }

    /**
     * Searches words and specs.
     *
     * @throws org.stillroom.search.SearchException where the query cannot be understood
     */
    public SearchResult search(String query, int limit, Progress progress) {
        return index(progress).search(query, limit);
    }

    /** Returns the index, brought to this state of the library. */
    public SearchIndex index(Progress progress) {
        Map<String, List<Version>> bySource = new TreeMap<>();
        Map<String, String> digests = new TreeMap<>();
        for (BookStudy book : books) {
            bySource.put(book.source().id(), book.versions());
            digests.put(book.source().id(), book.digest());
        }
        return keeper.index(this, bySource, digests, progress);
    }

    /** Closes the index and gives the library back to other programs. */
    @Override
    public void close() {
        keeper.close();
    }
}
