package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * How a book is set: one value for each habit in which printed books and their transcriptions differ.
 *
 * @param trade which recipes the book holds
 * @param title how a title is set
 * @param body how the words under it are laid out
 * @param gap empty lines between a title and its recipe
 * @param apart empty lines between two recipes
 * @param indent blanks before each line of a recipe
 * @param width columns, or a very large number where paragraphs are not wrapped
 * @param page how pages are marked
 * @param list how contents and index are set
 * @param extra what else the book holds
 */
record Habits(
        Trade trade,
        Title title,
        Body body,
        int gap,
        int apart,
        int indent,
        int width,
        PageMark page,
        Listed list,
        Extra extra) {

    enum Trade {
        BAR,
        HOUSE
    }

    enum Title {
        CAPITALS,
        CAPITALS_STOP,
        PLAIN,
        PLAIN_STOP,
        ITALIC,
        BOLD,
        PLUS,
        TILDE,
        CENTRED,
        NUMBERED,
        NUMBER_DASH,
        NUMBER_ABOVE,
        NUMBER_WORD,
        QUOTED,
        GLASS_BELOW,
        GLASS_BESIDE,
        BRACKETED,
        SIDE_DASH,
        SIDE_CAPITALS,
        SIDE_STOP,
        SIDE_ITALIC,
        SIDE_BOLD,
        SIDE_NUMBERED,
        SIDE_NUMBERED_ITALIC,
        TO_MAKE,
        TO_MAKE_SENTENCE
    }

    enum Body {
        USUAL,
        ONE_PARAGRAPH,
        DOUBLE_SPACED,
        HANGING,
        FIRST_LINE_IN,
        INGREDIENTS_WORD,
        INGREDIENTS_AFTER,
        METHOD_FIRST
    }

    enum PageMark {
        NONE,
        PG,
        PG_INLINE,
        BRACES,
        BRACES_INLINE,
        BARE,
        DASHED,
        HEAD_LEFT,
        HEAD_PLAIN,
        HEAD_STOP,
        FORM_FEED,
        BRACKETED
    }

    enum Listed {
        NONE,
        LEADERS,
        COMMAS,
        BARE,
        COLUMNS,
        UNNUMBERED,
        DOTTED_STOP
    }

    enum Extra {
        NONE,
        FOOTNOTES,
        ADVERTS,
        CATEGORIES,
        CATEGORIES_TOLD,
        CHAPTERS,
        ANOTHER,
        SHORT_REFERENCES,
        SHORT_RECIPES,
        POEMS,
        MEASURES,
        TOASTS,
        STORIES,
        STORIES_TITLED,
        LICENCE,
        ASTERISKS,
        ILLUSTRATIONS
    }

    /** A bar manual as most are: capitals over terse lines. */
    static final Habits BAR =
            new Habits(
                    Trade.BAR,
                    Title.CAPITALS_STOP,
                    Body.USUAL,
                    1,
                    2,
                    0,
                    72,
                    PageMark.PG,
                    Listed.LEADERS,
                    Extra.NONE);

    /** A household book as most are: side heads before running prose. */
    static final Habits HOUSE =
            new Habits(
                    Trade.HOUSE,
                    Title.SIDE_DASH,
                    Body.USUAL,
                    1,
                    1,
                    0,
                    72,
                    PageMark.PG,
                    Listed.COMMAS,
                    Extra.NONE);

    Habits with(Title t) {
        return new Habits(trade, t, body, gap, apart, indent, width, page, list, extra);
    }

    Habits with(Body b) {
        return new Habits(trade, title, b, gap, apart, indent, width, page, list, extra);
    }

    Habits with(PageMark p) {
        return new Habits(trade, title, body, gap, apart, indent, width, p, list, extra);
    }

    Habits with(Listed l) {
        return new Habits(trade, title, body, gap, apart, indent, width, page, l, extra);
    }

    Habits with(Extra e) {
        return new Habits(trade, title, body, gap, apart, indent, width, page, list, e);
    }

    Habits spaced(int newGap, int newApart, int newIndent, int newWidth) {
        return new Habits(
                trade, title, body, newGap, newApart, newIndent, newWidth, page, list, extra);
    }

    /** Returns the two usual books and every book that differs from one of them in one habit. */
    static List<Habits> oneByOne() {
        List<Habits> all = new ArrayList<>();
        for (Habits base : List.of(BAR, HOUSE)) {
            all.add(base);
            for (Title title : Title.values()) {
                all.add(base.with(title));
            }
            for (Body body : Body.values()) {
                if (base.trade == Trade.BAR || body.ordinal() < Body.INGREDIENTS_WORD.ordinal()) {
                    all.add(base.with(body));
                }
            }
            for (PageMark page : PageMark.values()) {
                all.add(base.with(page));
            }
            for (Listed list : Listed.values()) {
                all.add(base.with(list));
            }
            for (Extra extra : Extra.values()) {
                all.add(base.with(extra));
            }
            all.add(base.spaced(0, 1, 0, 72));
            all.add(base.spaced(0, 0, 0, 72));
            all.add(base.spaced(0, 0, 4, 65));
            all.add(base.spaced(0, 1, 2, 60));
            all.add(base.spaced(1, 1, 0, 72));
            all.add(base.spaced(1, 1, 4, 80));
            all.add(base.spaced(2, 3, 0, 72));
            all.add(base.spaced(1, 2, 0, 100_000));
            all.add(base.spaced(0, 1, 0, 100_000));
        }
        return all.stream().distinct().toList();
    }

    /** Returns a book whose habits are drawn at random. */
    static Habits drawn(Trade trade, Random random) {
        List<Body> bodies = List.of(Body.values()).subList(0, trade == Trade.BAR ? 8 : 5);
        int[] widths = {60, 65, 72, 78, 100_000};
        Habits base = trade == Trade.BAR ? BAR : HOUSE;
        return base.with(one(List.of(Title.values()), random))
                .with(one(bodies, random))
                .with(one(List.of(PageMark.values()), random))
                .with(one(List.of(Listed.values()), random))
                .with(one(List.of(Extra.values()), random))
                .spaced(
                        random.nextInt(3),
                        1 + random.nextInt(3),
                        2 * random.nextInt(3),
                        widths[random.nextInt(widths.length)]);
    }

    private static <T> T one(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }

    /** Tells whether the title stands in the line in which the recipe starts. */
    boolean isSide() {
        return title.ordinal() >= Title.SIDE_DASH.ordinal();
    }

    @Override
    public String toString() {
        return String.join(
                " ",
                trade.name(),
                title.name(),
                body.name(),
                "gap" + gap + "-" + apart + "-" + indent + "-" + (width > 999 ? "long" : width),
                page.name(),
                list.name(),
                extra.name());
    }
}
