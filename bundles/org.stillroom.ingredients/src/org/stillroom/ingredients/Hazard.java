package org.stillroom.ingredients;

import java.util.List;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.spec.Caution;

/**
 * Something about an ingredient that could hurt someone, or that a law limits.
 *
 * @param id slug (“calamus-us”)
 * @param level how grave it is
 * @param senses ids of the senses that it goes with; their narrower senses share it
 * @param triggers words of a recipe that it goes with, whatever the ingredients (“set fire”)
 * @param region where the rule holds: “US”, “EU”, “GB”, or empty for everywhere
 * @param what what the thing is, a sentence
 * @param rule which rule limits it and how, a sentence
 * @param source the rule or text
 */
public record Hazard(
        String id,
        Caution.Level level,
        List<String> senses,
        List<String> triggers,
        String region,
        String what,
        String rule,
        Citation source) {

    /** Keeps the lists unchangeable. */
    public Hazard {
        senses = List.copyOf(senses);
        triggers = List.copyOf(triggers);
    }

    /** Returns the caution’s words: what it is, which rule limits it, check current local law. */
    public String words() {
        return what + ' ' + rule + " Check current local law before anything is served.";
    }
}
