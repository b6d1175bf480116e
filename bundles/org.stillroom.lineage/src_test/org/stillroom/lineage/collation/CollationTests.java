package org.stillroom.lineage.collation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentences about the koala are those on which other collators were reported to go wrong. */
final class CollationTests {

    private static final Pattern PIECE = Pattern.compile("\\p{L}+|\\p{Punct}");

    private static List<Token> text(String words) {
        List<Token> tokens = new ArrayList<>();
        Matcher m = PIECE.matcher(words.toLowerCase(Locale.ROOT));
        while (m.find()) {
            boolean word = Character.isLetter(m.group().charAt(0));
            tokens.add(word ? Token.word(m.group()) : new Token(Token.Kind.MARK, m.group()));
        }
        return tokens;
    }

    private static Collation collate(List<String> texts) {
        return Collation.of(texts.stream().map(CollationTests::text).toList());
    }

    /** Returns the table as a set of rows, so that two orders of the texts can be compared. */
    private static Set<String> rows(Collation collation) {
        Set<String> rows = new TreeSet<>();
        for (int t = 0; t < collation.texts().size(); t++) {
            StringBuilder row = new StringBuilder();
            for (int c = 0; c < collation.columns().size(); c++) {
                row.append(collation.at(c, t).map(Token::value).orElse("-")).append(' ');
            }
            rows.add(row.toString());
        }
        return rows;
    }

    private static long columnsWith(Collation collation, String word, int texts) {
        long columns = 0;
        for (int c = 0; c < collation.columns().size(); c++) {
            int at = c;
            int have = 0;
            for (int t = 0; t < collation.texts().size(); t++) {
                Optional<Token> token = collation.at(at, t);
                have += token.filter(x -> x.value().equals(word)).isPresent() ? 1 : 0;
            }
            columns += have == texts ? 1 : 0;
        }
        return columns;
    }

    @Test
    void theSameWordStaysInOneColumnWhateverTheOrderOfTheTexts() {
        List<String> texts =
                new ArrayList<>(
                        List.of(
                                "The gray koala.",
                                "The big gray koala.",
                                "The koala lives in a tree."));
        Set<String> expected = rows(collate(texts));
        Random random = new Random(66);
        for (int i = 0; i < 20; i++) {
            Collections.shuffle(texts, random);
            Collation collation = collate(texts);
            assertEquals(expected, rows(collation));
            assertEquals(1, columnsWith(collation, "gray", 2));
            assertEquals(1, columnsWith(collation, "koala", 3));
            assertEquals(1, columnsWith(collation, "the", 3));
        }
    }

    @Test
    void wordsOutweighMarks() {
        Collation collation =
                collate(
                        List.of(
                                "The big, gray, fuzzy koala.",
                                "The big, old, gray koala:",
                                "The big, gray, fuzzy wombat."));
        assertEquals(1, columnsWith(collation, "gray", 3));
        assertEquals(1, columnsWith(collation, "fuzzy", 2));
    }

    @Test
    void agreementIsReportedAsAgreement() {
        Collation collation = collate(List.of("the koala", "the koala", "the koala"));
        assertEquals(2, collation.columns().size());
        assertTrue(collation.isAgreed(0));
        assertTrue(collation.isAgreed(1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theOrderOfTheTextsChangesNothing(long seed) {
        Random random = new Random(seed);
        String[] vocabulary =
                "gin rum shake strain ice lemon sugar one two jigger stir glass".split(" ");
        List<String> texts = new ArrayList<>();
        List<String> first = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            first.add(vocabulary[random.nextInt(vocabulary.length)]);
        }
        for (int t = 0; t < 5; t++) {
            List<String> copy = new ArrayList<>(first);
            for (int e = 0; e < 3; e++) {
                copy.set(
                        random.nextInt(copy.size()), vocabulary[random.nextInt(vocabulary.length)]);
            }
            copy.remove(random.nextInt(copy.size()));
            texts.add(String.join(" ", copy));
        }
        Set<String> expected = rows(collate(texts));
        for (int i = 0; i < 15; i++) {
            Collections.shuffle(texts, random);
            assertEquals(expected, rows(collate(texts)), "seed " + seed + ": " + texts);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void noWordIsLostOrTurnedRound(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 50; round++) {
            List<Token> a = words(random);
            List<Token> b = words(random);
            Alignment alignment = Alignment.of(a, b);
            String message = "seed " + seed + ", round " + round;
            assertEquals(places(a.size()), firsts(alignment), message);
            assertEquals(
                    places(b.size()),
                    alignment.pairs().stream()
                            .map(Alignment.Pair::second)
                            .filter(p -> p >= 0)
                            .toList(),
                    message);
        }
    }

    private static List<Integer> firsts(Alignment alignment) {
        return alignment.pairs().stream().map(Alignment.Pair::first).filter(p -> p >= 0).toList();
    }

    private static List<Integer> places(int size) {
        return java.util.stream.IntStream.range(0, size).boxed().toList();
    }

    private static List<Token> words(Random random) {
        List<Token> words = new ArrayList<>();
        for (int i = random.nextInt(12); i > 0; i--) {
            words.add(Token.word(Character.toString('a' + random.nextInt(5)) + "x"));
        }
        return words;
    }

    @Test
    void aQuantityStandsAgainstAQuantity() {
        List<Token> a = List.of(new Token(Token.Kind.NUMBER, "2"), Token.word("gin"));
        List<Token> b = List.of(new Token(Token.Kind.NUMBER, "12"), Token.word("gin"));
        assertTrue(Alignment.of(a, b).pairs().stream().allMatch(Alignment.Pair::isBoth));
    }
}
