package org.stillroom.reading.cut;

import java.util.Optional;

/**
 * Finds titles that run into the text of their recipe: side heads, numbered paragraphs, emphasised
 * first words, and the first words of a sentence.
 *
 * <p>Looks at most a hundred and sixty characters ahead of any place.
 */
final class RunIn {

    /** A title in the middle of a paragraph, with the places where it starts and its text goes on. */
    record Found(Head head, int start, int end) {}

    private static final int REACH = 160;
    private static final int MOST_WORDS = HeadMaker.MOST_WORDS;
    private static final int ENDLESS = 4000;

    private final Structure structure;
    private final String text;
    private final Cues cues;
    private final HeadMaker heads;
    private final FirstWords firstWords;
    private int paragraph;

    RunIn(Structure structure, Cues cues) {
        this.structure = structure;
        this.text = structure.text();
        this.cues = cues;
        this.heads = new HeadMaker(text, cues);
        this.firstWords = new FirstWords(text, cues);
    }

    /** Returns the title that a paragraph starts with. */
    Optional<Head> atStart(int from, int to, boolean blank) {
        paragraph = from;
        int start = skipQuote(from, to);
        int bold = start;
        while (bold < to && text.charAt(bold) == '*') {
            bold++;
        }
        int words = TitleText.numberEnd(text, start, to);
        boolean numbered = words > start;
        if (!numbered && bold > start) {
            words = start;
        }
        return emphasised(from, words, to, blank, numbered)
                .or(() -> capitals(from, skip(from, to), to, blank).filter(h -> h.stop))
                .or(() -> dashed(from, skip(from, to), to, blank))
                .or(() -> capitals(from, skip(from, to), to, blank))
                .or(() -> stopped(from, skip(from, to), to, blank))
                .or(() -> firstWords.sentence(from, skip(from, to), to, blank));
    }

    private int skip(int from, int to) {
        return TitleText.numberEnd(text, skipQuote(from, to), to);
    }

    private int skipQuote(int from, int to) {
        int at = from;
        while (at < to && (Lines.isBlank(text.charAt(at)) || text.charAt(at) == '¶')) {
            at++;
        }
        return at;
    }

    /** Returns the next title that starts inside a paragraph, after a closed sentence. */
    Found next(int from, int to) {
        for (int at = from; at < to - 8; at++) {
            char c = text.charAt(at);
            if (c != '.' && c != '!' && c != '?' && c != ')' && c != '”' && c != ']') {
                continue;
            }
            int start = at + 1;
            while (start < to && (Lines.isBlank(text.charAt(start)) || text.charAt(start) == '—')) {
                start++;
            }
            if (start == at + 1 || start >= to - 8 || !mayOpen(start, to)) {
                continue;
            }
            Optional<Head> head = inside(start, to);
            if (head.isPresent()) {
                return new Found(head.get(), start, head.get().end);
            }
        }
        return null;
    }

    private boolean mayOpen(int start, int to) {
        char c = text.charAt(start);
        char next = text.charAt(start + 1);
        return TitleText.SIGNS.indexOf(c) >= 0 && structure.emphasisEnd(start, to) > 0
                || (startsLine(start) || isEndless(to)) && Character.isUpperCase(c)
                || Character.isUpperCase(c) && Character.isUpperCase(next)
                || c == 'A' && text.startsWith("Another", start)
                || c == 'D' && text.startsWith("Ditto", start)
                || (c == 'N' || c == '(' || Character.isDigit(c))
                        && TitleText.numberEnd(text, start, to) > start
                || structure.emphasisEnd(start, to) > 0;
    }

    /** Tells whether a paragraph is so long that the text has lost the ends of its lines. */
    private boolean isEndless(int to) {
        return to - paragraph > ENDLESS;
    }

    private boolean startsLine(int at) {
        int before = at;
        while (before > 0
                && Lines.isBlank(text.charAt(before - 1))
                && text.charAt(before - 1) != '\n') {
            before--;
        }
        return before > 0 && text.charAt(before - 1) == '\n';
    }

    private Optional<Head> inside(int start, int to) {
        int words = TitleText.numberEnd(text, start, to);
        Optional<Head> found =
                emphasised(start, words, to, false, words > start)
                        .filter(h -> h.stop)
                        .or(() -> capitals(start, words, to, false).filter(h -> h.stop));
        if (found.isEmpty()
                && (words > start
                        || startsLine(start)
                        || isEndless(to)
                        || text.startsWith("Another", start)
                        || text.startsWith("Ditto", start))) {
            found = dashed(start, words, to, false);
            boolean numbered = words > start && (startsLine(start) || isEndless(to));
            found = found.isEmpty() && numbered ? stopped(start, words, to, false) : found;
        }
        return found.map(h -> HeadMaker.moved(h, Head.Place.MIDDLE));
    }

    private Optional<Head> emphasised(int from, int at, int to, boolean blank, boolean numbered) {
        int end = structure.emphasisEnd(at, to);
        if (end < 0 || end - at > REACH || end >= to) {
            return Optional.empty();
        }
        int after = afterStop(end, to);
        boolean stop = after > end || ".:".indexOf(plainBefore(end)) >= 0;
        return heads.head("italics", from, end, after, to, blank, stop);
    }

    private char plainBefore(int end) {
        int at = end - 1;
        while (at > 0 && TitleText.SIGNS.indexOf(text.charAt(at)) >= 0) {
            at--;
        }
        return text.charAt(at);
    }

    /** Returns the place after a stop, dash or colon, or the place itself where there is none. */
    private int afterStop(int at, int to) {
        int after = at;
        while (after < to && ".:—–-_*=+~".indexOf(text.charAt(after)) >= 0) {
            after++;
        }
        int blank = after;
        while (blank < to && text.charAt(blank) == ' ') {
            blank++;
        }
        if (blank < to && text.charAt(blank) == '—') {
            return blank + 1;
        }
        boolean lone = after == at + 1 && text.charAt(at) == '-';
        return lone ? at : after;
    }

    /** Words in capitals: “GREEN PUNCH.—Take”, “Lemon WHEY. Boil”, “PORT NEGUS is made”. */
    private Optional<Head> capitals(int from, int at, int to, boolean blank) {
        int end = at;
        int next = at;
        int words = 0;
        int letters = 0;
        int limit = Math.min(to, at + REACH);
        while (next < limit) {
            char c = text.charAt(next);
            if (!Character.isLetterOrDigit(c)) {
                boolean between =
                        Lines.isBlank(c)
                                || "'’&-,()“”\"‘".indexOf(c) >= 0
                                || c == '.' && isAbbreviation(next);
                if (!between) {
                    break;
                }
                next++;
                continue;
            }
            int wordEnd = BodyScore.wordEnd(text, next, limit);
            if (Character.isDigit(c)) {
                wordEnd = next + 1;
            }
            boolean upper = isUpper(next, wordEnd);
            if (!upper
                    && !(words > 0
                            && isConnector(next, wordEnd)
                            && capitalFollows(wordEnd, limit))) {
                break;
            }
            words++;
            letters += upper ? wordEnd - next : 0;
            next = wordEnd;
            end = wordEnd;
        }
        while (end < limit && ")”\"’".indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        int bracket = text.lastIndexOf('(', Math.min(end + 2, to - 1));
        if (bracket > at && text.indexOf(')', bracket) >= end) {
            end = Math.max(end, bracketEnd(bracket, to));
        }
        if (letters < 3 || end >= to || words > MOST_WORDS) {
            return Optional.empty();
        }
        int after = afterStop(end, to);
        boolean stop = after > end;
        String only = words == 1 ? BodyScore.fold(text, at, BodyScore.wordEnd(text, at, to)) : "";
        boolean name = cues.is(only, Cues.DRINK | Cues.INGREDIENT);
        if (words == 1 && !name && (!stop || cues.is(only, Cues.VERB))
                || words == 2 && !stop && !twoNames(at, end)) {
            return Optional.empty();
        }
        return heads.head("capitals", from, end, after, to, blank, stop);
    }

    /** Two capitals without a stop are a title only if one of them names a drink or an ingredient. */
    private boolean twoNames(int at, int end) {
        int wordEnd = BodyScore.wordEnd(text, at, end);
        String first = BodyScore.fold(text, at, wordEnd);
        String rest = BodyScore.fold(text, Math.min(end, wordEnd + 1), end);
        return cues.is(rest, Cues.DRINK | Cues.INGREDIENT) && !cues.is(first, Cues.VERB);
    }

    private boolean isAbbreviation(int stop) {
        return isAbbreviation(text, stop);
    }

    /** Tells whether the stop at a place closes “Mr.”, “No.” or an initial. */
    static boolean isAbbreviation(String text, int stop) {
        int start = stop;
        while (start > 0 && Character.isLetter(text.charAt(start - 1))) {
            start--;
        }
        String word = text.substring(start, stop).toLowerCase(java.util.Locale.ROOT);
        return switch (word) {
            case "mr", "mrs", "dr", "st", "no", "col", "capt", "gen", "messrs", "rev", "sir" ->
                    true;
            default ->
                    word.length() == 1
                            && start > 0
                            && stop + 2 < text.length()
                            && (Character.isUpperCase(text.charAt(stop + 1))
                                    || text.charAt(stop + 1) == ' '
                                            && Character.isUpperCase(text.charAt(stop + 2)));
        };
    }

    private boolean isUpper(int from, int to) {
        for (int i = from; i < to; i++) {
            if (Character.isLowerCase(text.charAt(i))
                    && !(i == to - 1 && i > 0 && "'’".indexOf(text.charAt(i - 1)) >= 0)) {
                return false;
            }
        }
        return true;
    }

    private boolean isConnector(int from, int to) {
        return switch (text.substring(from, to)) {
            case "and",
                    "or",
                    "of",
                    "with",
                    "the",
                    "to",
                    "for",
                    "a",
                    "in",
                    "à",
                    "de",
                    "No",
                    "la",
                    "le",
                    "called",
                    "from",
                    "du",
                    "des",
                    "au",
                    "without" ->
                    true;
            default -> false;
        };
    }

    private boolean capitalFollows(int at, int limit) {
        int next = at;
        while (next < limit
                && !Character.isLetterOrDigit(text.charAt(next))
                && ".—:".indexOf(text.charAt(next)) < 0) {
            next++;
        }
        if (next >= limit || !Character.isLetterOrDigit(text.charAt(next))) {
            return false;
        }
        int end = BodyScore.wordEnd(text, next, limit);
        return isUpper(next, end) || isConnector(next, end);
    }

    /** A title closed by a stop and a dash, or by a colon and a dash. */
    private Optional<Head> dashed(int from, int at, int to, boolean blank) {
        int limit = Math.min(to - 2, at + REACH);
        for (int i = at + 2; i < limit; i++) {
            char c = text.charAt(i);
            boolean two = c == '-' && text.charAt(i + 1) == '-';
            if (c != '.' && c != ':' && c != '—' && c != '–' && c != ')' && !two) {
                continue;
            }
            if (c == '.' && isAbbreviation(i)) {
                continue;
            }
            int dash = i + (c == '.' || c == ':' || c == ')' ? 1 : 0);
            while (dash < to && text.charAt(dash) == ' ') {
                dash++;
            }
            boolean long1 = dash < to && (text.charAt(dash) == '—' || text.charAt(dash) == '–');
            boolean long2 =
                    dash + 1 < to && text.charAt(dash) == '-' && text.charAt(dash + 1) == '-';
            boolean short1 =
                    c == '.'
                            && dash == i + 1
                            && dash + 1 < to
                            && text.charAt(dash) == '-'
                            && Character.isUpperCase(text.charAt(dash + 1));
            if (c == ')' && !long1 && !long2) {
                continue;
            }
            if (!long1 && !long2 && !short1) {
                return Optional.empty();
            }
            if ((c == '—' || two) && !opens(i + 1, to)) {
                return Optional.empty();
            }
            int after = dash + 1;
            while (after < to && "-—–".indexOf(text.charAt(after)) >= 0) {
                after++;
            }
            return heads.head("dash", from, i, after, to, blank, true);
        }
        return Optional.empty();
    }

    private boolean opens(int at, int to) {
        int next = at;
        while (next < to && " —–-".indexOf(text.charAt(next)) >= 0) {
            next++;
        }
        char c = next < to ? text.charAt(next) : ' ';
        if (Character.isLowerCase(c)) {
            String word = BodyScore.fold(text, next, BodyScore.wordEnd(text, next, to));
            return word.equals("as") || word.equals("like") || cues.is(word, Cues.REFERENCE);
        }
        return Character.isUpperCase(c) || Character.isDigit(c) || isSign(c);
    }

    /** Returns the place after a short bracket that opens at a place, or the place. */
    private int bracketEnd(int at, int to) {
        int limit = Math.min(to, at + 60);
        for (int i = at + 1; i < limit; i++) {
            if (text.charAt(i) == ')') {
                return i + 1;
            }
        }
        return at;
    }

    static boolean isSign(char c) {
        return c >= '¼' && c <= '¾' || c >= '⅐' && c <= '⅞' || c == '℞';
    }

    /** A short first sentence: “Green Punch. Take”, “12. To make shrub: Take”. */
    private Optional<Head> stopped(int from, int at, int to, boolean blank) {
        int limit = Math.min(to - 2, at + 80);
        for (int i = at + 2; i < limit; i++) {
            char c = text.charAt(i);
            if (c == ';' || c == '!' || c == '?') {
                return Optional.empty();
            }
            if (c == '(') {
                i = Math.max(i, bracketEnd(i, to) - 1);
                continue;
            }
            if (c != '.' && c != ':' || c == '.' && isAbbreviation(i)) {
                continue;
            }
            boolean numbered = at > from;
            String words = text.substring(at, i);
            Head.Letters letters = Head.letters(words);
            boolean set =
                    letters != Head.Letters.SENTENCE
                            || numbered
                            || firstWords.isInfinitive(words)
                            || blank && isPlainName(words, i + 1, to);
            int n = Splitter.count(words);
            boolean goesOn = i + 1 < to && Character.isLetterOrDigit(text.charAt(i + 1));
            boolean ordered = c == ':' && blank && n <= 4 && letters == Head.Letters.TITLE;
            if (!set
                    || goesOn
                    || n > (numbered || firstWords.isInfinitive(words) ? 12 : 7)
                    || !(opens(i + 1, to)
                            || ordered
                                    && FirstWords.isFirstOrder(firstWords.wordAfter(i + 1, to)))) {
                return Optional.empty();
            }
            return heads.head(numbered ? "number" : "stop", from, i, i + 1, to, blank, true);
        }
        return Optional.empty();
    }

    /** “Ratafia of quinces. Grate”: the kind of drink, of what, and an order after the stop. */
    private boolean isPlainName(String words, int after, int to) {
        String kind = BodyScore.fold(words, 0, BodyScore.wordEnd(words, 0, words.length()));
        String order = firstWords.wordAfter(after, to);
        return cues.is(kind, Cues.DRINK)
                && words.contains(" of ")
                && (cues.is(order, Cues.VERB) || cues.is(order, Cues.NUMBER));
    }
}
