package org.stillroom.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.facet.FacetResult;
import org.apache.lucene.facet.Facets;
import org.apache.lucene.facet.FacetsCollector;
import org.apache.lucene.facet.FacetsCollectorManager;
import org.apache.lucene.facet.FacetsConfig;
import org.apache.lucene.facet.LabelAndValue;
import org.apache.lucene.facet.sortedset.DefaultSortedSetDocValuesReaderState;
import org.apache.lucene.facet.sortedset.SortedSetDocValuesFacetCounts;
import org.apache.lucene.facet.sortedset.SortedSetDocValuesReaderState;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Matches;
import org.apache.lucene.search.MatchesIterator;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.Weight;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.text.Span;
import org.stillroom.search.query.Condition;
import org.stillroom.search.query.QueryBuilding;
import org.stillroom.search.query.QueryParser;
import org.stillroom.search.query.QueryWords;

/** Searches one state of the index. */
final class Searcher implements AutoCloseable {

    private static final int MOST_VALUES = 20;

    private final DirectoryReader reader;
    private final IndexSearcher searcher;
    private final QueryBuilding building;
    private final FacetsConfig config;
    private final SortedSetDocValuesReaderState state;

    Searcher(DirectoryReader reader, Analyzer analyzer, FacetsConfig config) throws IOException {
        this.reader = reader;
        this.searcher = new IndexSearcher(reader);
        this.building = new QueryBuilding(analyzer);
        this.config = config;
        this.state =
                reader.numDocs() == 0
                        ? null
                        : new DefaultSortedSetDocValuesReaderState(reader, config);
    }

    SearchResult search(String typed, int limit) throws IOException {
        Condition condition = QueryParser.parse(typed);
        Query query = building.of(condition);
        if (state == null) {
            return new SearchResult(QueryWords.of(condition), 0, List.of(), List.of());
        }
        FacetsCollectorManager.FacetsResult found =
                FacetsCollectorManager.search(
                        searcher, query, Math.max(1, limit), new FacetsCollectorManager());
        TopDocs top = found.topDocs();
        List<SearchHit> hits = new ArrayList<>();
        Weight weight =
                searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
        StoredFields stored = searcher.storedFields();
        for (int i = 0; i < Math.min(limit, top.scoreDocs.length); i++) {
            hits.add(hit(stored, weight, top.scoreDocs[i], condition));
        }
        return new SearchResult(
                QueryWords.of(condition),
                (int) top.totalHits.value(),
                hits,
                facets(found.facetsCollector()));
    }

    private SearchHit hit(StoredFields stored, Weight weight, ScoreDoc found, Condition condition)
            throws IOException {
        Document document = stored.document(found.doc);
        int start = document.getField(Fields.START).numericValue().intValue();
        return new SearchHit(
                document.get(Fields.ID),
                document.get(Fields.SOURCE_ID),
                document.get(Fields.TITLE_STORED),
                found.score,
                certainty(document, condition),
                marks(weight, found.doc, start));
    }

    private static Certainty certainty(Document document, Condition condition) {
        int earliest = document.getField(Fields.EARLIEST).numericValue().intValue();
        int latest = document.getField(Fields.LATEST).numericValue().intValue();
        return inside(condition, earliest, latest) ? Certainty.CERTAIN : Certainty.POSSIBLE;
    }

    /** Tells whether a version of these years fits every date of the condition for certain. */
    private static boolean inside(Condition condition, int earliest, int latest) {
        return switch (condition) {
            case Condition.Years y -> earliest >= y.from() && latest <= y.to();
            case Condition.All a ->
                    a.conditions().stream().allMatch(c -> inside(c, earliest, latest));
            case Condition.Any a ->
                    a.conditions().stream().anyMatch(c -> inside(c, earliest, latest));
            case Condition.Not n -> outside(n.condition(), earliest, latest);
            case Condition.Words w -> true;
        };
    }

    private static boolean outside(Condition condition, int earliest, int latest) {
        return !(condition instanceof Condition.Years y) || latest < y.from() || earliest > y.to();
    }

    private List<Span> marks(Weight weight, int doc, int start) throws IOException {
        List<LeafReaderContext> leaves = reader.leaves();
        LeafReaderContext leaf = leaves.get(ReaderUtil.subIndex(doc, leaves));
        Matches matches = weight.matches(leaf, doc - leaf.docBase);
        MatchesIterator words = matches == null ? null : matches.getMatches(Fields.WORDS);
        Set<Span> spans = new TreeSet<>();
        while (words != null && words.next()) {
            spans.add(new Span(start + words.startOffset(), start + words.endOffset()));
        }
        return merged(spans);
    }

    private static List<Span> merged(Set<Span> spans) {
        List<Span> merged = new ArrayList<>();
        for (Span span : spans) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).overlaps(span)) {
                merged.set(last, merged.get(last).hull(span));
            } else {
                merged.add(span);
            }
        }
        return merged;
    }

    private static final Comparator<Facet.Count> BY_COUNT =
            Comparator.comparing(Facet.Count::hits).reversed().thenComparing(Facet.Count::value);

    /** Decades stand in their order, “undated” last. */
    private static final Comparator<Facet.Count> BY_TIME = Comparator.comparing(Facet.Count::value);

    private List<Facet> facets(FacetsCollector collected) throws IOException {
        Facets counts = new SortedSetDocValuesFacetCounts(state, collected);
        List<Facet> facets = new ArrayList<>();
        for (String field : Fields.COUNTED) {
            FacetResult result =
                    config.getDimConfig(field) == null || !known(field)
                            ? null
                            : counts.getTopChildren(MOST_VALUES, field);
            if (result != null) {
                List<Facet.Count> values = new ArrayList<>();
                for (LabelAndValue value : result.labelValues) {
                    values.add(new Facet.Count(value.label, value.value.intValue()));
                }
                values.sort(field.equals(Fields.DECADE) ? BY_TIME : BY_COUNT);
                facets.add(new Facet(field, values));
            }
        }
        return facets;
    }

    private boolean known(String field) {
        return state.getPrefixToOrdRange().containsKey(field);
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
