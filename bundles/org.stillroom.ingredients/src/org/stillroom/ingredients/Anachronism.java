package org.stillroom.ingredients;

import org.stillroom.model.explain.Explanation;

/**
 * Something that a dated source names before its time.
 *
 * @param subject the words or the sense
 * @param milestone when it began
 * @param certain whether the whole of the source’s date lies before; otherwise only a part does
 * @param why both dates and who says so
 */
public record Anachronism(String subject, Milestone milestone, boolean certain, Explanation why) {}
