package org.stillroom.ingredients;

import java.util.Map;
import java.util.Set;
import org.stillroom.ingredients.spelling.EditCost;
import org.stillroom.ingredients.spelling.Misprints;
import org.stillroom.ingredients.spelling.SpellingRules;

/**
 * What is known of old spellings.
 *
 * @param rules rules to a coarse form
 * @param costs what slips cost
 * @param misprints letters taken for others
 * @param contractions what words shortened by their middle may stand for
 * @param praise folded words that say nothing about what a thing is (“best”, “grated”)
 */
record SpellingKnowledge(
        SpellingRules rules,
        EditCost costs,
        Misprints misprints,
        Map<String, Set<String>> contractions,
        Set<String> praise) {

    SpellingKnowledge {
        contractions = Map.copyOf(contractions);
        praise = Set.copyOf(praise);
    }
}
