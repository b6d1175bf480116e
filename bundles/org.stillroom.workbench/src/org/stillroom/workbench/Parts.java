package org.stillroom.workbench;

/** Ids of the parts and stacks of the window, for model fragments and commands. */
public final class Parts {
    /** The tree of the library. */
    public static final String LIBRARY = "org.stillroom.part.library";

    /** The page of a source. */
    public static final String PAGE = "org.stillroom.part.page";

    /** Search with facets. */
    public static final String SEARCH = "org.stillroom.part.search";

    /** The versions of a drink. */
    public static final String VERSIONS = "org.stillroom.part.versions";

    /** How a drink's proportions moved. */
    public static final String DRIFT = "org.stillroom.part.drift";

    /** Every inquiry that is registered. */
    public static final String INQUIRIES = "org.stillroom.part.inquiries";

    /** How a figure came about. */
    public static final String EXPLANATION = "org.stillroom.part.explanation";

    /** A word of measure across time and place. */
    public static final String MEASURES = "org.stillroom.part.measures";

    /** What the names of ingredients mean. */
    public static final String INGREDIENTS = "org.stillroom.part.ingredients";

    /** What could not be read. */
    public static final String PROBLEMS = "org.stillroom.part.problems";

    /** Doubtful readings, those that would change most first. */
    public static final String REVIEW = "org.stillroom.part.review";

    /** The rules of the books. */
    public static final String RULES = "org.stillroom.part.rules";

    private Parts() {}
}
