package org.stillroom.inquiry;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.library.LibraryLock;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.search.SearchIndex;

/**
 * Keeps a library's index open, on disk where this program may write it, else in memory.
 *
 * <p>Two programs may open one library: the second keeps its index in memory, and both work.
 */
final class IndexKeeper implements AutoCloseable {

    private final Path caches;
    private final List<Problem> problems = new ArrayList<>();
    private Optional<LibraryLock> lock = Optional.empty();
    private Optional<SearchIndex> index = Optional.empty();
    private Optional<Study> state = Optional.empty();
    private int indexed;

    IndexKeeper(Path caches) {
        this.caches = caches;
    }

    synchronized SearchIndex index(
            Study study,
            Map<String, List<Version>> sources,
            Map<String, String> digests,
            Progress progress) {
        if (index.isEmpty()) {
            index = Optional.of(open());
        }
        if (state.isEmpty() || state.get() != study) {
            indexed = index.get().update(sources, digests, progress);
            state = Optional.of(study);
        }
        return index.get();
    }

    private SearchIndex open() {
        try {
            lock = LibraryLock.tryTake(caches);
            if (lock.isPresent()) {
                return SearchIndex.open(caches);
            }
            problems.add(
                    Problem.warning(
                            "",
                            "Another Stillroom has this library open.",
                            "Both work; this one keeps its index in memory."));
        } catch (IOException e) {
            problems.add(
                    Problem.warning(
                            caches.toString(),
                            "The index cannot be kept there (" + e.getMessage() + ").",
                            "It is kept in memory; searching works."));
        }
        return SearchIndex.inMemory();
    }

    /** Returns how many versions the last call indexed anew. */
    synchronized int indexed() {
        return indexed;
    }

    synchronized List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        index.ifPresent(i -> all.addAll(i.problems()));
        return all;
    }

    @Override
    public synchronized void close() {
        index.ifPresent(SearchIndex::close);
        index = Optional.empty();
        state = Optional.empty();
        lock.ifPresent(
                l -> {
                    try {
                        l.close();
                    } catch (IOException gone) {
                        // the system gives the lock back when the program ends
                        lock = Optional.empty();
                    }
                });
        lock = Optional.empty();
    }
}
