package org.stillroom.measures.phrase;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.number.Rational;

/**
 * Reads the number at the head of a phrase: “1½”, “1 1/2”, “two or three”, “half a”, “a”.
 *
 * <p>Vulgar fractions are read before anything is folded, because a compatibility folding would
 * make eleven halves of “1½”.
 *
 * @param low the number, or the lower of a range
 * @param high the upper of a range
 * @param rest what follows, without blanks at its ends
 */
record PhraseNumber(Rational low, Optional<Rational> high, String rest) {

    private static final Map<Character, Rational> VULGAR =
            Map.ofEntries(
                    Map.entry('½', Rational.of(1, 2)), Map.entry('⅓', Rational.of(1, 3)),
                    Map.entry('⅔', Rational.of(2, 3)), Map.entry('¼', Rational.of(1, 4)),
                    Map.entry('¾', Rational.of(3, 4)), Map.entry('⅕', Rational.of(1, 5)),
                    Map.entry('⅖', Rational.of(2, 5)), Map.entry('⅗', Rational.of(3, 5)),
                    Map.entry('⅘', Rational.of(4, 5)), Map.entry('⅙', Rational.of(1, 6)),
                    Map.entry('⅚', Rational.of(5, 6)), Map.entry('⅐', Rational.of(1, 7)),
                    Map.entry('⅛', Rational.of(1, 8)), Map.entry('⅜', Rational.of(3, 8)),
                    Map.entry('⅝', Rational.of(5, 8)), Map.entry('⅞', Rational.of(7, 8)),
                    Map.entry('⅑', Rational.of(1, 9)), Map.entry('⅒', Rational.of(1, 10)));

    private static final List<String> SMALL =
            List.of(
                    "zero",
                    "one",
                    "two",
                    "three",
                    "four",
                    "five",
                    "six",
                    "seven",
                    "eight",
                    "nine",
                    "ten",
                    "eleven",
                    "twelve",
                    "thirteen",
                    "fourteen",
                    "fifteen",
                    "sixteen",
                    "seventeen",
                    "eighteen",
                    "nineteen",
                    "twenty");

    private static final Map<String, Rational> WORDS =
            Map.ofEntries(
                    Map.entry("half", Rational.of(1, 2)),
                    Map.entry("third", Rational.of(1, 3)),
                    Map.entry("quarter", Rational.of(1, 4)),
                    Map.entry("dozen", Rational.of(12)),
                    Map.entry("score", Rational.of(20)),
                    Map.entry("couple", Rational.of(2)),
                    Map.entry("pair", Rational.of(2)),
                    Map.entry("thirty", Rational.of(30)),
                    Map.entry("forty", Rational.of(40)),
                    Map.entry("fifty", Rational.of(50)),
                    Map.entry("sixty", Rational.of(60)),
                    Map.entry("hundred", Rational.of(100)),
                    Map.entry("demi", Rational.of(1, 2)),
                    Map.entry("demie", Rational.of(1, 2)),
                    Map.entry("halb", Rational.of(1, 2)),
                    Map.entry("halbe", Rational.of(1, 2)),
                    Map.entry("halber", Rational.of(1, 2)),
                    Map.entry("halbes", Rational.of(1, 2)),
                    Map.entry("viertel", Rational.of(1, 4)),
                    Map.entry("achtel", Rational.of(1, 8)),
                    Map.entry("medio", Rational.of(1, 2)),
                    Map.entry("media", Rational.of(1, 2)));

    /** Numbers of other languages that are no English words. */
    private static final Map<String, Integer> FOREIGN =
            Map.ofEntries(
                    Map.entry("deux", 2),
                    Map.entry("trois", 3),
                    Map.entry("quatre", 4),
                    Map.entry("cinq", 5),
                    Map.entry("sept", 7),
                    Map.entry("huit", 8),
                    Map.entry("neuf", 9),
                    Map.entry("dix", 10),
                    Map.entry("douze", 12),
                    Map.entry("zwei", 2),
                    Map.entry("drei", 3),
                    Map.entry("vier", 4),
                    Map.entry("funf", 5),
                    Map.entry("sechs", 6),
                    Map.entry("sieben", 7),
                    Map.entry("acht", 8),
                    Map.entry("zehn", 10),
                    Map.entry("zwolf", 12),
                    Map.entry("dos", 2),
                    Map.entry("tres", 3),
                    Map.entry("cuatro", 4),
                    Map.entry("cinco", 5),
                    Map.entry("seis", 6),
                    Map.entry("ocho", 8),
                    Map.entry("diez", 10),
                    Map.entry("doce", 12));

    private static final Set<String> ARTICLES =
            Set.of("a", "an", "un", "une", "ein", "eine", "einen", "una", "uno");

    private static final Pattern DIGITS =
            Pattern.compile(
                    "(\\d{1,9})(?:[ -]+(\\d{1,4}) ?[/⁄] ?(\\d{1,4})|[.,](\\d{1,6})"
                            + "| ?[/⁄] ?(\\d{1,4}))?(?![\\d/⁄])");

    private static final Pattern WORD = Pattern.compile("([a-z]+)(?![a-z])");

    private static final Pattern RANGE =
            Pattern.compile("(?:[-–—] ?|to |or |ou |oder |bis |à |o )");

    /** Returns the number at the head, or nothing where there is none. */
    static Optional<PhraseNumber> read(String phrase) {
        return one(phrase).map(PhraseNumber::withRange);
    }

    private static PhraseNumber withRange(PhraseNumber first) {
        Matcher range = RANGE.matcher(first.rest());
        if (!range.lookingAt()) {
            return first;
        }
        return one(first.rest().substring(range.end()))
                .filter(second -> second.low().compareTo(first.low()) > 0)
                .map(s -> new PhraseNumber(first.low(), Optional.of(s.low()), s.rest()))
                .orElse(first);
    }

    private static Optional<PhraseNumber> one(String phrase) {
        if (phrase.isEmpty()) {
            return Optional.empty();
        }
        Rational vulgar = VULGAR.get(phrase.charAt(0));
        if (vulgar != null) {
            return Optional.of(of(vulgar, phrase.substring(1)));
        }
        Matcher digits = DIGITS.matcher(phrase);
        return digits.lookingAt() ? digits(phrase, digits) : word(phrase);
    }

    private static Optional<PhraseNumber> digits(String phrase, Matcher m) {
        String rest = phrase.substring(m.end());
        Rational whole = Rational.of(Long.parseLong(m.group(1)));
        if (m.group(3) != null || m.group(5) != null) {
            boolean mixed = m.group(3) != null;
            long bottom = Long.parseLong(mixed ? m.group(3) : m.group(5));
            if (bottom == 0) {
                return Optional.empty();
            }
            Rational value =
                    mixed
                            ? whole.plus(Rational.of(Long.parseLong(m.group(2)), bottom))
                            : whole.dividedBy(Rational.of(bottom));
            return Optional.of(of(value, rest));
        }
        if (m.group(4) != null) {
            return Rational.parse(m.group(1) + "." + m.group(4)).map(v -> of(v, rest));
        }
        String after = rest.stripLeading();
        Rational vulgar = after.isEmpty() ? null : VULGAR.get(after.charAt(0));
        return Optional.of(
                vulgar == null ? of(whole, rest) : of(whole.plus(vulgar), after.substring(1)));
    }

    private static Optional<PhraseNumber> word(String phrase) {
        Matcher m = WORD.matcher(phrase);
        if (!m.lookingAt()) {
            return Optional.empty();
        }
        String rest = phrase.substring(m.end()).stripLeading();
        String word = m.group(1);
        if (ARTICLES.contains(word)) {
            return Optional.of(
                    one(rest)
                            .filter(n -> WORDS.containsKey(firstWord(rest)))
                            .orElse(of(Rational.ONE, rest)));
        }
        Rational value = value(word);
        if (value == null) {
            return Optional.empty();
        }
        return Optional.of(times(value, rest));
    }

    private static Rational value(String word) {
        int small = SMALL.indexOf(word);
        if (FOREIGN.containsKey(word)) {
            return Rational.of(FOREIGN.get(word));
        }
        return small >= 0 ? Rational.of(small) : WORDS.get(word);
    }

    /** Joins “half a dozen”, “three quarters of a”, “one and a half”. */
    private static PhraseNumber times(Rational value, String rest) {
        String next = firstWord(rest);
        if (rest.startsWith("and a half ") || rest.equals("and a half")) {
            return of(value.plus(Rational.of(1, 2)), rest.substring("and a half".length()));
        }
        String one = next.endsWith("s") ? next.substring(0, next.length() - 1) : next;
        if (WORDS.containsKey(one) && !value.equals(WORDS.get("half"))) {
            String after = rest.substring(next.length()).stripLeading();
            return of(value.times(WORDS.get(one)), withoutArticle(after));
        }
        String after = withoutArticle(rest);
        boolean dozen = value.compareTo(Rational.ONE) < 0 && firstWord(after).equals("dozen");
        return dozen
                ? of(value.times(Rational.of(12)), after.substring("dozen".length()))
                : of(value, after);
    }

    private static String withoutArticle(String rest) {
        return rest.replaceFirst("^(?:of )?(?:an? |the )", "")
                .replaceFirst("^(?:de |d'une? |d'|von )", "");
    }

    private static String firstWord(String rest) {
        int blank = rest.indexOf(' ');
        return blank < 0 ? rest : rest.substring(0, blank);
    }

    private static PhraseNumber of(Rational value, String rest) {
        return new PhraseNumber(value, Optional.empty(), rest.stripLeading());
    }
}
