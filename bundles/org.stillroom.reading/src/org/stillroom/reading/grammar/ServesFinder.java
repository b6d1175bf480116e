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
            Optional<Serves> found = at(i);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Serves> at(int i) {
        Optional<PhraseTable.Match> phrase = words.at("serves", p, i);
        if (phrase.isEmpty()) {
            return Optional.empty();
        }
        int at = words.at("about", p, phrase.get().next()).map(PhraseTable.Match::next)
                .orElse(phrase.get().next());
        Optional<Numeral> number = numbers.parse(at);
        if (number.isEmpty() || !number.get().low().isWhole()) {
            return Optional.empty();
        }
        Numeral n = number.get();
        boolean sure = phrase.get().value().equals("sure") && !n.article();
        int unitAt = words.has("serves-adj", p.word(n.next())) ? n.next() + 1 : n.next();
        Optional<PhraseTable.Match> unit = words.at("serves-unit", p, unitAt);
        if (unit.isEmpty() && !(sure && closes(n.next()))) {
            return Optional.empty();
        }
        Rational low = n.low();
        return Optional.of(new Serves(low, n.high().orElse(low),
                p.span(i, unit.map(PhraseTable.Match::next).orElse(n.next()))));
    }

    private boolean closes(int i) {
        Token t = p.at(i);
        return t.ends() || t.type() == Token.Type.MARK;
    }
}
