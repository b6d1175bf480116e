package org.stillroom.model.source;

import java.util.Optional;
import org.stillroom.model.text.Span;

/**
 * The text of one recipe in one source.
 *
 * @param source the source's id
 * @param ordinal place in the source, from 1
 * @param number number or page label as printed, if there is one
 * @param title the title as printed, without number and closing stop
 * @param titleSpan where the title stands
 * @param span where the recipe stands, title included
 * @param body where the recipe's own words stand, title excluded
 * @param page printed page where it starts, if the file tells
 */
public record Witness(
        String source,
        int ordinal,
        Optional<String> number,
        String title,
        Span titleSpan,
        Span span,
        Span body,
        Optional<String> page) {

    /** Returns an identifier that is unique in the library: the source's id, #, the ordinal. */
    public String id() {
        return source + "#" + ordinal;
    }
}
