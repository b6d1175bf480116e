package org.stillroom.reading.grammar;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Size;

/** Reads number, size and measure, in whichever way a recipe puts them. */
final class AmountParser {

    private static final Set<String> PHARMACY_FIRST =
            Set.of(
                    "oz", "lb", "drop", "grain", "minim", "gallon", "pint", "drachm", "scruple",
                    "whole", "handful", "pinch", "part", "gramme");

    private final Vocabulary words;
    private final Passage p;
    private final NumberParser numbers;
    private final MeasureWords measures;
    private final boolean pharmacy;

    AmountParser(Vocabulary words, Passage passage, MeasureWords measures, boolean pharmacy) {
        this.words = words;
        this.p = passage;
        this.numbers = new NumberParser(words, passage);
        this.measures = measures;
        this.pharmacy = pharmacy;
    }

    NumberParser numbers() {
        return numbers;
    }

    /** Reads an amount that starts at a token. */
    Optional<Quantity> parse(int i) {
        return same(i).or(() -> equalParts(i))
                .or(() -> signFirst(i))
                .or(() -> vague(i))
                .or(() -> numbered(i))
                .or(() -> bareMeasure(i))
                .map(this::withEach);
    }

    private Quantity withEach(Quantity q) {
        int at =
                words.has("of", p.word(q.next())) || p.at(q.next()).isMark(',')
                        ? q.next() + 1
                        : q.next();
        if (!words.has("each", p.word(at))) {
            return q;
        }
        return q.forEach(p.at(at + 1).isMark(',') ? at + 2 : at + 1);
    }

    /** Reads “half the quantity of”, “as much”, “ditto”, “twice the amount”. */
    private Optional<Quantity> same(int i) {
        Optional<PhraseTable.Match> ditto = words.at("ditto", p, i).or(() -> dotted(i));
        if (ditto.isPresent()) {
            int next = ditto.get().next();
            int after = p.at(next).isMark('.') ? next + 1 : next;
            after = p.at(after).isMark(',') ? after + 1 : after;
            return Optional.of(sameAs(Rational.ONE, i, after));
        }
        Optional<PhraseTable.Match> factor = words.at("times", p, i);
        Rational times = Rational.ONE;
        int at = i;
        if (factor.isPresent()) {
            times = Rational.parse(factor.get().value()).orElse(Rational.ONE);
            at = factor.get().next();
        } else {
            Optional<Numeral> n = numbers.parse(i).filter(x -> !x.article());
            if (n.isPresent()) {
                times = n.get().low();
                at = words.has("of", p.word(n.get().next())) ? n.get().next() + 1 : n.get().next();
                at = words.has("times-word", p.word(at)) ? at + 1 : at;
            }
        }
        int before = at > i && words.has("article", p.word(at - 1)) ? at - 1 : at;
        boolean multiplied = at > i;
        Optional<PhraseTable.Match> phrase = words.at("same", p, before).or(sameAt(at));
        if (phrase.isEmpty() && multiplied) {
            phrase = words.at("times-same", p, at);
        }
        if (phrase.isEmpty()) {
            return multiplied ? dittoMeasure(times, i, at) : Optional.empty();
        }
        int next = phrase.get().next();
        boolean shortened = p.at(next).isMark('.') && words.has("amount-short", p.word(next - 1));
        next = shortened && p.at(next + 1).isWord() ? next + 1 : next;
        boolean again = words.has("again", p.word(next));
        Optional<MeasureWords.Found> unit =
                measures.exact(p, next).filter(m -> words.has("of", p.word(m.next())));
        next = unit.map(MeasureWords.Found::next).orElse(next);
        boolean more = multiplied && times.compareTo(Rational.ONE) < 0 && isAgain(phrase.get());
        Rational value = again || more ? times.plus(Rational.ONE) : times;
        return Optional.of(sameAs(value, i, again ? next + 1 : next));
    }

    /** Tells whether a phrase says “again”: “half as much again of”. */
    private boolean isAgain(PhraseTable.Match phrase) {
        return words.has("again", p.word(phrase.next() - 1))
                || words.has("again", p.word(phrase.next() - 2));
    }

    /** Reads “1½ do.”, whose measure stands in the line before. */
    private Optional<Quantity> dittoMeasure(Rational number, int start, int at) {
        return words.at("ditto", p, at)
                .or(() -> dotted(at))
                .map(
                        m -> {
                            int next = p.at(m.next()).isMark('.') ? m.next() + 1 : m.next();
                            Amount amount = Amount.of(number);
                            return Quantity.of(amount, "same", start, next, Hint.DITTO);
                        });
    }

    private Supplier<Optional<PhraseTable.Match>> sameAt(int at) {
        return () -> words.at("same", p, at);
    }

    private Optional<PhraseTable.Match> dotted(int i) {
        boolean opens = i == 0 && p.word(0).equals("same") && p.at(1).isMark(',');
        boolean ditto =
                opens
                        || words.has("same-alone", p.word(i)) && p.at(i + 1).isMark('.')
                        || p.at(i).isMark('"');
        return ditto ? Optional.of(new PhraseTable.Match("", i + 1)) : Optional.empty();
    }

    private static Quantity sameAs(Rational factor, int start, int next) {
        return Quantity.of(Amount.of(factor), "same", start, next, Hint.SAME);
    }

    private Optional<Quantity> equalParts(int i) {
        return words.at("equal", p, i)
                .map(
                        m -> {
                            boolean halves = words.has("half-word", p.word(i));
                            Rational part = halves ? Rational.of(1, 2) : Rational.ONE;
                            Amount amount =
                                    new Amount(
                                            Amount.Kind.EQUAL_PARTS,
                                            Optional.of(part),
                                            Optional.empty());
                            int next = overMark(m.next());
                            return Quantity.of(amount, "part", i, next).forEach(next);
                        });
    }

    /** Passes over the mark in “in equal parts, claret and lemonade”. */
    private int overMark(int i) {
        boolean mark = p.at(i).isMark(',') || p.at(i).isMark(':');
        boolean name = p.at(i + 1).isWord() && !words.has("stop", p.word(i + 1));
        return mark && name ? i + 1 : i;
    }

    /** Reads “℥iv”, “fl. oz. viij”, “gtt. x”: the measure first, as prescriptions do. */
    private Optional<Quantity> signFirst(int i) {
        Optional<Quantity> slip = figureForSign(i).or(() -> fused(i));
        if (slip.isPresent()) {
            return slip;
        }
        int from = i;
        while (words.has("system", p.word(from)) && !words.has("sign-prefix", p.word(from))) {
            from = p.at(from + 1).isMark('.') ? from + 2 : from + 1;
        }
        int at = words.at("sign-prefix", p, from).map(PhraseTable.Match::next).orElse(from);
        at = p.at(at).isMark('.') && at > from ? at + 1 : at;
        Optional<String> sign =
                p.at(at).type() == Token.Type.SIGN
                        ? words.table("sign").value(p.word(at))
                        : Optional.empty();
        int after = at + 1;
        if (sign.isEmpty()) {
            Optional<MeasureWords.Found> found =
                    measures.exact(p, at)
                            .or(letterAt(at))
                            .filter(m -> PHARMACY_FIRST.contains(m.word()));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            sign = found.map(MeasureWords.Found::word);
            after = found.get().next();
        }
        boolean certain = p.at(at).type() == Token.Type.SIGN;
        Optional<Numeral> n = romanOrNumber(after, certain);
        String measure = sign.get();
        return n.map(x -> signRange(x, measure))
                .map(x -> Quantity.of(amount(x), measure, i, compound(x.next())));
    }

    /** Reads “ʒi—ʒij”, both ends with their sign. */
    private Numeral signRange(Numeral low, String measure) {
        Token t = p.at(low.next());
        boolean dash = t.isMark('—') || t.isMark('–');
        int at =
                dash
                        ? low.next() + 1
                        : words.at("range", p, low.next()).map(PhraseTable.Match::next).orElse(-1);
        boolean same =
                at > 0
                        && p.at(at).type() == Token.Type.SIGN
                        && words.table("sign")
                                .value(p.word(at))
                                .filter(measure::equals)
                                .isPresent();
        return !same
                ? low
                : romanOrNumber(at + 1, true)
                        .filter(h -> h.low().compareTo(low.low()) > 0)
                        .map(low::to)
                        .orElse(low);
    }

    /** Passes over the second of “℥i ʒii”. */
    private int compound(int i) {
        boolean sign = p.at(i).type() == Token.Type.SIGN;
        return sign ? romanOrNumber(i + 1, true).map(Numeral::next).orElse(i) : i;
    }

    /** “3ij” is how scanners see “ʒij”. */
    private Optional<Quantity> figureForSign(int i) {
        boolean figure = p.word(i).equals("3") || p.word(i).equals("5");
        Optional<Rational> roman = Roman.parse(p.word(i + 1));
        if (!pharmacy || !figure || roman.isEmpty() || !p.at(i + 1).isWord()) {
            return Optional.empty();
        }
        String measure = p.word(i).equals("3") ? "drachm" : "oz";
        return Optional.of(Quantity.of(Amount.of(roman.get()), measure, i, i + 2, Hint.SLIP));
    }

    /** Reads “Oij”, two pints. */
    private Optional<Quantity> fused(int i) {
        String w = p.word(i);
        boolean certain = pharmacy || w.endsWith("j") || w.endsWith("ss");
        boolean pounds = w.length() > 2 && w.startsWith("lb") && certain;
        if (pounds) {
            Optional<Rational> many = Roman.parse(w.substring(2));
            return many.map(v -> Quantity.of(Amount.of(v), "lb", i, i + 1));
        }
        boolean pints = certain && w.length() > 1 && w.charAt(0) == 'o' && p.at(i).capital();
        return !pints
                ? Optional.empty()
                : Roman.parse(w.substring(1)).map(v -> Quantity.of(Amount.of(v), "pint", i, i + 1));
    }

    private Supplier<Optional<MeasureWords.Found>> letterAt(int at) {
        return () -> letter(at);
    }

    /** Reads “M. viij” for minims and “O iv” for pints. */
    private Optional<MeasureWords.Found> letter(int i) {
        int next = p.at(i + 1).isMark('.') ? i + 2 : i + 1;
        return words.table("measure-first")
                .value(p.word(i))
                .filter(m -> pharmacy)
                .map(m -> new MeasureWords.Found(m, next, false));
    }

    private Optional<Numeral> romanOrNumber(int i, boolean afterSign) {
        Token t = p.at(i);
        Optional<String> latin = words.table("latin").value(t.text());
        if (latin.isPresent()) {
            return Rational.parse(latin.get()).map(v -> Numeral.of(v, i + 1));
        }
        if (t.isWord()) {
            return Roman.parse(t.text())
                    .map(v -> Numeral.of(v, i + 1))
                    .map(this::half)
                    .map(this::afterPoint)
                    .map(this::romanRange);
        }
        boolean number = t.type() == Token.Type.NUMBER || t.type() == Token.Type.FRACTION;
        if (!number) {
            return Optional.empty();
        }
        Optional<Numeral> n = numbers.parse(i);
        return n.filter(x -> afterSign || closes(x.next()));
    }

    private Numeral afterPoint(Numeral n) {
        return p.at(n.next()).isMark('.') ? n.withNext(n.next() + 1) : n;
    }

    /** Reads “v. to x.”. */
    private Numeral romanRange(Numeral low) {
        return words.at("range", p, low.next())
                .filter(m -> Roman.isSmall(p.word(m.next())))
                .flatMap(
                        m ->
                                Roman.parse(p.word(m.next()))
                                        .filter(v -> v.compareTo(low.low()) > 0)
                                        .map(v -> low.to(Numeral.of(v, m.next() + 1))))
                .map(this::afterPoint)
                .orElse(low);
    }

    private Numeral half(Numeral n) {
        return p.word(n.next()).equals("ss")
                ? Numeral.of(n.low().plus(Rational.of(1, 2)), n.next() + 1)
                : n;
    }

    private boolean closes(int i) {
        Token t = p.at(i);
        return t.ends() || t.type() == Token.Type.MARK;
    }

    private Optional<Quantity> vague(int i) {
        Optional<PhraseTable.Match> little = words.at("little", p, i);
        Optional<PhraseTable.Match> found = little.or(() -> words.at("enough", p, i));
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Amount.Kind kind = little.isPresent() ? Amount.Kind.A_LITTLE : Amount.Kind.ENOUGH;
        int next = found.get().next();
        Optional<Quantity> whole = little.isPresent() ? Optional.empty() : upTo(next, i);
        if (whole.isPresent()) {
            return whole;
        }
        int at = words.at("size", p, next).map(PhraseTable.Match::next).orElse(next);
        Optional<Size> size = at > next ? sizeAt(next) : Optional.empty();
        Optional<MeasureWords.Found> measure =
                measures.exact(p, skipPraise(at))
                        .filter(m -> words.has("of", p.word(m.next())) || isPlural(m.next() - 1))
                        .filter(m -> nameFollows(m.next()) || closes(m.next()));
        boolean one =
                p.word(i).equals("a")
                        && next == i + 2
                        && measure.filter(m -> isContainer(m.next() - 1)).isPresent();
        if (one) {
            String word = canonical(measure.get());
            return Optional.of(
                    Quantity.of(Amount.of(Rational.ONE), word, i, measure.get().next())
                            .withMeasure(word, Size.of("small"), measure.get().next()));
        }
        if (measure.isPresent()) {
            return Optional.of(
                    Quantity.of(
                                    Amount.of(kind),
                                    canonical(measure.get()),
                                    i,
                                    measure.get().next(),
                                    Hint.NO_NUMBER)
                            .withMeasure(canonical(measure.get()), size, measure.get().next()));
        }
        return Optional.of(Quantity.of(Amount.of(kind), "unstated", i, next, Hint.NO_NUMBER));
    }

    /** “A little bunch” is one small bunch; “a little drops” is none. */
    private boolean isContainer(int i) {
        return words.has("container", p.word(i)) && words.has("of", p.word(i + 1));
    }

    /** Reads “enough to make one pint”, “q. s. ad ℥vj”: the figure of the whole. */
    private Optional<Quantity> upTo(int i, int start) {
        int at = p.at(i).isMark('.') ? i + 1 : i;
        return words.at("up-to", p, at)
                .flatMap(m -> signFirst(m.next()).or(() -> numbered(m.next())))
                .filter(q -> q.hasMeasure() && !q.isArticle())
                .map(
                        q ->
                                new Quantity(
                                        q.amount(),
                                        q.measure(),
                                        q.size(),
                                        start,
                                        q.next(),
                                        false,
                                        q.others(),
                                        q.hints()));
    }

    private boolean nameFollows(int i) {
        return p.at(i).isWord();
    }

    /** German joins measure and thing without “of”, and its plurals have no common ending. */
    private boolean isPlural(int i) {
        return p.word(i).endsWith("s") || words.language().equals("de");
    }

    private Optional<Quantity> numbered(int i) {
        Optional<Size> before = sizeAt(i).filter(s -> p.at(i + 1).type() != Token.Type.WORD);
        Optional<Numeral> read = numbers.parse(before.isPresent() ? i + 1 : i);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Numeral n = read.get();
        n = repeated(n);
        if (p.at(n.next()).isMark('%') && !numbers.isScanned(n.next())) {
            return Optional.of(Quantity.of(amount(n), "per cent", i, n.next() + 1));
        }
        int at = capacity(n.next());
        Optional<Size> size = before;
        for (int round = 0; round < 3; round++) {
            Optional<Size> here = sizeAt(at);
            if (here.isPresent() && !beginsMeasure(at)) {
                size = here;
                at = words.at("size", p, at).get().next();
            }
            at = skipPraise(at);
        }
        return Optional.of(withMeasure(n, size, i, at));
    }

    /** Passes over what a container holds: “one 5-gallon keg” is one keg. */
    private int capacity(int i) {
        boolean sized =
                p.word(i).equals("no")
                        && p.at(i + 1).isMark('.')
                        && p.at(i + 2).type() == Token.Type.NUMBER
                        && words.at("measure", p, i + 3).isPresent();
        if (sized) {
            return i + 3;
        }
        boolean figure = p.at(i).type() == Token.Type.NUMBER && p.at(i + 1).glued();
        Optional<PhraseTable.Match> holds = words.at("measure", p, i + 1);
        int next = holds.map(PhraseTable.Match::next).orElse(i);
        next = p.at(next).isMark('.') ? next + 1 : next;
        boolean container = figure && next > i && words.at("measure", p, next).isPresent();
        return container ? next : i;
    }

    /** Tells whether a word about size is part of a measure's own name: “petit verre”. */
    private boolean beginsMeasure(int at) {
        int after = words.at("size", p, at).map(PhraseTable.Match::next).orElse(at);
        String size = sizeAt(at).map(Size::word).orElse("");
        Optional<String> alone = words.at("measure", p, after).map(m -> size + " " + m.value());
        return words.at("measure", p, at)
                .filter(m -> m.next() > after)
                .filter(m -> !m.value().equals(alone.orElse("")))
                .isPresent();
    }

    private Quantity withMeasure(Numeral n, Optional<Size> size, int i, int start) {
        return measures.afterNumber(p, start)
                .filter(m -> !n.article() || measureFits(m, i))
                .map(m -> measured(n, m, size, i))
                .orElseGet(() -> unmeasured(n, size, i, size.isPresent() ? start : n.next()));
    }

    /** Passes over the figure in “one (1)” and “one-half (½)”. */
    private Numeral repeated(Numeral n) {
        if (!p.at(n.next()).isMark('(')) {
            return n;
        }
        Optional<Numeral> again =
                numbers.parse(n.next() + 1).filter(x -> !x.article() && p.at(x.next()).isMark(')'));
        return again.map(x -> n.withNext(x.next() + 1)).orElse(n);
    }

    private boolean measureFits(MeasureWords.Found m, int i) {
        return !words.has("not-after-article", p.word(m.next() - 1))
                || words.has("of", p.word(m.next()));
    }

    private Quantity measured(Numeral n, MeasureWords.Found m, Optional<Size> size, int start) {
        Numeral whole = numbers.andFraction(n.withNext(m.next()));
        Numeral range = orMore(whole, m.word());
        Set<Hint> hints = hints(range);
        if (m.slip()) {
            hints.add(Hint.SLIP);
        }
        if (m.open()) {
            hints.add(Hint.OPEN_MEASURE);
        }
        int next =
                words.at("more-than", p, range.next())
                        .map(PhraseTable.Match::next)
                        .orElse(range.next());
        Optional<Numeral> second =
                numbers.parse(next)
                        .filter(
                                x ->
                                        !x.article()
                                                && partlyFull(range.next()).isEmpty()
                                                && measures.exact(p, x.next()).isPresent());
        if (second.isPresent()) {
            hints.add(Hint.COMPOUND);
            next = measures.exact(p, second.get().next()).get().next();
        }
        while (words.has("system", p.word(next))) {
            next = p.at(next + 1).isMark('.') ? next + 2 : next + 1;
        }
        next = remark(parenthesis(next));
        Optional<Numeral> partly = partlyFull(next);
        if (partly.isPresent()) {
            next = partly.get().next();
        }
        Optional<Size> after = sizeAfter(next);
        if (after.isPresent()) {
            next = next + 1;
            next = words.has("with", p.word(next)) ? next + 1 : next;
        }
        boolean fullOf = words.has("full", p.word(next)) && words.has("of", p.word(next + 1));
        next = fullOf ? next + 1 : next;
        Numeral value = partly.orElse(range);
        Amount amount =
                canonical(m).equals("part") && range.fraction() && !n.article()
                        ? Amount.share(range.low())
                        : amount(value);
        return new Quantity(
                amount,
                canonical(m),
                size.or(() -> after),
                start,
                next,
                false,
                others(range),
                hints);
    }

    /** Passes over a remark between the measure and “of”: “(good)”, “(one to two)”. */
    private int parenthesis(int i) {
        if (!p.at(i).isMark('(')) {
            return i;
        }
        for (int j = i + 1; j < i + 6; j++) {
            if (p.at(j).isMark(')')) {
                boolean name = p.at(j + 1).isWord() && !words.has("stop", p.word(j + 1));
                return name ? j + 1 : i;
            }
        }
        return i;
    }

    /** Passes over “, not more,” and “, at the outside,” between the measure and “of”. */
    private int remark(int i) {
        if (!p.at(i).isMark(',')) {
            return i;
        }
        for (int j = i + 1; j < i + 6; j++) {
            if (p.at(j).isMark(',')) {
                return words.has("of", p.word(j + 1)) ? j + 1 : i;
            }
            if (!p.at(j).isWord()) {
                return i;
            }
        }
        return i;
    }

    /** Reads “a wine-glass three parts full of …”. */
    private Optional<Numeral> partlyFull(int i) {
        Optional<PhraseTable.Match> part =
                words.at("part-full", p, i).filter(m -> words.has("full", p.word(m.next())));
        return part.flatMap(m -> Rational.parse(m.value()).map(v -> Numeral.of(v, m.next() + 1)));
    }

    /** Reads “a heaped spoon” set as “a spoon heaped with”. */
    private Optional<Size> sizeAfter(int i) {
        boolean with = words.has("with", p.word(i + 1));
        return with ? sizeAt(i) : Optional.empty();
    }

    /** Reads “a tablespoon or two”, “a pound or a pound and a quarter”. */
    private Numeral orMore(Numeral n, String measure) {
        boolean aside = p.at(n.next()).isMark(',');
        Optional<PhraseTable.Match> link = words.at("range", p, aside ? n.next() + 1 : n.next());
        if (link.isEmpty() || n.high().isPresent()) {
            return n;
        }
        Optional<Numeral> upper = numbers.parse(link.get().next());
        if (upper.isEmpty()) {
            return n;
        }
        Numeral u = upper.get();
        Optional<MeasureWords.Found> again = measures.exact(p, u.next());
        if (again.isPresent() && again.get().word().equals(measure)) {
            Numeral up = numbers.andFraction(u.withNext(again.get().next()));
            boolean closed = aside && p.at(up.next()).isMark(',');
            up = closed ? up.withNext(up.next() + 1) : up;
            boolean fits = !aside || closed && words.has("of", p.word(up.next()));
            return fits && up.low().compareTo(n.low()) > 0 ? n.to(up) : n;
        }
        if (aside) {
            return n;
        }
        boolean ofFollows = words.has("of", p.word(u.next()));
        boolean bare = again.isEmpty() && !u.article() && u.low().isWhole() && ofFollows;
        boolean orTwo = n.low().equals(Rational.ONE) && u.low().equals(Rational.of(2));
        return bare && orTwo || again.isEmpty() && orTwo && closes(u.next()) ? n.to(u) : n;
    }

    private Quantity unmeasured(Numeral n, Optional<Size> size, int start, int next) {
        return new Quantity(amount(n), "", size, start, next, false, others(n), hints(n));
    }

    private static Set<Hint> hints(Numeral n) {
        Set<Hint> hints = EnumSet.noneOf(Hint.class);
        if (n.article()) {
            hints.add(Hint.ARTICLE);
        }
        if (!n.others().isEmpty()) {
            hints.add(Hint.AMBIGUOUS);
        }
        return hints;
    }

    private static List<Amount> others(Numeral n) {
        return n.others().stream().map(Amount::of).toList();
    }

    static Amount amount(Numeral n) {
        return n.high().map(h -> Amount.of(n.low(), h)).orElseGet(() -> Amount.of(n.low()));
    }

    private Optional<Quantity> bareMeasure(int i) {
        Token t = p.at(i);
        int at = i;
        Optional<Size> size = sizeAt(i);
        if (size.isPresent()) {
            at = words.at("size", p, i).get().next();
        }
        boolean praised = words.at("bare-measure", p, at).isEmpty();
        int after = praised ? skipPraise(at) : at;
        at = words.at("bare-measure", p, after).isPresent() ? after : at;
        if (!t.isWord() || words.at("bare-measure", p, at).isEmpty()) {
            return Optional.empty();
        }
        Optional<MeasureWords.Found> found = measures.exact(p, at);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        MeasureWords.Found m = found.get();
        boolean of = words.has("of", p.word(m.next()));
        boolean solid = words.has("needs-of", p.word(m.next() - 1));
        int more = words.at("more-than", p, m.next()).map(PhraseTable.Match::next).orElse(m.next());
        if (more > m.next() && words.has("of", p.word(more))) {
            m = new MeasureWords.Found(m.word(), more, m.slip(), m.open());
        }
        boolean half =
                words.has("and", p.word(m.next()))
                        && numbers.andFraction(Numeral.of(Rational.ONE, m.next())).next()
                                > m.next();
        boolean noun =
                half
                        || p.at(m.next()).isWord()
                                && !words.has("stop", p.word(m.next()))
                                && !words.has("fraction", p.word(m.next()));
        boolean each = words.has("each", p.word(m.next()));
        if (!of && !each && !half && (solid || !noun)) {
            return Optional.empty();
        }
        String last = p.word(m.next() - 1);
        boolean plural = last.endsWith("s") && !last.endsWith("ss");
        Amount amount = plural ? Amount.UNSTATED : Amount.of(Rational.ONE);
        Numeral whole = numbers.andFraction(Numeral.of(Rational.ONE, m.next()));
        boolean added = !plural && whole.next() > m.next();
        Amount total = added ? Amount.of(whole.low()) : amount;
        Quantity q = Quantity.of(total, canonical(m), i, whole.next(), Hint.BARE_MEASURE);
        return Optional.of(q.withMeasure(canonical(m), size, added ? whole.next() : m.next()));
    }

    private String canonical(MeasureWords.Found m) {
        boolean weighed = m.word().equals("dram") && pharmacy;
        return weighed ? "drachm" : m.word();
    }

    Optional<Size> sizeAt(int i) {
        return words.at("size", p, i).flatMap(m -> Size.of(m.value()));
    }

    private int skipPraise(int i) {
        int at = i;
        while (words.has("praise-measure", p.word(at)) && at < i + 3) {
            at++;
        }
        return at;
    }
}
