package org.stillroom.model.text;

import java.util.ArrayList;
import java.util.List;

/**
 * A text under layers, each made of the one below it by edits, with the way from the top to the
 * bottom and back.
 *
 * <p>At the bottom stand the words of the file. A layer above them is a transcription put right, or
 * a form that is easier to read; taking it off gives what was below, letter by letter. Immutable.
 */
public final class LayeredText {

    private final SourceText bottom;
    private final List<EditedText> layers;

    private LayeredText(SourceText bottom, List<EditedText> layers) {
        this.bottom = bottom;
        this.layers = List.copyOf(layers);
    }

    /** Returns a text without layers. */
    public static LayeredText of(SourceText bottom) {
        return new LayeredText(bottom, List.of());
    }

    /**
     * Returns this text under one more layer.
     *
     * @param edits of the text at the top, in any order; none make no layer
     * @throws IllegalArgumentException where two edits overlap, or one reaches beyond the text
     */
    public LayeredText under(List<EditedText.Edit> edits) {
        if (edits.isEmpty()) {
            return this;
        }
        List<EditedText> higher = new ArrayList<>(layers);
        higher.add(EditedText.of(text(), edits));
        return new LayeredText(bottom, higher);
    }

    /** Returns this text without its top layer; without layers, itself. */
    public LayeredText withoutTop() {
        return layers.isEmpty()
                ? this
                : new LayeredText(bottom, layers.subList(0, layers.size() - 1));
    }

    /** Returns the words at the bottom. */
    public SourceText bottom() {
        return bottom;
    }

    /** Returns the words at the top. */
    public SourceText text() {
        return layers.isEmpty() ? bottom : layers.getLast().text();
    }

    /** Returns the layers, the lowest first. */
    public List<EditedText> layers() {
        return layers;
    }

    /** Tells whether nothing lies over the words. */
    public boolean isBare() {
        return layers.isEmpty();
    }

    /** Returns where a span of the top stands at the bottom. */
    public Span toBottom(Span span) {
        Span place = span;
        for (EditedText layer : layers.reversed()) {
            place = layer.toBase(place);
        }
        return place;
    }

    /** Returns where a span of the bottom stands at the top. */
    public Span toTop(Span span) {
        Span place = span;
        for (EditedText layer : layers) {
            place = layer.toEdited(place);
        }
        return place;
    }
}
