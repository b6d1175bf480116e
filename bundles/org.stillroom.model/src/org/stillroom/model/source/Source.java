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

    private static final int LONGEST = 30;

    /** Keeps the marks as an unchangeable list. */
    public Source {
        marks = List.copyOf(marks);
    }

    /** Returns a name for tables: the author’s last word, or the title, and the date. */
    public String shortName() {
        String when =
                bibliography
                        .date()
                        .map(d -> " " + d.toText().replaceFirst("^the ", ""))
                        .orElse(", undated");
        return who() + when;
    }

    private String who() {
        String author = bibliography.author().orElse("").replaceFirst("[,;(].*", "").strip();
        String bare = author.replaceFirst("^(?i)(?:the|an|a) ", "");
        boolean nobody = bare.isEmpty() || bare.matches("(?i)anon(?:ymous)?\\.?|various.*|unknown");
        if (nobody) {
            return shortened(bibliography.title());
        }
        boolean person =
                bare.equals(author) && !bare.matches("(?i).*(?:hotel|committee|house)\\b.*");
        return person ? bare.substring(bare.lastIndexOf(' ') + 1) : shortened(bare);
    }

    /** Returns the first words of a name, some thirty characters. */
    private static String shortened(String name) {
        String first = name.replaceFirst("[;:,].*", "").strip();
        if (first.length() <= LONGEST) {
            return first;
        }
        int blank = first.lastIndexOf(' ', LONGEST);
        return first.substring(0, blank > 0 ? blank : LONGEST) + "…";
    }
}
