package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Divides a recipe's words into tokens.
 *
 * <p>Works on the folded text, which leaves numbers as printed. Words tied by a hyphen become two
 * tokens; a word divided at a line's end becomes one again where the whole is a word of the trade.
 * Marks of a transcription (page numbers in braces, underscores, stars) are passed over.
 */
final class Tokenizer {

    private static final String FRACTIONS = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉⅟";
    private static final String SMALL_FIGURES = "⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉";
    private static final String SIGNS = "℥ʒ℈℔♏";
    private static final String MARKS = ",;.:()[]/⁄–—&@%|!?+=^}£¥§\\#";

    private final Predicate<String> known;
    private final Split split;

    Tokenizer(Predicate<String> known, Split split) {
        this.known = known;
        this.split = split;
    }

    /** Finds where two words were set as one. */
    interface Split {
        /** Returns the length of the first word, or 0. */
        int cut(String word);
    }

    Passage tokenize(SourceText text, Span span) {
        SourceText printed = SourceText.of(text.slice(span));
        FoldedText folded = Folding.fold(printed.toString());
        Run run = new Run(folded.folded(), new LineEnds(printed, folded));
        return new Passage(printed, folded, run.tokens(), span.start());
    }

    /** One pass over one text. */
    private final class Run {
        private final String s;
        private final LineEnds lineEnds;
        private final List<Token> tokens = new ArrayList<>();
        private int at;
        private boolean spaced = true;
        private boolean glued;

        Run(String s, LineEnds lineEnds) {
            this.s = s;
            this.lineEnds = lineEnds;
        }

        List<Token> tokens() {
            while (at < s.length()) {
                step(s.charAt(at));
            }
            return tokens;
        }

        private void step(char c) {
            if (c == ' ') {
                if (lineEnds.breaksAt(at)) {
                    add(Token.Type.BREAK, at, at + 1, "\n");
                }
                spaced = true;
                at++;
            } else if (c == '{' || noteMark(c)) {
                skipBraces(c == '{' ? '}' : ']');
            } else if (Character.isLetter(c) && SIGNS.indexOf(c) < 0
                    || c == '\'' && possessiveAt()) {
                word();
            } else if (SMALL_FIGURES.indexOf(c) >= 0) {
                smallFigures();
            } else if (Character.isDigit(c)) {
                number();
            } else if (FRACTIONS.indexOf(c) >= 0) {
                add(Token.Type.FRACTION, at, at + 1, String.valueOf(c));
                at++;
            } else if (SIGNS.indexOf(c) >= 0) {
                add(Token.Type.SIGN, at, at + 1, String.valueOf(c));
                at++;
            } else if (c == '-') {
                hyphen();
            } else {
                boolean ditto =
                        c == '"' && spaced && at + 1 < s.length() && s.charAt(at + 1) == ' ';
                boolean lostFigure =
                        "'\"`".indexOf(c) >= 0
                                && s.startsWith("/", at + 1)
                                && at + 2 < s.length()
                                && Character.isDigit(s.charAt(at + 2));
                if (MARKS.indexOf(c) >= 0 || ditto || lostFigure) {
                    add(Token.Type.MARK, at, at + 1, String.valueOf(c));
                }
                at++;
            }
        }

        /** “d’eau” is two words. */
        private boolean elided(int from) {
            return from + 2 < s.length()
                    && s.charAt(from + 1) == '\''
                    && "dlqnsjcm".indexOf(s.charAt(from)) >= 0
                    && Character.isLetter(s.charAt(from + 2));
        }

        private boolean possessiveAt() {
            return !tokens.isEmpty()
                    && !spaced
                    && s.startsWith("'s ", at)
                    && tokens.get(tokens.size() - 1).to() == at;
        }

        private boolean noteMark(char c) {
            if (c != '[') {
                return false;
            }
            int close = s.indexOf(']', at);
            String inside = close > at && close - at < 14 ? s.substring(at + 1, close) : "";
            return inside.matches("(pg?\\.? ?)?\\d+|footnote.*|[a-z*]|illustration.*");
        }

        private void skipBraces(char closing) {
            int close = s.indexOf(closing, at);
            at = close < 0 || close - at > 40 ? at + 1 : close + 1;
            spaced = true;
        }

        private void word() {
            int from = at;
            if (elided(from)) {
                at += 2;
                add(Token.Type.WORD, from, at, s.substring(from, at));
                return;
            }
            int to = possessive(at, wordEnd(at));
            String text = s.substring(from, to);
            at = to;
            boolean figures = text.indexOf('1') > 0 || text.indexOf('0') > 0;
            String mended = figures ? text.replace('1', 'l').replace('0', 'o') : text;
            text = known.test(mended) ? mended : longS(text);
            if (text.startsWith("'")) {
                add(Token.Type.WORD, from, to, text);
                return;
            }
            int cut = split.cut(text);
            if (cut > 0) {
                add(Token.Type.WORD, from, from + cut, text.substring(0, cut));
                add(Token.Type.WORD, from + cut, to, text.substring(cut));
                return;
            }
            int next = rest(to);
            if (next > 0) {
                int end = wordEnd(next);
                String whole = text + s.substring(next, end);
                boolean bothWords = known.test(text) && known.test(s.substring(next, end));
                if (known.test(whole) || !bothWords) {
                    add(Token.Type.WORD, from, end, whole);
                    at = end;
                    return;
                }
            }
            add(Token.Type.WORD, from, to, text);
        }

        /** Reads “fugar” and “glafs”, where an f was set or seen for a long s. */
        private String longS(String text) {
            int first = text.indexOf('f');
            if (first < 0 || text.length() < 4 || known.test(text)) {
                return text;
            }
            for (int f = first; f >= 0; f = text.indexOf('f', f + 1)) {
                String one = text.substring(0, f) + 's' + text.substring(f + 1);
                if (known.test(one)) {
                    return one;
                }
            }
            String all = text.replace('f', 's');
            return known.test(all) ? all : text;
        }

        /** Ends “lemon’s” before its ending where juice or peel follows. */
        private int possessive(int from, int to) {
            boolean ending = to - from > 3 && s.startsWith("'s ", to - 2);
            boolean part =
                    s.startsWith("juice", to + 1)
                            || s.startsWith("peel", to + 1)
                            || s.startsWith("rind", to + 1);
            return ending && part ? to - 2 : to;
        }

        /** Returns where the second half of a divided word starts, or 0. */
        private int rest(int to) {
            if (!divided(to)) {
                return 0;
            }
            return to + 2 < s.length() && Character.isLetter(s.charAt(to + 2)) ? to + 2 : 0;
        }

        private boolean divided(int to) {
            return to + 1 < s.length() && s.charAt(to) == '-' && s.charAt(to + 1) == ' ';
        }

        private int wordEnd(int from) {
            int i = s.charAt(from) == '\'' ? from + 1 : from;
            while (i < s.length() && isInside(i)) {
                i++;
            }
            while (i > from + 1 && s.charAt(i - 1) == '\'') {
                i--;
            }
            return i;
        }

        private boolean isInside(int i) {
            char c = s.charAt(i);
            if (SIGNS.indexOf(c) >= 0) {
                return false;
            }
            return Character.isLetterOrDigit(c) && FRACTIONS.indexOf(c) < 0
                    || c == '\'' && i + 1 < s.length() && Character.isLetter(s.charAt(i + 1));
        }

        private void number() {
            int from = at;
            int end = wordEnd(at);
            String letters = s.substring(at, end);
            char first = letters.charAt(0);
            boolean mixed =
                    end - at > 1
                            && !letters.equals("1a")
                            && (first == '0' || first == '1')
                            && Character.isLetter(letters.charAt(1));
            String mended = letters.replace('0', 'o').replace('1', 'l');
            if (mixed && known.test(mended)) {
                at = end;
                add(Token.Type.WORD, from, end, mended);
                return;
            }
            while (at < s.length() && Character.isDigit(s.charAt(at))) {
                at++;
            }
            StringBuilder digits = new StringBuilder(s.substring(from, at));
            while (at < s.length()
                    && (s.charAt(at) == 'o' || s.charAt(at) == 'l')
                    && (at + 1 == s.length() || s.charAt(at + 1) == ' ')) {
                digits.append(s.charAt(at) == 'o' ? '0' : '1');
                at++;
            }
            if (digits.length() > 1 && Character.isLetter(s.charAt(at - 1))) {
                add(Token.Type.NUMBER, from, at, digits.toString());
                return;
            }
            boolean point =
                    at + 1 < s.length()
                            && (s.charAt(at) == '.' || s.charAt(at) == ',')
                            && Character.isDigit(s.charAt(at + 1));
            if (point) {
                at++;
                while (at < s.length() && Character.isDigit(s.charAt(at))) {
                    at++;
                }
            }
            add(Token.Type.NUMBER, from, at, s.substring(from, at));
        }

        /** Raised and lowered figures, as in “¹/₂”, are figures. */
        private void smallFigures() {
            int from = at;
            StringBuilder digits = new StringBuilder();
            while (at < s.length() && SMALL_FIGURES.indexOf(s.charAt(at)) >= 0) {
                digits.append(SMALL_FIGURES.indexOf(s.charAt(at)) % 10);
                at++;
            }
            add(Token.Type.NUMBER, from, at, digits.toString());
        }

        private void hyphen() {
            boolean dash = at + 1 < s.length() && s.charAt(at + 1) == '-';
            if (dash || tokens.isEmpty() || spaced) {
                add(Token.Type.MARK, at, at + (dash ? 2 : 1), "—");
                at += dash ? 2 : 1;
                return;
            }
            glued = true;
            at++;
            while (at < s.length() && s.charAt(at) == ' ') {
                at++;
            }
        }

        private void add(Token.Type type, int from, int to, String text) {
            boolean capital = lineEnds.capitalAt(from);
            tokens.add(new Token(type, text, from, to, glued, spaced, capital));
            glued = false;
            spaced = false;
        }
    }
}
