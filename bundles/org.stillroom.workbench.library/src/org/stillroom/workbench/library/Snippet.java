package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    private static final Pattern FILE_MARKS =
            Pattern.compile(
                    "(?<=^|[ …])#{1,6} |\\*\\*|(?<![\\p{L}\\p{N}])_(?=\\p{L})|(?<=[\\p{L}.,])_(?![\\p{L}\\p{N}])");

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
        return new Snippet(words, List.copyOf(found)).bare();
    }

    /** Returns the same without the marks of Markdown, which belong to the file. */
    private Snippet bare() {
        Matcher marks = FILE_MARKS.matcher(words);
        StringBuilder plain = new StringBuilder();
        int[] place = new int[words.length() + 1];
        int at = 0;
        while (marks.find()) {
            at = copy(at, marks.start(), plain, place);
            for (; at < marks.end(); at++) {
                place[at] = plain.length();
            }
        }
        at = copy(at, words.length(), plain, place);
        place[at] = plain.length();
        return new Snippet(
                plain.toString(),
                found.stream().map(f -> new int[] {place[f[0]], place[f[1]]}).toList());
    }

    private int copy(int from, int to, StringBuilder plain, int[] place) {
        for (int at = from; at < to; at++) {
            place[at] = plain.length();
            plain.append(words.charAt(at));
        }
        return to;
    }
}
