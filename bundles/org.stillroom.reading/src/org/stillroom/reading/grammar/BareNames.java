package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;

/** Decides whether a name without amount is an ingredient that has not been mentioned yet. */
final class BareNames {

    private final Vocabulary words;
    private final Passage p;
    private final NameParser names;
    private final KindRule kinds;
    private final AmountParser amounts;
    private final boolean lineMode;

    BareNames(
            Vocabulary words,
            Passage passage,
            NameParser names,
            AmountParser amounts,
            boolean lineMode) {
        this.amounts = amounts;
        this.words = words;
        this.p = passage;
        this.names = names;
        this.kinds = new KindRule(words, passage);
        this.lineMode = lineMode;
    }

    Optional<Draft> at(
            int i, Role role, boolean fresh, boolean sequel, boolean iced, List<Draft> drafts) {
        boolean offered = role == Role.SUBST && p.at(i).isWord() && !words.has("stop", p.word(i));
        if (!offered && !startsPhrase(i, fresh)) {
            return Optional.empty();
        }
        Optional<Name> name = names.parse(i).filter(n -> !isLeftOut(n.next()));
        if (name.isEmpty() || !isPlace(i, name.get(), role, fresh, sequel, iced)) {
            return Optional.empty();
        }
        boolean again = role != Role.GARNISH || drafts.isEmpty();
        if (!counts(name.get(), role) || isMentioned(i, name.get(), drafts, again)) {
            return Optional.empty();
        }
        Name n = name.get();
        Draft d = new Draft(n.first(), n.next());
        d.start = Math.min(n.start(), n.first());
        d.name(n);
        d.hints.add(Hint.BARE);
        d.amount = Amount.UNSTATED;
        if (isShaped(d, n)) {
            return Optional.of(d);
        }
        boolean sliced = d.preparations.stream().anyMatch(w -> words.has("slicing", w));
        boolean counts = (role != Role.RINSE && lineMode || role == Role.GARNISH) && !sliced;
        if (counts && !isDrawn(n)) {
            kinds.one(d, p.word(n.last()));
        }
        return Optional.of(d);
    }

    /** “Mint sprig” is one sprig of mint. */
    private boolean isShaped(Draft d, Name n) {
        Optional<String> shape = words.table("shape").value(p.word(n.last()));
        boolean one = shape.filter(p.word(n.last())::equals).isPresent() && n.last() > n.first();
        if (one) {
            Name.Piece old = d.pieces.remove(d.pieces.size() - 1);
            d.pieces.add(new Name.Piece(old.from(), old.to() - 1));
            d.measure = shape.get();
            d.amount = Amount.of(Rational.ONE);
        }
        return one;
    }

    /** “Essence of lemon” is no lemon, “peel of lemon” is one peel. */
    private boolean isDrawn(Name n) {
        for (int j = n.first() + 1; j < n.last(); j++) {
            if (words.has("of", p.word(j))) {
                return !words.has("part-of", p.word(n.first()));
            }
        }
        return false;
    }

    /**
     * Reads a name that makes a clause of its own, “…; nutmeg.”, or opens a list of bare names,
     * “whisky, hot water, sugar, lemon”.
     *
     * @param told whether something has been done to the drink before
     */
    Optional<Draft> alone(int i, boolean told, List<Draft> drafts) {
        Optional<Name> read = names.parse(i).filter(Name::known).filter(n -> counts(n, Role.NONE));
        if (read.isEmpty() || lineMode || isMentioned(i, read.get(), drafts, false)) {
            return Optional.empty();
        }
        Name n = read.get();
        boolean closes = isClosed(n.next());
        boolean dresses = words.has("dressing", p.word(n.last())) && closes;
        boolean listed = drafts.isEmpty() && !told && opensList(n.next());
        if (!(dresses && (told || !drafts.isEmpty())) && !listed) {
            return Optional.empty();
        }
        Draft d = new Draft(Math.min(n.start(), n.first()), n.next());
        d.name(n);
        d.hints.add(Hint.BARE);
        d.kind = dresses ? LineKind.GARNISH : d.kind;
        return Optional.of(d);
    }

    /** “Ice is not used.” */
    private boolean isLeftOut(int i) {
        return words.has("be", p.word(i)) && words.has("not-used", p.word(i + 1));
    }

    private boolean isClosed(int i) {
        Token t = p.at(i);
        return t.ends() || t.isMark('.') || t.isMark(';');
    }

    /** Tells whether only names stand from a comma to the end of the clause. */
    private boolean opensList(int i) {
        int at = i;
        int more = 0;
        while (p.at(at).isMark(',') || words.has("and", p.word(at))) {
            int next = at + 1;
            next = words.has("and", p.word(next)) ? next + 1 : next;
            Optional<Quantity> amount = amounts.parse(next).filter(Quantity::hasMeasure);
            if (amount.isPresent() && more > 0 && !names.parse(amount.get().next()).isPresent()) {
                at = amount.get().next();
                continue;
            }
            Optional<Name> name = names.parse(next).filter(Name::known);
            if (name.isEmpty()) {
                return false;
            }
            more++;
            at = name.get().next();
        }
        return more > 0 && isClosed(at);
    }

    /** Verbs take objects; “with ice” needs none; “nutmeg on top” says so itself. */
    private boolean isPlace(int i, Name n, Role role, boolean fresh, boolean sequel, boolean iced) {
        boolean line = lineMode && (fresh || role != Role.NONE);
        boolean idle = role == Role.NONE || role == Role.NEG || role == Role.MIX;
        boolean ice = words.has("ice", p.word(n.last()));
        if (ice) {
            boolean taken =
                    words.has("before-ice", p.word(i - 1))
                            || fresh
                            || !p.at(i - 1).isWord()
                            || words.at("verb", p, i - 1).isPresent();
            boolean around = !iced && words.has("in-on", p.word(i - 1));
            return line || !around && taken && role != Role.NEG;
        }
        boolean dressed =
                (fresh || words.has("with", p.word(i - 1)))
                        && words.at("garnish-mark", p, n.next()).isPresent();
        boolean grated = fresh && words.at("may-be", p, n.next()).isPresent();
        return !idle || sequel && role != Role.NEG || line || dressed || grated;
    }

    private boolean counts(Name n, Role role) {
        String last = p.word(n.last());
        if (words.has("vessel-only", last)
                || words.has("vessel", last)
                || words.has("never", last)) {
            return false;
        }
        boolean dressing =
                role == Role.GARNISH
                        || role == Role.TOP
                        || role == Role.FLOAT
                        || role == Role.FINISH
                        || role == Role.RINSE;
        if (dressing && !n.known() && words.has("with", p.word(n.next()))) {
            return false;
        }
        boolean plain = !words.has("not-name", last);
        boolean shown = role == Role.RINSE || role == Role.TOP || role == Role.FLOAT;
        return n.known() && plain || (dressing && shown || lineMode) && plain;
    }

    private boolean startsPhrase(int i, boolean fresh) {
        Token before = p.at(i - 1);
        Token here = p.at(i);
        if (!here.isWord() || here.glued()) {
            return false;
        }
        if (words.has("stop", here.text()) || words.has("of", here.text())) {
            return false;
        }
        String w = before.text();
        return fresh
                || !before.isWord() && !before.isMark('.')
                || words.has("before-name", w)
                || words.at("verb", p, i - 1).isPresent()
                || words.has("definite", w);
    }

    /** “The wine” means a wine that stands in an earlier line. */
    private boolean isMentioned(int i, Name n, List<Draft> drafts, boolean again) {
        boolean definite =
                words.has("definite", p.word(i - 1))
                        || words.has("definite", p.word(i))
                        || words.has("definite", p.word(n.start()));
        String last = singular(p.word(n.last()));
        for (Draft d : drafts) {
            if (!d.isNamed()) {
                continue;
            }
            boolean sameHead = singular(p.word(d.lastNameToken())).equals(last);
            boolean inside = definite && holds(d, last);
            boolean one = n.first() == n.last() && (again || d.kind == LineKind.GARNISH);
            boolean otherPart = !again && d.kind != LineKind.GARNISH;
            if (!otherPart && (sameHead && (definite || one || sameName(d, n)) || inside)) {
                return true;
            }
        }
        return definite && words.has("derived", last) && !drafts.isEmpty();
    }

    private boolean holds(Draft d, String word) {
        for (Name.Piece piece : d.pieces) {
            for (int i = piece.from(); i < piece.to(); i++) {
                if (singular(p.word(i)).equals(word)) {
                    return true;
                }
            }
        }
        return d.measure.equals("juice-of") && word.equals("juice");
    }

    private boolean sameName(Draft d, Name n) {
        for (int i = n.first(); i <= n.last(); i++) {
            if (!holds(d, singular(p.word(i)))) {
                return false;
            }
        }
        return true;
    }

    static String singular(String word) {
        if (word.endsWith("ies") && word.length() > 4) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.endsWith("sses") || word.endsWith("ches") || word.endsWith("shes")) {
            return word.substring(0, word.length() - 2);
        }
        boolean plural = word.endsWith("s") && !word.endsWith("ss") && word.length() > 3;
        return plural ? word.substring(0, word.length() - 1) : word;
    }
}
