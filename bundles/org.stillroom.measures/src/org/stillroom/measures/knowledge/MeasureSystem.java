package org.stillroom.measures.knowledge;

/**
 * A system of measures.
 *
 * @param id the word that files and commands use (“us”, “imperial”, “wine-before-1826”)
 * @param label its name for a reader (“US customary”)
 */
public record MeasureSystem(String id, String label) implements Comparable<MeasureSystem> {

    @Override
    public int compareTo(MeasureSystem other) {
        return id.compareTo(other.id);
    }
}
