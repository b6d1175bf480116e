package org.stillroom.search.analysis;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionLengthAttribute;
import org.stillroom.model.text.EditedText;

/**
 * Gives, beside printed words that a person put right, the right ones at the same place.
 *
 * <p>Both forms find the recipe, and what is found points at the printed words.
 */
public final class PutRightWords extends TokenFilter {

    private static final String FIELD = "words";

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final OffsetAttribute offset = addAttribute(OffsetAttribute.class);
    private final PositionIncrementAttribute increment =
            addAttribute(PositionIncrementAttribute.class);
    private final PositionLengthAttribute length = addAttribute(PositionLengthAttribute.class);

    private final Deque<Right> open;
    private Deque<String> waiting = new ArrayDeque<>();
    private int start;
    private int end;

    /** Right words, and where the printed ones stand. */
    private record Right(int start, int end, List<String> terms) {}

    private PutRightWords(TokenStream printed, Deque<Right> open) {
        super(printed);
        this.open = open;
    }

    /**
     * Returns the words of a text with those put right.
     *
     * <p>They are made by an analyzer of their own: the index reuses its one for the next field while
     * these words still wait.
     *
     * @param printed the text
     * @param putRight edits of the text, in order, with places from its beginning
     */
    public static TokenStream over(String printed, List<EditedText.Edit> putRight) {
        Analyzer analyzer = new PeriodAnalyzer();
        Deque<Right> open = new ArrayDeque<>();
        for (EditedText.Edit edit : putRight) {
            List<String> terms = terms(analyzer, edit.words());
            if (!terms.isEmpty()) {
                open.add(new Right(edit.span().start(), edit.span().end(), terms));
            }
        }
        return new PutRightWords(analyzer.tokenStream(FIELD, printed), open);
    }

    private static List<String> terms(Analyzer analyzer, String words) {
        List<String> terms = new ArrayList<>();
        try (TokenStream stream = analyzer.tokenStream(FIELD, words)) {
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                terms.add(term.toString());
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("Words in memory cannot be read", e);
        }
        return terms;
    }

    @Override
    public boolean incrementToken() throws IOException {
        if (!waiting.isEmpty()) {
            clearAttributes();
            term.append(waiting.remove());
            offset.setOffset(start, end);
            increment.setPositionIncrement(0);
            length.setPositionLength(1);
            return true;
        }
        if (!input.incrementToken()) {
            return false;
        }
        while (!open.isEmpty() && open.peek().end() <= offset.startOffset()) {
            open.remove();
        }
        if (!open.isEmpty() && open.peek().start() < offset.endOffset()) {
            Right right = open.remove();
            start = offset.startOffset();
            end = Math.max(offset.endOffset(), start);
            waiting = new ArrayDeque<>(right.terms());
        }
        return true;
    }
}
