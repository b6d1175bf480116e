package org.stillroom.reading.cut;

/** The lines of a book while it is set: wraps, sets in, and marks a page after so many lines. */
final class HabitSheet {

    private static final int LINES_OF_A_PAGE = 31;
    private static final String RUNNING = "THE SLIPWAY BOOK";

    private final Habits habits;
    private final StringBuilder out = new StringBuilder();
    private int page = 4;
    private int lines;
    private boolean marksPages;

    HabitSheet(Habits habits) {
        this.habits = habits;
    }

    /** Starts or stops marking pages. */
    void marksPages(boolean marks) {
        marksPages = marks;
    }

    int place() {
        return out.length();
    }

    int page() {
        return page;
    }

    void blank(int times) {
        for (int i = 0; i < times; i++) {
            out.append('\n');
        }
    }

    /** Sets one line as it is and returns where its words start. */
    int line(String words, int indent) {
        int start = out.length() + indent;
        out.append(" ".repeat(indent)).append(words).append('\n');
        lines++;
        return start;
    }

    /** Sets a paragraph in lines and returns where its words start. */
    int paragraph(String words, int first, int rest) {
        int start = out.length() + first;
        StringBuilder line = new StringBuilder(" ".repeat(first));
        boolean fresh = true;
        for (String word : words.split(" ")) {
            if (!fresh && line.length() + word.length() + 1 > habits.width()) {
                line(line.toString(), 0);
                turn(false);
                line = new StringBuilder(" ".repeat(rest));
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        line(line.toString(), 0);
        return start;
    }

    /** Marks a new page where the old one is full. */
    void turn(boolean between) {
        if (!marksPages || lines < LINES_OF_A_PAGE) {
            return;
        }
        lines = 0;
        page++;
        if (between) {
            mark(page % 2 == 0);
        } else {
            inside(page % 2 == 0);
        }
    }

    private void mark(boolean even) {
        blank(1);
        label(even);
        blank(1);
    }

    private void inside(boolean even) {
        switch (habits.page()) {
            case PG_INLINE -> out.append("[Pg " + page + "] ");
            case BRACES_INLINE -> out.append("{" + page + "} ");
            default -> mark(even);
        }
    }

    private void label(boolean even) {
        String said =
                switch (habits.page()) {
                    case NONE -> "";
                    case PG, PG_INLINE -> "[Pg " + page + "]";
                    case BRACES, BRACES_INLINE -> "{" + page + "}";
                    case BARE -> "                               " + page;
                    case DASHED -> "- " + page + " -";
                    case HEAD_LEFT ->
                            even
                                    ? page + "        " + RUNNING
                                    : "         MIXED DRINKS.          " + page;
                    case HEAD_PLAIN -> even ? page + " " + RUNNING : RUNNING + " " + page;
                    case HEAD_STOP -> even ? page + "  " + RUNNING + "." : "OF LIQUORS.  " + page;
                    case FORM_FEED -> "\f" + page;
                    case BRACKETED -> "[" + page + "]";
                };
        if (!said.isEmpty()) {
            out.append(said).append('\n');
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
