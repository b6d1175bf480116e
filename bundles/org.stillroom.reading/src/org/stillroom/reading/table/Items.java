package org.stillroom.reading.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.measures.phrase.MeasurePhrase;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;

/** Finds the amounts and numbers in folded words, in their order. */
final class Items {

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final int LONGEST = 3;

    private static final Pattern TOKEN =
            Pattern.compile(
                    "\\d+(?:[.,]\\d+)?(?: ?[/⁄] ?\\d+)?|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|f?[℥ʒ]"
                            + "|\\p{L}[\\p{L}']*(?:-\\p{L}[\\p{L}']*)*\\.?");

    /** Words that no book means as a measure when it explains its measures. */
    private static final Set<String> NOT_MEANT =
            Set.of(
                    "drink",
                    "cocktail",
                    "measure",
                    "go",
                    "mass",
                    "float",
                    "double",
                    "sho",
                    "kan",
                    "copa",
                    "whole",
                    "part",
                    "piece",
                    "dozen",
                    "shaku",
                    "pot",
                    "finger");

    private static final Set<String> NUMBERS =
            Set.of(
                    "a",
                    "an",
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
                    "eighteen",
                    "twenty",
                    "thirty",
                    "forty",
                    "fifty",
                    "sixty",
                    "hundred",
                    "half",
                    "quarter",
                    "quarters",
                    "third",
                    "thirds",
                    "fourth",
                    "eighth",
                    "sixth",
                    "dozen",
                    "couple");

    private static final Set<String> INSIDE = Set.of("and", "of", "to", "or", "the", "a", "an");

    private static final Set<String> BEFORE =
            Set.of(
                    "the",
                    "my",
                    "our",
                    "your",
                    "this",
                    "that",
                    "such",
                    "each",
                    "every",
                    "about",
                    "any",
                    "common",
                    "ordinary",
                    "usual",
                    "middling",
                    "good",
                    "large",
                    "small",
                    "great",
                    "little",
                    "moderate",
                    "level",
                    "heaped",
                    "heaping",
                    "full");

    private static final Pattern TIMES =
            Pattern.compile(
                    "\\b(half|twice|double|three times|the same|as much)"
                            + "(?: as much| that(?: quantity| amount)?| the quantity| of it)?\\b");

    private static final Pattern DITTO = Pattern.compile("(?<=[\\d½¼¾⅓⅔⅛] ?)(do\\.|ditto|\"|〃)");

    /** Numbers that an article may stand before: “a dozen”, not “a 2”. */
    private static final Set<String> AFTER_ARTICLE =
            Set.of("half", "quarter", "third", "fourth", "dozen", "couple", "hundred", "score");

    private static final Pattern HALF_AFTER =
            Pattern.compile(
                    "and (?:a|one) half|et demie?|y medi[oa]|und eine?n? halbe?[rsn]?|u\\. eine halbe");

    private static final Pattern ELISION = Pattern.compile("(?<=\\b[dl])'(?=\\p{L})|(?<=\\bdemi)-");

    private final MeasureWords words;
    private final String language;
    private final Tongue tongue;
    private final Map<String, String> labels = new HashMap<>();

    Items(MeasureWords words) {
        this(words, "en");
    }

    Items(MeasureWords words, String language) {
        this.words = words;
        this.language = language;
        this.tongue = Tongue.of(language);
        words.labels()
                .forEach(
                        (label, word) ->
                                words.canonical(word)
                                        .filter(Items::isMeant)
                                        .ifPresent(w -> labels.put(label, word)));
        labels.keySet().removeIf(l -> tongue.isInside(l) || tongue.isNumber(l));
        tongue.measures()
                .forEach(
                        (label, word) ->
                                words.find(word)
                                        .filter(Items::isMeant)
                                        .ifPresent(
                                                w ->
                                                        labels.put(
                                                                label.replace('-', ' '),
                                                                w.word())));
    }

    String language() {
        return language;
    }

    /** Returns how many of the words tell that they are of its language. */
    int telling(List<String> tokens) {
        return tongue.telling(tokens);
    }

    private static boolean isMeant(MeasureWord word) {
        return word.dimension().isPresent()
                && !NOT_MEANT.contains(word.word())
                && word.kind() != MeasureWord.Kind.FRUIT;
    }

    /** A word with its place. */
    private record Token(String text, int start, int end) {
        String bare() {
            return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        }

        boolean isFigure() {
            return Character.isDigit(text.charAt(0))
                    || "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞".indexOf(text.charAt(0)) >= 0;
        }
    }

    private boolean isNumber(Token t) {
        return t.isFigure() || isNumber(t.bare());
    }

    private boolean isNumber(String word) {
        boolean english = NUMBERS.contains(word) && (tongue == Tongue.ENGLISH || !isA(word));
        return english || tongue.isNumber(word);
    }

    private static boolean isA(String word) {
        return word.equals("a") || word.equals("an");
    }

    List<Item> scan(String text) {
        String folded = ELISION.matcher(text).replaceAll(" ");
        List<Token> tokens = new ArrayList<>();
        Matcher m = TOKEN.matcher(folded);
        while (m.find()) {
            tokens.add(new Token(m.group(), m.start(), m.end()));
        }
        List<Item> items = new ArrayList<>();
        int free = 0;
        for (int i = 0; i < tokens.size(); ) {
            int n = measure(folded, tokens, i);
            if (n > 0) {
                numbers(folded, tokens, free, numberStart(folded, tokens, free, i), items);
                Item amount = amount(folded, tokens, numberStart(folded, tokens, free, i), i, n);
                int more = halfAfter(folded, tokens, i + n);
                items.add(more > 0 ? withHalf(amount, tokens.get(i + n + more - 1)) : amount);
                free = i + n + more;
                i += n + more;
            } else {
                i++;
            }
        }
        numbers(folded, tokens, free, tokens.size(), items);
        times(folded, items);
        dittos(folded, items);
        items.sort(java.util.Comparator.comparingInt(Item::start));
        return items;
    }

    /** Returns how many words from here say “and a half” of the measure before; 0 for none. */
    private int halfAfter(String folded, List<Token> tokens, int from) {
        for (int n = 3; n > 1; n--) {
            if (from > 0
                    && from + n <= tokens.size()
                    && isPhrase(folded, tokens, from - 1, from + n)) {
                String said =
                        folded.substring(
                                tokens.get(from).start(),
                                tokens.get(from).start() + length(tokens, from, n));
                boolean ends = from + n == tokens.size() || measure(folded, tokens, from + n) == 0;
                if (ends && HALF_AFTER.matcher(said).matches()) {
                    return n;
                }
            }
        }
        return 0;
    }

    /** Returns how far words reach, without a stop at their end. */
    private static int length(List<Token> tokens, int from, int n) {
        Token last = tokens.get(from + n - 1);
        return last.start() + last.bare().length() - tokens.get(from).start();
    }

    private static Item withHalf(Item item, Token last) {
        Rational half = Rational.of(1, 2);
        return new Item(
                item.kind(),
                item.low().plus(half),
                item.high().plus(half),
                item.size(),
                item.word(),
                true,
                item.start(),
                last.start() + last.bare().length());
    }

    /** Returns how many words from here are one measure, the most that are; 0 for none. */
    private int measure(String folded, List<Token> tokens, int from) {
        for (int n = Math.min(LONGEST, tokens.size() - from); n > 0; n--) {
            if (n == 1 || isPhrase(folded, tokens, from, from + n)) {
                if (find(folded, tokens, from, n).isPresent()) {
                    return n;
                }
            }
        }
        return 0;
    }

    private static boolean isPhrase(String folded, List<Token> tokens, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            String gap = folded.substring(tokens.get(i - 1).end(), tokens.get(i).start());
            if (!gap.isBlank()) {
                return false;
            }
        }
        return true;
    }

    private Optional<String> find(String folded, List<Token> tokens, int from, int n) {
        String text = folded.substring(tokens.get(from).start(), tokens.get(from + n - 1).end());
        if (isNumber(text)) {
            return Optional.empty();
        }
        String plain = text.replace('-', ' ').replace(".", "").strip();
        plain = BLANKS.matcher(plain).replaceAll(" ");
        String word = labels.get(plain);
        if (word == null && (plain.endsWith("s") || language.equals("de") && plain.endsWith("n"))) {
            word = labels.get(plain.substring(0, plain.length() - 1));
        }
        if (word == null) {
            word = labels.get(plain.replace(" ", ""));
        }
        return Optional.ofNullable(word);
    }

    private int numberStart(String folded, List<Token> tokens, int least, int at) {
        int start = at;
        boolean number = false;
        for (int i = at - 1; i >= least; i--) {
            Token t = tokens.get(i);
            String gap = folded.substring(t.end(), tokens.get(i + 1).start());
            boolean near = gap.isBlank() || gap.strip().matches("[-–—]");
            if (!near || t.text().length() > 1 && t.text().endsWith(".")) {
                break;
            }
            boolean left = i > least && isNumber(tokens.get(i - 1));
            if (left && tongue.isPartOf(tokens.get(i - 1).text(), t.text())) {
                continue;
            }
            boolean range = left && tongue.isInside(t.text());
            boolean article = isA(t.text()) && number && !range;
            if (article && !AFTER_ARTICLE.contains(tokens.get(i + 1).text())) {
                break;
            } else if (isNumber(t)) {
                start = i;
                number = true;
            } else if (BEFORE.contains(t.text()) || tongue.isBefore(t.text())) {
                start = i;
            } else if (!(number && isInside(t.text()))) {
                break;
            }
        }
        return start;
    }

    private boolean isInside(String word) {
        return tongue == Tongue.ENGLISH ? INSIDE.contains(word) : tongue.isInside(word);
    }

    private Item amount(String folded, List<Token> tokens, int from, int at, int n) {
        int start = tokens.get(from).start();
        int end = tokens.get(at + n - 1).end();
        String number = folded.substring(start, tokens.get(at).start());
        String plain =
                number.replaceAll(
                        "\\b(?:the|my|our|your|this|that|such|each|every|about|any|usual)\\b", " ");
        boolean counted = !plain.isBlank() || from < at;
        plain = tongue.english(plain.replaceAll("\\s+", " ").strip());
        String measure = folded.substring(tokens.get(at).start(), end);
        String word = find(folded, tokens, at, n).orElseThrow();
        MeasurePhrase phrase =
                MeasurePhrase.parse((plain + " " + english(word, measure)).strip(), words);
        boolean understood = phrase.known() && phrase.thing().isEmpty();
        Rational low = understood ? phrase.quantity() : Rational.ONE;
        Rational high = understood ? phrase.quantityMax().orElse(low) : low;
        Optional<Size> size = understood ? phrase.size() : Optional.empty();
        return whole(
                new Item(
                        Item.Kind.AMOUNT,
                        low.signum() > 0 ? low : Rational.ONE,
                        high.compareTo(low) > 0 ? high : low.signum() > 0 ? low : Rational.ONE,
                        size.filter(s -> s != Size.MEDIUM && s != Size.LEVEL && s != Size.FULL),
                        understood ? phrase.word() : word,
                        counted,
                        start,
                        end));
    }

    /** English measures keep the words of their size; others are known by their word. */
    private String english(String word, String measure) {
        return tongue == Tongue.ENGLISH ? measure : word;
    }

    /** A half-gill is half of a gill; a quart stays a quart. */
    private Item whole(Item item) {
        Optional<MeasureWord> word = words.canonical(item.word());
        boolean share = item.word().matches("(?:half|third|quarter|fifth|sixth)-.*");
        if (!share || word.flatMap(MeasureWord::base).isEmpty()) {
            return item;
        }
        Item times = item.times(word.get().factor());
        return new Item(
                times.kind(),
                times.low(),
                times.high(),
                times.size(),
                word.get().base().get(),
                times.counted(),
                times.start(),
                times.end());
    }

    /** Adds the numbers between two words that belong to no measure. */
    private void numbers(String folded, List<Token> tokens, int from, int to, List<Item> items) {
        for (int i = from; i < to; i++) {
            Token t = tokens.get(i);
            boolean number = isNumber(t) && !isA(t.text());
            if (!number) {
                continue;
            }
            int j = i + 1;
            while (j < to && isNumber(tokens.get(j)) && isPhrase(folded, tokens, i, j + 1)) {
                j++;
            }
            String text = folded.substring(t.start(), tokens.get(j - 1).end());
            MeasurePhrase phrase =
                    MeasurePhrase.parse(
                            tongue.english(text.replaceAll("\\.$", "")) + " pint", words);
            if (phrase.known() && phrase.word().equals("pint") && phrase.quantity().signum() > 0) {
                items.add(
                        new Item(
                                Item.Kind.NUMBER,
                                phrase.quantity(),
                                phrase.quantityMax().orElse(phrase.quantity()),
                                Optional.empty(),
                                "",
                                true,
                                t.start(),
                                tokens.get(j - 1).end()));
            }
            i = j - 1;
        }
    }

    private static void times(String folded, List<Item> items) {
        Matcher m = TIMES.matcher(folded);
        while (m.find()) {
            int start = m.start();
            int end = m.end();
            boolean bare = m.group().equals(m.group(1));
            boolean alone = !bare || m.group(1).equals("the same");
            boolean taken =
                    items.stream()
                            .anyMatch(
                                    i ->
                                            i.kind() == Item.Kind.AMOUNT
                                                    && i.start() < end
                                                    && start < i.end());
            if (alone && !taken) {
                Rational factor =
                        switch (m.group(1)) {
                            case "half" -> Rational.of(1, 2);
                            case "twice", "double" -> Rational.of(2);
                            case "three times" -> Rational.of(3);
                            default -> Rational.ONE;
                        };
                items.removeIf(i -> i.start() < end && start < i.end());
                items.add(plain(Item.Kind.TIMES, factor, start, end));
            }
        }
    }

    private static void dittos(String folded, List<Item> items) {
        Matcher m = DITTO.matcher(folded);
        while (m.find()) {
            for (int i = 0; i < items.size(); i++) {
                Item item = items.get(i);
                boolean before =
                        item.kind() == Item.Kind.NUMBER
                                && item.end() <= m.start()
                                && folded.substring(item.end(), m.start()).isBlank();
                if (before) {
                    items.set(i, plain(Item.Kind.DITTO, item.low(), item.start(), m.end()));
                }
            }
        }
    }

    private static Item plain(Item.Kind kind, Rational number, int start, int end) {
        return new Item(kind, number, number, Optional.empty(), "", true, start, end);
    }
}
