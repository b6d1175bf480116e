package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Optional;

/** Finds names of vessels. */
final class VesselFinder {

    private final Vocabulary words;
    private final Passage p;

    VesselFinder(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
    }

    /** Finds a vessel whose words, article and adjectives included, start at a token. */
    Optional<Found.Pot> at(int i) {
        int at = i;
        while (at < i + 5 && isBefore(at) && words.at("vessel", p, at).isEmpty()) {
            at++;
        }
        boolean free = at > i && words.has("into", p.word(i - 1)) && p.at(at).isWord();
        if (free
                && words.at("vessel", p, at).isEmpty()
                && !words.has("stop", p.word(at))
                && words.at("vessel", p, at + 1).isPresent()) {
            at++;
        }
        Optional<PhraseTable.Match> match = words.at("vessel", p, at);
        if (match.isEmpty() || !starts(i)) {
            return Optional.empty();
        }
        int next = match.get().next();
        if (p.at(next).glued() && !words.has("full", p.word(next))) {
            return Optional.empty();
        }
        boolean receives = words.has("into", p.word(i - 1));
        boolean measures = words.has("of", p.word(next)) && !receives;
        boolean vague =
                words.has("the", p.word(i))
                        && (!receives || words.has("drink-itself", p.word(at)))
                        && next - i == 2
                        && words.has("vessel-vague", p.word(at));
        boolean toAndFro = p.word(i).equals("one") && words.has("other-one", p.word(next + 1));
        boolean verb = next - i == 1 && words.has("keeping", p.word(at)) && !receives;
        if (measures || vague || toAndFro || verb) {
            return Optional.empty();
        }
        String name = singular(p.name(at, next).replace('-', ' '));
        boolean mixing = match.get().value().equals("mixing");
        return Optional.of(new Found.Pot(canonical(name), at, next, mixing, receives));
    }

    /**
     * Finds a vessel that holds what is named after it: “in a goblet of shaved ice”.
     *
     * <p>Its contents are still to be read.
     */
    Optional<Found.Pot> holding(int i) {
        boolean placed = words.has("into", p.word(i - 1)) || words.has("to-a", p.word(i - 1));
        int at = i;
        while (at < i + 4 && isBefore(at) && words.at("vessel", p, at).isEmpty()) {
            at++;
        }
        int from = at;
        return words.at("vessel", p, at)
                .filter(m -> placed && words.has("of", p.word(m.next())))
                .map(
                        m ->
                                new Found.Pot(
                                        canonical(
                                                singular(p.name(from, m.next()).replace('-', ' '))),
                                        from,
                                        m.next(),
                                        m.value().equals("mixing"),
                                        true));
    }

    /**
     * Tells whether words point at a vessel that was named before: “the glass” after “a tall
     * tumbler”, “each glass”.
     */
    boolean isSameAgain(Found.Pot pot, List<Found.Pot> before) {
        String lead = p.word(pot.from() - 1);
        boolean bare = pot.to() - pot.from() == 1 && words.has("definite", lead);
        boolean each = words.has("each", lead) || words.has("every", lead);
        boolean beside =
                bare
                        && words.has("beside", p.word(pot.from() - 2))
                        && words.has("drink-itself", p.word(pot.from()));
        boolean served =
                before.stream()
                        .anyMatch(
                                v ->
                                        !v.word().endsWith("shaker")
                                                && !v.word().endsWith("mixing glass"));
        boolean filled = !before.isEmpty() && !words.has("into", p.word(pot.from() - 2));
        return beside || (bare || each) && (served || filled);
    }

    private static String singular(String name) {
        int space = name.lastIndexOf(' ') + 1;
        if (name.endsWith("glas")) {
            return name;
        }
        return name.substring(0, space) + BareNames.singular(name.substring(space));
    }

    private static String canonical(String name) {
        return switch (name) {
            case "wineglass" -> "wine glass";
            case "barglass" -> "bar glass";
            default -> name;
        };
    }

    private boolean isBefore(int at) {
        String w = p.word(at);
        return words.has("article", w)
                || words.has("definite", w)
                || words.has("size", w)
                || words.has("vessel-adj", w)
                || words.has("ice", w) && words.has("full", p.word(at + 1))
                || words.has("full", w) && words.has("ice", p.word(at - 1));
    }

    private boolean starts(int i) {
        Token before = p.at(i - 1);
        String w = before.text();
        return !before.isWord()
                || words.has("stop", w)
                || words.has("fraction", w)
                || words.has("article", w)
                || words.has("verb", w)
                || words.has("vessel-adj", w)
                || words.has("size", w)
                || words.has("definite", w);
    }
}
