package org.stillroom.library.read;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.source.Mark;

/**
 * Page numbers that a transcriber wrote into the words, such as “[p. 12]” or “{12}”.
 *
 * <p>They are those of the printed book and outrank the pages of the transcription.
 */
final class StatedPages {

    private static final int ENOUGH = 3;
    private static final Pattern STATED =
            Pattern.compile(
                    "\\{\\s*(?:p(?:age|g)?\\.?\\s*)?\\d{1,4}\\s*\\}"
                            + "|\\[\\s*p(?:age|g)?\\.?\\s*\\d{1,4}\\s*\\]",
                    Pattern.CASE_INSENSITIVE);

    private StatedPages() {}

    /** Returns the marks without those of pages where the words themselves tell the pages. */
    static List<Mark> outrank(String text, List<Mark> marks) {
        Matcher m = STATED.matcher(text);
        int count = 0;
        while (count < ENOUGH && m.find()) {
            count++;
        }
        return count < ENOUGH
                ? marks
                : marks.stream().filter(k -> k.kind() != Mark.Kind.PAGE).toList();
    }
}
