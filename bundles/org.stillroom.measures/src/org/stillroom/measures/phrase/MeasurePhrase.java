package org.stillroom.measures.phrase;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.measures.Matter;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;
import org.stillroom.model.text.Folding;

/**
 * A phrase of measure taken apart: “1½ small wine-glassfuls of gum”.
 *
 * @param text the phrase as it was asked
 * @param quantity how many, 1 where nothing is said
 * @param quantityMax the upper end of a range
 * @param size a word about size
 * @param word the canonical word of measure, or the words that none was found in
 * @param known whether the word is known
 * @param thing what is measured, in lower case, or empty
 * @param matter whether that is poured or weighed
 */
public record MeasurePhrase(
        String text,
        Rational quantity,
        Optional<Rational> quantityMax,
        Optional<Size> size,
        String word,
        boolean known,
        String thing,
        Matter matter) {

    private static final List<String> SOLIDS =
            Rows.shipped("solids.csv").stream().map(r -> r.get("word")).toList();

    /** Words that make a liquid of what a solid's name stands beside: “sirop de sucre”. */
    private static final List<String> POURED =
            List.of(
                    "juice", "syrup", "sirup", "water", "sirop", "jus ", "eau", "saft", "wasser",
                    "jugo", "zumo", "jarabe", "agua", "creme", "crema", "liqueur", "likor",
                    "licor");

    /** Things that are counted whole: lemons, oranges. */
    private static final Set<String> WHOLES =
            Rows.shipped("measures.csv").stream()
                    .filter(r -> Set.of("whole", "juice-of").contains(r.get("word")))
                    .map(r -> r.get("of"))
                    .filter(of -> !of.isEmpty())
                    .collect(Collectors.toUnmodifiableSet());

    /** Half of a measure that has no name of its own: “demi-litre”, not “demi-setier”. */
    private static final Pattern HALF_OF =
            Pattern.compile("\\bdemi-(?!setier|bouteille|pint\\b|pints\\b)");

    private static final int LONGEST = 5;

    private static final int WIDEST = 400;

    /** Returns a phrase taken apart; never fails, whatever the words. */
    public static MeasurePhrase parse(String text, MeasureWords words) {
        String cut = text.length() > WIDEST ? text.substring(0, WIDEST) : text;
        String folded = HALF_OF.matcher(Folding.foldWord(cut)).replaceAll("demi ");
        Optional<PhraseNumber> number = PhraseNumber.read(folded);
        String rest = number.map(PhraseNumber::rest).orElse(folded);
        Optional<Size> size = size(rest);
        if (size.isPresent()) {
            rest = rest.substring(rest.indexOf(' ') + 1).stripLeading();
        }
        Rational quantity = number.map(PhraseNumber::low).orElse(Rational.ONE);
        Optional<Rational> most = number.flatMap(PhraseNumber::high);
        return withWord(text, rest, quantity, most, size, words);
    }

    private static Optional<Size> size(String rest) {
        int blank = rest.indexOf(' ');
        String first = blank < 0 ? "" : rest.substring(0, blank);
        String word =
                switch (first) {
                    case "little" -> "small";
                    case "middling", "moderate", "common", "ordinary" -> "medium";
                    case "big", "great" -> "large";
                    case "heaped", "rounded" -> "heaping";
                    case "good", "ample", "generous" -> "full";
                    default -> first;
                };
        return Size.of(word);
    }

    private static MeasurePhrase withWord(
            String text,
            String rest,
            Rational quantity,
            Optional<Rational> most,
            Optional<Size> size,
            MeasureWords words) {
        Optional<Part> part = Part.of(rest, words);
        if (part.isPresent()) {
            PhraseNumber number = part.get().number();
            Optional<Rational> highest = number.high().map(quantity::times);
            Rational many = quantity.times(number.low());
            return of(
                    text,
                    many,
                    highest.or(() -> most),
                    size,
                    part.get().word(),
                    part.get().thing());
        }
        String[] tokens = rest.isEmpty() ? new String[0] : rest.split(" ");
        for (int n = Math.min(LONGEST, tokens.length); n > 0; n--) {
            String head = String.join(" ", Arrays.copyOfRange(tokens, 0, n));
            Optional<MeasureWord> word = words.find(head);
            if (word.isPresent()) {
                String tail = String.join(" ", Arrays.copyOfRange(tokens, n, tokens.length));
                return of(text, quantity, most, size, word.get().word(), tail);
            }
        }
        Optional<String> fruit = WHOLES.contains(rest) ? Optional.of(rest) : Optional.empty();
        Optional<String> fruits =
                fruit.or(() -> Optional.of(singular(rest)).filter(WHOLES::contains));
        if (fruits.isPresent()) {
            return of(text, quantity, most, size, "whole", fruits.get());
        }
        if (!rest.isEmpty() && !quantity.equals(Rational.ONE) && words.nearest(rest, 1).isEmpty()) {
            return of(text, quantity, most, size, "whole", rest);
        }
        return new MeasurePhrase(
                text,
                quantity,
                most,
                size,
                rest.isEmpty() ? text.strip() : rest,
                false,
                "",
                Matter.UNKNOWN);
    }

    /** A part of so many things: “whites of two eggs” are two egg whites. */
    private record Part(PhraseNumber number, String word, String thing) {

        private static final Pattern WORDS = Pattern.compile("^(?:the )?(\\S+) of (?:the )?(.+)$");

        static Optional<Part> of(String rest, MeasureWords words) {
            Matcher found = WORDS.matcher(rest);
            if (!found.matches()) {
                return Optional.empty();
            }
            Optional<PhraseNumber> number = PhraseNumber.read(found.group(2));
            return number.flatMap(n -> of(found.group(1), n, words));
        }

        private static Optional<Part> of(String part, PhraseNumber number, MeasureWords words) {
            Optional<Part> whole =
                    words.find(part + " of " + number.rest())
                            .map(w -> new Part(number, w.word(), ""));
            return whole.or(
                    () ->
                            words.find(part)
                                    .filter(w -> w.kind() == MeasureWord.Kind.STUFF)
                                    .map(w -> new Part(number, w.word(), number.rest())));
        }
    }

    private static MeasurePhrase of(
            String text,
            Rational quantity,
            Optional<Rational> most,
            Optional<Size> size,
            String word,
            String tail) {
        String thing = tail.replaceFirst("^of (?:the )?", "").strip();
        Rational number = quantity;
        if (word.equals("juice-of")) {
            Optional<PhraseNumber> fruit = PhraseNumber.read(thing);
            number = fruit.map(f -> quantity.times(f.low())).orElse(quantity);
            thing = singular(fruit.map(PhraseNumber::rest).orElse(thing));
        }
        return new MeasurePhrase(text, number, most, size, word, true, thing, matter(thing));
    }

    private static String singular(String fruit) {
        return fruit.endsWith("s") ? fruit.substring(0, fruit.length() - 1) : fruit;
    }

    private static Matter matter(String thing) {
        if (thing.isEmpty()) {
            return Matter.UNKNOWN;
        }
        boolean juice = POURED.stream().anyMatch(thing::contains);
        boolean solid = !juice && Stream.of(thing.split(" ")).anyMatch(SOLIDS::contains);
        return solid ? Matter.SOLID : Matter.LIQUID;
    }
}
