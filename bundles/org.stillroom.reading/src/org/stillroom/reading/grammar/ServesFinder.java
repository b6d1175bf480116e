package org.stillroom.reading.grammar;

import java.util.Optional;
import java.util.function.Supplier;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Serves;

/** Finds for how many a recipe is meant: “for a party of six”, “enough for twelve”. */
final class ServesFinder {

    private final Vocabulary words;
    private final Passage p;
    private final NumberParser numbers;

    ServesFinder(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
        this.numbers = new NumberParser(words, passage);
    }

    Optional<Serves> find() {
        for (int i = 0; i < p.size(); i++) {
            int here = i;
            Optional<Serves> found = at(i).or(() -> counted(here)).or(() -> alone(here));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Finds it in a title, where “for six” may end the words. */
    Optional<Serves> findInTitle() {
        return find().or(this::forSome);
    }

    private Optional<Serves> forSome() {
        for (int i = 0; i < p.size(); i++) {
            boolean sign =
                    words.at("serves", p, i).filter(m -> m.value().equals("unit")).isPresent();
            int from = i;
            Optional<Numeral> n =
                    sign
                            ? numbers.parse(i + 1)
                                    .filter(x -> !x.article() && x.low().isWhole())
                                    .filter(x -> closes(x.next()))
                            : Optional.empty();
            if (n.isPresent()) {
                Numeral many = n.get();
                return Optional.of(
                        new Serves(
                                many.low(),
                                many.high().orElse(many.low()),
                                p.span(from, many.next())));
            }
        }
        return Optional.empty();
    }

    /** Tells whether people, not things to drink, are counted at a token: “six wardens”. */
    static boolean countsPeople(Vocabulary words, Passage p, int i) {
        Optional<PhraseTable.Match> phrase = words.at("serves", p, i);
        return phrase.filter(m -> m.value().equals("sure")).isPresent();
    }

    /** Returns the token after a phrase that says for how many, or the same token. */
    int after(int i) {
        if (!countsPeople(words, p, i)) {
            return i;
        }
        Optional<Serves> party = at(i);
        int end = i;
        while (party.isPresent() && end < p.size() && !p.at(end).ends() && !isMark(end)) {
            end++;
        }
        return end;
    }

    /** Reads a sentence of its own, “For twelve.” or “Thirty little cups.”. */
    private Optional<Serves> alone(int i) {
        if (!p.at(i - 1).ends() && !p.at(i - 1).isMark('.')) {
            return Optional.empty();
        }
        boolean sign = words.at("serves", p, i).filter(m -> m.value().equals("unit")).isPresent();
        int from = sign ? words.at("serves", p, i).get().next() : i;
        int at = afterAbout(from);
        Optional<Numeral> number = numbers.parse(at).filter(x -> !x.article() && x.low().isWhole());
        if (number.isEmpty()) {
            return Optional.empty();
        }
        Numeral n = number.get();
        int next = n.next();
        while (words.has("vessel-adj", p.word(next))
                || words.has("size", p.word(next))
                || words.has("serves-adj", p.word(next))) {
            next++;
        }
        Optional<PhraseTable.Match> unit = words.at("serves-unit", p, next).or(vesselAt(next));
        int end = unit.map(PhraseTable.Match::next).orElse(n.next());
        boolean many = n.low().compareTo(Rational.ONE) > 0;
        boolean closed = p.at(end).ends() || p.at(end).isMark('.');
        return closed && (sign || unit.isPresent() && many)
                ? Optional.of(serves(n, i, end))
                : Optional.empty();
    }

    private Supplier<Optional<PhraseTable.Match>> vesselAt(int i) {
        return () -> words.at("vessel", p, i);
    }

    private Serves serves(Numeral n, int from, int to) {
        return new Serves(n.low(), n.high().orElse(n.low()), p.span(from, to));
    }

    /** Passes over “about” and over the “some” of “some forty glasses”. */
    private int afterAbout(int i) {
        int at = words.at("about", p, i).map(PhraseTable.Match::next).orElse(i);
        boolean some = words.has("roughly", p.word(at));
        return some && numbers.parse(at + 1).isPresent() ? at + 1 : at;
    }

    private boolean isMark(int i) {
        return p.at(i).type() == Token.Type.MARK;
    }

    /** Reads “thirty-five portions”, “a dozen people may be served”, “into three glasses”. */
    private Optional<Serves> counted(int i) {
        Optional<Numeral> number = numbers.parse(i).filter(n -> !n.article());
        if (number.isEmpty() || !number.get().low().isWhole()) {
            return Optional.empty();
        }
        Numeral n = number.get();
        int at = n.next();
        while (words.has("vessel-adj", p.word(at)) || words.has("size", p.word(at))) {
            at++;
        }
        if (p.at(n.next()).glued()) {
            return Optional.empty();
        }
        boolean guests =
                at == n.next()
                        && p.at(at).isWord()
                        && words.at("serves-after", p, at + 1).isPresent();
        boolean people = at == n.next() && words.has("person", p.word(at)) || guests;
        boolean shared = words.has("each", p.word(i - 2)) && words.has("of", p.word(i - 1));
        boolean glasses =
                (shared || words.has("receive-into", p.word(i - 1)))
                        && words.at("vessel", p, at).isPresent()
                        && n.low().compareTo(Rational.ONE) > 0;
        return people || glasses
                ? Optional.of(new Serves(n.low(), n.high().orElse(n.low()), p.span(i, at + 1)))
                : Optional.empty();
    }

    private Optional<Serves> at(int i) {
        Optional<PhraseTable.Match> phrase = words.at("serves", p, i);
        if (phrase.isEmpty()) {
            return Optional.empty();
        }
        int at = afterAbout(phrase.get().next());
        int group = groupOf(at);
        Optional<Numeral> number = numbers.parse(group);
        if (number.isEmpty() || !number.get().low().isWhole()) {
            return Optional.empty();
        }
        Numeral n = number.get();
        if (n.article()) {
            return Optional.empty();
        }
        boolean sure = group > at || phrase.get().value().equals("sure");
        int unitAt = words.has("serves-adj", p.word(n.next())) ? n.next() + 1 : n.next();
        Optional<PhraseTable.Match> unit = words.at("serves-unit", p, unitAt);
        if (unit.isEmpty() && !sure) {
            return Optional.empty();
        }
        Rational low = n.low();
        return Optional.of(
                new Serves(
                        low,
                        n.high().orElse(low),
                        p.span(i, unit.map(PhraseTable.Match::next).orElse(n.next()))));
    }

    /** Passes over “a table of” in “enough for a table of eight”. */
    private int groupOf(int i) {
        boolean article = words.has("article", p.word(i)) || words.has("definite", p.word(i));
        int at = article ? i + 1 : i;
        at = words.has("size", p.word(at)) ? at + 1 : at;
        return words.has("group", p.word(at)) && words.has("of", p.word(at + 1)) ? at + 2 : i;
    }

    private boolean closes(int i) {
        Token t = p.at(i);
        return t.ends() || t.type() == Token.Type.MARK;
    }
}
