package org.stillroom.search.query;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.document.IntPoint;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.util.QueryBuilder;

/** Builds Lucene's query for a condition. */
public final class QueryBuilding {

    private static final float TITLE_BOOST = 3;

    private final QueryBuilder builder;

    /** Makes a builder that folds words as the index does. */
    public QueryBuilding(Analyzer analyzer) {
        this.builder = new QueryBuilder(analyzer);
    }

    /** Returns the query. */
    public Query of(Condition condition) {
        return switch (condition) {
            case Condition.Words w -> words(w);
            case Condition.Years y -> years(y);
            case Condition.Not n -> not(of(n.condition()));
            case Condition.Any a -> any(a);
            case Condition.All a -> all(a);
        };
    }

    private Query words(Condition.Words w) {
        Query in = in(w.field(), w);
        if (!w.field().equals("words")) {
            return in;
        }
        Query title = in("title", w);
        return new BooleanQuery.Builder()
                .add(in, BooleanClause.Occur.SHOULD)
                .add(new BoostQuery(title, TITLE_BOOST), BooleanClause.Occur.SHOULD)
                .build();
    }

    private Query in(String field, Condition.Words w) {
        Query query =
                w.phrase()
                        ? builder.createPhraseQuery(field, w.words())
                        : builder.createBooleanQuery(field, w.words(), BooleanClause.Occur.MUST);
        return query == null ? new MatchNoDocsQuery("no word in “" + w.words() + "”") : query;
    }

    private static Query years(Condition.Years y) {
        return new BooleanQuery.Builder()
                .add(
                        IntPoint.newRangeQuery("earliest", Integer.MIN_VALUE, y.to()),
                        BooleanClause.Occur.FILTER)
                .add(
                        IntPoint.newRangeQuery("latest", y.from(), Integer.MAX_VALUE),
                        BooleanClause.Occur.FILTER)
                .build();
    }

    private static Query not(Query query) {
        return new BooleanQuery.Builder()
                .add(MatchAllDocsQuery.INSTANCE, BooleanClause.Occur.FILTER)
                .add(query, BooleanClause.Occur.MUST_NOT)
                .build();
    }

    private Query any(Condition.Any a) {
        BooleanQuery.Builder any = new BooleanQuery.Builder();
        a.conditions().forEach(c -> any.add(of(c), BooleanClause.Occur.SHOULD));
        return any.build();
    }

    private Query all(Condition.All a) {
        if (a.conditions().isEmpty()) {
            return MatchAllDocsQuery.INSTANCE;
        }
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        a.conditions().forEach(c -> all.add(of(c), BooleanClause.Occur.MUST));
        return all.build();
    }
}
