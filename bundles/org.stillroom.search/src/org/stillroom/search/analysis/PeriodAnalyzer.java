package org.stillroom.search.analysis;

import java.util.Map;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishMinimalStemFilter;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.miscellaneous.StemmerOverrideFilter;
import org.apache.lucene.analysis.miscellaneous.StemmerOverrideFilter.StemmerOverrideMap;

/**
 * Makes the words of old books comparable with what a person types.
 *
 * <p>Long s, ligatures, diacritics and divided words are folded, hyphened words also joined,
 * plurals and possessives reduced, and period spellings of {@code spellings.tsv} brought to one
 * form. Built in code, because Lucene's filters cannot be found by name inside OSGi.
 */
public final class PeriodAnalyzer extends Analyzer {

    /** Changes whenever the chain would give other terms, so that an old index is rebuilt. */
    public static final String VERSION = "period-1";

    private final StemmerOverrideMap spellings;

    /** Makes the chain with the spellings that come with the program. */
    public PeriodAnalyzer() {
        this(Spellings.shipped());
    }

    PeriodAnalyzer(Map<String, String> spellings) {
        this.spellings = Spellings.toMap(spellings);
    }

    @Override
    protected TokenStreamComponents createComponents(String field) {
        Tokenizer words = new FoldingTokenizer();
        TokenStream chain = new EnglishPossessiveFilter(words);
        chain = new StemmerOverrideFilter(chain, spellings);
        chain = new EnglishMinimalStemFilter(chain);
        return new TokenStreamComponents(words, chain);
    }
}
