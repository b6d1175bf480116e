package org.stillroom.search.analysis;

import java.io.IOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionLengthAttribute;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.Span;

/**
 * Cuts folded text into words whose offsets are code points of the printed text.
 *
 * <p>A hyphened word gives its parts and, over all of them, the joined word, so that “wine-glass”,
 * “wine glass” and “wineglass” find one another. A fraction is one word in the form {@code 1/2}.
 */
final class FoldingTokenizer extends Tokenizer {

    /** A word, its printed place and its place among the words. */
    private record Token(String term, Span span, int increment, int length) {}

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final OffsetAttribute offset = addAttribute(OffsetAttribute.class);
    private final PositionIncrementAttribute increment =
            addAttribute(PositionIncrementAttribute.class);
    private final PositionLengthAttribute positionLength =
            addAttribute(PositionLengthAttribute.class);

    private List<Token> tokens = List.of();
    private int next;
    private int end;

    @Override
    public boolean incrementToken() {
        if (next >= tokens.size()) {
            return false;
        }
        clearAttributes();
        Token token = tokens.get(next++);
        term.append(token.term());
        offset.setOffset(token.span().start(), token.span().end());
        increment.setPositionIncrement(token.increment());
        positionLength.setPositionLength(token.length());
        return true;
    }

    @Override
    public void reset() throws IOException {
        super.reset();
        String printed = readAll();
        end = printed.codePointCount(0, printed.length());
        tokens = cut(Folding.fold(printed));
        next = 0;
    }

    @Override
    public void end() throws IOException {
        super.end();
        offset.setOffset(end, end);
    }

    private String readAll() throws IOException {
        StringBuilder all = new StringBuilder();
        char[] buffer = new char[4096];
        for (int n = input.read(buffer); n >= 0; n = input.read(buffer)) {
            all.append(buffer, 0, n);
        }
        return all.toString();
    }

    private static List<Token> cut(FoldedText text) {
        String folded = text.folded();
        List<Token> tokens = new ArrayList<>();
        int i = 0;
        while (i < folded.length()) {
            if (isFraction(folded.charAt(i))) {
                String plain = fraction(folded.charAt(i));
                tokens.add(new Token(plain, text.toPrinted(i, i + 1), 1, 1));
                i++;
            } else if (isWord(folded.charAt(i))) {
                i = compound(text, i, tokens);
            } else {
                i++;
            }
        }
        return tokens;
    }

    /** Adds a word with its hyphened parts; returns where it ends. */
    private static int compound(FoldedText text, int start, List<Token> tokens) {
        String folded = text.folded();
        List<int[]> parts = new ArrayList<>();
        int i = start;
        while (true) {
            int from = i;
            i = wordEnd(folded, i);
            parts.add(new int[] {from, i});
            boolean joined =
                    i + 1 < folded.length()
                            && folded.charAt(i) == '-'
                            && Character.isLetter(folded.charAt(i + 1))
                            && Character.isLetter(folded.charAt(i - 1));
            if (!joined) {
                break;
            }
            i++;
        }
        for (int p = 0; p < parts.size(); p++) {
            int[] part = parts.get(p);
            tokens.add(token(text, part[0], part[1], folded.substring(part[0], part[1]), 1, 1));
            if (p == 0 && parts.size() > 1) {
                String whole = folded.substring(start, i).replace("-", "");
                tokens.add(token(text, start, i, whole, 0, parts.size()));
            }
        }
        return i;
    }

    private static Token token(
            FoldedText text, int from, int to, String term, int increment, int length) {
        return new Token(term, text.toPrinted(from, to), increment, length);
    }

    private static int wordEnd(String folded, int start) {
        int i = start;
        boolean digits = Character.isDigit(folded.charAt(start));
        while (i < folded.length() && isPart(folded, i, digits)) {
            i++;
        }
        return i;
    }

    private static boolean isPart(String folded, int i, boolean digits) {
        char c = folded.charAt(i);
        boolean apostrophe =
                c == '\'' && i + 1 < folded.length() && Character.isLetter(folded.charAt(i + 1));
        boolean slash =
                digits
                        && (c == '/' || c == '.')
                        && i + 1 < folded.length()
                        && Character.isDigit(folded.charAt(i + 1));
        return isWord(c) || apostrophe || slash;
    }

    private static boolean isWord(char c) {
        return Character.isLetterOrDigit(c) && !isFraction(c);
    }

    private static boolean isFraction(char c) {
        return Character.getType(c) == Character.OTHER_NUMBER;
    }

    /** Returns 1/2 for ½; a compatibility folding of a lone sign is safe. */
    private static String fraction(char c) {
        return Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC).replace('\u2044', '/');
    }
}
