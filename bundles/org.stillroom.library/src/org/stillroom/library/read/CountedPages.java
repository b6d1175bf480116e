package org.stillroom.library.read;

/** Numbers the pages of a text whose file says where they end, but not which they are. */
final class CountedPages {

    private final BlockText words;
    private int number;
    private int last = -1;

    /** Starts at the first page, if the text has several. */
    CountedPages(BlockText words, Spacing spacing) {
        this.words = words;
        this.number = spacing.firstPage();
        if (spacing.isPaged()) {
            words.page(Integer.toString(number));
        }
    }

    /** A page ends because the writer says so. */
    void forced() {
        next();
    }

    /** A page ended where the program that wrote the file was full; it says so after forced ends, too. */
    void full() {
        if (last < 0 || words.hasWordsSince(last)) {
            next();
        }
    }

    private void next() {
        number++;
        words.page(Integer.toString(number));
        last = words.place();
    }
}
