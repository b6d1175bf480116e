package org.stillroom.model.text;

/**
 * A place in a source that can be found again after the transcription was corrected.
 *
 * <p>Holds what the W3C Web Annotation Data Model calls a text quote selector (exact words, words
 * before, words after) and a text position selector.
 *
 * @param exact the words themselves
 * @param prefix up to 32 code points before them
 * @param suffix up to 32 code points after them
 * @param position where they stood when the anchor was made
 */
public record Anchor(String exact, String prefix, String suffix, Span position) {

    private static final int CONTEXT = 32;

    /** Returns the anchor of a span of a text. */
    public static Anchor of(SourceText text, Span span) {
        Span before = new Span(Math.max(0, span.start() - CONTEXT), span.start());
        Span after = new Span(span.end(), Math.min(text.length(), span.end() + CONTEXT));
        return new Anchor(text.slice(span), text.slice(before), text.slice(after), span);
    }
}
