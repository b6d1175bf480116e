package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;

/** Reads ingredients whose amount stands after the name: “bitters, two dashes”. */
final class InverseParser {

    private static final int MOST_NAMES = 12;
    private static final int FAR = 8;

    private final Vocabulary words;
    private final Passage p;
    private final AmountParser amounts;
    private final NameParser names;
    private final FillParser fills;
    private final boolean lineMode;

    InverseParser(
            Vocabulary words,
            Passage passage,
            AmountParser amounts,
            NameParser names,
            FillParser fills,
            boolean lineMode) {
        this.words = words;
        this.p = passage;
        this.amounts = amounts;
        this.names = names;
        this.fills = fills;
        this.lineMode = lineMode;
    }

    /**
     * Reads one name with the amount after it.
     *
     * @param serial whether such a line went before, so that “and” may follow this one
     */
    Optional<Draft> single(int i, boolean serial) {
        Optional<Name> name = names.parse(i);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        int other = afterOther(name.get().next());
        int at = afterTake(i, afterRemark(overStrength(other)));
        boolean mark =
                p.at(at).isMark(',')
                        || p.at(at).isMark(':')
                        || p.at(at).isMark('—')
                        || p.at(at).isMark('.')
                        || p.at(at).isMark('(');
        int from = amountStart(mark ? at + 1 : at);
        return afterStrength(from, serial)
                .or(
                        () ->
                                amount(from)
                                        .map(this::overRate)
                                        .filter(q -> closes(q, serial))
                                        .filter(q -> mark || isStrong(q, from, name.get(), serial)))
                .map(q -> draft(i, name.get(), q));
    }

    /** Passes over “à 85°,”, “von 80 Proc.,” and “90 %ig” between a spirit and its amount. */
    private int overStrength(int at) {
        boolean led = words.has("strength-word", p.word(at));
        Optional<Numeral> number =
                amounts.numbers().parse(led ? at + 1 : at).filter(n -> !n.article());
        int next = number.map(Numeral::next).orElse(at);
        int told = next;
        while (number.isPresent()
                && (p.at(told).isMark('%') || words.has("degree", p.word(told)))) {
            told++;
        }
        boolean strength = told > next || led && p.at(next).isMark(',');
        if (number.isEmpty() || !strength) {
            return at;
        }
        int from = told;
        while (p.at(from).isMark('.') || p.at(from).isMark(',')) {
            from++;
        }
        boolean amount = amounts.parse(from).filter(Quantity::hasMeasure).isPresent();
        return amount ? Math.max(told, from - 1) : at;
    }

    /** Passes over the verb of “of cognac oil take ninety drops”. */
    private int afterTake(int i, int at) {
        boolean of = words.has("of", p.word(i)) || words.has("of", p.word(i - 1));
        return of && words.has("take-word", p.word(at)) ? at + 1 : at;
    }

    /** Passes over “to the gallon” and “per pint”, which say of what an amount is taken. */
    private Quantity overRate(Quantity q) {
        int at = q.next();
        if (words.has("only", p.word(at))) {
            return q.withNext(at + 1);
        }
        if (!words.has("rate", p.word(at))) {
            return q;
        }
        at =
                words.has("article", p.word(at + 1)) || words.has("each", p.word(at + 1))
                        ? at + 2
                        : at + 1;
        return words.at("measure", p, at).map(m -> q.withNext(m.next())).orElse(q);
    }

    /** Passes over “, the tops only” and “, in powder” between the name and its amount. */
    private int afterRemark(int at) {
        int told = at;
        while (words.has("prep", p.word(told))) {
            told++;
        }
        if (told > at && amounts.parse(told).filter(Quantity::hasMeasure).isPresent()) {
            return told;
        }
        if (p.at(at).isMark('(') && amount(at + 1).filter(q -> closes(q, false)).isEmpty()
                || p.at(at).isMark('(') && strengthIn(at)) {
            int close = at + 1;
            while (close < at + FAR && !p.at(close).isMark(')') && !p.at(close).ends()) {
                close++;
            }
            return p.at(close).isMark(')') ? close + 1 : at;
        }
        if (!p.at(at).isMark(',')
                || !p.at(at + 1).isWord()
                || amount(amountStart(at + 1)).isPresent()) {
            return at;
        }
        boolean single =
                p.at(at + 2).isMark(',') && names.parse(at + 1).filter(Name::known).isEmpty();
        boolean remark = single || words.at("name-remark", p, at + 1).isPresent();
        for (int j = at + 1; remark && j < at + FAR; j++) {
            Token t = p.at(j);
            if (t.isMark(',')) {
                return j;
            }
            if (!t.isWord()) {
                return at;
            }
        }
        return at;
    }

    /** In “spirit (94 %), a pint” the brackets hold a strength. */
    private boolean strengthIn(int open) {
        return amounts.parse(open + 1).filter(q -> q.measure().equals("per cent")).isPresent();
    }

    /** Reads “cinnamon, cloves, and mace, of each an ounce”: one amount after several names. */
    List<Draft> several(int i) {
        List<Name> listed = new ArrayList<>();
        int at = i;
        while (listed.size() < MOST_NAMES) {
            Optional<Quantity> equal =
                    amounts.parse(at)
                            .filter(q -> q.amount().kind() == Amount.Kind.EQUAL_PARTS)
                            .filter(q -> listed.size() > 1 && closes(q, false));
            if (equal.isPresent()) {
                return spread(listed, at);
            }
            boolean take = words.has("take-each", p.word(at)) && listed.size() > 1;
            int each = take || words.has("of", p.word(at)) ? at + 1 : at;
            if (words.has("each", p.word(each)) && listed.size() > 1) {
                return spread(listed, each + 1);
            }
            Optional<Name> name = names.parse(at);
            if (name.isEmpty()) {
                return List.of();
            }
            listed.add(name.get());
            at = name.get().next();
            boolean comma = p.at(at).isMark(',');
            at = comma ? at + 1 : at;
            boolean and = words.has("and", p.word(at)) || p.at(at).isMark('&');
            at = and ? at + 1 : at;
            boolean eachFollows =
                    words.has("of", p.word(at))
                            || words.has("each", p.word(at))
                            || words.at("equal", p, at).isPresent()
                            || words.has("take-each", p.word(at))
                                    && words.has("each", p.word(at + 1));
            if (!comma && !and && !eachFollows) {
                return List.of();
            }
        }
        return List.of();
    }

    private List<Draft> spread(List<Name> listed, int amountAt) {
        Optional<Quantity> q = amounts.parse(amountAt).filter(x -> closes(x, false));
        List<Draft> drafts = new ArrayList<>();
        q.ifPresent(
                x ->
                        listed.forEach(
                                n -> {
                                    Draft d = draft(n.start(), n, x);
                                    d.each = false;
                                    d.end = n.next();
                                    drafts.add(d);
                                }));
        if (!drafts.isEmpty()) {
            drafts.get(drafts.size() - 1).end = q.orElseThrow().next();
        }
        return drafts;
    }

    /** Passes over “, or Peruvian bark cordial” between the name and its amount. */
    private int afterOther(int at) {
        int or = p.at(at).isMark(',') ? at + 1 : at;
        return words.has("or", p.word(or)) ? names.parse(or + 1).map(Name::next).orElse(at) : at;
    }

    private int amountStart(int i) {
        int at = i;
        while (p.at(at).isMark('.')) {
            at++;
        }
        at = words.at("extent", p, at).map(PhraseTable.Match::next).orElse(at);
        boolean ofEach = words.has("of", p.word(at)) && words.has("each", p.word(at + 1));
        return ofEach ? at + 2 : at;
    }

    /** In “alcohol 95 %, one pint” the first figure is a strength. */
    private Optional<Quantity> afterStrength(int i, boolean serial) {
        return amounts.parse(i)
                .filter(q -> q.measure().equals("per cent") && p.at(q.next()).isMark(','))
                .flatMap(q -> amounts.parse(q.next() + 1))
                .filter(q -> closes(q, serial));
    }

    private Optional<Quantity> amount(int i) {
        return fills.share(i).or(sameAlone(i)).or(() -> amounts.parse(i));
    }

    private Supplier<Optional<Quantity>> sameAlone(int i) {
        return () ->
                words.at("ditto-last", p, i)
                        .filter(m -> !p.at(m.next()).isWord())
                        .map(
                                m ->
                                        Quantity.of(
                                                Amount.of(Rational.ONE),
                                                "same",
                                                i,
                                                m.next(),
                                                Hint.SAME));
    }

    private Draft draft(int i, Name n, Quantity q) {
        Draft d = new Draft(Math.min(i, n.start()), q.next());
        d.name(n);
        d.quantity(q);
        d.end = q.next();
        d.hints.add(Hint.INVERSE);
        settle(d, n, q);
        return d;
    }

    /** Decides between a share and a counted thing where no measure is printed. */
    private void settle(Draft d, Name n, Quantity q) {
        if (q.hasMeasure()) {
            return;
        }
        Optional<PhraseTable.Match> leading = words.at("measure", p, n.first());
        if (leading.isPresent() && words.has("of", p.word(leading.get().next()))) {
            d.measure = leading.get().value();
            Name.Piece all = d.pieces.get(0);
            d.pieces.set(0, new Name.Piece(leading.get().next() + 1, all.to()));
            return;
        }
        boolean fraction = q.amount().quantity().filter(x -> !x.isWhole()).isPresent();
        boolean counted = words.has("countable", p.word(n.last()));
        d.measure = fraction && !counted ? "part" : "whole";
        if (d.measure.equals("part") && d.amount.quantityMax().isEmpty()) {
            d.amount = Amount.share(d.amount.quantity().orElseThrow());
            d.hints.add(Hint.SHARE);
        }
    }

    /** Amounts that may follow a name without a mark between. */
    private boolean isStrong(Quantity q, int at, Name name, boolean serial) {
        boolean roman =
                p.at(q.next() - 1).isWord() && Roman.parse(p.word(q.next() - 1)).isPresent();
        boolean counted = words.has("countable", p.word(name.last())) && !q.isArticle();
        boolean figures =
                p.at(at).type() == Token.Type.NUMBER || p.at(at).type() == Token.Type.FRACTION;
        boolean listed = name.known() || serial || lineMode;
        return p.at(at).type() == Token.Type.SIGN
                || roman
                || q.measure().equals("same")
                || q.measure().equals("per cent")
                || listed && q.hasMeasure()
                || listed && counted && figures
                || (lineMode || serial) && name.known() && isFraction(q) && figures;
    }

    private static boolean isFraction(Quantity q) {
        return !q.hasMeasure() && q.amount().quantity().filter(x -> !x.isWhole()).isPresent();
    }

    /** An amount that is followed by another name belongs to that one. */
    private boolean closes(Quantity q, boolean serial) {
        Token t = p.at(q.next());
        if (q.isArticle() && !q.hasMeasure()) {
            return false;
        }
        boolean mark =
                t.ends()
                        || t.isMark('.')
                        || t.isMark(';')
                        || t.isMark(',')
                        || t.isMark(')')
                        || t.isMark(':');
        boolean stopTaken = p.at(q.next() - 1).isMark('.') && t.capital();
        boolean told = words.has("prep", t.text()) && !isNamed(q.next());
        return mark || stopTaken || told || words.has("and", t.text()) && serial;
    }

    /** Tells whether an ingredient starts at a word of preparation: “2 oz. boiled water”. */
    private boolean isNamed(int i) {
        return names.parse(i).filter(Name::known).isPresent();
    }
}
