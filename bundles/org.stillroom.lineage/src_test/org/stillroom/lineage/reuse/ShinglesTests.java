package org.stillroom.lineage.reuse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ShinglesTests {

    @Test
    void spellingOfThePressDoesNotCount() {
        Shingles plain = Shingles.ofCharacters("Strain into a small glass, and serve.");
        assertEquals(plain, Shingles.ofCharacters("ſtrain into a  ſmall glaſs —\nand SERVE"));
        assertEquals(0, Shingles.ofCharacters("gin").size());
    }

    @Test
    void aShortRecipeIsFoundInsideALongText() {
        Shingles brief = Shingles.ofWords("one jigger rum fill with cider", 3);
        Shingles lengthy =
                Shingles.ofWords(
                        "Take for the purser one jigger rum, fill with cider and drink", 3);
        assertEquals(1, brief.contained(lengthy), 1e-12);
        assertTrue(lengthy.contained(brief) < 1);
    }

    /** Words edited at 8 % and letters misread at 3 % leave copies apart from what is unrelated. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noisyCopiesStandApartFromUnrelatedTexts(long seed) {
        Random random = new Random(seed);
        String[] words = new String[300];
        for (int i = 0; i < words.length; i++) {
            words[i] = word(random);
        }
        for (int round = 0; round < 50; round++) {
            String first = text(random, words);
            double related =
                    Shingles.ofCharacters(first)
                            .jaccard(Shingles.ofCharacters(noisy(first, random, words)));
            double unrelated =
                    Shingles.ofCharacters(first)
                            .jaccard(Shingles.ofCharacters(text(random, words)));
            String message = "seed " + seed + ", round " + round;
            assertTrue(related > 0.25, message + ": " + related);
            assertTrue(unrelated < 0.25, message + ": " + unrelated);
        }
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = 3 + random.nextInt(6); i > 0; i--) {
            word.append((char) ('a' + random.nextInt(26)));
        }
        return word.toString();
    }

    private static String text(Random random, String[] words) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            text.append(words[random.nextInt(words.length)]).append(' ');
        }
        return text.toString();
    }

    private static String noisy(String text, Random random, String[] words) {
        StringBuilder noisy = new StringBuilder();
        for (String word : text.split(" ")) {
            String kept = random.nextDouble() < 0.08 ? words[random.nextInt(words.length)] : word;
            for (char c : kept.toCharArray()) {
                noisy.append(random.nextDouble() < 0.03 ? (char) ('a' + random.nextInt(26)) : c);
            }
            noisy.append(' ');
        }
        return noisy.toString();
    }

    @Test
    void anAuthorIsFoundBySurnameAlone() {
        assertEquals(
                Set.of("marl"),
                Names.named("As Mr. Marl has it, with lemon", Set.of("marl", "brome")));
    }
}
