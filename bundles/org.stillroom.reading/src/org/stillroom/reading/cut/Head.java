package org.stillroom.reading.cut;

/** Words that may be the title of a recipe, with what speaks for it. */
final class Head {

    /** Where a title stands in relation to the recipe. */
    enum Place {
        /** The file itself marks it as a heading. */
        MARKED,
        /** On a line of its own. */
        OWN_LINE,
        /** At the start of the recipe's first paragraph. */
        RUN_IN,
        /** In the middle of a paragraph that holds several recipes. */
        MIDDLE,
        /** The first words of the recipe's first sentence. */
        SENTENCE,
        /** In a sentence that leads to the recipe. */
        LEAD_IN
    }

    /** How the letters of a title are set. */
    enum Letters {
        CAPITALS,
        TITLE,
        SENTENCE
    }

    final Place place;
    final String manner;
    final int level;
    final Letters letters;
    final boolean emphasis;
    final boolean blankBefore;
    final boolean stop;
    final TitleText title;
    final int start;
    final int end;
    final TitleKey key;
    double points;
    double prior = Double.NaN;
    boolean accepted;
    boolean listed;
    BodyScore body = BodyScore.NONE;

    Head(
            Place place,
            String manner,
            int level,
            Letters letters,
            boolean emphasis,
            boolean blankBefore,
            boolean stop,
            TitleText title,
            int start,
            int end) {
        this.place = place;
        this.manner = manner;
        this.level = level;
        this.letters = letters;
        this.emphasis = emphasis;
        this.blankBefore = blankBefore;
        this.stop = stop;
        this.title = title;
        this.start = start;
        this.end = end;
        this.key = TitleKey.of(title.words());
    }

    /** Returns what the book's habit is learned by: all titles set alike share it. */
    String style() {
        return place.name()
                + manner
                + level
                + (place == Place.MARKED ? "" : letters.name())
                + (emphasis ? "e" : "")
                + (title.number().isPresent() ? "n" : "")
                + (place == Place.OWN_LINE && !emphasis && stop ? "." : "");
    }

    /** Returns how the title's words are set, going by their letters. */
    static Letters letters(String words) {
        int upper = 0;
        int letters = 0;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            letters += Character.isLetter(c) ? 1 : 0;
            upper += Character.isUpperCase(c) ? 1 : 0;
        }
        if (letters > 2 && upper > 0.6 * letters) {
            return Letters.CAPITALS;
        }
        return isTitleCase(words) ? Letters.TITLE : Letters.SENTENCE;
    }

    private static boolean isSmall(String word) {
        return switch (word) {
            case "under", "without", "after", "before", "about", "called", "other" -> true;
            default -> false;
        };
    }

    private static boolean isTitleCase(String words) {
        int at = 0;
        while (at < words.length()) {
            char c = words.charAt(at);
            if (c == ',' || c == '(' || c == ';') {
                return at > 0;
            }
            if (!Character.isLetter(c)) {
                at++;
                continue;
            }
            int end = BodyScore.wordEnd(words, at, words.length());
            if (end - at > 4 && Character.isLowerCase(c) && !isSmall(words.substring(at, end))) {
                return false;
            }
            at = end;
        }
        return true;
    }
}
