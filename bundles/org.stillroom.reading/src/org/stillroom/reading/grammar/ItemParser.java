package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Size;

/** Reads one ingredient with its amount: “two dashes of bitters”, “the juice of half a lemon”. */
final class ItemParser {

    private static final int FAR = 16;

    private final Vocabulary words;
    private final Passage p;
    private final AmountParser amounts;
    private final NameParser names;
    private final LatentMeasure latent;
    private final boolean lineMode;

    ItemParser(
            Vocabulary words,
            Passage passage,
            AmountParser amounts,
            NameParser names,
            boolean lineMode) {
        this.lineMode = lineMode;
        this.words = words;
        this.p = passage;
        this.amounts = amounts;
        this.names = names;
        this.latent = new LatentMeasure(words, passage, names);
    }

    /** Reads what starts at a token, if an ingredient with an amount does. */
    Optional<Draft> parse(int i, Optional<Draft> before) {
        return yielding(i, before, true)
                .or(() -> yielding(i, before, false))
                .or(() -> amounted(i, before))
                .or(() -> twofold(i));
    }

    /**
     * Reads the first amount of “a quart and a gill of water”, “two lumps or a spoonful of sugar”;
     * the second is read after it.
     */
    private Optional<Draft> twofold(int i) {
        Optional<Quantity> first =
                amounts.parse(i)
                        .filter(q -> q.hasMeasure() && !q.measure().equals("unstated"))
                        .filter(
                                q ->
                                        words.has("and", p.word(q.next()))
                                                || p.at(q.next()).isMark('&')
                                                || words.has("or", p.word(q.next())));
        Optional<Quantity> second =
                first.flatMap(q -> amounts.parse(q.next() + 1))
                        .filter(q -> q.hasMeasure() && words.has("of", p.word(q.next())));
        return second.flatMap(q -> names.parse(q.next()))
                .filter(Name::known)
                .map(
                        n -> {
                            Draft d = new Draft(i, first.get().next());
                            d.quantity(first.get());
                            d.name(n);
                            d.end = first.get().next();
                            d.hints.add(Hint.COMPOUND);
                            return d;
                        });
    }

    /** Reads “the juice of …” or “the thin rind of …”, where the number stands inside. */
    private Optional<Draft> yielding(int i, Optional<Draft> before, boolean juice) {
        Optional<Numeral> leading =
                amounts.numbers().parse(i).filter(n -> n.fraction() || n.article());
        int at = leading.map(Numeral::next).orElse(i);
        List<String> preparations = new ArrayList<>();
        while (words.has("prep", p.word(at))
                || words.has("praise", p.word(at))
                || words.has("article", p.word(at))
                || words.has("rind-sort", p.word(at))) {
            if (words.has("prep", p.word(at))) {
                preparations.add(p.word(at));
            }
            at++;
            if (at > i + 5) {
                return Optional.empty();
            }
        }
        boolean found = words.has(juice ? "juice" : "part-of", p.word(at));
        if (!found) {
            return Optional.empty();
        }
        int word = at;
        int next = afterStrained(at + 1, preparations);
        boolean of = words.has("of", p.word(next));
        int number = p.at(next).isMark(',') && juice ? next + 1 : next;
        boolean elidedOf =
                amounts.numbers()
                        .parse(number)
                        .filter(x -> juice && number == next || closesYield(x.next()))
                        .isPresent();
        if (!of && !elidedOf) {
            return shared(i, word, juice, preparations);
        }
        Optional<Draft> draft = yielded(i, word, of ? next + 1 : number, juice, before);
        draft.ifPresent(
                d -> {
                    d.preparations.addAll(0, preparations);
                    boolean half = leading.filter(Numeral::fraction).isPresent();
                    if (half && d.amount.quantity().isPresent()) {
                        d.amount = Amount.of(d.amount.quantity().get().times(leading.get().low()));
                    }
                });
        return draft;
    }

    /** Passes over “, strained,” in “the juice, strained, of four oranges”. */
    private int afterStrained(int i, List<String> preparations) {
        boolean aside =
                p.at(i).isMark(',')
                        && words.has("prep", p.word(i + 1))
                        && p.at(i + 2).isMark(',')
                        && words.has("of", p.word(i + 3));
        if (!aside) {
            return i;
        }
        preparations.add(p.word(i + 1));
        return i + 3;
    }

    /** “Juice, ½ lemon” names a juice; “the juice, one lump of sugar” does not. */
    private boolean closesYield(int i) {
        return words.has("countable", p.word(i)) && !p.at(i + 1).isWord();
    }

    private Optional<Draft> yielded(
            int start, int word, int i, boolean juice, Optional<Draft> before) {
        Optional<Numeral> n = amounts.numbers().parse(i);
        int at = n.map(Numeral::next).orElse(i);
        Optional<Size> size = Optional.empty();
        for (int round = 0; round < 3; round++) {
            Optional<Size> here = amounts.sizeAt(at);
            if (here.isPresent()) {
                size = here;
                at = words.at("size", p, at).get().next();
            }
            while (words.has("praise", p.word(at)) || words.has("rind-sort", p.word(at))) {
                at++;
            }
        }
        boolean single = words.has("article-a", p.word(at));
        Optional<Draft> measured = measuredYield(start, i, n, juice);
        if (measured.isPresent()) {
            return measured;
        }
        Optional<Name> name = names.parse(at);
        Draft d = new Draft(start, at);
        if (name.isEmpty()) {
            if (n.isEmpty() || n.get().article() || before.isEmpty()) {
                return Optional.empty();
            }
            d.pieces.addAll(lastNoun(before.get()));
            d.hints.add(Hint.ELIDED);
        } else {
            d.name(name.get());
        }
        if (!juice) {
            boolean ofThere = words.has("of", p.word(word + 1));
            d.pieces.add(0, new Name.Piece(word, ofThere ? word + 2 : word + 1));
        }
        d.measure = juice ? "juice-of" : "whole";
        d.size = size;
        d.amountStart = start;
        d.amountEnd = Math.max(at, word + 1);
        Optional<Numeral> whole = n.map(x -> andHalf(x, d));
        d.amount = yieldAmount(whole, single, d, word);
        n.ifPresent(x -> x.others().forEach(o -> d.others.add(Amount.of(o))));
        if (n.filter(x -> !x.others().isEmpty()).isPresent()) {
            d.hints.add(Hint.AMBIGUOUS);
        }
        return Optional.of(d);
    }

    /** Reads “the juice of two sticks of sugar cane”: the measure inside rules. */
    private Optional<Draft> measuredYield(int start, int i, Optional<Numeral> n, boolean juice) {
        if (!juice || n.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> q =
                amounts.parse(i).filter(x -> x.hasMeasure() && words.has("of", p.word(x.next())));
        return q.flatMap(
                x ->
                        names.parse(x.next())
                                .map(
                                        name -> {
                                            Draft d = joined(x, name, start);
                                            d.start = start;
                                            return d;
                                        }));
    }

    private Amount yieldAmount(Optional<Numeral> n, boolean single, Draft d, int word) {
        if (n.isPresent()) {
            return AmountParser.amount(n.get());
        }
        String last = p.word(d.lastNameToken());
        boolean plural = last.endsWith("s") && !last.endsWith("ss");
        d.hints.add(Hint.BARE_MEASURE);
        boolean partPlural =
                d.measure.equals("whole")
                        && p.word(word).endsWith("s")
                        && !p.word(word).equals("whites");
        return plural && !single || partPlural ? Amount.UNSTATED : Amount.of(Rational.ONE);
    }

    /** Reads “one orange and a half”. */
    private Numeral andHalf(Numeral n, Draft d) {
        Numeral more = amounts.numbers().andFraction(n.withNext(d.end));
        boolean measured =
                words.at("measure", p, more.next()).isPresent()
                        || words.has("of", p.word(more.next()));
        if (more.next() == d.end || measured) {
            return n;
        }
        d.end = more.next();
        return more;
    }

    private List<Name.Piece> lastNoun(Draft before) {
        if (!before.isNamed()) {
            return List.of();
        }
        int last = before.lastNameToken();
        for (int i = last; i >= 0 && i > last - FAR; i--) {
            if (words.has("citrus", p.word(i))) {
                return List.of(new Name.Piece(i, i + 1));
            }
        }
        return List.of(new Name.Piece(last, last + 1));
    }

    /** Reads the first of “juice and rind of two lemons”, whose number stands further on. */
    private Optional<Draft> shared(int start, int word, boolean juice, List<String> prepared) {
        boolean joined = words.has("and", p.word(word + 1)) || p.at(word + 1).isMark(',');
        int other = word + 2;
        while (words.has("prep", p.word(other))
                || words.has("article", p.word(other))
                || words.has("rind-sort", p.word(other))
                || words.has("praise", p.word(other))) {
            other++;
        }
        int last = other;
        boolean part = words.has("part-of", p.word(other)) || words.has("juice", p.word(other));
        if (!joined || !part || !words.has("of", p.word(other + 1))) {
            return Optional.empty();
        }
        return yielded(start, word, other + 2, juice, Optional.empty())
                .map(
                        d -> {
                            boolean oneFruit = juice && words.has("part-of", p.word(last));
                            if (oneFruit) {
                                d.preparations.add(p.word(last));
                                return d;
                            }
                            d.end = word + 1;
                            if (!juice) {
                                d.pieces.set(0, new Name.Piece(word, word + 1));
                            }
                            d.preparations.addAll(prepared);
                            d.hints.add(Hint.ELIDED);
                            return d;
                        });
    }

    private Optional<Draft> amounted(int i, Optional<Draft> before) {
        Optional<Quantity> read = amounts.parse(i);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Quantity q = read.get();
        if (p.at(q.next()).isMark(')')) {
            q = q.withNext(q.next() + 1);
        }
        Optional<Draft> inner = innerYield(q, i, before);
        if (inner.isPresent()) {
            return inner;
        }
        q = overStrayMark(q);
        Optional<Name> name = names.parse(q.next());
        if (name.isEmpty() || !isObject(q, name.get())) {
            return Optional.empty();
        }
        q = carried(q, before, i);
        return Optional.of(joined(q, name.get(), i)).filter(d -> plausible(d, name.get()));
    }

    /** Passes over a mark that a compositor or a scan put after a measure: “2 lbs, sugar”. */
    private Quantity overStrayMark(Quantity q) {
        int at = q.next();
        boolean stop = p.at(at).isMark('.') && p.at(at - 1).isMark('.');
        boolean of = p.at(at).isMark(',') && words.has("of", p.word(at + 1));
        boolean opens = q.start() == 0 || !p.at(q.start() - 1).isWord();
        boolean shortened =
                p.at(at).isMark(',') && opens && words.has("measure-short", p.word(at - 1));
        boolean line = p.at(at).isMark(',') && lineMode && q.start() == 0 && !q.isArticle();
        boolean stray = stop || of || shortened || line;
        boolean named = stray && names.parse(at + 1).filter(Name::known).isPresent();
        return q.hasMeasure() && named ? q.withNext(at + 1) : q;
    }

    /** In running prose an unknown word after a measure may be a verb: “a spoonful quiets …”. */
    private boolean isObject(Quantity q, Name name) {
        boolean of = words.has("of", p.word(q.next())) || words.has("of", p.word(q.next() - 1));
        boolean bare = q.hints().contains(Hint.BARE_MEASURE);
        if (lineMode || name.known() || of && q.hasMeasure()) {
            return true;
        }
        if (bare) {
            return false;
        }
        Token after = p.at(name.next());
        boolean ends =
                after.ends()
                        || after.type() == Token.Type.MARK
                        || words.has("name-ends", after.text());
        boolean counted = !q.hasMeasure() || q.measure().equals("unstated");
        return ends
                && (!counted
                        || !q.amount().quantity().isEmpty()
                                && !q.isArticle()
                                && name.last() - name.first() < 2);
    }

    /** In “two dashes of gum, one of maraschino” and “juice of a lemon and two limes”. */
    private Quantity carried(Quantity q, Optional<Draft> before, int i) {
        boolean number = !q.hasMeasure() && !q.isArticle() && before.isPresent();
        if (!number) {
            return q;
        }
        String measure = before.get().measure;
        boolean of = words.has("of", p.word(q.next())) || words.has("of", p.word(q.next() - 1));
        boolean near = i - before.get().end < 6;
        boolean parts =
                measure.equals("part")
                        && q.amount().quantity().filter(Rational::isWhole).isPresent()
                        && before.get().amount.quantity().filter(Rational::isWhole).isPresent();
        boolean unit = parts || !words.has("no-unit", measure) && !measure.isEmpty();
        if (of && unit && near && !words.has("multiple", p.word(q.next() - 1))) {
            return q.withMeasure(measure, before.get().size.filter(s -> false), q.next());
        }
        int name = q.next();
        boolean juice =
                measure.equals("juice-of")
                        && afterAnd(i, before.get().end)
                        && words.has("citrus", p.word(name));
        return juice ? q.withMeasure("juice-of", q.size(), q.next()) : q;
    }

    /** “And two limes” or “and of two limes” right after the line before. */
    private boolean afterAnd(int i, int end) {
        int and = words.has("of", p.word(i - 1)) ? i - 2 : i - 1;
        return words.has("and", p.word(and)) && end == and;
    }

    /** Reads “six of the juice …”, “a pint of the juice of lemons”: the measure rules. */
    private Optional<Draft> innerYield(Quantity q, int start, Optional<Draft> before) {
        boolean counted = !q.hasMeasure() || q.measure().equals("unstated");
        int at = words.has("of", p.word(q.next())) ? q.next() + 1 : q.next();
        boolean part = words.has("part-of", p.word(at)) && words.has("of", p.word(at + 1));
        if (!counted || !part || q.isArticle()) {
            return Optional.empty();
        }
        Optional<Name> name = names.parse(at);
        return name.map(
                n -> {
                    Draft d = new Draft(start, n.next());
                    d.quantity(q);
                    d.name(n);
                    d.measure = q.hasMeasure() ? q.measure() : "whole";
                    return d;
                });
    }

    private Draft joined(Quantity q, Name name, int start) {
        Draft d = new Draft(start, name.next());
        d.quantity(q);
        d.name(name);
        if (!q.hasMeasure()) {
            decideMeasure(d, name);
        }
        possessiveJuice(d, name);
        orTwo(d);
        boolean plain =
                d.measure.equals("whole")
                        && d.amount.quantityMax().isEmpty()
                        && d.amount.quantity().isPresent();
        if (plain && words.has("countable", p.word(name.last()))) {
            Numeral n = Numeral.of(d.amount.quantity().get(), d.end);
            d.amount = Amount.of(andHalf(n, d).low());
        }
        return d;
    }

    /** Reads “a clove or two”. */
    private void orTwo(Draft d) {
        boolean one = d.amount.equals(Amount.of(Rational.ONE));
        if (one
                && words.has("or", p.word(d.end))
                && p.word(d.end + 1).equals("two")
                && (!p.at(d.end + 2).isWord() || words.has("purpose", p.word(d.end + 2)))) {
            d.amount = Amount.of(Rational.ONE, Rational.of(2));
            d.end += 2;
        }
    }

    /** Decides between a counted thing, a share of the whole and “one sugar lump”. */
    private void decideMeasure(Draft d, Name name) {
        String last = p.word(name.last());
        if (latent.find(d, name)) {
            return;
        }
        Optional<String> shape = words.table("shape").value(last);
        boolean several = name.last() > name.first();
        if (shape.isPresent() && several) {
            Name.Piece old = d.pieces.remove(d.pieces.size() - 1);
            d.pieces.add(new Name.Piece(old.from(), old.to() - 1));
            d.measure = shape.get();
            return;
        }
        boolean fraction = d.amount.quantity().filter(x -> !x.isWhole()).isPresent();
        boolean counts = isCounted(name);
        if (fraction && !counts) {
            d.measure = "part";
            d.hints.add(Hint.SHARE);
            if (!name.known()) {
                d.hints.add(Hint.SHARE_ALONE);
            }
            if (d.amount.quantityMax().isEmpty()) {
                d.amount = Amount.share(d.amount.quantity().get());
            }
        } else {
            d.measure = isPartOf(d, name) && !counts ? "part" : "whole";
            if (!counts && isMass(d, name) && d.measure.equals("whole")) {
                d.hints.add(Hint.MASS_COUNTED);
            } else if (!counts && !lineMode && !name.known()) {
                d.hints.add(Hint.UNKNOWN_COUNTED);
            }
        }
    }

    /** “3 of gin” without a measure before it counts parts. */
    private boolean isPartOf(Draft d, Name name) {
        int first = d.amountEnd;
        boolean of = words.has("of", p.word(first)) || words.has("of", p.word(first - 1));
        return of && name.known() && isMass(d, name) && !d.hints.contains(Hint.ARTICLE);
    }

    /** Tells whether what a name names is poured or heaped, not counted. */
    private boolean isMass(Draft d, Name name) {
        String last = p.word(name.last());
        boolean plural = last.endsWith("s") && !last.endsWith("ss");
        return name.known() && !plural && words.has("head", last);
    }

    private boolean isCounted(Name name) {
        // “rhum blanc” is no white of an egg: the noun stands first
        String last = p.word(words.isRomance() ? name.first() : name.last());
        boolean liquidFollows =
                words.has("or", p.word(name.next()))
                        && names.parse(name.next() + 1)
                                .filter(n -> !words.has("countable", p.word(n.last())))
                                .isPresent();
        return words.has("countable", last) && !liquidFollows;
    }

    /** Reads “half a lemon’s juice”, “½ lime (juice)” and “1 lemon, juice only”. */
    private void possessiveJuice(Draft d, Name name) {
        int next = name.next();
        String last = p.word(name.last());
        boolean mark = p.at(next).isMark('(') || p.at(next).isMark(',');
        int word = words.has("definite", p.word(next + 1)) ? next + 2 : next + 1;
        boolean juice = mark && words.has("juice", p.word(word));
        boolean closing =
                p.at(word + 1).isMark(')')
                        || words.has("only", p.word(word + 1))
                        || words.has("of", p.word(word + 1)) && !p.at(word + 2).isWord()
                        || lineMode && p.at(word + 1).ends();
        boolean only = juice && closing;
        boolean counted = d.measure.equals("whole") || d.measure.equals("part");
        boolean thereof =
                mark
                        && words.has("definite", p.word(next + 1))
                        && words.has("juice", p.word(next + 2))
                        && p.word(next + 3).equals("thereof");
        if (counted && thereof) {
            d.measure = "juice-of";
            d.end = next + 4;
        } else if (counted && only) {
            d.measure = "juice-of";
            d.end = p.at(word + 1).ends() ? word + 1 : word + 2;
        } else if (counted
                && words.has("juice", last)
                && name.last() > name.first()
                && p.word(name.last() - 1).equals("'s")) {
            Name.Piece old = d.pieces.remove(d.pieces.size() - 1);
            d.pieces.add(new Name.Piece(old.from(), old.to() - 2));
            d.measure = "juice-of";
        }
    }

    /** An article alone makes a line only of things that one can count. */
    private boolean plausible(Draft d, Name name) {
        boolean article = d.hints.contains(Hint.ARTICLE) && d.measure.equals("whole");
        String last = p.word(d.lastNameToken());
        boolean share = d.amount.kind() == Amount.Kind.SHARE;
        if (share && words.has("article", p.word(d.start))) {
            return name.known();
        }
        boolean tied = p.at(d.lastNameToken()).glued();
        if (!tied && (words.has("vessel-only", last) || words.has("vessel", last))) {
            return false;
        }
        boolean definite = words.has("definite", p.word(d.start));
        boolean idle = d.measure.equals("whole") && !name.known() && words.has("not-name", last);
        return !idle
                && !(article && definite)
                && (!article
                        || words.has("countable", last)
                        || name.known() && !words.has("mass", last));
    }
}
