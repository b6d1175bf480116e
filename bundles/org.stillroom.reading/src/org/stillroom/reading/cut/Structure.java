package org.stillroom.reading.cut;

import java.util.Arrays;
import java.util.List;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** The structure that a source's file states itself, as sorted UTF-16 bounds of its text. */
final class Structure {

    private final String text;
    private final int[][] headings;
    private final int[][] emphasis;
    private final int[][] recipes;
    private final int[][] others;

    Structure(Source source) {
        text = source.text().toString();
        headings = bounds(source, Mark.Kind.HEADING);
        emphasis = bounds(source, Mark.Kind.EMPHASIS);
        recipes = bounds(source, Mark.Kind.RECIPE);
        others = bounds(source, Mark.Kind.OTHER);
    }

    private static int[][] bounds(Source source, Mark.Kind kind) {
        SourceText text = source.text();
        List<Mark> marks =
                source.marks().stream()
                        .filter(m -> m.kind() == kind && m.span().end() <= text.length())
                        .filter(m -> kind != Mark.Kind.OTHER || isApart(m.label()))
                        .sorted((a, b) -> a.span().compareTo(b.span()))
                        .toList();
        int[][] bounds = new int[marks.size()][];
        for (int i = 0; i < bounds.length; i++) {
            Span span = marks.get(i).span();
            bounds[i] =
                    new int[] {
                        text.toIndex(span.start()),
                        text.toIndex(span.end()),
                        level(marks.get(i).label())
                    };
        }
        return bounds;
    }

    /** Tells whether a division of this name holds no recipes; a chapter or section may. */
    private static boolean isApart(String label) {
        return switch (label.toLowerCase(java.util.Locale.ROOT).replace('_', '-')) {
            case "contents",
                    "toc",
                    "index",
                    "preface",
                    "foreword",
                    "introduction",
                    "dedication",
                    "advertisement",
                    "advertisements",
                    "advert",
                    "titlepage",
                    "title-page",
                    "colophon",
                    "errata",
                    "glossary",
                    "measures",
                    "notes",
                    "note",
                    "imprint",
                    "frontispiece",
                    "illustrations",
                    "bibliography",
                    "licence",
                    "license" ->
                    true;
            default -> false;
        };
    }

    private static int level(String label) {
        return label.length() == 1 && Character.isDigit(label.charAt(0))
                ? label.charAt(0) - '0'
                : 0;
    }

    String text() {
        return text;
    }

    boolean hasHeadings() {
        return headings.length > 0;
    }

    boolean hasRecipes() {
        return recipes.length > 0;
    }

    int[][] recipes() {
        return recipes;
    }

    /** Tells whether a place lies in a division that the file marks as something else. */
    boolean isOther(int at) {
        return covering(others, at) >= 0;
    }

    /** Returns the first heading inside a stretch as its two bounds, or nothing. */
    java.util.Optional<int[]> headingWithin(int from, int to) {
        for (int i = Math.max(0, covering(headings, from)); i < headings.length; i++) {
            if (headings[i][0] >= to) {
                break;
            }
            if (headings[i][0] >= from) {
                return java.util.Optional.of(headings[i]);
            }
        }
        return java.util.Optional.empty();
    }

    /** Returns the level of the heading that covers a place, or 0. */
    int headingLevel(int at) {
        int i = covering(headings, at);
        return i < 0 ? 0 : Math.max(1, headings[i][2]);
    }

    /** Returns where the heading that covers a place ends. */
    int headingEnd(int at) {
        return headings[covering(headings, at)][1];
    }

    /**
     * Returns where emphasised words that start here end, mark-up characters included, or -1 where
     * no emphasis starts.
     */
    int emphasisEnd(int at, int limit) {
        int i = covering(emphasis, at);
        if (i >= 0 && emphasis[i][0] == at) {
            return Math.min(limit, emphasis[i][1]);
        }
        if (at >= limit || TitleText.SIGNS.indexOf(text.charAt(at)) < 0) {
            return -1;
        }
        char sign = text.charAt(at);
        int from = at;
        while (from < limit && text.charAt(from) == sign) {
            from++;
        }
        if (from == limit || Lines.isBlank(text.charAt(from)) || sign != '_' && isMoney(from)) {
            return -1;
        }
        int stop = Math.min(limit, from + 160);
        for (int end = from; end < stop; end++) {
            if (text.charAt(end) == sign && end > from) {
                while (end < limit && text.charAt(end) == sign) {
                    end++;
                }
                return end;
            }
        }
        return -1;
    }

    /** Tells whether a figure follows a sign: “$2”, “+3”, “=4”. */
    private boolean isMoney(int at) {
        return text.charAt(at - 1) != '*' && Character.isDigit(text.charAt(at)) && !numbered(at);
    }

    private boolean numbered(int at) {
        return TitleText.numberEnd(text, at, Math.min(text.length(), at + 12)) > at;
    }

    private static int covering(int[][] bounds, int at) {
        if (bounds.length == 0) {
            return -1;
        }
        int found =
                Arrays.binarySearch(bounds, new int[] {at}, (a, b) -> Integer.compare(a[0], b[0]));
        int i = found >= 0 ? found : -found - 2;
        return i >= 0 && (at < bounds[i][1] || at == bounds[i][0]) ? i : -1;
    }
}
