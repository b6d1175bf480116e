package org.stillroom.reading.anchor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

class ReanchoringTest {

    private static final String PAGE =
            "Gangway Fizz.\nOne jigger of gin, two dashes of gum, the juice of half a lemon.\n\n"
                    + "Anchor Sour.\nOne jigger of gin, one spoonful of sugar, the juice of a lime.\n";

    private static Anchor anchor(String words, int from) {
        SourceText text = SourceText.of(PAGE);
        int at = PAGE.indexOf(words, from);
        return Anchor.of(text, new Span(at, at + words.length()));
    }

    @Test
    void findsWordsWhereTheyStood() {
        Anchor anchor = anchor("two dashes", 0);
        assertEquals(Optional.of(anchor.position()), Reanchoring.find(SourceText.of(PAGE), anchor));
    }

    @Test
    void findsWordsThatMoved() {
        String longer = "A preface that was put in later.\n\n" + PAGE;
        int at = longer.indexOf("two dashes");
        assertEquals(
                Optional.of(new Span(at, at + 10)),
                Reanchoring.find(SourceText.of(longer), anchor("two dashes", 0)));
    }

    @Test
    void tellsTwoPlacesApartByTheirContext() {
        String longer = "Another line.\n" + PAGE;
        int second = PAGE.lastIndexOf("One jigger of gin");
        int at = longer.lastIndexOf("One jigger of gin");
        assertEquals(
                Optional.of(new Span(at, at + 17)),
                Reanchoring.find(SourceText.of(longer), anchor("One jigger of gin", second)));
    }

    @Test
    void findsWordsThatWereCorrected() {
        String corrected = PAGE.replace("two dashes of gum", "three dashes of gum");
        int at = corrected.indexOf("three dashes");
        assertEquals(
                Optional.of(new Span(at, at + 12)),
                Reanchoring.find(SourceText.of(corrected), anchor("two dashes", 0)));
    }

    @Test
    void asksWhereItCannotTell() {
        String twice = "gin, gin, gin, gin";
        Anchor lost = new Anchor("gin", "", "", new Span(400, 403));
        assertTrue(Reanchoring.find(SourceText.of(twice), lost).isEmpty());
        assertTrue(
                Reanchoring.find(SourceText.of("Nothing of it."), anchor("two dashes", 0))
                        .isEmpty());
    }

    @Test
    void staysInsideTheTextWhateverItIs() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(PAGE);
            for (int i = 0; i < 12; i++) {
                int at = random.nextInt(text.length());
                text.deleteCharAt(at);
                text.insert(random.nextInt(text.length()), (char) ('a' + random.nextInt(26)));
            }
            SourceText changed = SourceText.of(text.toString());
            int length = changed.length();
            int number = seed;
            Reanchoring.find(changed, anchor("two dashes", 0))
                    .ifPresent(s -> assertTrue(s.end() <= length, "seed " + number));
        }
    }
}
