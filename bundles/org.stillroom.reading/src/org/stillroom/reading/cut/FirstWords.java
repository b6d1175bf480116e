package org.stillroom.reading.cut;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the name of a drink in the first words of its sentence: “To make shrub, take”, “Porteree is
 * made like”, “For a Badger Cup peel”.
 */
final class FirstWords {

    private static final int REACH = 160;

    private static final Pattern PURPOSE =
            Pattern.compile(
                    "For (?:an? |the |some |your )?((?:[\\p{L}’'-]+\\s+){0,4}?[\\p{L}’'-]+)"
                            + "(?=,?\\s+\\p{Ll}),?");
    private static final Pattern ASIDE =
            Pattern.compile(
                    "(\\p{Lu}[\\p{L}’'-]*(?:\\s+(?:of\\s+|the\\s+|and\\s+)?\\p{Lu}[\\p{L}’'-]*){0,3}),\\s[^.;:]{4,150}[,\\s]"
                            + "(?:is|are|may\\s+be|should\\s+be)\\s+(?:[a-z]+ly\\s+|thus\\s+)?"
                            + "(?:made|mixed|prepared|compounded|brewed|concocted)\\b");

    private final String text;
    private final Cues cues;
    private final HeadMaker heads;

    FirstWords(String text, Cues cues) {
        this.text = text;
        this.cues = cues;
        this.heads = new HeadMaker(text, cues);
    }

    /** The first words of a sentence: “To make shrub, take”, “Porteree is made like”. */
    Optional<Head> sentence(int from, int at, int to, boolean blank) {
        int limit = Math.min(to, at + 90);
        if (at >= limit || !Character.isUpperCase(text.charAt(at))) {
            return Optional.empty();
        }
        int words = 0;
        boolean infinitive = isInfinitive(text.substring(at, Math.min(to, at + 20)));
        if (isPointing(BodyScore.fold(text, at, BodyScore.wordEnd(text, at, to)))) {
            return purpose(from, at, to, blank);
        }
        Optional<Head> aside = aside(from, at, to, blank);
        if (aside.isPresent()) {
            return aside;
        }
        boolean numbered = at > from;
        int lastEnd = at;
        for (int i = at; i < limit; ) {
            char c = text.charAt(i);
            if (!Character.isLetter(c)) {
                if (".;:!?—".indexOf(c) >= 0) {
                    return Optional.empty();
                }
                if (c == ',' && infinitive && words > 2) {
                    return heads.head("sentence", from, lastEnd, lastEnd, to, blank, false)
                            .map(this::first);
                }
                i++;
                continue;
            }
            int end = BodyScore.wordEnd(text, i, limit);
            String word = BodyScore.fold(text, i, end);
            boolean copula =
                    word.equals("is")
                            || word.equals("are")
                            || word.equals("may")
                            || word.equals("can");
            boolean order = infinitive && words > 2 && isFirstOrder(word);
            if (words > 0 && !infinitive && copula && isMade(end, to)
                    || order
                    || numbered && copula && words > 0 && isMade(end, to)) {
                return heads.head("sentence", from, lastEnd, lastEnd, to, blank, false)
                        .map(this::first);
            }
            words++;
            if (words > 9) {
                return Optional.empty();
            }
            lastEnd = end;
            i = end;
        }
        return Optional.empty();
    }

    /** “For a Badger Cup peel half a cucumber”: the name stands between “for” and the order. */
    private Optional<Head> purpose(int from, int at, int to, boolean blank) {
        Matcher matcher = PURPOSE.matcher(text).region(at, Math.min(to, at + REACH));
        if (!blank || !matcher.lookingAt()) {
            return Optional.empty();
        }
        if (!isFirstOrder(wordAfter(matcher.end(), to))) {
            return Optional.empty();
        }
        int nameEnd = matcher.end(1);
        return heads.head("sentence", from, matcher.start(1), nameEnd, nameEnd, to, blank, false)
                .filter(h -> TitleWords.points(h.title.words(), cues) >= 1)
                .map(this::first);
    }

    /** “Brown Betty, so called from the barmaid, is compounded thus”. */
    private Optional<Head> aside(int from, int at, int to, boolean blank) {
        Matcher matcher = ASIDE.matcher(text).region(at, Math.min(to, at + 2 * REACH));
        if (!blank || !matcher.lookingAt()) {
            return Optional.empty();
        }
        return heads.head("sentence", from, matcher.end(1), matcher.end(1), to, blank, false)
                .filter(h -> h.letters == Head.Letters.TITLE)
                .map(this::first);
    }

    /** Orders that begin the making of a drink, after its name in the same sentence. */
    static boolean isFirstOrder(String word) {
        return switch (word) {
            case "take",
                    "put",
                    "boil",
                    "mix",
                    "peel",
                    "pare",
                    "pour",
                    "squeeze",
                    "dissolve",
                    "beat",
                    "steep",
                    "infuse",
                    "bruise",
                    "pound",
                    "rub",
                    "grate",
                    "slice",
                    "procure",
                    "use" ->
                    true;
            default -> false;
        };
    }

    private Head first(Head h) {
        return HeadMaker.moved(h, Head.Place.SENTENCE);
    }

    private boolean isMade(int at, int to) {
        String rest = text.substring(at, Math.min(to, at + 50)).replace('\n', ' ');
        for (String verb :
                new String[] {
                    "made",
                    "prepared",
                    "mixed",
                    "brewed",
                    "compounded",
                    "concocted",
                    "a mixture",
                    "a drink",
                    "a beverage",
                    "a liquor",
                    "a cordial",
                    "a cup ",
                    "a punch",
                    "composed",
                    "served"
                }) {
            int found = rest.indexOf(verb);
            if (found >= 0 && found < 22) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether words start a sentence of a story rather than name something. */
    static boolean pointsAway(String words) {
        int at = 0;
        while (at < words.length() && !Character.isLetter(words.charAt(at))) {
            at++;
        }
        if (at == words.length()) {
            return true;
        }
        int end = BodyScore.wordEnd(words, at, words.length());
        String first = BodyScore.fold(words, at, end);
        boolean title =
                switch (first) {
                    case "another", "one", "to", "for", "one's", "all", "any", "no" -> true;
                    default -> false;
                };
        boolean plain =
                Head.letters(words) == Head.Letters.SENTENCE || TitleWords.hasLowerWord(words);
        return !title && plain && isPointing(first);
    }

    /** Tells whether words start with “to” and a verb, as in “To make”, “How to mull”. */
    boolean isInfinitive(String words) {
        String folded = words.toLowerCase(java.util.Locale.ROOT);
        int from = folded.startsWith("how to ") ? 7 : folded.startsWith("to ") ? 3 : -1;
        if (from < 0 || from >= words.length()) {
            return false;
        }
        String verb = BodyScore.fold(words, from, BodyScore.wordEnd(words, from, words.length()));
        return cues.is(verb, Cues.VERB) && !cues.is(verb, Cues.NUMBER);
    }

    /** Words that a sentence starts with when it names no drink. */
    static boolean isPointing(String word) {
        return switch (word) {
            case "this",
                    "it",
                    "these",
                    "that",
                    "those",
                    "there",
                    "here",
                    "he",
                    "she",
                    "they",
                    "we",
                    "i",
                    "although",
                    "if",
                    "when",
                    "as",
                    "but",
                    "so",
                    "which",
                    "what",
                    "some",
                    "many",
                    "most",
                    "all",
                    "both",
                    "such",
                    "in",
                    "on",
                    "at",
                    "by",
                    "from",
                    "after",
                    "before",
                    "while",
                    "whilst",
                    "you",
                    "one",
                    "no",
                    "its",
                    "his",
                    "their",
                    "our",
                    "and",
                    "or",
                    "for",
                    "with",
                    "any",
                    "each",
                    "every",
                    "everything",
                    "another",
                    "once",
                    "nobody",
                    "let",
                    "now",
                    "then",
                    "not",
                    "do",
                    "will",
                    "is",
                    "was",
                    "to" ->
                    true;
            default -> false;
        };
    }

    /** Returns the next word at or after a place, folded. */
    String wordAfter(int at, int to) {
        int next = at;
        while (next < to && Lines.isBlank(text.charAt(next))) {
            next++;
        }
        return BodyScore.fold(text, next, BodyScore.wordEnd(text, next, to));
    }
}
