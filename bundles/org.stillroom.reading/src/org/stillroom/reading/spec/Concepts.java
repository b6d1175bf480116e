package org.stillroom.reading.spec;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Concept;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.text.Folding;

/** What the names of ingredients mean in one book, each looked up once. */
final class Concepts {

    private static final int MOST = 4;

    private final Thesaurus thesaurus;
    private final Circumstances where;
    private final Map<String, List<Concept>> known = new ConcurrentHashMap<>();

    Concepts(Thesaurus thesaurus, Circumstances where) {
        this.thesaurus = thesaurus;
        this.where = where;
    }

    /** Returns what a name may mean, likeliest first; never empty. */
    List<Concept> of(String name) {
        return known.computeIfAbsent(name, this::lookUp);
    }

    /** Returns the sense of a line's ingredient, where the thesaurus has it. */
    Optional<Sense> sense(SpecLine line) {
        return line.ingredient().known()
                ? thesaurus.sense(line.ingredient().id())
                : Optional.empty();
    }

    /** Returns the sense of a concept, where the thesaurus has it. */
    Optional<Sense> sense(Concept concept) {
        return concept.known() ? thesaurus.sense(concept.id()) : Optional.empty();
    }

    private List<Concept> lookUp(String name) {
        if (name.isBlank()) {
            return List.of(unknown(name));
        }
        List<Concept> found =
                thesaurus.find(name, where).stream()
                        .limit(MOST)
                        .map(Candidate::sense)
                        .map(thesaurus::concept)
                        .toList();
        return found.isEmpty() ? List.of(unknown(name)) : found;
    }

    private static Concept unknown(String name) {
        String folded = Folding.foldWord(name);
        return new Concept(folded, name, folded, Role.OTHER, false);
    }
}
