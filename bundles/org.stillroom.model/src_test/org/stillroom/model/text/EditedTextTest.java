package org.stillroom.model.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class EditedTextTest {

    private static final String[] LETTERS = {"a", "b", " ", "\n", "½", "ſ", "\uD83C\uDF4B", "é"};

    /** A million edits over texts with characters beyond the sixteen bits, each way and back. */
    @Test
    void everyPlaceOutsideTheEditsGoesThereAndBack() {
        int edits = 0;
        for (long seed = 0; edits < 1_000_000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SourceText base = SourceText.of(letters(random, 5_000));
            EditedText edited = EditedText.of(base, edits(random, base));
            edits += check(edited, seed);
        }
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
        int at = random.nextInt(3);
        while (at < base.length() - 3) {
            int end = at + random.nextInt(3);
            edits.add(new EditedText.Edit(new Span(at, end), letters(random, random.nextInt(4))));
            at = end + 1 + random.nextInt(4);
        }
        return edits;
    }

    private static int check(EditedText edited, long seed) {
        SourceText base = edited.base();
        EditedText back = edited.inverse();
        assertEquals(base, back.text(), "seed " + seed);
        int last = 0;
        int count = 0;
        for (EditedText.Edit edit : back.edits()) {
            Span kept = new Span(last, edit.span().start());
            if (!kept.isEmpty()) {
                Span there = edited.toBase(kept);
                assertEquals(kept, edited.toEdited(there), "seed " + seed);
                assertEquals(edited.text().slice(kept), base.slice(there), "seed " + seed);
                assertEquals(there, back.toEdited(kept), "seed " + seed);
            }
            last = edit.span().end();
            count++;
        }
        return count;
    }

    @Test
    void anEndInsideAnEditGoesToItsEnd() {
        SourceText base = SourceText.of("1 wg. brandy");
        EditedText edited =
                EditedText.of(base, List.of(new EditedText.Edit(new Span(2, 5), "wineglass of")));
        assertEquals("1 wineglass of brandy", edited.text().toString());
        assertEquals(new Span(2, 5), edited.toBase(new Span(2, 11)));
        assertEquals(new Span(6, 12), edited.toBase(new Span(15, 21)));
        assertEquals(new Span(0, 14), edited.toEdited(new Span(0, 5)));
    }

    @Test
    void editsThatOverlapAreRefused() {
        SourceText base = SourceText.of("abcdef");
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        EditedText.of(
                                base,
                                List.of(
                                        new EditedText.Edit(new Span(0, 3), "x"),
                                        new EditedText.Edit(new Span(2, 4), "y"))));
    }
}
