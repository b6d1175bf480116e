package org.stillroom.reading.cut;

import java.util.List;
import java.util.regex.Pattern;
import org.stillroom.model.text.Folding;

/** What the words of a title say about whether it is one. */
final class TitleWords {

    /** “Glass 2/3 full of shaved ice” begins a recipe without an order. */
    private static final Pattern FILLED =
            Pattern.compile("(?:\\d ?/ ?\\d|[¼½¾⅓⅔]|half|nearly) full\\b");

    private TitleWords() {}

    /** Tells whether words are a line of a recipe (an order, an amount, a vessel, a label). */
    static boolean isLine(String words, Cues cues) {
        Count count = new Count(words, cues);
        boolean plain = Head.letters(words) == Head.Letters.SENTENCE || hasLowerWord(words);
        return count.label
                || plain && FILLED.matcher(words).find()
                || count.first && !count.infinitive
                || count.vessels
                || count.amount
                || plain && (count.article || count.part)
                || count.sends && !count.way && (plain || count.words > 4)
                || reads(words, cues);
    }

    /**
     * Tells whether capitals name drinks in the plural, as “COCKTAILS”, “SOURS AND FIZZES” do: they
     * head many recipes, and the line under them is the first title.
     */
    static boolean isGroup(String words, Cues cues) {
        if (Head.letters(words) != Head.Letters.CAPITALS || Splitter.count(words) > 6) {
            return false;
        }
        String plain = Folding.foldWord(words).replaceAll("[^\\p{L} ]", "").strip();
        List<String> all = List.of(plain.split(" +"));
        return all.contains("drinks")
                || all.contains("beverages")
                || all.get(all.size() - 1).equals("cups")
                || Splitter.count(words) <= 4 && isPlural(all.get(all.size() - 1), cues);
    }

    private static boolean isPlural(String word, Cues cues) {
        if (word.length() < 5 || !word.endsWith("s") || cues.is(word, Cues.INGREDIENT)) {
            return false;
        }
        String one = word.substring(0, word.length() - 1);
        String shorter = one.endsWith("e") ? one.substring(0, one.length() - 1) : one;
        return cues.is(one, Cues.DRINK) || cues.is(shorter, Cues.DRINK);
    }

    /** Tells whether a word of five letters or more is set small, wherever it stands. */
    static boolean hasLowerWord(String words) {
        for (int at = 0; at < words.length(); ) {
            if (!Character.isLetter(words.charAt(at))) {
                at++;
                continue;
            }
            int end = BodyScore.wordEnd(words, at, words.length());
            if (end - at > 4 && Character.isLowerCase(words.charAt(at))) {
                return true;
            }
            at = end;
        }
        return false;
    }

    /** Tells whether a plain line of five words or more is itself a little recipe. */
    private static boolean reads(String words, Cues cues) {
        if (Head.letters(words) != Head.Letters.SENTENCE) {
            return false;
        }
        BodyScore score = BodyScore.of(words, 0, words.length(), cues);
        return score.words() >= 5 && (score.value() > 0.35 || score.references() > 0);
    }

    /**
     * Returns how much the words speak for a title: names of drinks and ingredients for it, orders,
     * amounts, story-telling and length against it.
     */
    static double points(String words, Cues cues) {
        Count count = new Count(words, cues);
        double points = 0;
        points += count.drink ? 1 : 0;
        points += count.ingredient ? 0.5 : 0;
        points += count.infinitive ? 1 : 0;
        points -= count.first && !count.infinitive ? 2.5 : 0;
        points -= count.amount ? 2 : 0;
        points -= count.chore ? 5 : count.household && !count.drink ? 4 : 0;
        points -= 0.5 * Math.min(4, count.narrative);
        points -= 0.4 * Math.max(0, count.words - 8);
        points -= count.label ? 4 : 0;
        points -= count.treats ? 2.5 : 0;
        return points;
    }

    /** One look at the words of a title. */
    private static final class Count {
        int words;
        int narrative;
        boolean drink;
        boolean ingredient;
        boolean amount;
        boolean infinitive;
        boolean chore;
        boolean household;
        boolean label;
        boolean first;
        boolean vessels;
        boolean sends;
        boolean article;
        boolean part;
        boolean treats;
        boolean way;

        Count(String title, Cues cues) {
            int at = 0;
            int vesselWords = 0;
            int small = 0;
            int since = 9;
            String previous = "";
            String lastWord = "";
            while (at < title.length()) {
                char c = title.charAt(at);
                if (!Character.isLetter(c)) {
                    since = Character.isDigit(c) || c >= '¼' && c <= '¾' ? 0 : since;
                    at++;
                    continue;
                }
                int end = BodyScore.wordEnd(title, at, title.length());
                String word = BodyScore.fold(title, at, end);
                int kinds = cues.kinds(word);
                words++;
                narrative += (kinds & Cues.NARRATIVE) != 0 ? 1 : 0;
                drink |= (kinds & Cues.DRINK) != 0;
                ingredient |= (kinds & Cues.INGREDIENT) != 0;
                amount |= (kinds & Cues.MEASURE) != 0 && since <= 1 && (kinds & Cues.DRINK) == 0;
                boolean vessel =
                        (kinds & (Cues.VESSEL | Cues.QUALIFIER)) != 0 || word.startsWith("glass");
                vesselWords += vessel ? 1 : 0;
                small += isSmall(word) ? 1 : 0;
                first |= words == 1 && word.indexOf('-') < 0 && isOrder(word, kinds);
                sends |=
                        words <= 2 && (kinds & Cues.REFERENCE) != 0
                                || word.equals("substituting")
                                || word.equals("instead");
                label |= words == 1 && (kinds & Cues.LABEL) != 0;
                boolean small1 = previous.equals("a") || previous.equals("an");
                boolean measure = (kinds & Cues.MEASURE) != 0 && (kinds & Cues.DRINK) == 0;
                article |= words == 1 && word.equals("half");
                article |= words == 2 && small1 && (measure || word.equals("little"));
                way |= isWay(word);
                treats |= words == 1 && (word.equals("of") || word.equals("on"));
                part |=
                        isPart(word)
                                && (words == 1 || words == 2 && (small1 || previous.equals("the")));
                boolean to =
                        words == 2 && previous.equals("to") || words == 3 && lastWord.equals("to");
                infinitive |= to && (kinds & Cues.VERB) != 0;
                household |= (kinds & Cues.HOUSEHOLD) != 0;
                chore |= to && (kinds & Cues.CHORE) != 0;
                since = (kinds & Cues.NUMBER) != 0 ? 0 : since + 1;
                previous = words == 1 ? word : previous;
                lastWord = word;
                at = end;
            }
            vessels = (vesselWords > 0 || lastWord.equals("ice")) && vesselWords + small == words;
            label &= words <= 3;
        }

        /** A part of a fruit or an egg, which opens a line of a recipe (“Juice of a lemon”). */
        private static boolean isPart(String word) {
            return switch (word) {
                case "juice", "rind", "peel", "white", "whites", "yolk", "yolks", "slice", "zest" ->
                        true;
                default -> false;
            };
        }

        private static boolean isWay(String word) {
            return switch (word) {
                case "way", "method", "receipt", "recipe", "sort", "manner" -> true;
                default -> false;
            };
        }

        private static boolean isSmall(String word) {
            return switch (word) {
                case "in",
                        "a",
                        "an",
                        "the",
                        "use",
                        "of",
                        "bar",
                        "serve",
                        "and",
                        "or",
                        "with",
                        "ice" ->
                        true;
                default -> false;
            };
        }

        private static boolean isOrder(String word, int kinds) {
            boolean name = (kinds & (Cues.DRINK | Cues.INGREDIENT)) != 0;
            return (kinds & Cues.VERB) != 0 && !name && !NAMES.contains(word);
        }

        /** Words that are orders in a sentence and names at the start of a title. */
        private static final java.util.Set<String> NAMES =
                java.util.Set.of(
                        "ice", "stone", "cork", "cool", "fine", "dash", "brown", "line", "cover",
                        "burn", "dry", "top", "roast", "cold", "get", "turn", "pick", "tap",
                        "split", "seal", "hang", "press", "fall", "light", "spice", "butter",
                        "cream", "draw", "colour", "color", "flavour", "dress");
    }
}
