package org.stillroom.reading.grammar;

import java.util.Locale;
import java.util.Optional;

/** Tells verbs from the nouns that are spelt like them. */
final class VerbFinder {

    private final Vocabulary words;
    private final Passage p;

    VerbFinder(Vocabulary words, Passage passage) {
        this.words = words;
        this.p = passage;
    }

    /** A verb that was found. */
    record Verb(String base, int from, int to, Role role) {

        /** Tells whether it is something to do, rather than a list’s “take” or “use”. */
        boolean isDeed() {
            return role != Role.TAKE && role != Role.NEG;
        }
    }

    Optional<Verb> at(int i, boolean fresh) {
        Optional<PhraseTable.Match> match = words.at("verb", p, i);
        if (match.isEmpty()) {
            return Optional.empty();
        }
        String[] parts = match.get().value().split("/");
        boolean strict = parts[parts.length - 1].equals("strict");
        int next = match.get().next();
        boolean placed = isPlaced(i, fresh);
        if (strict ? !placed || !isTransitive(next) : !placed && !isLoose(i)) {
            return Optional.empty();
        }
        Role role = parts.length > 1 && !parts[1].equals("strict")
                ? Role.valueOf(parts[1].toUpperCase(Locale.ROOT)) : Role.NONE;
        return Optional.of(new Verb(parts[0], i, next, role));
    }

    /** Verbs stand first in a clause or after “and”, “then”, “to”, an adverb or another verb. */
    private boolean isPlaced(int i, boolean fresh) {
        Token before = p.at(i - 1);
        return fresh || before.ends() || before.type() == Token.Type.MARK
                || words.has("before-verb", before.text()) || isAdverb(before.text());
    }

    private static boolean isAdverb(String word) {
        return word.length() > 4 && word.endsWith("ly") && !word.equals("jelly");
    }

    /** A verb that no noun resembles may follow anything but an article, a number or “of”. */
    private boolean isLoose(int i) {
        String before = p.word(i - 1);
        return !words.has("article", before) && !words.has("of", before)
                && !words.has("definite", before) && !words.has("number", before)
                && !words.has("size", before) && !p.at(i).glued() && !p.at(i + 1).glued();
    }

    private boolean isTransitive(int next) {
        Token t = p.at(next);
        boolean mark = t.ends() || t.type() == Token.Type.MARK;
        return mark || t.type() == Token.Type.NUMBER || t.type() == Token.Type.FRACTION
                || words.has("after-verb", t.text()) || words.has("number", t.text())
                || isAdverb(t.text());
    }
}
