package org.stillroom.model.spec;

/**
 * What an ingredient’s name meant there and then.
 *
 * @param id id of the sense in the thesaurus (“gin-old-tom”), or the folded words where none fits
 * @param label the preferred label for display
 * @param family id of the broader sense that versions are compared by (“gin”)
 * @param role what it does in a drink
 * @param known whether the thesaurus has it
 */
public record Concept(String id, String label, String family, Role role, boolean known) {}
