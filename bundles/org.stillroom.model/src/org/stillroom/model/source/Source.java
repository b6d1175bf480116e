package org.stillroom.model.source;

import java.util.List;
import org.stillroom.model.text.SourceText;

/**
 * One edition that the user holds a text of.
 *
 * @param id the file's path below {@code sources/}, with forward slashes; stable and unique
 * @param bibliography what is known of the edition
 * @param text the words as they stand in the file, without front matter or mark-up
 * @param marks structure that the file itself states (pages, headings, recipe bounds)
 * @param digest SHA-256 of the file's bytes, and of its sidecar's, in hexadecimal
 */
public record Source(
        String id, Bibliography bibliography, SourceText text, List<Mark> marks, String digest) {

    /** Keeps the marks as an unchangeable list. */
    public Source {
        marks = List.copyOf(marks);
    }

    /** Returns a name for tables: author’s last word, or title, and year. */
    public String shortName() {
        String who =
                bibliography
                        .author()
                        .map(a -> a.substring(a.strip().lastIndexOf(' ') + 1).strip())
                        .filter(a -> !a.isEmpty())
                        .orElse(bibliography.title());
        return bibliography.date().map(d -> who + " " + d.toText()).orElse(who + ", undated");
    }
}
