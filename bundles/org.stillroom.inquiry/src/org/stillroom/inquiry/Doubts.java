package org.stillroom.inquiry;

import java.util.List;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.spec.Version;

/** Tells the doubts of a recipe in sentences that name the printed words. */
public final class Doubts {

    private static final int LONGEST = 60;

    private Doubts() {}

    /**
     * Returns one sentence for each doubt, weightiest first, each once: “the rest of the wine”: no
     * amount is printed.
     *
     * @param version a recipe as read
     */
    public static List<String> of(Version version) {
        return version.reading().doubts().stream()
                .map(doubt -> sentence(version, doubt))
                .distinct()
                .toList();
    }

    private static String sentence(Version version, Doubt doubt) {
        String words = version.source().text().slice(doubt.span());
        String line = words.strip().replaceAll("\\s+", " ").replaceAll("[.,;:]+$", "");
        return line.isEmpty() ? doubt.reason() : "“" + shortened(line) + "”: " + doubt.reason();
    }

    private static String shortened(String line) {
        if (line.length() <= LONGEST) {
            return line;
        }
        int blank = line.lastIndexOf(' ', LONGEST - 1);
        return line.substring(0, blank > 0 ? blank : LONGEST - 1) + "…";
    }
}
