package org.stillroom.reading.grammar;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;

/**
 * Walks through a recipe’s words once and collects lines, deeds and vessels.
 *
 * <p>What stands at a place is tried in order: the end of a clause, words that send elsewhere or
 * forbid something, filling, vessels, verbs, an ingredient with its amount, an ingredient before
 * its amount, an ingredient alone.
 */
final class ClauseScanner {

    private static final int FAR = 9;
    private static final int SENTENCE = 40;
    private static final int WETTED = 7;

    private final Vocabulary words;
    private final Passage p;
    private final AmountParser amounts;
    private final NameParser names;
    private final ItemParser items;
    private final FillParser fills;
    private final InverseParser inverses;
    private final Skipper skipper;
    private final VerbFinder verbs;
    private final KindRule kinds;
    private final BareNames bare;
    private final NameCheck check;
    private final ServesFinder parties;
    private final VesselFinder vessels;
    private final boolean lineMode;
    private final Found found = new Found();
    private final BitSet unread = new BitSet();
    private Role role = Role.NONE;
    private String lastVerb = "";
    private boolean fresh = true;
    private boolean lastInverse;
    private boolean leaning;
    private int segment;
    private int lastDraftEnd = -1;

    ClauseScanner(Vocabulary words, Passage passage, Names thesaurus, Settings settings) {
        this.words = words;
        this.p = passage;
        this.lineMode = settings.line();
        MeasureWords measures =
                new MeasureWords(words, w -> words.knows(w) || thesaurus.knowsWord(w));
        this.amounts = new AmountParser(words, passage, measures, settings.pharmacy());
        this.names = new NameParser(words, passage, thesaurus);
        this.items = new ItemParser(words, passage, amounts, names, lineMode);
        this.vessels = new VesselFinder(words, passage);
        this.fills = new FillParser(words, passage, amounts, names, vessels);
        this.inverses = new InverseParser(words, passage, amounts, names, fills, lineMode);
        this.skipper = new Skipper(words, passage, amounts, names);
        this.verbs =
                new VerbFinder(
                        words,
                        passage,
                        i ->
                                words.has("head", passage.word(i))
                                        || thesaurus.longest(passage, i).isPresent());
        this.kinds = new KindRule(words, passage);
        this.check = new NameCheck(words, passage, thesaurus);
        this.parties = new ServesFinder(words, passage);
        this.bare = new BareNames(words, passage, names, amounts, lineMode);
    }

    /**
     * How to look at the words.
     *
     * @param line whether they are a single line or clause
     * @param pharmacy whether they come from a pharmacy or a still-house
     */
    record Settings(boolean line, boolean pharmacy) {}

    Found scan() {
        int i = 0;
        while (i < p.size()) {
            int next = step(i);
            i = Math.max(next, i + 1);
        }
        found.drafts.forEach(this::noteUnread);
        return found;
    }

    /** Words that carry meaning and were passed over make their neighbours less certain. */
    private boolean isContent(Token t) {
        boolean figure =
                t.type() == Token.Type.NUMBER
                        || t.type() == Token.Type.FRACTION
                        || t.type() == Token.Type.SIGN;
        return figure
                || t.isWord()
                        && !words.has("stop", t.text())
                        && !words.has("of", t.text())
                        && !words.has("article", t.text())
                        && !words.has("prep", t.text())
                        && !words.has("trailing", t.text())
                        && !words.has("time", t.text());
    }

    /** A sentence with several words of story-telling may name things that are not put in. */
    private boolean isNarrative(Draft d) {
        int told = 0;
        for (int i = d.start - 1; i >= 0 && i > d.start - SENTENCE && !isStop(i); i--) {
            told += words.has("narrative", p.word(i)) ? 1 : 0;
        }
        for (int i = d.start; i < d.start + SENTENCE && i < p.size() && !isStop(i); i++) {
            told += words.has("narrative", p.word(i)) ? 1 : 0;
        }
        return told >= 2;
    }

    /** Tells whether a name without amount is an ingredient told of, not an item of a list. */
    private boolean isInPassing(Draft d) {
        Token before = p.at(d.start - 1);
        boolean item = before.ends() || before.isMark('.') || before.isMark(';');
        return !lineMode && !item && d.kind == LineKind.MEASURED;
    }

    private boolean isStop(int i) {
        Token t = p.at(i);
        return t.ends() || t.isMark('.') && p.at(i + 1).capital();
    }

    private void noteUnread(Draft d) {
        if (d.hints.contains(Hint.BARE) && isInPassing(d)) {
            d.hints.remove(Hint.BARE);
            d.hints.add(Hint.BARE_TOLD);
        }
        if (!lineMode && isNarrative(d)) {
            d.hints.add(Hint.NARRATIVE);
        }
        int from = lineMode ? 0 : Math.max(0, d.start - 2);
        int to = lineMode ? p.size() : Math.min(p.size(), d.end + 2);
        for (int i = unread.nextSetBit(from); i >= 0 && i < to; i = unread.nextSetBit(i + 1)) {
            boolean garnish = d.kind == LineKind.GARNISH || d.kind == LineKind.TOP;
            if (p.at(i).isWord() && !garnish) {
                d.hints.add(lineMode ? Hint.LEFTOVER : Hint.BESIDE);
            } else if (!p.at(i).isWord()) {
                d.hints.add(Hint.LOOSE_NUMBER);
            }
        }
    }

    private int step(int i) {
        Token t = p.at(i);
        if (t.ends() || t.isMark('.') && !isDecimal(i) || t.isMark(';')) {
            return endClause(i, t);
        }
        int skipped = skip(i);
        if (skipped > i) {
            fresh = fresh && words.has("keeps-fresh", t.text());
            return skipped;
        }
        int read = read(i);
        if (read > i) {
            fresh = false;
            return read;
        }
        if (isContent(t)) {
            unread.set(i);
        }
        boolean link = lineMode && words.has("line-link", t.text());
        if (t.type() != Token.Type.MARK && !link) {
            fresh = false;
        }
        return i + 1;
    }

    /** “.5 rye” begins with a number. */
    private boolean isDecimal(int i) {
        Token next = p.at(i + 1);
        return i == 0 && next.type() == Token.Type.NUMBER && !next.spaced();
    }

    private int endClause(int i, Token t) {
        role = Role.NONE;
        lastVerb = "";
        fresh = true;
        leaning &= t.isMark(';');
        lastInverse = false;
        segment++;
        return i + 1;
    }

    /** Passes over words that name what is not in the drink. */
    private int skip(int i) {
        int next = lineMode ? i : parties.after(i);
        if (next > i) {
            return next;
        }
        next = skipper.remark(i);
        if (next > i) {
            verbs.at(i, fresh).filter(VerbFinder.Verb::isDeed).ifPresent(this::note);
        }
        if (next <= i) {
            next = skipper.reference(i, fresh || afterPreparing(i));
            leaning |= next > i;
        }
        boolean mayDose = fresh && !lineMode && !found.drafts.isEmpty();
        if (next <= i && mayDose) {
            next = skipper.dose(i);
            doseVessel(i, next);
        }
        if (next > i) {
            return next;
        }
        if (leaning && words.has("with", p.word(i)) && skipper.standsIn(i)) {
            role = Role.SUBST;
            return i + 1;
        }
        int barred = fresh || !leaning ? i : skipper.forbidden(i);
        if (barred > i) {
            return barred;
        }
        int substituted = skipper.substitution(i);
        if (substituted > i) {
            role = Role.SUBST;
            return substituted;
        }
        if (role == Role.SUBST && words.has("subst-for", p.word(i))) {
            return names.parse(i + 1).map(Name::next).orElse(i + 1);
        }
        return skipper.forbidden(i);
    }

    /** A dose “in a tumbler of water” is drunk from the tumbler. */
    private void doseVessel(int from, int to) {
        for (int i = from; i < to; i++) {
            vessels.holding(i)
                    .filter(v -> words.has("drunk-from", lastWord(v.word())))
                    .ifPresent(found.pots::add);
        }
    }

    private static String lastWord(String name) {
        return name.substring(name.lastIndexOf(' ') + 1);
    }

    /** Tells whether ice comes after “of”. */
    private boolean holdsIce(int of) {
        return names.parse(of).filter(n -> words.has("ice", p.word(n.last()))).isPresent();
    }

    private boolean afterPreparing(int i) {
        int count = found.deeds.size();
        return count > 0
                        && found.deeds.get(count - 1).segment() == segment
                        && i - found.deeds.get(count - 1).to() < 3
                || words.has("be", p.word(i - 1));
    }

    /** “Mit Sodawasser auffüllen”: the verb of the clause stands last. */
    private void foresee(int i) {
        boolean opens = fresh || p.at(i - 1).isMark(',') || words.has("and", p.word(i - 1));
        if (!opens || !words.has("with-last", p.word(i))) {
            return;
        }
        for (int j = i + 1; j < i + FAR && p.at(j).isWord(); j++) {
            Optional<String> verb = words.table("verb-last").value(p.word(j));
            if (verb.isPresent()) {
                deed(VerbFinder.verb(verb.get(), j, j + 1));
                return;
            }
        }
    }

    private int read(int i) {
        foresee(i);
        int filled = fill(i);
        if (filled > i) {
            return filled;
        }
        Optional<Found.Pot> pot = vessels.at(i);
        if (pot.isPresent() && !isMeasureHere(i)) {
            if (!vessels.isSameAgain(pot.get(), found.pots)) {
                found.pots.add(pot.get());
            }
            return pot.get().to();
        }
        vessels.holding(i)
                .filter(v -> holdsIce(v.to()) || words.has("drunk-from", lastWord(v.word())))
                .ifPresent(found.pots::add);
        Optional<VerbFinder.Verb> verb =
                verbs.at(i, fresh).filter(v -> !isIceNoun(i) && !isSeasoning(i));
        if (verb.isPresent()) {
            return deed(verb.get());
        }
        Optional<Draft> before = last();
        Optional<Draft> item = items.parse(i, before);
        if (item.isPresent() && isCertain(item.get())) {
            return accept(item.get());
        }
        int inverted = inverse(i);
        if (inverted <= i && item.isPresent()) {
            return accept(item.get());
        }
        if (inverted > i) {
            return inverted;
        }
        boolean sequel = lastDraftEnd >= 0 && i - lastDraftEnd <= 2;
        boolean iced = !words.has("ice-verb-not", lastVerb) || role == Role.NONE;
        boolean told = !found.deeds.isEmpty();
        Optional<Draft> alone = fresh ? bare.alone(i, told, found.drafts) : Optional.empty();
        lastInverse |= alone.isPresent();
        return alone.or(() -> bare.at(i, role, fresh, sequel, iced, found.drafts))
                .map(this::accept)
                .orElse(i);
    }

    /** “Juice of lemons” without a number may have its amount after it. */
    private static boolean isCertain(Draft item) {
        return !item.hints.contains(Hint.BARE_MEASURE);
    }

    /** Reads what has its amount after the name; returns the token to go on with. */
    private int inverse(int i) {
        boolean took =
                role == Role.TAKE
                        && (words.at("verb", p, i - 1).isPresent() || words.has("of", p.word(i)));
        boolean next = lastInverse && (p.at(i - 1).isMark(',') || words.has("and", p.word(i - 1)));
        boolean added = role == Role.ADD && words.at("verb", p, i - 1).isPresent();
        boolean place = fresh || took || next || added;
        if (!place || role != Role.NONE && !took && !added && !next) {
            return i;
        }
        List<Draft> several = inverses.several(i);
        if (!several.isEmpty()) {
            several.forEach(d -> kinds.decide(d, role));
            found.drafts.addAll(several);
            return several.get(several.size() - 1).end;
        }
        Optional<Draft> one = inverses.single(i, lastInverse);
        if (one.isEmpty()) {
            return i;
        }
        int end = accept(one.get());
        lastInverse = true;
        return end;
    }

    /** A word such as “wine-glass” after “a” and before “of brandy” measures. */
    private boolean isMeasureHere(int i) {
        Optional<Draft> item = items.parse(i, Optional.empty());
        boolean preposition = words.has("into", p.word(i - 1));
        Optional<Found.Pot> pot = vessels.at(i);
        boolean more =
                item.isPresent()
                        && pot.isPresent()
                        && words.has("and", p.word(pot.get().to()))
                        && words.has("of", p.word(item.get().amountEnd));
        boolean of = more || pot.isPresent() && words.has("of", p.word(pot.get().to()));
        boolean ofIce =
                item.isPresent()
                        && preposition
                        && item.get().isNamed()
                        && words.has("ice", p.word(item.get().lastNameToken()));
        return !ofIce
                && item.isPresent()
                && (of || !preposition)
                && !item.get().measure.equals("whole");
    }

    private int fill(int i) {
        Optional<FillParser.Filled> filled = fills.at(i, role);
        if (filled.isEmpty()) {
            return i;
        }
        FillParser.Filled f = filled.get();
        if (f.verb()) {
            found.deeds.add(new Found.Deed("fill", i, i + 1, found.drafts.size(), segment));
        }
        f.pot().filter(v -> !vessels.isSameAgain(v, found.pots)).ifPresent(found.pots::add);
        if (f.draft().isEmpty()) {
            role = Role.FILL;
            return f.next();
        }
        int end = accept(f.draft().get());
        role = Role.NONE;
        return end;
    }

    /** “…; ice. Stir” names ice; “strain and ice” cools. */
    private boolean isIceNoun(int i) {
        Token next = p.at(i + 1);
        boolean alone = next.ends() || next.type() == Token.Type.MARK;
        boolean list = found.deeds.isEmpty() || lastDraftEnd == i - 1;
        boolean line = lineMode && !words.has("ice-verb-next", next.text());
        return words.has("ice", p.word(i)) && (alone && list || line);
    }

    /** “Salt and pepper” names salt; “salt it” is an order. */
    private boolean isSeasoning(int i) {
        Token next = p.at(i + 1);
        boolean alone =
                next.ends() || next.type() == Token.Type.MARK || words.has("and", next.text());
        return words.has("also-noun", p.word(i))
                && (alone || words.at("taste", p, i + 1).isPresent());
    }

    private void note(VerbFinder.Verb verb) {
        found.deeds.add(
                new Found.Deed(verb.base(), verb.from(), verb.to(), found.drafts.size(), segment));
    }

    private int deed(VerbFinder.Verb verb) {
        if (verb.isDeed()) {
            note(verb);
        }
        role = isPlainWetting(verb) ? Role.ADD : verb.role();
        lastInverse = false;
        lastVerb = verb.base();
        Optional<PhraseTable.Match> mark = words.at("garnish-mark", p, verb.to());
        if (mark.isPresent() && role == Role.ADD && verb.base().equals("lay")) {
            role = Role.GARNISH;
            return mark.get().next();
        }
        return verb.to();
    }

    /** Sugar that is wetted takes the liquid up; a glass that is wetted is rinsed. */
    private boolean isPlainWetting(VerbFinder.Verb verb) {
        boolean wets = verb.role() == Role.RINSE && words.has("wets", verb.base());
        for (int i = verb.to(); wets && i < verb.to() + WETTED; i++) {
            if (words.at("vessel", p, i).isPresent() || words.has("rim", p.word(i))) {
                return false;
            }
        }
        return wets && !lineMode;
    }

    private Optional<Draft> last() {
        int count = found.drafts.size();
        return count == 0 ? Optional.empty() : Optional.of(found.drafts.get(count - 1));
    }

    /** Takes a line in, with what “or” and “each” add to it; returns where to go on. */
    private int accept(Draft draft) {
        kinds.decide(draft, isStrewnIn(draft) ? Role.ADD : role);
        boolean another = words.has("another", p.word(draft.amountStart));
        if (draft.hints.contains(Hint.DITTO) || another && draft.measure.equals("same")) {
            repeatMeasure(draft);
        }
        if (lastVerb.equals("dash") && draft.kind == LineKind.TOP && isUnstated(draft)) {
            draft.kind = LineKind.MEASURED;
            draft.measure = "dash";
            draft.amount = Amount.of(Rational.ONE);
        }
        if (role == Role.NEG || isNamedAgain(draft)) {
            return draft.end;
        }
        if (startsWithOr(draft) && (lineMode || !found.drafts.isEmpty())) {
            draft.kind = LineKind.ALTERNATIVE;
        }
        if (!lineMode && draft.kind == LineKind.GARNISH && role != Role.GARNISH) {
            dressBack(draft);
        }
        check.note(draft);
        found.drafts.add(draft);
        told(draft);
        int end = afterwards(draft);
        lastDraftEnd = end;
        return shareEach(draft, alternatives(draft, end));
    }

    /** “Half the oranges” and “a pint of the water” are taken of what was put in before. */
    private boolean isNamedAgain(Draft draft) {
        if (lineMode
                || role == Role.GARNISH
                || !draft.isNamed()
                || draft.measure.equals("juice-of")) {
            return false;
        }
        int first = draft.pieces.get(0).from();
        boolean again =
                words.has("definite", p.word(first - 1))
                        || words.has("same-noun", p.word(first - 1));
        boolean one = draft.pieces.size() == 1 && draft.lastNameToken() == first;
        String name = BareNames.singular(p.word(first));
        return isMeasuredAgain(draft, name)
                || again
                        && one
                        && !words.has("part-of", name)
                        && found.drafts.stream()
                                .filter(d -> d.isNamed() && d.kind != LineKind.ALTERNATIVE)
                                .filter(d -> !words.has("part-of", p.word(d.pieces.get(0).from())))
                                .anyMatch(
                                        d ->
                                                BareNames.singular(p.word(d.lastNameToken()))
                                                        .equals(name));
    }

    /** In “slice in an orange and a lemon for show” the orange is for show too. */
    private void dressBack(Draft draft) {
        boolean purpose =
                words.at("garnish-mark", p, draft.end).isPresent()
                        && words.has("purpose", p.word(draft.end));
        int start = draft.start;
        for (int k = found.drafts.size() - 1; purpose && k >= 0; k--) {
            Draft d = found.drafts.get(k);
            boolean joined = d.end <= start && start - d.end <= 2;
            for (int i = d.end; i < start; i++) {
                joined &= p.at(i).isMark(',') || words.has("and", p.word(i));
            }
            if (!joined || d.kind != LineKind.MEASURED) {
                return;
            }
            d.kind = LineKind.GARNISH;
            start = d.start;
        }
    }

    /** “Draw the sprigs of mint to the top.” */
    private boolean isMeasuredAgain(Draft draft, String name) {
        boolean definite =
                words.has("definite", p.word(draft.start))
                        || words.has("definite", p.word(draft.start - 1));
        return definite
                && !draft.measure.equals("whole")
                && found.drafts.stream()
                        .filter(Draft::isNamed)
                        .filter(d -> d.measure.equals(draft.measure))
                        .anyMatch(d -> BareNames.singular(p.word(d.lastNameToken())).equals(name));
    }

    /** A pound that is strewn over goes into the drink, and so does what is grated first of all. */
    private boolean isStrewnIn(Draft draft) {
        boolean bulk = words.has("bulk", draft.measure) || words.has("drops", draft.measure);
        return !lineMode
                && role == Role.GARNISH
                && words.has("strewing", lastVerb)
                && (bulk || found.drafts.isEmpty());
    }

    /** “…, shaken with ice” after the last name says what is done with all of it. */
    private void told(Draft draft) {
        int from = draft.isNamed() ? draft.lastNameToken() + 1 : draft.end;
        for (int i = from; i < draft.end && !lineMode; i++) {
            Optional<VerbFinder.Verb> verb = verbs.toldOf(i);
            verb.filter(VerbFinder.Verb::isDeed).ifPresent(this::note);
            if (verb.isPresent() && words.has("told", p.word(i))) {
                role = verb.get().role();
                lastVerb = verb.get().base();
            }
        }
    }

    /** “Brandy 1½ do.” has the measure of the line before. */
    private void repeatMeasure(Draft draft) {
        last().filter(b -> !words.has("no-unit", b.measure))
                .ifPresent(b -> draft.measure = b.measure);
    }

    /** “Dash with seltzer” is a dash of it. */
    private static boolean isUnstated(Draft draft) {
        return draft.amount.quantity().isEmpty() && draft.measure.equals("top");
    }

    /** In “plain or lemon soda” the first is a soda too. */
    private void lendHead(Draft main, Name other) {
        boolean own =
                words.has("head", p.word(main.lastNameToken()))
                        || words.has("countable", p.word(main.lastNameToken()));
        boolean part = words.has("part-of", p.word(other.last()));
        boolean lends =
                other.last() > other.first() && (part || words.has("head", p.word(other.last())));
        if (main.isNamed() && (!own || part) && lends && !isPart(main)) {
            main.pieces.add(new Name.Piece(other.last(), other.last() + 1));
            main.hints.add(Hint.ELIDED);
        }
    }

    private boolean isPart(Draft draft) {
        return words.has("part-of", p.word(draft.lastNameToken()))
                || words.has("part-of", p.word(draft.pieces.get(0).from()));
    }

    private boolean startsWithOr(Draft draft) {
        boolean first = lineMode && found.drafts.isEmpty() && words.has("or", p.word(0));
        if (first) {
            return true;
        }
        int before = p.at(draft.start - 1).isMark(',') ? draft.start - 2 : draft.start - 1;
        return before >= 0 && words.has("or", p.word(before));
    }

    /** Reads “to taste”, “enough to sweeten” and the like after a name. */
    private int afterwards(Draft draft) {
        int at = draft.end;
        int i = p.at(at).isMark(',') ? at + 1 : at;
        Optional<PhraseTable.Match> taste = words.at("taste", p, i);
        boolean same = draft.measure.equals("same") && draft.amount.kind() == Amount.Kind.STATED;
        boolean open = draft.amount.kind() == Amount.Kind.UNSTATED || same;
        Optional<Quantity> filling =
                words.at("as-will-fill", p, at)
                        .flatMap(m -> amounts.parse(m.next()))
                        .filter(Quantity::hasMeasure);
        if (same && filling.isPresent()) {
            draft.amount = filling.get().amount();
            draft.measure = filling.get().measure();
            draft.end = filling.get().next();
            return draft.end;
        }
        if (same && words.at("as-will", p, at).isPresent()) {
            draft.amount = Amount.of(Amount.Kind.ENOUGH);
            draft.measure = "unstated";
            draft.end = words.at("as-will", p, at).get().next();
            return draft.end;
        }
        Optional<PhraseTable.Match> rinse = words.at("rinse-after", p, at);
        if (rinse.isPresent()) {
            draft.kind = LineKind.RINSE;
            return rinse.get().next();
        }
        i = p.at(i).isMark('(') && words.at("fill-after", p, i + 1).isPresent() ? i + 1 : i;
        Optional<PhraseTable.Match> full =
                words.at("fill-after", p, i)
                        .filter(m -> !m.value().equals("float") || !p.at(m.next()).isWord());
        if (full.isPresent() && draft.measure.equals("unstated")) {
            String how = full.get().value().isEmpty() ? "fill" : full.get().value();
            draft.amount = Amount.of(how.equals("float") ? Amount.Kind.FLOAT : Amount.Kind.FILL);
            draft.measure = how;
            draft.kind = draft.kind == LineKind.ICE ? LineKind.ICE : LineKind.TOP;
            draft.end = full.get().next();
            return draft.end;
        }
        if (taste.isPresent() && open) {
            draft.amount = Amount.of(Amount.Kind.TO_TASTE);
            draft.measure = "unstated";
            draft.end = taste.get().next();
            return draft.end;
        }
        Optional<PhraseTable.Match> enough = words.at("enough", p, i);
        if (enough.isPresent() && draft.amount.kind() == Amount.Kind.UNSTATED) {
            draft.amount = Amount.of(Amount.Kind.ENOUGH);
            draft.end = enough.get().next();
            return draft.end;
        }
        return at;
    }

    private int alternatives(Draft main, int end) {
        int i = end;
        for (int round = 0; round < 3; round++) {
            int or = p.at(i).isMark(',') || p.at(i).isMark('(') ? i + 1 : i;
            if (!words.has("or", p.word(or))) {
                return i;
            }
            Optional<Draft> other = alternative(main, or);
            if (other.isEmpty()) {
                return i;
            }
            found.drafts.add(other.get());
            i = other.get().end;
            i = p.at(i).isMark(')') ? i + 1 : i;
            lastDraftEnd = i;
        }
        return i;
    }

    private Optional<Draft> alternative(Draft main, int or) {
        int i = or + 1;
        boolean verb = verbs.at(i, true).isPresent() && !words.has("head", p.word(i));
        if (verb || words.at("skip-or", p, i).isPresent()) {
            return Optional.empty();
        }
        Optional<Draft> item = items.parse(i, Optional.of(main));
        if (item.isPresent()) {
            item.get().kind = LineKind.ALTERNATIVE;
            return item;
        }
        Optional<Quantity> q = amounts.parse(i).filter(x -> !x.isArticle());
        Optional<Name> name = names.parse(q.map(Quantity::next).orElse(i));
        if (name.isEmpty() || q.isEmpty() && !name.get().known() && !lineMode) {
            return Optional.empty();
        }
        Draft d = new Draft(i, name.get().next());
        d.name(name.get());
        lendHead(main, name.get());
        d.sameAmountAs(main);
        q.ifPresent(
                x -> {
                    d.amount = x.amount();
                    d.measure = x.hasMeasure() ? x.measure() : main.measure;
                });
        d.kind = LineKind.ALTERNATIVE;
        return Optional.of(d);
    }

    /** Reads on through “equal parts of A, B and C” and “two dashes each of A and B”. */
    private int shareEach(Draft main, int end) {
        int i = end;
        while (main.each) {
            boolean comma = p.at(i).isMark(',');
            int at = comma ? i + 1 : i;
            boolean and = words.has("and", p.word(at)) || p.at(at).isMark('&');
            at = and ? at + 1 : at;
            if (!comma && !and
                    || amounts.parse(at).filter(q -> !q.isArticle() || q.hasMeasure()).isPresent()
                    || verbs.at(at, true).isPresent()) {
                return i;
            }
            Optional<Name> name = names.parse(at);
            if (name.isEmpty()) {
                return i;
            }
            Draft d = new Draft(at, name.get().next());
            d.name(name.get());
            lendHead(main, name.get());
            d.sameAmountAs(main);
            kinds.decide(d, role);
            found.drafts.add(d);
            i = d.end;
            lastDraftEnd = i;
        }
        return i;
    }
}
