package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.workbench.Ink;

/**
 * Turns the marks of a page into styles, a colour and a line under the words for each meaning.
 *
 * <p>Marks may lie inside one another, styles may not: every character gets one look first, then
 * characters of one look are joined.
 */
final class PageStyles {
    private static final int DOUBTFUL = 1 << 8;
    private static final int LIT = 1 << 9;
    private static final int TITLE = 1 << 10;
    private static final int BESIDE = 1 << 11;
    private static final int FAINT = 1 << 12;
    private static final int PUT_RIGHT = 1 << 13;
    private static final int USE = 0xFF;

    /** Marks of Markdown, which belong to the file and not to the print. */
    private static final Pattern FILE_MARKS = Pattern.compile("(?m)^#{1,6}(?= )|\\*\\*|__");

    private final MarkedPage page;
    private final Ink ink;
    private final int[] looks;

    PageStyles(MarkedPage page, Ink ink) {
        this.page = page;
        this.ink = ink;
        this.looks = new int[page.words().length()];
    }

    /** Returns the styles of the page with these places lit up. */
    StyleRange[] ranges(List<Span> lit) {
        looksOfRecipes();
        for (MarkedPage.Mark mark : page.marks()) {
            if (mark.use() == Ink.Use.DOUBT) {
                add(mark.from(), mark.to(), DOUBTFUL);
            } else {
                set(mark.from(), mark.to(), mark.use().ordinal());
            }
        }
        Matcher marks = FILE_MARKS.matcher(page.words());
        while (marks.find()) {
            add(marks.start(), marks.end(), FAINT);
        }
        for (WordCorrection right : page.putRight()) {
            page.characters(right.span()).ifPresent(c -> add(c[0], c[1], PUT_RIGHT));
        }
        for (Span span : lit) {
            page.characters(span).ifPresent(c -> add(c[0], c[1], LIT));
        }
        return join();
    }

    private void looksOfRecipes() {
        int plain = Ink.Use.INK.ordinal();
        Arrays.fill(looks, page.shown().isPresent() ? plain | BESIDE : plain);
        for (Version version : page.neighbours()) {
            boolean shown = page.shown().filter(v -> v.id().equals(version.id())).isPresent();
            if (shown) {
                page.characters(version.witness().span())
                        .ifPresent(c -> Arrays.fill(looks, c[0], c[1], plain));
            }
            page.characters(version.witness().titleSpan()).ifPresent(c -> add(c[0], c[1], TITLE));
        }
    }

    private void set(int from, int to, int use) {
        for (int i = from; i < to; i++) {
            looks[i] = looks[i] & ~USE & ~BESIDE | use;
        }
    }

    private void add(int from, int to, int flag) {
        for (int i = from; i < to; i++) {
            looks[i] |= flag;
        }
    }

    private StyleRange[] join() {
        List<StyleRange> ranges = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= looks.length; i++) {
            if (i == looks.length || looks[i] != looks[from]) {
                ranges.add(style(from, i - from, looks[from]));
                from = i;
            }
        }
        return ranges.toArray(StyleRange[]::new);
    }

    private StyleRange style(int start, int length, int look) {
        Ink.Use use = Ink.Use.values()[look & USE];
        StyleRange range = style(use, ink);
        range.start = start;
        range.length = length;
        if ((look & BESIDE) != 0) {
            range.foreground = ink.colour(Ink.Use.QUIET);
        }
        if ((look & TITLE) != 0) {
            range.fontStyle = SWT.BOLD;
        }
        if ((look & FAINT) != 0) {
            range.fontStyle = SWT.NORMAL;
            range.foreground = ink.colour(Ink.Use.QUIET);
            range.underline = false;
        }
        if ((look & DOUBTFUL) != 0) {
            range.borderStyle = SWT.BORDER_DOT;
            range.borderColor = ink.colour(Ink.Use.DOUBT);
        }
        if ((look & PUT_RIGHT) != 0) {
            range.strikeout = true;
            range.strikeoutColor = ink.colour(Ink.Use.DOUBT);
        }
        if ((look & LIT) != 0) {
            range.background = ink.colour(Ink.Use.LIT);
        }
        return range;
    }

    /** Returns the style that stands for a meaning, for words and for the legend. */
    static StyleRange style(Ink.Use use, Ink ink) {
        StyleRange range = new StyleRange();
        range.foreground = ink.colour(use);
        switch (use) {
            case AMOUNT -> underline(range, SWT.UNDERLINE_SINGLE);
            case MEASURE -> underline(range, SWT.UNDERLINE_DOUBLE);
            case INGREDIENT -> {
                underline(range, SWT.UNDERLINE_SINGLE);
                range.fontStyle = SWT.BOLD;
            }
            case STEP -> underline(range, SWT.UNDERLINE_SQUIGGLE);
            case VESSEL -> {
                range.borderStyle = SWT.BORDER_DASH;
                range.borderColor = ink.colour(use);
            }
            case DOUBT -> {
                range.borderStyle = SWT.BORDER_DOT;
                range.borderColor = ink.colour(use);
            }
            default -> range.foreground = ink.colour(use);
        }
        return range;
    }

    private static void underline(StyleRange range, int style) {
        range.underline = true;
        range.underlineStyle = style;
        range.underlineColor = range.foreground;
    }
}
