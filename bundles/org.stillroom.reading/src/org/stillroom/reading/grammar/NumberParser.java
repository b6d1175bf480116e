package org.stillroom.reading.grammar;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.number.Rational;

/**
 * Reads a number from tokens, exactly, in every form in which recipes print one.
 *
 * <p>Single characters for fractions are those of the Unicode blocks Latin-1 Supplement and Number
 * Forms; their values are given there by name.
 */
final class NumberParser {

    private static final Map<String, Rational> CHARACTERS =
            Map.ofEntries(
                    Map.entry("¼", Rational.of(1, 4)),
                    Map.entry("½", Rational.of(1, 2)),
                    Map.entry("¾", Rational.of(3, 4)),
                    Map.entry("⅐", Rational.of(1, 7)),
                    Map.entry("⅑", Rational.of(1, 9)),
                    Map.entry("⅒", Rational.of(1, 10)),
                    Map.entry("⅓", Rational.of(1, 3)),
                    Map.entry("⅔", Rational.of(2, 3)),
                    Map.entry("⅕", Rational.of(1, 5)),
                    Map.entry("⅖", Rational.of(2, 5)),
                    Map.entry("⅗", Rational.of(3, 5)),
                    Map.entry("⅘", Rational.of(4, 5)),
                    Map.entry("⅙", Rational.of(1, 6)),
                    Map.entry("⅚", Rational.of(5, 6)),
                    Map.entry("⅛", Rational.of(1, 8)),
                    Map.entry("⅜", Rational.of(3, 8)),
                    Map.entry("⅝", Rational.of(5, 8)),
                    Map.entry("⅞", Rational.of(7, 8)),
                    Map.entry("↉", Rational.ZERO));
    private static final Rational HALF = Rational.of(1, 2);
    private static final Rational THREE_QUARTERS = Rational.of(3, 4);
    private static final Set<Integer> USUAL_DENOMINATORS = Set.of(2, 3, 4, 5, 6, 8, 10, 16);

    /** Signs that scanners put where a fraction was printed. */
    private static final String SMUDGES = "¥£§\\^*#";

    private static final Rational HIGHEST_ROMAN = Rational.of(40);
    private static final Set<String> ONES = Set.of("l", "i", "j", "|", "!", "1");

    private final Vocabulary words;
    private final Passage p;

    NumberParser(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
    }

    /** Reads a number or a range that starts at a token. */
    Optional<Numeral> parse(int index) {
        int start = words.at("about", p, index).map(PhraseTable.Match::next).orElse(index);
        boolean between = words.has("between", p.word(index));
        Optional<Numeral> first = single(between ? index + 1 : start);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        if (between && words.has("and", p.word(first.get().next()))) {
            Numeral low = first.get();
            return Optional.of(single(low.next() + 1).map(low::to).orElse(low));
        }
        Numeral n = range(first.get());
        Optional<PhraseTable.Match> more = words.at("more-than", p, n.next());
        return Optional.of(more.isPresent() ? n.withNext(more.get().next()) : n);
    }

    private Numeral range(Numeral first) {
        Numeral range = first;
        for (int round = 0; round < 3; round++) {
            int link = link(range.next());
            if (link < 0 || range.article() && round == 0 && !dozenFollows(link)) {
                return range;
            }
            Optional<Numeral> second = single(link);
            if (second.isEmpty() || second.get().article()) {
                return range;
            }
            Numeral upper = second.get();
            boolean aside = p.at(range.next()).isMark(',') && p.at(upper.next()).isMark(',');
            range = range.to(aside ? upper.withNext(upper.next() + 1) : upper);
        }
        return range;
    }

    private boolean dozenFollows(int index) {
        return words.has("multiple", p.word(index)) || words.has("article", p.word(index));
    }

    /** Returns the token after a word or mark that joins the ends of a range, or -1. */
    private int link(int i) {
        Token t = p.at(i);
        if (t.isMark('–') || t.isMark('—') || t.isMark('@')) {
            return i + 1;
        }
        Optional<PhraseTable.Match> phrase = words.at("range", p, i);
        if (phrase.isPresent()) {
            return phrase.get().next();
        }
        if (t.isMark('&') && isDigits(p.at(i - 1)) && isDigits(p.at(i + 1))) {
            return i + 1;
        }
        if (t.isMark(',')) {
            Optional<PhraseTable.Match> or = words.at("range", p, i + 1);
            if (or.isPresent()
                    && words.has("number", p.word(or.get().next()))
                    && words.has("number", p.word(i - 1))) {
                return or.get().next();
            }
            boolean number =
                    p.at(i + 1).type() == Token.Type.NUMBER || words.has("number", p.word(i + 1));
            boolean again = p.at(i + 2).isMark(',') || words.at("range", p, i + 2).isPresent();
            return number && again && p.at(i + 1).isWord() ? i + 1 : -1;
        }
        boolean glued = t.glued() && (words.has("number", t.text()) || isDigits(t));
        return glued ? i : -1;
    }

    private Optional<Numeral> single(int i) {
        Token t = p.at(i);
        return switch (t.type()) {
            case FRACTION -> Optional.of(fractionCharacter(i));
            case NUMBER -> Optional.of(digits(i));
            case MARK -> mark(i);
            case WORD -> word(i);
            default -> Optional.empty();
        };
    }

    private Numeral fractionCharacter(int i) {
        if (p.word(i).equals("⅟")) {
            return isDigits(p.at(i + 1)) && value(p.at(i + 1)).signum() > 0
                    ? ofA(Numeral.of(Rational.ONE.dividedBy(value(p.at(i + 1))), i + 2))
                    : Numeral.of(Rational.ONE, i + 1);
        }
        return ofA(Numeral.of(CHARACTERS.get(p.word(i)), i + 1));
    }

    private Optional<Numeral> mark(int i) {
        Token t = p.at(i);
        if (t.isMark('}') && isDigits(p.at(i + 1)) && !p.at(i + 1).spaced()) {
            Rational under = value(p.at(i + 1));
            return Optional.of(under)
                    .filter(u -> u.signum() > 0)
                    .map(
                            u ->
                                    Numeral.of(Rational.ONE.dividedBy(u), i + 2)
                                            .or(u, "“}” is read as 1/"));
        }
        boolean sign = SMUDGES.indexOf(t.text()) >= 0 && t.text().length() == 1;
        if (sign && isDigits(p.at(i + 1)) && !p.at(i + 1).spaced() && !slash(p.at(i + 2))) {
            Rational under = value(p.at(i + 1));
            return Optional.of(under)
                    .filter(u -> USUAL_DENOMINATORS.contains(u.numerator().intValue()))
                    .map(u -> Numeral.of(Rational.ONE.dividedBy(u), i + 2))
                    .map(n -> n.or(under, "“" + t.text() + "” stands where a fraction may be"));
        }
        if (sign && measureAt(i + 1) && !isDigits(p.at(i - 1))) {
            return Optional.of(
                    Numeral.of(HALF, i + 1)
                            .or(Rational.ONE, "“" + t.text() + "” stands where a number was"));
        }
        boolean quote = t.isMark('\'') || t.isMark('"') || t.isMark('`');
        if (quote && slash(p.at(i + 1)) && isDigits(p.at(i + 2)) && !p.at(i + 2).spaced()) {
            Numeral read = over(Rational.ONE, i + 2);
            return Optional.of(
                    ofA(read).or(value(p.at(i + 2)), "“" + t.text() + "/” is read as 1/"));
        }
        boolean point = t.isMark('.') && isDigits(p.at(i + 1)) && !p.at(i + 1).spaced();
        if (point && !p.at(i - 1).isMark('.') && p.at(i + 2).isWord() && startsWord(i)) {
            return Optional.of(Numeral.of(decimal(p.at(i + 1)), i + 2));
        }
        boolean bar = t.isMark('|') || t.isMark('!');
        if (bar && slash(p.at(i + 1)) && isDigits(p.at(i + 2))) {
            return Optional.of(ofA(over(Rational.ONE, i + 2)));
        }
        boolean lonely =
                !isDigits(p.at(i - 1)) && (p.at(i + 1).isWord() || p.at(i + 1).isMark('.'));
        if (t.isMark('%') && lonely) {
            int next = p.at(i + 1).isMark('.') ? i + 2 : i + 1;
            Numeral threeQuarters = Numeral.of(Rational.of(3, 4), next);
            return Optional.of(
                    threeQuarters.or(Rational.of(1, 2), "“%” stands where a fraction was printed"));
        }
        return Optional.empty();
    }

    /** A point that no word goes before begins a decimal number: “.5 rye”. */
    private boolean startsWord(int i) {
        return i == 0 || p.at(i).spaced() || p.at(i - 1).ends();
    }

    private static Rational decimal(Token digits) {
        return Rational.of(new BigDecimal("0." + digits.text()));
    }

    private Numeral digits(int i) {
        Rational whole = value(p.at(i));
        Token next = p.at(i + 1);
        Optional<Numeral> scanned = scanned(i, whole);
        if (scanned.isPresent()) {
            return scanned.get();
        }
        if (slash(next) && isDigits(p.at(i + 2)) && value(p.at(i + 2)).signum() > 0) {
            return runTogether(i).orElseGet(() -> ofA(over(whole, i + 2)));
        }
        boolean oneOver = ONES.contains(next.text()) && !next.glued() && slash(p.at(i + 2));
        if (oneOver && isDigits(p.at(i + 3)) && value(p.at(i + 3)).signum() > 0) {
            Numeral fraction = over(Rational.ONE, i + 3);
            return Numeral.of(whole.plus(fraction.low()), fraction.next())
                    .or(whole, "“" + next.text() + "” is read as 1");
        }
        boolean slashAfter = isDigits(next) && slash(p.at(i + 2)) && isDigits(p.at(i + 3));
        if (slashAfter && next.glued() && value(p.at(i + 3)).signum() > 0) {
            Numeral fraction = over(value(next), i + 3);
            return Numeral.of(whole.plus(fraction.low()), fraction.next());
        }
        if (next.type() == Token.Type.FRACTION && CHARACTERS.containsKey(next.text())) {
            return Numeral.of(whole.plus(CHARACTERS.get(next.text())), i + 2);
        }
        boolean mixed = isDigits(next) && !next.glued();
        if (mixed
                && slash(p.at(i + 2))
                && isDigits(p.at(i + 3))
                && value(p.at(i + 3)).signum() > 0) {
            Numeral fraction = over(value(next), i + 3);
            return Numeral.of(whole.plus(fraction.low()), fraction.next());
        }
        if (mixed && isDigits(p.at(i + 2)) && p.at(i + 2).glued()) {
            Numeral fraction = dashed(i + 1, true);
            return fraction.high().isPresent()
                    ? Numeral.of(whole, i + 1)
                    : Numeral.of(whole.plus(fraction.low()), fraction.next())
                            .or(whole, "a hyphen may stand for the bar of a fraction");
        }
        Token after = p.at(i + 2);
        boolean mixedAbove =
                isDigits(next)
                        && next.glued()
                        && after.type() == Token.Type.FRACTION
                        && CHARACTERS.containsKey(after.text());
        if (mixedAbove) {
            Rational high = value(next).plus(CHARACTERS.get(after.text()));
            return Numeral.of(whole, i + 1).to(Numeral.of(high, i + 3));
        }
        if (isDigits(next) && next.glued()) {
            return dashed(i, false);
        }
        return andDirectly(multiplied(Numeral.of(whole, i + 1)));
    }

    /** Reads “11/2” as 1 1/2: nobody prints eleven halves. */
    private Optional<Numeral> runTogether(int i) {
        String above = p.word(i);
        Rational below = value(p.at(i + 2));
        if (above.length() < 2 || above.length() > 3 || !below.isWhole()) {
            return Optional.empty();
        }
        int cut = above.length() - 1;
        Rational last = Rational.of(above.charAt(cut) - '0');
        boolean proper = last.signum() > 0 && last.compareTo(below) < 0;
        boolean usual = USUAL_DENOMINATORS.contains(below.numerator().intValue());
        if (!proper || !usual || value(p.at(i)).compareTo(below) <= 0) {
            return Optional.empty();
        }
        Rational whole = Rational.of(new BigDecimal(above.substring(0, cut)));
        Rational sum = whole.plus(last.dividedBy(below));
        return Optional.of(
                Numeral.of(sum, i + 3)
                        .or(
                                value(p.at(i)).dividedBy(below),
                                "the whole and its fraction stand together"));
    }

    /** Reads “1^”, “1 %”, “1 y2”, “3A” and “1/z”, as scanners see 1½, 1¾ and ¾. */
    private Optional<Numeral> scanned(int i, Rational whole) {
        Token next = p.at(i + 1);
        boolean smudge = next.isMark('^') || next.isMark('£') || next.isMark('¥');
        if (smudge && !next.spaced()) {
            int after = isDigits(p.at(i + 2)) && !p.at(i + 2).spaced() ? i + 3 : i + 2;
            return Optional.of(mixed(whole, HALF, after, next.text()));
        }
        boolean equals = next.isMark('=') && !next.spaced() && isDigits(p.at(i + 2));
        if (equals && isUsual(p.at(i + 2)) && whole.compareTo(value(p.at(i + 2))) < 0) {
            return Optional.of(ofA(over(whole, i + 2)).or(whole, "“=” is read as the bar"));
        }
        if (isScanned(i + 1) && next.isMark('%')) {
            return Optional.of(mixed(whole, THREE_QUARTERS, i + 2, "%"));
        }
        Optional<String> fraction =
                next.isWord() && measureAt(i + 2)
                        ? words.table("scanned-fraction").value(next.text())
                        : Optional.empty();
        if (fraction.isPresent()) {
            return Optional.of(mixed(whole, rational(fraction.get()), i + 2, next.text()));
        }
        boolean quarter = whole.equals(Rational.ONE) && next.text().equals("a") && !next.spaced();
        if (quarter && next.capital() && measureAt(i + 2)) {
            return Optional.of(Numeral.of(Rational.of(1, 4), i + 2).or(whole, "“1A” is read as ¼"));
        }
        boolean three = whole.equals(Rational.of(3)) && next.text().equals("a") && !next.spaced();
        if (three && next.capital()) {
            return Optional.of(Numeral.of(THREE_QUARTERS, i + 2).or(whole, "“3A” is read as ¾"));
        }
        boolean two = slash(next) && words.has("scanned-two", p.word(i + 2)) && measureAt(i + 3);
        return two
                ? Optional.of(
                        Numeral.of(whole.dividedBy(Rational.of(2)), i + 3)
                                .or(whole, "“/" + p.word(i + 2) + "” is read as /2"))
                : Optional.empty();
    }

    private static Numeral mixed(Rational whole, Rational fraction, int next, String sign) {
        return Numeral.of(whole.plus(fraction), next)
                .or(whole, "“" + sign + "” stands where a fraction was printed");
    }

    /** Tells whether “%” stands for a fraction: a measure comes after it. */
    boolean isScanned(int i) {
        return p.at(i).isMark('%') && measureAt(i + 1);
    }

    private Numeral over(Rational above, int below) {
        Rational under = value(p.at(below));
        return under.signum() == 0
                ? Numeral.of(above, below + 1)
                : Numeral.of(above.dividedBy(under), below + 1);
    }

    /** Reads “1-2”, a fraction set with a hyphen or a range. */
    private Numeral dashed(int i, boolean afterWhole) {
        Rational above = value(p.at(i));
        Rational below = value(p.at(i + 1));
        Rational gap = below.minus(above);
        boolean possible =
                above.isWhole()
                        && below.isWhole()
                        && above.signum() > 0
                        && above.compareTo(below) < 0
                        && above.numerator().gcd(below.numerator()).equals(BigInteger.ONE)
                        && below.compareTo(Rational.of(64)) <= 0
                        && USUAL_DENOMINATORS.contains(below.numerator().intValue());
        Numeral range = Numeral.of(above, i + 1).to(Numeral.of(below, i + 2));
        if (!possible) {
            return range;
        }
        Numeral fraction = ofA(Numeral.of(above.dividedBy(below), i + 2));
        boolean plural = pluralFollows(i + 2);
        if (afterWhole || !plural) {
            return fraction.or(above, "a hyphen may stand for a bar or for “to”");
        }
        boolean step = gap.compareTo(Rational.of(2)) <= 0 || below.compareTo(Rational.of(8)) > 0;
        Numeral likely = step ? range : fraction;
        Rational other = step ? fraction.low() : above;
        return likely.or(other, "a hyphen may stand for a bar or for “to”");
    }

    private boolean pluralFollows(int i) {
        int at = words.at("size", p, i).map(PhraseTable.Match::next).orElse(i);
        Optional<PhraseTable.Match> measure = words.at("measure", p, at);
        if (measure.isPresent()) {
            String last = p.word(measure.get().next() - 1);
            return last.endsWith("s") && !last.equals("glass");
        }
        String first = p.word(at);
        return words.has("countable", first) && first.endsWith("s")
                || words.has("countable", p.word(at + 1)) && p.word(at + 1).endsWith("s");
    }

    private Optional<Numeral> word(int i) {
        String w = p.word(i);
        if (w.equals("j") && p.at(i).capital() && measureAt(i + 1)) {
            return Optional.of(Numeral.of(HALF, i + 1).or(Rational.ONE, "“J” is read as ½"));
        }
        boolean barred = ONES.contains(w) && isDigits(p.at(i + 1)) && p.at(i + 1).glued();
        if (barred && isUsual(p.at(i + 1))) {
            return Optional.of(
                    ofA(over(Rational.ONE, i + 1)).or(Rational.ONE, "“" + w + "-” is read as 1/"));
        }
        if (ONES.contains(w) && slash(p.at(i + 1)) && isDigits(p.at(i + 2))) {
            return Optional.of(
                    ofA(over(Rational.ONE, i + 2)).or(Rational.ONE, "“" + w + "” is read as 1"));
        }
        Optional<String> scanned = words.table("scanned-fraction").value(w);
        boolean thing = measureAt(i + 1) || words.has("of", p.word(i + 1));
        boolean opens = i == 0 && p.at(1).isWord() && !words.knows(w);
        if (scanned.isPresent() && (thing || opens || words.has("countable", p.word(i + 1)))) {
            return Optional.of(
                    ofA(Numeral.of(rational(scanned.get()), i + 1))
                            .or(Rational.ONE, "“" + w + "” is read as " + scanned.get()));
        }
        boolean counted = measureAt(i + 1) || words.has("countable", p.word(i + 1));
        if (ONES.contains(w) && w.length() == 1 && counted) {
            return Optional.of(andDirectly(Numeral.of(Rational.ONE, i + 1)));
        }
        Optional<Rational> roman =
                !Roman.isSmall(w)
                        ? Optional.empty()
                        : Roman.parse(w).filter(v -> v.compareTo(HIGHEST_ROMAN) <= 0);
        if (roman.isPresent() && measureAt(i + 1)) {
            return Optional.of(Numeral.of(roman.get(), i + 1));
        }
        if (words.has("multiple", w)) {
            return multiple(i).map(this::andDirectly);
        }
        if (words.has("number", w)) {
            return Optional.of(andDirectly(multiplied(wordNumber(i))));
        }
        if (words.has("fraction", w)) {
            return Optional.of(ofA(Numeral.of(fraction(w), i + 1)));
        }
        if (words.has("article", w)) {
            return Optional.of(article(i));
        }
        return misspelt(i);
    }

    /** Reads “tbree” and “oue”, whose letters type or a scanner has confused. */
    private Optional<Numeral> misspelt(int i) {
        String w = p.word(i);
        boolean follows =
                p.at(i + 1).isWord()
                        && (measureAt(i + 1)
                                || words.has("countable", p.word(i + 1))
                                || words.has("article", p.word(i + 1))
                                || words.has("fraction", p.word(i + 1)));
        return !follows || words.knows(w)
                ? Optional.empty()
                : words.likeNumber(w)
                        .map(v -> Numeral.of(rational(v), i + 1))
                        .filter(n -> n.fraction() || !words.has("article", p.word(i + 1)))
                        .map(n -> n.fraction() ? ofA(n) : andDirectly(multiplied(n)));
    }

    /** Reads “a dozen”, “a half”, “the third part of”, “a couple of”, or “a” alone. */
    private Numeral article(int i) {
        int next = i + 1;
        String w = p.word(next);
        if (words.has("multiple", w)) {
            return andDirectly(multiplied(Numeral.of(Rational.ONE, next)));
        }
        boolean single = w.equals("single");
        if (words.has("number", w) && !single) {
            return words.has("article-number", w) ? skipOf(wordNumber(next)) : wordNumber(next);
        }
        if (single) {
            return Numeral.of(Rational.ONE, next + 1);
        }
        boolean size =
                isDigits(p.at(next))
                        && p.at(next + 1).glued()
                        && words.has("length", p.word(next + 1));
        if (size) {
            return Numeral.article(next + 2);
        }
        if (words.has("fraction", w)) {
            return ofA(Numeral.of(fraction(w), next + 1));
        }
        return Numeral.article(next);
    }

    private Optional<Numeral> multiple(int i) {
        boolean counts = p.at(i + 1).isWord();
        return counts ? Optional.of(multiplied(Numeral.of(Rational.ONE, i))) : Optional.empty();
    }

    /** Reads “five-and-twenty”, “thirty-six”, “one hundred and fifty”. */
    private Numeral wordNumber(int i) {
        Rational value = number(p.word(i));
        int next = i + 1;
        boolean small = value.compareTo(Rational.of(10)) < 0;
        if (small && words.has("and", p.word(next)) && isTens(next + 1)) {
            return Numeral.of(value.plus(number(p.word(next + 1))), next + 2);
        }
        boolean tens = value.compareTo(Rational.of(20)) >= 0;
        if (tens
                && words.has("number", p.word(next))
                && number(p.word(next)).compareTo(Rational.of(10)) < 0) {
            return Numeral.of(value.plus(number(p.word(next))), next + 1);
        }
        Numeral one = Numeral.of(value, next);
        return words.has("article-number", p.word(i)) ? skipOf(one) : one;
    }

    private boolean isTens(int i) {
        return words.has("number", p.word(i))
                && number(p.word(i)).compareTo(Rational.of(20)) >= 0
                && !words.has("article-number", p.word(i));
    }

    /** Multiplies by “dozen”, “hundred” or by a fraction that follows: “two thirds”. */
    private Numeral multiplied(Numeral n) {
        Token t = p.at(n.next());
        Optional<String> many = words.table("multiple").value(t.text());
        if (many.isPresent()) {
            Numeral times = n.times(rational(many.get()), n.next() + 1);
            boolean point = p.at(times.next()).isMark('.') && t.text().length() < 4;
            Numeral whole = point ? times.withNext(times.next() + 1) : times;
            Numeral more = hundreds(whole, t.text());
            boolean half = words.has("and", p.word(more.next()));
            return half ? more : skipOf(more);
        }
        boolean dash = t.isMark('—') || t.isMark('–');
        if (dash && words.has("fraction", p.word(n.next() + 1)) && p.at(n.next() - 1).isWord()) {
            return ofA(n.times(fraction(p.word(n.next() + 1)), n.next() + 2));
        }
        boolean part = words.has("fraction", t.text()) && !words.has("and", t.text());
        return part ? ofA(n.times(fraction(t.text()), n.next() + 1)) : n;
    }

    private Numeral hundreds(Numeral n, String multiple) {
        boolean large = multiple.equals("hundred") || multiple.equals("thousand");
        int at = words.has("and", p.word(n.next())) ? n.next() + 1 : n.next();
        if (!large || !words.has("number", p.word(at)) || words.has("article", p.word(at))) {
            return n;
        }
        Numeral rest = wordNumber(at);
        return n.plus(rest.low(), rest.next());
    }

    /** Adds “and a half” that follows a number at once: “one and a half”. */
    private Numeral andDirectly(Numeral n) {
        return andFraction(n, true);
    }

    /** Adds “and a half”, “and one quarter”, “& ½” that follows a measure. */
    Numeral andFraction(Numeral n) {
        return andFraction(n, false);
    }

    private Numeral andFraction(Numeral n, boolean directly) {
        if (!words.has("and", p.word(n.next())) && !p.at(n.next()).isMark('&')) {
            return n;
        }
        Optional<Numeral> more = fractionAt(n.next() + 1, directly);
        if (more.isEmpty()) {
            return n;
        }
        Rational extra =
                words.has("multiple", p.word(n.next() - 1))
                        ? more.get()
                                .low()
                                .times(
                                        rational(
                                                words.table("multiple")
                                                        .value(p.word(n.next() - 1))
                                                        .orElse("1")))
                        : more.get().low();
        Numeral sum = n.plus(extra, more.get().next());
        boolean dozens = directly && words.has("multiple", p.word(sum.next()));
        return dozens ? skipOf(sum.times(times(sum.next()), sum.next() + 1)) : sum;
    }

    /** Reads a fraction alone: “a half”, “three quarters”, “½”, “1/4”. */
    private Optional<Numeral> fractionAt(int i, boolean directly) {
        Token t = p.at(i);
        if (t.type() == Token.Type.FRACTION) {
            return Optional.of(Numeral.of(CHARACTERS.getOrDefault(t.text(), Rational.ONE), i + 1));
        }
        if (isDigits(t) && slash(p.at(i + 1)) && isDigits(p.at(i + 2))) {
            return Optional.of(over(value(t), i + 2)).filter(n -> !n.low().isWhole());
        }
        boolean counted = words.has("article", t.text()) || words.has("number", t.text());
        int at = counted ? i + 1 : i;
        if (!words.has("fraction", p.word(at))) {
            return Optional.empty();
        }
        Rational times =
                words.table("number")
                        .value(t.text())
                        .map(NumberParser::rational)
                        .orElse(Rational.ONE);
        boolean thing =
                words.has("countable", p.word(at + 3)) || words.has("countable", p.word(at + 4));
        boolean ofSomethingElse =
                words.has("of", p.word(at + 1)) && words.has("article", p.word(at + 2)) && thing;
        boolean another =
                words.has("article", p.word(at + 1))
                        || !directly && measureAt(at + 1) && !isPlural(at + 1);
        return ofSomethingElse || another
                ? Optional.empty()
                : Optional.of(Numeral.of(times.times(fraction(p.word(at))), at + 1));
    }

    private boolean isPlural(int i) {
        return p.word(i).endsWith("s") && !p.word(i).equals("glass");
    }

    /** Passes over “of a”, “a”, “part of a”, “of the” after a fraction. */
    private Numeral ofA(Numeral n) {
        int at = n.next();
        if (words.has("part-word", p.word(at)) && words.has("of", p.word(at + 1))) {
            at++;
        }
        int article = words.has("of", p.word(at)) ? at + 1 : at;
        boolean ofOne = article > at && p.word(article).equals("1");
        if (ofOne) {
            return n.withNext(article + 1);
        }
        if (article > at && n.fraction() && measureAt(article)) {
            return n.withNext(article);
        }
        boolean manyFollows = words.has("multiple", p.word(article + 1));
        if (words.has("article", p.word(article))
                && words.has("fraction", p.word(article + 1))
                && words.has("of", p.word(article + 2))) {
            return ofA(n.times(fraction(p.word(article + 1)), article + 2));
        }
        if (words.has("article", p.word(article))) {
            return manyFollows && n.high().isEmpty()
                    ? skipOf(n.times(times(article + 1), article + 2))
                    : n.withNext(article + 1);
        }
        if (words.has("multiple", p.word(article)) && n.high().isEmpty()) {
            return skipOf(n.times(times(article), article + 1));
        }
        return n;
    }

    private Rational times(int i) {
        return rational(words.table("multiple").value(p.word(i)).orElse("1"));
    }

    private Numeral skipOf(Numeral n) {
        return words.has("of", p.word(n.next())) ? n.withNext(n.next() + 1) : n;
    }

    private boolean measureAt(int i) {
        int at = words.at("size", p, i).map(PhraseTable.Match::next).orElse(i);
        return words.at("measure", p, at).isPresent();
    }

    private static boolean isUsual(Token below) {
        Rational under = value(below);
        return under.isWhole() && USUAL_DENOMINATORS.contains(under.numerator().intValue());
    }

    private static boolean slash(Token t) {
        return t.isMark('/') || t.isMark('⁄');
    }

    private static boolean isDigits(Token t) {
        return t.type() == Token.Type.NUMBER;
    }

    private static Rational value(Token t) {
        String digits = t.text();
        if (digits.matches("\\d{1,3},\\d{3}")) {
            return Rational.of(new BigInteger(digits.replace(",", "")), BigInteger.ONE);
        }
        return Rational.of(new BigDecimal(digits.replace(',', '.')));
    }

    private Rational number(String word) {
        return words.table("number").value(word).map(NumberParser::rational).orElse(Rational.ONE);
    }

    private Rational fraction(String word) {
        return words.table("fraction").value(word).map(NumberParser::rational).orElse(Rational.ONE);
    }

    private static Rational rational(String text) {
        return Rational.parse(text).orElseThrow();
    }
}
