package org.stillroom.lineage.parents;

/**
 * How evidence of copying is weighed.
 *
 * @param words what a common word counts beside a typed one; words of one phrase are copied together,
 *     so that each alone says little
 * @param temperature bits of evidence that count as one: above 1, because what is counted place by
 *     place is not independent
 * @param reversal bits against a candidate for each place where the later text has an older reading
 *     than the candidate
 * @param prior bits that must be overcome before anything is called taken
 */
public record Settings(double words, double temperature, double reversal, double prior) {

    /** For recipes: typed words carry most. */
    public static final Settings RECIPES = new Settings(0.5, 2.5, 0.5, 0);

    /** For texts of which nothing is known but their words. */
    public static final Settings PLAIN = new Settings(1, 2.0, 1.0, 5);
}
