package org.stillroom.reading.grammar;

import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;

/** Reads vessels that are filled: “fill two-thirds full of fine ice”, “glass half full ice”. */
final class FillParser {

    private static final int FAR = 7;

    private final Vocabulary words;
    private final Passage p;
    private final AmountParser amounts;
    private final NameParser names;
    private final VesselFinder vessels;

    FillParser(
            Vocabulary words,
            Passage passage,
            AmountParser amounts,
            NameParser names,
            VesselFinder vessels) {
        this.words = words;
        this.p = passage;
        this.amounts = amounts;
        this.names = names;
        this.vessels = vessels;
    }

    /**
     * What was filled.
     *
     * @param draft the line, unless the words do not say with what
     * @param pot the vessel, if it is named
     * @param verb whether a verb says so
     * @param next the token after it
     */
    record Filled(Optional<Draft> draft, Optional<Found.Pot> pot, boolean verb, int next) {}

    /** How far the parse has come. */
    private static final class State {
        int at;
        Optional<Found.Pot> pot = Optional.empty();
        Optional<Numeral> share = Optional.empty();
        boolean with;
        boolean full;
    }

    Optional<Filled> at(int i, Role role) {
        State s = new State();
        s.at = i;
        boolean verb = verb(s);
        if (!verb && !vesselOrShare(s)) {
            return Optional.empty();
        }
        if (verb) {
            rest(s);
        }
        Optional<Draft> draft = draft(i, s);
        if (draft.isEmpty() && !verb) {
            return Optional.empty();
        }
        return Optional.of(new Filled(draft, s.pot, verb, draft.map(d -> d.end).orElse(s.at)));
    }

    /** Reads the share of the glass that stands after its contents: “one-third of the glass”. */
    Optional<Quantity> share(int i) {
        Optional<Numeral> n = amounts.numbers().parse(i).filter(Numeral::fraction);
        if (n.isEmpty()) {
            return Optional.empty();
        }
        int at = n.get().next();
        while (words.has("of", p.word(at))
                || words.has("definite", p.word(at))
                || words.has("size", p.word(at))) {
            at++;
        }
        boolean definite =
                words.has("definite", p.word(at - 1)) || words.has("the", p.word(at - 1));
        Optional<PhraseTable.Match> vessel =
                definite || words.at("measure", p, at).isEmpty()
                        ? words.at("vessel", p, at)
                        : Optional.empty();
        boolean full = words.has("full", p.word(at));
        int next = full ? at + 1 : vessel.map(PhraseTable.Match::next).orElse(at);
        return next == at
                ? Optional.empty()
                : Optional.of(Quantity.of(fill(n), "fill", i, next, Hint.FILL));
    }

    private static Amount fill(Optional<Numeral> n) {
        return new Amount(Amount.Kind.FILL, n.map(Numeral::low), n.flatMap(Numeral::high));
    }

    private boolean verb(State s) {
        int i = s.at;
        Optional<Numeral> before = amounts.numbers().parse(i).filter(Numeral::fraction);
        int at = before.map(Numeral::next).orElse(i);
        Optional<PhraseTable.Match> balance = words.at("fill-balance", p, i);
        boolean starts = p.at(i - 1).type() != Token.Type.WORD;
        boolean named =
                balance.isPresent()
                        && p.at(balance.get().next()).isWord()
                        && !words.has("of", p.word(balance.get().next()));
        if (named && starts) {
            s.at = balance.get().next();
            s.full = true;
            return true;
        }
        Optional<PhraseTable.Match> fill = words.at("fill-verb", p, at);
        if (fill.isEmpty()) {
            return false;
        }
        s.share = before;
        s.at = fill.get().next();
        s.with = words.has("with", p.word(s.at - 1));
        return !words.has("will", p.word(at - 1));
    }

    private boolean vesselOrShare(State s) {
        int i = s.at;
        Optional<Found.Pot> pot = vessels.at(i);
        int at = pot.map(Found.Pot::to).orElse(i);
        Optional<Numeral> share = amounts.numbers().parse(at).filter(Numeral::fraction);
        share = share.or(() -> partFull(at));
        if (share.isEmpty()) {
            return pot.isPresent() && fullOfIce(s, pot.get());
        }
        int next = share.get().next();
        Optional<Found.Pot> inner = pot.isPresent() ? Optional.empty() : vessels.at(next);
        int full = inner.map(Found.Pot::to).orElse(next);
        if (!words.has("full", p.word(full))) {
            return false;
        }
        s.share = share;
        s.pot = pot.or(() -> inner);
        s.at = full + 1;
        s.full = true;
        ofOrWith(s);
        return true;
    }

    /** Reads “three parts full”. */
    private Optional<Numeral> partFull(int i) {
        return words.at("part-full", p, i)
                .filter(m -> words.has("full", p.word(m.next())))
                .flatMap(m -> Rational.parse(m.value()).map(v -> Numeral.of(v, m.next())))
                .filter(Numeral::fraction);
    }

    /** Reads “a goblet full of fine ice”. */
    private boolean fullOfIce(State s, Found.Pot pot) {
        int at = pot.to();
        while (words.has("nearly", p.word(at))) {
            at++;
        }
        boolean nearly = at > pot.to();
        boolean of = words.has("of", p.word(at + 1));
        boolean ice = of && startsIce(at + 2);
        if (!words.has("full", p.word(at)) || !ice && !(of && nearly)) {
            return false;
        }
        s.pot = Optional.of(pot);
        s.at = at + 2;
        s.full = true;
        return true;
    }

    private void rest(State s) {
        for (int round = 0; round < 14; round++) {
            if (s.share.isEmpty()) {
                s.share = amounts.numbers().parse(s.at).filter(Numeral::fraction);
                s.share = s.share.or(() -> partFull(s.at));
                if (s.share.isPresent()) {
                    s.at = s.share.get().next();
                    continue;
                }
            }
            Optional<Found.Pot> pot = vessels.at(s.at);
            if (pot.isPresent() && s.pot.isEmpty() && !s.with) {
                s.pot = pot;
                s.at = pot.get().to();
            } else if (words.at("fill-word", p, s.at).isPresent()) {
                s.at = words.at("fill-word", p, s.at).get().next();
            } else if (words.has("full", p.word(s.at))) {
                s.full = true;
                s.at++;
            } else if (p.at(s.at).isMark(',')
                    && s.share.isPresent()
                    && words.has("fill-with", p.word(s.at + 1))) {
                s.at++;
            } else {
                Optional<Quantity> upTo =
                        amounts.parse(s.at)
                                .filter(
                                        q ->
                                                q.hasMeasure()
                                                        && words.has(
                                                                "fill-with", p.word(q.next())));
                s.at = upTo.map(Quantity::next).orElse(s.at);
                ofOrWith(s);
                return;
            }
        }
    }

    /** Passes over a vessel that has no entry: “fill a wide-necked flask two-thirds with …”. */
    private void unknownVessel(State s) {
        boolean named = words.has("article", p.word(s.at - 1)) || s.share.isPresent();
        if (s.pot.isPresent() || !named) {
            return;
        }
        for (int j = s.at; j < s.at + FAR && p.at(j).isWord(); j++) {
            if (s.share.isPresent() && words.has("with", p.word(j))) {
                s.at = j;
                return;
            }
            Optional<Numeral> n = amounts.numbers().parse(j).filter(Numeral::fraction);
            if (s.share.isEmpty() && n.isPresent()) {
                s.share = n;
                s.at = n.get().next();
                return;
            }
        }
    }

    private void ofOrWith(State s) {
        unknownVessel(s);
        if (words.has("fill-with", p.word(s.at)) || words.has("of", p.word(s.at))) {
            s.with = true;
            s.at++;
        }
    }

    private Optional<Draft> draft(int start, State s) {
        boolean shared = s.share.isPresent() && names.parse(s.at).filter(Name::known).isPresent();
        boolean direct = s.with || s.full || shared || startsIce(s.at);
        if (!direct) {
            return Optional.empty();
        }
        s.at = words.at("balance", p, s.at).map(PhraseTable.Match::next).orElse(s.at);
        Optional<Quantity> equal =
                amounts.parse(s.at).filter(q -> q.amount().kind() == Amount.Kind.EQUAL_PARTS);
        s.at = equal.map(Quantity::next).orElse(s.at);
        Optional<Quantity> own =
                amounts.parse(s.at)
                        .filter(
                                q ->
                                        q.hasMeasure()
                                                && !q.measure().equals("unstated")
                                                && names.parse(q.next()).isPresent()
                                                && !q.hints().contains(Hint.BARE_MEASURE));
        int at = own.map(Quantity::next).orElse(s.at);
        int nameAt = words.at("little", p, at).map(PhraseTable.Match::next).orElse(at);
        Optional<Name> name = names.parse(nameAt);
        if (name.isEmpty()
                || name.get().first() == name.get().last()
                        && words.has("not-name", p.word(name.get().last()))
                        && !words.has("spout", p.word(name.get().last()))
                        && !name.get().known()) {
            return Optional.empty();
        }
        Draft d = new Draft(start, name.get().next());
        d.name(name.get());
        d.hints.add(Hint.FILL);
        boolean ice = words.has("ice", p.word(name.get().last()));
        d.kind = ice ? LineKind.ICE : s.share.isPresent() ? LineKind.MEASURED : LineKind.TOP;
        d.amountStart = start;
        d.amountEnd = s.at;
        if (own.isPresent()) {
            d.quantity(own.get());
        } else {
            d.measure = "fill";
            d.each = equal.isPresent();
            d.amount = fill(s.share);
        }
        return Optional.of(d);
    }

    private boolean startsIce(int i) {
        for (int j = i; j < i + 3; j++) {
            if (words.has("ice", p.word(j))) {
                return true;
            }
            if (!words.has("sort", p.word(j)) && !words.has("sortof", p.word(j))) {
                return false;
            }
        }
        return false;
    }
}
