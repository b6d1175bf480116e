package org.stillroom.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.facet.FacetsConfig;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.Term;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.search.analysis.PeriodAnalyzer;

/**
 * The index over words and specs of a library, a disposable cache.
 *
 * <p>Each source is indexed under a digest of what it held; a source whose digest has not changed
 * is not touched. Where the disk cannot be written the index is kept in memory, so that searching
 * works all the same. Searching is safe from any thread; {@link #update} is for one at a time.
 */
public final class SearchIndex implements AutoCloseable {

    private static final String DIGEST = "digest:";

    private final Analyzer analyzer = new PeriodAnalyzer();
    private final FacetsConfig facets = facetsConfig();
    private final List<Problem> problems = new ArrayList<>();
    private IndexFolder folder;
    private Directory directory;
    private Searcher searcher;

    private SearchIndex(IndexFolder folder, Directory directory) {
        this.folder = folder;
        this.directory = directory;
    }

    /**
     * Opens the index in a folder of caches.
     *
     * @param caches the folder; it is made where it is not there
     */
    public static SearchIndex open(Path caches) {
        IndexFolder folder = new IndexFolder(caches);
        try {
            return new SearchIndex(folder, folder.open());
        } catch (IOException e) {
            SearchIndex index = inMemory();
            index.problems.add(inMemoryBecause(caches, e));
            return index;
        }
    }

    /** Returns an index that is kept in memory alone. */
    public static SearchIndex inMemory() {
        return new SearchIndex(null, new ByteBuffersDirectory());
    }

    private static Problem inMemoryBecause(Path caches, IOException e) {
        return Problem.warning(
                caches.toString(),
                "The index cannot be written (" + e.getMessage() + ") and is kept in memory.",
                "Searching works; make room on the disk or the folder writable to keep it.");
    }

    private static FacetsConfig facetsConfig() {
        FacetsConfig config = new FacetsConfig();
        Fields.COUNTED.forEach(f -> config.setMultiValued(f, true));
        return config;
    }

    /** Returns what could not be done as wished. */
    public synchronized List<Problem> problems() {
        return List.copyOf(problems);
    }

    /**
     * Brings the index to a state of the library.
     *
     * @param sources every source's versions, by source id
     * @param digests for each source id the digest of what it holds and how it was read
     * @return how many versions were indexed anew
     */
    public synchronized int update(
            Map<String, List<Version>> sources, Map<String, String> digests, Progress progress) {
        try {
            return write(sources, digests, progress);
        } catch (IOException | IllegalArgumentException e) {
            return afterFailure(sources, digests, progress, e);
        }
    }

    /** A damaged index is made anew; where the disk fails the index goes to memory. */
    private int afterFailure(
            Map<String, List<Version>> sources,
            Map<String, String> digests,
            Progress progress,
            Exception failure) {
        if (folder == null) {
            throw new IllegalStateException("An index in memory cannot fail", failure);
        }
        try {
            directory.close();
            folder.delete();
            directory = folder.open();
            return write(sources, digests, progress);
        } catch (IOException | IllegalArgumentException again) {
            problems.add(
                    Problem.warning(
                            "",
                            "The index cannot be written ("
                                    + again.getMessage()
                                    + ") and is kept in memory.",
                            "Searching works; make room on the disk to keep the index."));
            folder = null;
            directory = new ByteBuffersDirectory();
            return update(sources, digests, progress);
        }
    }

    private int write(
            Map<String, List<Version>> sources, Map<String, String> digests, Progress progress)
            throws IOException {
        Map<String, String> before = indexed();
        List<String> changed =
                digests.keySet().stream()
                        .filter(id -> !digests.get(id).equals(before.get(id)))
                        .sorted()
                        .toList();
        List<String> gone =
                before.keySet().stream().filter(id -> !digests.containsKey(id)).sorted().toList();
        if (changed.isEmpty() && gone.isEmpty() && DirectoryReader.indexExists(directory)) {
            reopen();
            return 0;
        }
        if (folder != null) {
            folder.begin();
        }
        int count = writeChanges(sources, digests, changed, gone, progress);
        if (folder != null) {
            folder.complete();
        }
        reopen();
        return count;
    }

    private int writeChanges(
            Map<String, List<Version>> sources,
            Map<String, String> digests,
            List<String> changed,
            List<String> gone,
            Progress progress)
            throws IOException {
        int count = 0;
        IndexWriterConfig config = new IndexWriterConfig(analyzer);
        try (IndexWriter writer = new IndexWriter(directory, config)) {
            progress.begin("Indexing", changed.size());
            for (String id : gone) {
                writer.deleteDocuments(new Term(Fields.SOURCE_ID, id));
            }
            for (String id : changed) {
                progress.check();
                writer.deleteDocuments(new Term(Fields.SOURCE_ID, id));
                for (Version version : sources.getOrDefault(id, List.of())) {
                    writer.addDocument(facets.build(VersionDocument.of(version)));
                    count++;
                }
                progress.step(1);
            }
            Map<String, String> data = new TreeMap<>();
            digests.forEach((id, digest) -> data.put(DIGEST + id, digest));
            writer.setLiveCommitData(data.entrySet());
            writer.commit();
        }
        return count;
    }

    private Map<String, String> indexed() throws IOException {
        Map<String, String> digests = new HashMap<>();
        if (DirectoryReader.indexExists(directory)) {
            try (DirectoryReader reader = DirectoryReader.open(directory)) {
                reader.getIndexCommit()
                        .getUserData()
                        .forEach(
                                (k, v) -> {
                                    if (k.startsWith(DIGEST)) {
                                        digests.put(k.substring(DIGEST.length()), v);
                                    }
                                });
            }
        }
        return digests;
    }

    private void reopen() throws IOException {
        Searcher old = searcher;
        searcher = new Searcher(DirectoryReader.open(directory), analyzer, facets);
        if (old != null) {
            old.close();
        }
    }

    /**
     * Searches.
     *
     * @param query what a person typed, see {@link org.stillroom.search.query.QueryParser}
     * @param limit the most hits to return
     * @throws SearchException where the query cannot be understood
     */
    public synchronized SearchResult search(String query, int limit) {
        if (searcher == null) {
            throw new IllegalStateException("The index was not brought to the library's state");
        }
        try {
            return searcher.search(query, limit);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Closes the index. */
    @Override
    public synchronized void close() {
        try {
            if (searcher != null) {
                searcher.close();
            }
            directory.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
