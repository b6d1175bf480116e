package org.stillroom.reading.grammar;

import java.util.Optional;

/** Passes over words that name something which does not go into the drink. */
final class Skipper {

    private static final int FAR = 14;

    private final Vocabulary words;
    private final Passage p;
    private final AmountParser amounts;
    private final NameParser names;

    Skipper(Vocabulary words, Passage passage, AmountParser amounts, NameParser names) {
        this.words = words;
        this.p = passage;
        this.amounts = amounts;
        this.names = names;
    }

    /** Passes over remarks, comparisons, and what cools the jug from outside. */
    int remark(int i) {
        if (i == 0 && p.word(0).equals("r") && p.at(0).capital() && p.at(1).isWord()) {
            return 1;
        }
        Optional<PhraseTable.Match> note = words.at("skip", p, i).or(() -> words.at("taste", p, i));
        if (note.isPresent()) {
            return note.get().next();
        }
        if (words.at("coolant", p, i).isPresent()) {
            return untilMark(i);
        }
        return words.at("compare", p, i)
                .map(m -> names.parse(m.next()).map(Name::next).orElse(m.next()))
                .orElse(i);
    }

    /**
     * Passes over the title of a recipe that the words send to.
     *
     * @param placed whether a clause begins here or a verb of making went before
     */
    int reference(int i, boolean placed) {
        if (words.at("same", p, i).isPresent()) {
            return i;
        }
        return words.at("refer", p, i)
                .filter(m -> placed || words.has("refer-always", p.word(i)))
                .map(m -> untilMark(m.next()))
                .orElse(i);
    }

    /** Passes over what must not be done and what is not used. */
    int forbidden(int i) {
        Optional<PhraseTable.Match> never = words.at("neg-verb", p, i);
        boolean gerund = words.verbs().gerund(p.word(i + 1)).isPresent();
        if (never.isPresent() && gerund && !p.at(i + 2).isMark(',')) {
            return afterGerund(i + 1);
        }
        if (never.isPresent() && isAnyVerb(never.get().next())) {
            return untilMark(never.get().next());
        }
        return words.at("neg", p, i)
                .map(m -> names.parse(m.next()).map(Name::next).orElse(m.next()))
                .orElse(i);
    }

    /** “A tablespoonful in a tumbler of water” says how to take it, not how to make it. */
    int dose(int i) {
        Optional<Quantity> q = amounts.parse(i).filter(Quantity::hasMeasure);
        boolean dose = q.isPresent() && words.at("dose", p, q.get().next()).isPresent();
        if (!dose) {
            return i;
        }
        int j = i;
        while (j < p.size() && !p.at(j).ends() && !p.at(j).isMark('.')) {
            j++;
        }
        return j;
    }

    /** Finds “using … in place of …”; returns the token after “using”, or the same token. */
    int substitution(int i) {
        return words.at("subst", p, i)
                .filter(m -> insteadFollows(i))
                .map(PhraseTable.Match::next)
                .orElse(i);
    }

    /** Tells whether “with …” is followed by what it replaces: “with rum for the gin”. */
    boolean standsIn(int with) {
        for (int j = with + 2; j < with + FAR && p.at(j).isWord(); j++) {
            if (words.at("instead", p, j).isPresent() || words.at("subst-for", p, j).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private boolean insteadFollows(int i) {
        if (words.has("subst-sure", p.word(i))) {
            return true;
        }
        for (int j = i + 1; j < i + FAR && j < p.size(); j++) {
            Token t = p.at(j);
            if (t.isMark('.') || t.isMark(';') || t.ends()) {
                return false;
            }
            if (words.at("instead", p, j).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Passes over “straining” or “bruising the mint” in “serve without … in a tall glass”. */
    private int afterGerund(int i) {
        Optional<Name> object = names.parse(i + 1).filter(Name::known);
        boolean named = object.isPresent() && object.get().first() - i <= 2;
        return named ? object.get().next() : i + 1;
    }

    private boolean isAnyVerb(int i) {
        String w = p.word(i);
        return words.at("verb", p, i).isPresent()
                || words.verbs().participle(w).isPresent()
                || words.verbs().gerund(w).isPresent();
    }

    private int untilMark(int i) {
        int j = i;
        while (j < p.size() && !p.at(j).ends() && !isClauseMark(j)) {
            j++;
        }
        return j;
    }

    private boolean isClauseMark(int j) {
        Token t = p.at(j);
        boolean stop = t.isMark('.') && !words.has("abbrev", p.word(j - 1));
        boolean comma = t.isMark(',') && !p.word(j + 1).equals("no");
        return stop || comma || t.isMark(';') || t.isMark(':');
    }
}
