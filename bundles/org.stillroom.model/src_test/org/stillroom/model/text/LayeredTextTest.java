package org.stillroom.model.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LayeredTextTest {

    private static final String[] LETTERS = {"a", "b", " ", "\n", "½", "ſ", "\uD83C\uDF4B", "é"};

    /** A million edits in three layers: what no layer touches goes down and up again unchanged. */
    @Test
    void everyPlaceThatNoLayerTouchesGoesThereAndBack() {
        int edits = 0;
        for (long seed = 0; edits < 1_000_000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SourceText bottom = SourceText.of(letters(random, 400));
            LayeredText text = LayeredText.of(bottom);
            for (int i = 0; i < 3; i++) {
                text = text.under(edits(random, text.text()));
            }
            edits += text.layers().stream().mapToInt(l -> l.edits().size()).sum();
            check(text, seed);
        }
    }

    private static void check(LayeredText text, long seed) {
        SourceText bottom = text.bottom();
        int kept = 0;
        for (int at = 0; at < bottom.length(); at++) {
            Span span = new Span(at, at + 1);
            Span top = text.toTop(span);
            boolean whole = top.length() == 1 && text.toBottom(top).equals(span);
            if (whole && untouched(text, span)) {
                assertEquals(bottom.slice(span), text.text().slice(top), "seed " + seed);
                kept++;
            } else {
                assertTrue(!untouched(text, span), "seed " + seed + ", place " + at);
            }
        }
        assertTrue(kept > 0, "seed " + seed);
        LayeredText bare = text;
        for (int i = text.layers().size(); i > 0; i--) {
            EditedText top = bare.layers().getLast();
            bare = bare.withoutTop();
            assertEquals(bare.text(), top.inverse().text(), "seed " + seed);
        }
        assertSame(bottom, bare.text());
    }

    private static boolean untouched(LayeredText text, Span span) {
        Span place = span;
        for (EditedText layer : text.layers()) {
            Span here = place;
            if (layer.edits().stream().anyMatch(e -> e.span().overlaps(here))) {
                return false;
            }
            place = layer.toEdited(place);
        }
        return true;
    }

    private static String letters(SplittableRandom random, int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(LETTERS[random.nextInt(LETTERS.length)]);
        }
        return text.toString();
    }

    private static List<EditedText.Edit> edits(SplittableRandom random, SourceText base) {
        List<EditedText.Edit> edits = new ArrayList<>();
        int at = random.nextInt(9);
        while (at < base.length() - 3) {
            int end = at + 1 + random.nextInt(2);
            edits.add(new EditedText.Edit(new Span(at, end), letters(random, random.nextInt(4))));
            at = end + 1 + random.nextInt(9);
        }
        return edits;
    }

    @Test
    void aLayerWithoutEditsIsNone() {
        LayeredText bare = LayeredText.of(SourceText.of("1 wg. brandy"));
        assertTrue(bare.under(List.of()).isBare());
        assertSame(bare.bottom(), bare.text());
    }

    @Test
    void theTopIsFoundAtTheBottom() {
        LayeredText text =
                LayeredText.of(SourceText.of("1 wg. hrandy"))
                        .under(List.of(new EditedText.Edit(new Span(6, 12), "brandy")))
                        .under(List.of(new EditedText.Edit(new Span(2, 5), "wineglass")));
        assertEquals("1 wineglass brandy", text.text().toString());
        assertEquals(new Span(6, 12), text.toBottom(new Span(12, 18)));
        assertEquals(new Span(12, 18), text.toTop(new Span(6, 12)));
    }
}
