package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * A line of printed words around the first place that a search found.
 *
 * @param words the words, line feeds as blanks
 * @param found first and last-but-one character of each found place in {@code words}
 */
record Snippet(String words, List<int[]> found) {
    private static final int BEFORE = 40;
    private static final int LENGTH = 190;

    /** Returns the words of a version around these places of its source. */
    static Snippet of(Version version, List<Span> marks) {
        SourceText text = version.source().text();
        Span recipe = version.witness().span();
        Span body = version.witness().body();
        int first =
                marks.stream()
                        .mapToInt(Span::start)
                        .filter(recipe::contains)
                        .findFirst()
                        .orElse(body.start());
        int floor = body.contains(first) ? body.start() : recipe.start();
        int start = Math.max(floor, first - BEFORE);
        int end = Math.max(start, Math.min(recipe.end(), start + LENGTH));
        String lead = start > floor ? "… " : "";
        Span shown = new Span(start, end);
        String words = lead + text.slice(shown).replace('\n', ' ');
        int zero = text.toIndex(start) - lead.length();
        List<int[]> found = new ArrayList<>();
        for (Span mark : marks) {
            if (shown.contains(mark)) {
                int from = text.toIndex(mark.start()) - zero;
                found.add(new int[] {from, text.toIndex(mark.end()) - zero});
            }
        }
        return new Snippet(words, List.copyOf(found));
    }
}
