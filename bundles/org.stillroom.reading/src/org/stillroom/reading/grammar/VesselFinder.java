package org.stillroom.reading.grammar;

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
                        && (!receives || p.word(at).startsWith("glass"))
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
                || words.has("article", w)
                || words.has("verb", w)
                || words.has("vessel-adj", w)
                || words.has("size", w)
                || words.has("definite", w);
    }
}
