package org.stillroom.measures.physics;

import java.util.List;
import org.stillroom.measures.knowledge.Works;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.explain.Citation;

/** Published figures about strength, syrup, drinks and dilution that are known to mislead. */
public final class Traps {

    /**
     * A misprint or disagreement.
     *
     * @param id its number in our tables
     * @param about what it concerns: syrup, strength, drink or dilution
     * @param words a word that narrows it, such as a country
     * @param statement what is wrong, a sentence
     * @param citation where it is printed
     */
    public record Trap(
            String id, String about, String words, String statement, Citation citation) {}

    private final List<Trap> traps;

    private Traps(List<Trap> traps) {
        this.traps = traps;
    }

    /** Returns the traps that ship with the program. */
    public static Traps shipped() {
        Works works = Works.shipped();
        return new Traps(Rows.shipped("traps.csv").stream().map(r -> trap(r, works)).toList());
    }

    private static Trap trap(Row row, Works works) {
        return new Trap(
                row.get("id"),
                row.get("about"),
                row.get("words"),
                row.get("statement"),
                works.cite(row.get("source"), Works.status(row.get("status"))));
    }

    /** Returns every trap. */
    public List<Trap> all() {
        return traps;
    }

    /** Returns the traps that concern a subject, in the order of their numbers. */
    public List<Trap> about(String subject) {
        return traps.stream().filter(t -> t.about().equals(subject)).toList();
    }

    /** Returns the statements of the traps that concern a subject and a word. */
    public List<String> warnings(String subject, String word) {
        return about(subject).stream()
                .filter(t -> t.words().equals(word))
                .map(Trap::statement)
                .toList();
    }
}
