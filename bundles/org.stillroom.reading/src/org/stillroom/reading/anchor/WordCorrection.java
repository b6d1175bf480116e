package org.stillroom.reading.anchor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.text.EditedText;
import org.stillroom.model.text.Span;

/**
 * Words of a transcription that a person put right: a decision of the kind {@code words}.
 *
 * <p>The file keeps its words, and the page shows them. What is read, searched and compared goes by
 * the words put right, a layer over the file that says who answers for it and when.
 *
 * @param decision the decision; its value {@code reads} holds the right words, empty where printed
 *     words are to be passed over
 * @param span where the words stand in the file
 */
public record WordCorrection(Assertion decision, Span span) {

    /** The kind of these decisions. */
    public static final String KIND = "words";

    /** The name of the value with the right words. */
    public static final String READS = "reads";

    /** Returns the right words. */
    public String reads() {
        return decision.value(READS).orElse("");
    }

    /** Returns it as an edit of the file's words. */
    public EditedText.Edit edit() {
        return new EditedText.Edit(span, reads());
    }

    /**
     * Returns the corrections of words of a source, in the order of the text.
     *
     * <p>Where two are about the same words the later one holds, and the earlier one is told as one
     * that cannot be carried out.
     */
    public static List<WordCorrection> of(Decided decided, List<Unplaced> unplaced) {
        List<WordCorrection> placed = new ArrayList<>();
        for (Assertion decision : decided.ofKind(KIND).reversed()) {
            Optional<Span> span = decided.place(decision, unplaced);
            if (span.isEmpty()) {
                continue;
            }
            if (placed.stream().anyMatch(c -> c.span().overlaps(span.get()))) {
                unplaced.add(
                        decided.refused(
                                decision,
                                span.get(),
                                "These words were put right again later.",
                                "Take one of the two corrections back."));
            } else {
                placed.add(new WordCorrection(decision, span.get()));
            }
        }
        placed.sort(Comparator.comparing(WordCorrection::span));
        return List.copyOf(placed);
    }
}
