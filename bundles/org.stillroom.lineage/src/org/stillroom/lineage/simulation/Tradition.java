package org.stillroom.lineage.simulation;

import java.util.List;
import java.util.Map;
import org.stillroom.lineage.parents.Text;

/**
 * An invented tradition whose descent is known.
 *
 * @param texts the texts that survive, earliest first
 * @param parents for each surviving text but the first the id of its nearest surviving ancestor
 * @param second for each text that was copied from two, the second source's nearest survivor
 */
public record Tradition(List<Text> texts, Map<String, String> parents, Map<String, String> second) {

    /** Keeps the collections unchangeable. */
    public Tradition {
        texts = List.copyOf(texts);
        parents = Map.copyOf(parents);
        second = Map.copyOf(second);
    }

    /**
     * How a tradition comes about.
     *
     * @param words words of the first text
     * @param survivors texts that survive, about
     * @param change share of words that a copyist changes
     * @param lost share of texts that are lost, the first never
     * @param contaminated share of texts that take their second half from another
     * @param reprinted share of texts that are copied word for word
     */
    public record Settings(
            int words,
            int survivors,
            double change,
            double lost,
            double contaminated,
            double reprinted) {}
}
