package org.stillroom.reading.grammar;

/** Compares words as a reader does who knows which letters type and scanners confuse. */
final class Slips {

    private Slips() {}

    /** More slips than one forgives. */
    static final int FAR = 9;

    /**
     * A word with what is needed to compare it.
     *
     * @param form the word
     * @param like its {@link #likeness}
     * @param letters a bit for each letter of the likeness
     */
    record Word(String form, String like, int letters) {

        static Word of(String form) {
            String like = likeness(form);
            int letters = 0;
            for (int i = 0; i < like.length(); i++) {
                letters |= 1 << (like.charAt(i) & 31);
            }
            return new Word(form, like, letters);
        }
    }

    /**
     * Returns how many slips lead from one word to another, or {@link #FAR} where more than one
     * would be needed, two in a long word.
     */
    static int slips(Word one, Word other) {
        String printed = one.form();
        String meant = other.form();
        String a = one.like();
        String b = other.like();
        int gap = Math.abs(printed.length() - meant.length());
        if (gap > 2 || meant.length() < 4) {
            return FAR;
        }
        if (a.equals(b)) {
            return 0;
        }
        if (Math.min(printed.length(), meant.length()) < 5) {
            return FAR;
        }
        int allowed = meant.length() >= 9 ? 2 : 1;
        // a slip takes at most one letter away and brings another
        boolean apart = Integer.bitCount(one.letters() ^ other.letters()) > 2 * allowed;
        boolean firstLetter =
                a.charAt(0) == b.charAt(0)
                        || meant.length() >= 7
                        || a.length() > 4 && a.substring(1).equals(b.substring(1));
        if (apart || !firstLetter || gap > allowed) {
            return FAR;
        }
        int distance = distance(a, b, allowed);
        return distance <= allowed ? distance : FAR;
    }

    /** Returns a word with letters of like shape made one. */
    static String likeness(String word) {
        return word.replace("rn", "m")
                .replace("ni", "m")
                .replace("li", "h")
                .replace("cl", "d")
                .replace("vv", "w")
                .replace('0', 'o')
                .replace('1', 'l')
                .replace('i', 'l')
                .replace('j', 'l')
                .replace('f', 's')
                .replace('u', 'n')
                .replace('e', 'c')
                .replace('h', 'b')
                .replace('5', 's')
                .replace('8', 'b')
                .replace('v', 'y');
    }

    /** Returns the edit distance of Levenshtein (1966), or more than the limit. */
    private static int distance(String a, String b, int limit) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            int best = row[0];
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(above, row[j - 1]) + 1, diagonal + change);
                diagonal = above;
                best = Math.min(best, row[j]);
            }
            if (best > limit) {
                return best;
            }
        }
        return row[b.length()];
    }
}
