package org.stillroom.reading.grammar;

import java.util.Optional;
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
            Optional<Serves> found = at(i).or(() -> counted(here));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
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
        boolean people = at == n.next() && words.has("person", p.word(at));
        boolean glasses =
                words.has("receive-into", p.word(i - 1))
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
        int at =
                words.at("about", p, phrase.get().next())
                        .map(PhraseTable.Match::next)
                        .orElse(phrase.get().next());
        Optional<Numeral> number = numbers.parse(at);
        if (number.isEmpty() || !number.get().low().isWhole()) {
            return Optional.empty();
        }
        Numeral n = number.get();
        boolean sure = phrase.get().value().equals("sure") && !n.article();
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

    private boolean closes(int i) {
        Token t = p.at(i);
        return t.ends() || t.type() == Token.Type.MARK;
    }
}
