package org.stillroom.reading.grammar;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Tells verbs from the nouns that are spelt like them, in whichever form they stand. */
final class VerbFinder {

    private static final int CLAUSE = 14;

    private final Vocabulary words;
    private final Passage p;
    private final Predicate<Integer> isName;

    /**
     * Makes a finder.
     *
     * @param isName tells whether a known ingredient starts at a token
     */
    VerbFinder(Vocabulary words, Passage passage, Predicate<Integer> isName) {
        this.words = words;
        this.p = passage;
        this.isName = isName;
    }

    /** A verb that was found. */
    record Verb(String base, int from, int to, Role role) {

        /** Tells whether it is something to do, rather than a list’s “take” or “use”. */
        boolean isDeed() {
            return role != Role.TAKE && role != Role.NEG;
        }
    }

    Optional<Verb> at(int i, boolean fresh) {
        if (p.at(i).glued()) {
            return Optional.empty();
        }
        return base(i, fresh)
                .or(() -> participle(i, fresh))
                .or(() -> gerund(i, fresh))
                .or(() -> third(i));
    }

    private Optional<Verb> base(int i, boolean fresh) {
        Optional<PhraseTable.Match> match = words.at("verb", p, i);
        if (match.isEmpty()) {
            return Optional.empty();
        }
        boolean strict = match.get().value().endsWith("/strict");
        int next = match.get().next();
        if (isSeasoning(i, next)) {
            return Optional.empty();
        }
        boolean noun = words.has("dress-noun", p.word(i)) && words.has("no-verb", p.word(i - 1));
        if (noun) {
            return Optional.empty();
        }
        boolean placed = isPlaced(i, fresh);
        if (strict ? !placed || !isTransitive(i, next) : !placed && !isLoose(i)) {
            return Optional.empty();
        }
        return Optional.of(verb(match.get().value(), i, next));
    }

    /** “Pepper and salt” names two things. */
    private boolean isSeasoning(int i, int next) {
        boolean joined = words.has("and", p.word(i - 1)) || words.has("and", p.word(next));
        return words.has("seasoning", p.word(i))
                && joined
                && !words.has("after-verb", p.word(next));
    }

    static Verb verb(String value, int from, int to) {
        String[] parts = value.split("/");
        boolean named = parts.length > 1 && !parts[1].equals("strict");
        Role role = named ? Role.valueOf(parts[1].toUpperCase(Locale.ROOT)) : Role.NONE;
        return new Verb(parts[0], from, to, role);
    }

    private Optional<Verb> form(Optional<String> base, int i) {
        return base.flatMap(b -> words.table("verb").value(b)).map(v -> verb(v, i, i + 1));
    }

    /** “Is poured”, “having been rubbed”, “is warmed …, poured and drunk”. */
    private Optional<Verb> participle(int i, boolean fresh) {
        Optional<String> base = words.verbs().participle(p.word(i));
        if (base.isEmpty() || base.get().equals("make")) {
            return Optional.empty();
        }
        if (fresh && words.has("with", p.word(i + 1))
                || fresh && words.at("taste", p, i + 1).isPresent()
                || isTold(i, fresh)) {
            return form(base, i);
        }
        int before = i - 1;
        while (isAdverb(p.word(before)) || words.has("adverb", p.word(before))) {
            before--;
        }
        boolean passive = words.has("be", p.word(before)) || p.word(before).equals("having");
        boolean serial =
                (words.has("and", p.word(before)) || p.at(before).isMark(','))
                        && passiveBefore(before);
        if (!passive && !serial || isIdle(before)) {
            return Optional.empty();
        }
        return form(base, i);
    }

    /** “…, shaken with ice and strained into”, “Poured over ice, and served in”. */
    private boolean isTold(int i, boolean fresh) {
        if (!words.has("told", p.word(i))) {
            return false;
        }
        Token next = p.at(i + 1);
        Token before = p.at(i - 1);
        boolean onward = words.has("told-on", next.text());
        boolean listed = next.type() == Token.Type.MARK || words.has("and", next.text());
        boolean serial =
                (before.isMark(',') || words.has("and", before.text())) && toldBefore(i - 1);
        boolean free = before.isMark(',') || before.isMark(':') || before.ends();
        return fresh && (onward || listed)
                || serial && (onward || listed || next.ends())
                || free && onward && !isIdle(i - 1);
    }

    private boolean toldBefore(int i) {
        for (int j = i; j > i - CLAUSE && j >= 0; j--) {
            Token t = p.at(j);
            if (t.isMark('.') || t.ends()) {
                return false;
            }
            if (words.has("told", t.text())) {
                return true;
            }
        }
        return false;
    }

    /** Returns what is told of an ingredient after its name: “sugar dissolved in water”. */
    Optional<Verb> toldOf(int i) {
        boolean deed = words.has("told", p.word(i)) || words.has("told-of", p.word(i));
        return deed && words.has("told-on", p.word(i + 1))
                ? form(words.verbs().participle(p.word(i)), i)
                : Optional.empty();
    }

    private boolean passiveBefore(int i) {
        for (int j = i - 1; j > i - 18 && j >= 0; j--) {
            Token t = p.at(j);
            if (t.isMark('.') || t.isMark(';') || t.ends()) {
                return false;
            }
            if (words.has("be", t.text()) && words.verbs().participle(p.word(j + 1)).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** “Till the sugar is melted” says when, not what to do. */
    private boolean isIdle(int i) {
        for (int j = i - 1; j > i - CLAUSE && j >= 0; j--) {
            Token t = p.at(j);
            if (t.type() == Token.Type.MARK || t.ends()) {
                return words.has("clause-idle", p.word(j + 1));
            }
            if (words.has("clause-idle", t.text())) {
                return true;
            }
        }
        return words.has("clause-idle", p.word(0)) && i < CLAUSE;
    }

    /** “…, stirring well”, “by straining”; not “before serving”. */
    private Optional<Verb> gerund(int i, boolean fresh) {
        Optional<String> base = words.verbs().gerund(p.word(i));
        Token before = p.at(i - 1);
        boolean opens = fresh && words.has("after-verb", p.word(i + 1));
        if (isName.test(i)) {
            return Optional.empty();
        }
        boolean placed =
                opens
                        || before.isMark(',')
                        || words.has("gerund-after", before.text())
                        || isAdverb(before.text());
        return placed ? form(base, i) : Optional.empty();
    }

    /** “One chooses a glass, puts in it …, and fills it.” */
    private Optional<Verb> third(int i) {
        Optional<String> base = words.verbs().third(p.word(i));
        Token before = p.at(i - 1);
        boolean subject = words.has("person-word", before.text());
        boolean serial = before.isMark(',') || words.has("and", before.text());
        boolean noun =
                words.at("measure", p, i).isPresent()
                        || words.has("head", p.word(i))
                        || words.has("of", p.word(i + 1));
        boolean object = words.has("after-verb", p.word(i + 1));
        return subject || serial && !noun && object ? form(base, i) : Optional.empty();
    }

    /** Verbs stand first in a clause or after “and”, “then”, “to”, an adverb or another verb. */
    private boolean isPlaced(int i, boolean fresh) {
        Token before = p.at(i - 1);
        return fresh
                || before.ends()
                || before.type() == Token.Type.MARK
                || words.has("before-verb", before.text())
                || isAdverb(before.text());
    }

    private static boolean isAdverb(String word) {
        return word.length() > 4 && word.endsWith("ly") && !word.equals("jelly");
    }

    /** A verb that no noun resembles may follow anything but an article, a number or “of”. */
    private boolean isLoose(int i) {
        String before = p.word(i - 1);
        return !words.has("article", before)
                && !words.has("of", before)
                && !words.has("definite", before)
                && !words.has("number", before)
                && !words.has("size", before)
                && !words.has("modal", before)
                && !p.at(i + 1).glued();
    }

    private boolean isTransitive(int i, int next) {
        Token t = p.at(next);
        boolean listed = t.isMark(',') && words.has("head", p.word(i)) && p.at(i - 1).ends();
        boolean mark = !listed && (t.ends() || t.type() == Token.Type.MARK && !t.isMark('('));
        boolean measure =
                words.at("measure", p, i).isPresent() && !words.has("needs-of", p.word(i));
        boolean noun = measure || words.has("adjective-verb", p.word(i));
        return mark
                || t.type() == Token.Type.NUMBER
                || t.type() == Token.Type.FRACTION
                || words.has("after-verb", t.text())
                || words.has("number", t.text())
                || isAdverb(t.text())
                || words.has("strewn", t.text())
                || !noun && isName.test(next) && !t.glued();
    }
}
