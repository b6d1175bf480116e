package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.reading.LineKind;

/** Tells whether a drink is meant hot, cold or frozen, where the words say so. */
final class Temperature {

    private Temperature() {}

    static Optional<String> of(Vocabulary words, Passage p, Found found, String title) {
        boolean frozen = false;
        boolean hot = title.contains("hot") || title.contains("mulled");
        boolean cold = title.contains("iced") || title.contains("cold");
        for (int i = 0; i < p.size(); i++) {
            frozen |= words.has("frozen", p.word(i));
            hot |= words.has("hot", p.word(i));
            cold |= words.has("cold", p.word(i));
        }
        boolean ice =
                contains(found.drafts)
                        || found.deeds.stream()
                                .anyMatch(d -> d.verb().equals("ice") || d.verb().equals("chill"));
        if (frozen) {
            return Optional.of("frozen");
        }
        if (ice || cold && !hot) {
            return Optional.of("cold");
        }
        return hot ? Optional.of("hot") : Optional.empty();
    }

    private static boolean contains(List<Draft> drafts) {
        return drafts.stream().anyMatch(d -> d.kind == LineKind.ICE);
    }
}
