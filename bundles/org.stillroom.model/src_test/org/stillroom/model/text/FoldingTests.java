package org.stillroom.model.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FoldingTests {

    @Test
    void numbersAreNeverFolded() {
        // Unicode 15, UnicodeData.txt: NFKC turns U+00BD into 1 U+2044 2, so that 1½ reads 11⁄2
        assertEquals("1½ ⅓ 1\u20442 ℥ij", Folding.foldWord("1½ ⅓ 1\u20442 ℥ij"));
    }

    @Test
    void periodLettersAreFolded() {
        assertEquals("glass of curacao", Folding.foldWord("glaſs of Curaçao"));
        assertEquals("oeufs fleche st", Folding.foldWord("Œufs ﬂèche ﬅ"));
    }

    @Test
    void everyFoldedPlaceLeadsBackIntoThePrintedText() {
        String letters = "aſß½ \n\tçæŒ℥ﬃ-\u00AD𝔄é̄“’";
        int[] points = letters.codePoints().toArray();
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < 5000; n++) {
            StringBuilder printed = new StringBuilder();
            for (int i = random.nextInt(30); i > 0; i--) {
                printed.appendCodePoint(points[random.nextInt(points.length)]);
            }
            SourceText text = SourceText.of(printed.toString());
            FoldedText folded = Folding.fold(text.toString());
            int last = 0;
            for (int i = 0; i < folded.folded().length(); i++) {
                Span span = folded.toPrinted(i, i + 1);
                assertTrue(span.start() >= last && span.end() <= text.length(), "draw " + n);
                last = span.start();
            }
        }
    }

    @Test
    void aTextCountsCodePoints() {
        SourceText text = SourceText.of("a𝔄b\r\nç");
        assertEquals(5, text.length());
        assertEquals("𝔄b", text.slice(Span.of(1, 3)));
        assertEquals(2, text.lineAt(4));
        assertEquals("ç", text.slice(text.line(2)));
        StringBuilder longText = new StringBuilder();
        for (int i = 0; i < 2000; i++) {
            longText.append(i % 3 == 0 ? "𝔄" : "x");
        }
        SourceText many = SourceText.of(longText.toString());
        for (int place = 0; place <= 2000; place += 7) {
            assertEquals(place, many.toPlace(many.toIndex(place)));
        }
    }
}
