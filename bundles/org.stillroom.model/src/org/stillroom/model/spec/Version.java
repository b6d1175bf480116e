package org.stillroom.model.spec;

import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;

/**
 * A witness seen as one version of a drink.
 *
 * @param source the edition that it stands in
 * @param spec what it says, with measures resolved
 */
public record Version(Source source, Spec spec) {

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
}
