package org.stillroom.model.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A text made of another by an edit script, with the way from every place to its place in the other.
 *
 * <p>Neither text is changed: a corrected transcription and a reading aid are layers over the words
 * as they stand. The way there and back is exact for every span whose ends lie outside the edits; an
 * end inside an edit goes to that edit’s end. The {@linkplain #inverse inverse} gives the base again.
 * Immutable.
 */
public final class EditedText {

    private final SourceText base;
    private final SourceText text;
    private final List<Edit> edits;
    private final int[] made;

    /**
     * Words put in the place of others.
     *
     * @param span the words of the base that give way, in code points; empty to put words in
     * @param words the words that stand there instead
     */
    public record Edit(Span span, String words) {

        int length() {
            return words.codePointCount(0, words.length());
        }
    }

    private EditedText(SourceText base, SourceText text, List<Edit> edits, int[] made) {
        this.base = base;
        this.text = text;
        this.edits = edits;
        this.made = made;
    }

    /**
     * Returns a text with edits carried out.
     *
     * @param edits in any order
     * @throws IllegalArgumentException where two edits overlap, or one reaches beyond the text
     */
    public static EditedText of(SourceText base, List<Edit> edits) {
        if (edits.isEmpty()) {
            return new EditedText(base, base, List.of(), new int[0]);
        }
        List<Edit> sorted = edits.stream().sorted(Comparator.comparing(Edit::span)).toList();
        StringBuilder words = new StringBuilder();
        int[] made = new int[sorted.size()];
        int done = 0;
        int moved = 0;
        for (int i = 0; i < made.length; i++) {
            Edit edit = sorted.get(i);
            Span span = edit.span();
            if (span.start() < done || span.end() > base.length()) {
                throw new IllegalArgumentException("The edit at " + span + " cannot be made");
            }
            words.append(base.slice(new Span(done, span.start()))).append(edit.words());
            made[i] = span.start() + moved;
            moved += edit.length() - span.length();
            done = span.end();
        }
        words.append(base.slice(new Span(done, base.length())));
        return new EditedText(base, SourceText.of(words.toString()), sorted, made);
    }

    /** Returns the text that was edited. */
    public SourceText base() {
        return base;
    }

    /** Returns the text that the edits make. */
    public SourceText text() {
        return text;
    }

    /** Returns the edits, in the order of the base. */
    public List<Edit> edits() {
        return edits;
    }

    /** Returns the layer that makes the base of this text again. */
    public EditedText inverse() {
        List<Edit> back = new ArrayList<>();
        for (int i = 0; i < made.length; i++) {
            Edit edit = edits.get(i);
            Span span = new Span(made[i], made[i] + edit.length());
            back.add(new Edit(span, base.slice(edit.span())));
        }
        return of(text, back);
    }

    /** Returns where a span of the base stands in the edited text. */
    public Span toEdited(Span span) {
        int start = edited(span.start(), false);
        return new Span(start, Math.max(start, edited(span.end(), true)));
    }

    /** Returns where a span of the edited text stands in the base. */
    public Span toBase(Span span) {
        int start = original(span.start(), false);
        return new Span(start, Math.max(start, original(span.end(), true)));
    }

    private int edited(int place, boolean end) {
        int i = lastBefore(place, end, false);
        if (i < 0) {
            return place;
        }
        Span span = edits.get(i).span();
        if (place < span.end()) {
            return end ? made[i] + edits.get(i).length() : made[i];
        }
        return place - span.end() + made[i] + edits.get(i).length();
    }

    private int original(int place, boolean end) {
        int i = lastBefore(place, end, true);
        if (i < 0) {
            return place;
        }
        Span span = edits.get(i).span();
        int madeEnd = made[i] + edits.get(i).length();
        if (place < madeEnd) {
            return end ? span.end() : span.start();
        }
        return place - madeEnd + span.end();
    }

    /** Returns the last edit that starts before a place, or at it where a span starts there. */
    private int lastBefore(int place, boolean end, boolean inEdited) {
        int low = 0;
        int high = made.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            int start = inEdited ? made[middle] : edits.get(middle).span().start();
            if (end ? start < place : start <= place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }
}
