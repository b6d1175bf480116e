package org.stillroom.reading.grammar;

import java.util.Optional;
import java.util.function.Predicate;

/** Recognises words of measure, with the usual slips of type and scanning. */
final class MeasureWords {

    private final Vocabulary words;
    private final Predicate<String> known;

    /**
     * A word of measure that was found.
     *
     * @param word the canonical word
     * @param next the token after it
     * @param slip whether its letters had to be put right
     */
    record Found(String word, int next, boolean slip, boolean open) {

        Found(String word, int next, boolean slip) {
            this(word, next, slip, false);
        }
    }

    MeasureWords(Vocabulary words, Predicate<String> known) {
        this.words = words;
        this.known = known;
    }

    /** Finds a measure that is spelt as the vocabulary has it. */
    Optional<Found> exact(Passage p, int i) {
        return words.at("measure", p, i)
                .filter(
                        m ->
                                !words.has("needs-of-always", p.word(m.next() - 1))
                                        || words.has("of", p.word(m.next()))
                                        || p.at(i - 1).type() == Token.Type.NUMBER)
                .map(m -> new Found(m.value(), point(p, m.next(), m.value()), false))
                .or(() -> open(p, i));
    }

    /** Finds a measure after a number, slips allowed. */
    Optional<Found> afterNumber(Passage p, int i) {
        return inTwo(p, i)
                .or(() -> exact(p, i))
                .or(() -> sign(p, i))
                .or(() -> dotted(p, i))
                .or(() -> divided(p, i))
                .or(() -> filled(p, i))
                .or(() -> misspelt(p, i))
                .or(() -> unusual(p, i));
    }

    /** Reads “jig gers”, whose first half is a measure of its own. */
    private Optional<Found> inTwo(Passage p, int i) {
        boolean half = p.at(i + 1).isWord() && !known.test(p.word(i + 1));
        return half && words.has("measure", p.word(i)) ? divided(p, i) : Optional.empty();
    }

    private Optional<Found> sign(Passage p, int i) {
        int at = words.at("sign-prefix", p, i).map(PhraseTable.Match::next).orElse(i);
        at = at > i && p.at(at).isMark('.') ? at + 1 : at;
        int next = at + 1;
        return p.at(at).type() != Token.Type.SIGN
                ? Optional.empty()
                : words.table("sign").value(p.word(at)).map(m -> new Found(m, next, false));
    }

    private Optional<Found> dotted(Passage p, int i) {
        boolean point = p.at(i + 1).isMark('.');
        int next = point ? i + 2 : i + 1;
        if (p.word(i).equals("t") && p.at(next).isWord()) {
            return Optional.of(
                    new Found(p.at(i).capital() ? "tablespoon" : "teaspoon", next, false));
        }
        return words.table("measure-dotted")
                .value(p.word(i))
                .filter(m -> point || m.equals("cup") && p.at(next).isWord())
                .map(m -> new Found(m, next, false));
    }

    /** Any other noun between a number and “of” measures: “three pannikins of …”. */
    private Optional<Found> unusual(Passage p, int i) {
        Token t = p.at(i);
        boolean noun =
                t.isWord()
                        && t.text().length() > 2
                        && !p.at(i + 1).glued()
                        && words.has("of", p.word(i + 1))
                        && p.at(i + 2).isWord();
        boolean named =
                words.has("head", t.text())
                        || words.has("part-of", t.text())
                        || words.has("stop", t.text())
                        || words.has("not-name", t.text())
                        || words.has("time", t.text())
                        || words.has("substance", t.text())
                        || words.has("juice", t.text())
                        || words.has("vessel", t.text())
                        || words.has("countable", t.text())
                        || words.has("fraction", t.text());
        boolean phrase = words.has("stop", p.word(i + 2)) || words.has("size", t.text());
        if (!noun || named || phrase) {
            return Optional.empty();
        }
        return Optional.of(new Found(BareNames.singular(t.text()), i + 1, false, true));
    }

    /** Passes over the full stop of an abbreviation: of a form that the whole word does not start. */
    private int point(Passage p, int next, String word) {
        String printed = p.word(next - 1);
        boolean cut =
                printed.length() < 6
                        && !printed.startsWith(word)
                        && !word.endsWith(printed)
                        && p.at(next + 1).isWord()
                        && !BareNames.singular(printed).equals(word);
        boolean shortened = words.has("abbrev", printed) || cut;
        return shortened && p.at(next).isMark('.') ? next + 1 : next;
    }

    /** Reads any “…-glassful”, “…-cup of”: measures that are named after their use. */
    private Optional<Found> open(Passage p, int i) {
        Token second = p.at(i + 1);
        if (!p.at(i).isWord() || !second.glued() || !words.has("vessel-end", second.text())) {
            return Optional.empty();
        }
        Optional<String> slip =
                known.test(p.word(i))
                        ? Optional.empty()
                        : words.nearMeasure(p.word(i) + second.text());
        if (slip.isPresent()) {
            return slip.map(m -> new Found(m, i + 2, true));
        }
        String end = words.table("vessel-end").value(second.text()).orElse(second.text());
        return Optional.of(new Found(p.word(i) + " " + end, i + 2, false, true));
    }

    /** Any “…ful of” measures by what holds it: “two rummerfuls of”. */
    private Optional<Found> filled(Passage p, int i) {
        String word = p.word(i);
        String stem = word.replaceFirst("(?:fuls|sful|ful)$", "");
        boolean holder = stem.length() > 2 && stem.length() < word.length();
        return holder && words.has("of", p.word(i + 1))
                ? Optional.of(new Found(stem, i + 1, false, true))
                : Optional.empty();
    }

    private Optional<Found> divided(Passage p, int i) {
        Token next = p.at(i + 1);
        if (!p.at(i).isWord() || !next.isWord() || next.text().length() > 10) {
            return Optional.empty();
        }
        if (known.test(p.word(i)) && known.test(next.text())) {
            return Optional.empty();
        }
        String joined = p.word(i) + next.text();
        Optional<Found> whole =
                words.table("measure")
                        .value(joined)
                        .filter(m -> joined.length() > 3)
                        .map(m -> new Found(m, i + 2, true));
        boolean first = words.has("measure-start", p.word(i)) && !known.test(next.text());
        return whole.isPresent() || !first
                ? whole
                : words.nearMeasure(joined).map(m -> new Found(m, i + 2, true));
    }

    private Optional<Found> misspelt(Passage p, int i) {
        Token t = p.at(i);
        if (!t.isWord() || t.text().length() < 4 || known.test(t.text())) {
            return tied(p, i);
        }
        return words.nearMeasure(t.text()).map(m -> new Found(m, i + 1, true)).or(() -> tied(p, i));
    }

    /** Repairs “tea-spoonfnl” and “wine-glaes”, whose halves are tied by a hyphen. */
    private Optional<Found> tied(Passage p, int i) {
        Token second = p.at(i + 1);
        boolean bothKnown = known.test(p.word(i)) && known.test(second.text());
        if (!second.glued() || !second.isWord() || bothKnown) {
            return Optional.empty();
        }
        return words.nearMeasure(p.word(i) + second.text()).map(m -> new Found(m, i + 2, true));
    }
}
