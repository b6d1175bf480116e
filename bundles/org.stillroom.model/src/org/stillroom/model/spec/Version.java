package org.stillroom.model.spec;

import java.util.List;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.EditedText;
import org.stillroom.model.text.Span;

/**
 * A witness seen as one version of a drink.
 *
 * @param source the edition that it stands in
 * @param spec what it says, with measures resolved
 * @param putRight words of the recipe that a person put right, at their place in the source, in
 *     order
 */
public record Version(Source source, Spec spec, List<EditedText.Edit> putRight) {

    /** Keeps the list unchangeable. */
    public Version {
        putRight = List.copyOf(putRight);
    }

    /** Makes a version whose words stand as they are. */
    public Version(Source source, Spec spec) {
        this(source, spec, List.of());
    }

    /** Returns the reading. */
    public Reading reading() {
        return spec.reading();
    }

    /** Returns the witness. */
    public Witness witness() {
        return spec.reading().witness();
    }

    /** Returns an identifier that is unique in the library. */
    public String id() {
        return witness().id();
    }

    /** Returns the recipe’s words as printed, title included. */
    public String words() {
        return source.text().slice(witness().span());
    }

    /** Returns the recipe’s words, title included, with what a person put right. */
    public String wordsPutRight() {
        Span span = witness().span();
        StringBuilder words = new StringBuilder();
        int done = span.start();
        for (EditedText.Edit edit : putRight) {
            words.append(source.text().slice(new Span(done, edit.span().start())));
            words.append(edit.words());
            done = edit.span().end();
        }
        return words.append(source.text().slice(new Span(done, span.end()))).toString();
    }
}
