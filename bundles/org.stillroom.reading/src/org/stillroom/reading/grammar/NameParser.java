package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds where an ingredient’s name starts and ends. */
final class NameParser {

    private static final int LONGEST = 7;

    private final Vocabulary words;
    private final Passage p;
    private final Names names;

    NameParser(Vocabulary words, Passage passage, Names names) {
        this.words = words;
        this.p = passage;
        this.names = names;
    }

    /** Reads the noun phrase that starts at a token, articles and praise passed over. */
    Optional<Name> parse(int index) {
        List<String> preparations = new ArrayList<>();
        int from = lead(index, preparations);
        int to = end(from);
        to = trim(from, to);
        if (to <= from || !isNoun(from, to)) {
            return Optional.empty();
        }
        int next = trailing(to, preparations);
        return Optional.of(named(index, from, to, next, preparations));
    }

    private Name named(int index, int from, int to, int next, List<String> preparations) {
        Optional<Names.Known> known = knownEnd(from, to);
        Set<Hint> hints = EnumSet.noneOf(Hint.class);
        boolean usual =
                known.filter(k -> k.next() >= to).isPresent() || words.has("head", p.word(to - 1));
        if (!usual) {
            hints.add(Hint.UNKNOWN_NAME);
        }
        if (to - from > 4) {
            hints.add(Hint.LONG_NAME);
        }
        List<String> senses = known.map(Names.Known::senses).orElse(List.of());
        List<Name.Piece> pieces = List.of(new Name.Piece(from, to));
        return new Name(pieces, index, next, preparations, senses, usual, hints);
    }

    /** Returns what the thesaurus knows of the longest tail of the phrase. */
    Optional<Names.Known> knownEnd(int from, int to) {
        for (int i = from; i < to; i++) {
            Optional<Names.Known> known = names.longest(p, i).filter(k -> k.next() >= to);
            if (known.isPresent()) {
                return known;
            }
        }
        for (int i = from; i < to; i++) {
            Optional<Names.Known> known = names.longest(p, i);
            if (known.isPresent()) {
                return known;
            }
        }
        return Optional.empty();
    }

    /** Passes over “of”, articles, praise and words of preparation before the name. */
    private int lead(int index, List<String> preparations) {
        int i = words.at("remains", p, index).map(PhraseTable.Match::next).orElse(index);
        while (i < index + 9) {
            if (words.at("keep", p, i).isPresent() || keepsSort(i)) {
                return i;
            }
            String w = p.word(i);
            boolean wordFollows =
                    p.at(i + 1).isWord()
                            && !words.has("stop", p.word(i + 1))
                            && !words.has("of", p.word(i + 1))
                            && !p.at(i + 1).glued();
            boolean cooled =
                    words.has("adverb", w)
                            && p.at(i + 1).glued()
                            && isParticiple(i + 1)
                            && p.at(i + 2).isWord();
            if (cooled) {
                i += 2;
            } else if (words.has("of", w) || words.has("article", w) && !w.equals("one")) {
                i++;
            } else if (keepsWhole(i)) {
                return i;
            } else if (wordFollows && dropsSort(i)) {
                i++;
            } else if (wordFollows && words.has("prep", w)) {
                preparations.add(w);
                i++;
            } else if (words.has("praise", w) && (wordFollows || words.has("article", w))) {
                i++;
            } else if (words.has("prep", w)
                    && words.has("and", p.word(i + 1))
                    && words.has("prep", p.word(i + 2))) {
                preparations.add(w);
                i += 2;
            } else {
                return i;
            }
        }
        return i;
    }

    /** “Cut loaf sugar” is a sort of sugar, though other things are cut. */
    private boolean keepsSort(int i) {
        return words.has("sort", p.word(i)) && words.has("prep", p.word(i)) && !dropsSort(i);
    }

    /** Tells whether the thesaurus has a name of several words that starts here. */
    private boolean keepsWhole(int i) {
        if (dropsSort(i)) {
            return false;
        }
        Optional<Names.Known> known = names.longest(p, i);
        return known.isPresent()
                && known.get().next() > i + 1
                && isPlain(i, known.get())
                && !words.has("praise", p.word(i))
                && !words.has("prep", p.word(i));
    }

    /** Words such as “fine” and “broken” name a sort of sugar or ice, and of nothing else. */
    private boolean dropsSort(int i) {
        if (!words.has("sort", p.word(i))) {
            return false;
        }
        for (int j = i + 1; j < i + 5 && p.at(j).isWord(); j++) {
            boolean sorted = words.has("ice", p.word(j)) || words.has("sugarword", p.word(j));
            if (sorted) {
                return false;
            }
            if (words.has("stop", p.word(j)) && !words.has("and", p.word(j))) {
                return true;
            }
        }
        return true;
    }

    private int end(int from) {
        int i = words.at("keep", p, from).map(PhraseTable.Match::next).orElse(from);
        while (i < from + LONGEST) {
            Optional<Names.Known> known = names.longest(p, i).filter(k -> isPlain(from, k));
            if (known.isPresent() && known.get().next() > i + 1) {
                i = known.get().next();
                continue;
            }
            if (!goesOn(i, from)) {
                return i;
            }
            i++;
        }
        return i;
    }

    /** Names in the thesaurus that tell how a thing is made end where the telling starts. */
    private boolean isPlain(int from, Names.Known known) {
        for (int j = from + 1; j < known.next(); j++) {
            String w = p.word(j);
            boolean tells =
                    words.has("stop", w) && !words.has("and", w)
                            || words.has("prep", w)
                            || w.endsWith("ed") && w.length() > 4;
            if (tells && !p.at(j).glued()) {
                return false;
            }
        }
        return true;
    }

    private boolean goesOn(int i, int from) {
        Token t = p.at(i);
        if (t.isMark('.')) {
            return abbreviated(i, from);
        }
        if (t.type() == Token.Type.NUMBER) {
            return false;
        }
        if (!t.isWord()) {
            return false;
        }
        if (t.glued() && i > from) {
            return !words.has("number", t.text());
        }
        if (words.has("of", t.text())) {
            return i > from && ofGoesOn(i);
        }
        boolean tied = p.at(i + 1).glued() && words.has("head", p.word(i + 1));
        boolean stop = words.has("stop", t.text()) && !isItalian(i) && !tied;
        if (stop || isNumber(i) || i > from && isUnit(i)) {
            return false;
        }
        if (i > from
                && (words.at("taste", p, i).isPresent() || words.at("enough", p, i).isPresent())) {
            return false;
        }
        if (i > from && words.has("before-from", t.text()) && p.word(i + 1).equals("from")) {
            return false;
        }
        if (i > from && t.text().length() > 4 && t.text().endsWith("ed") && closes(i + 1)) {
            return false;
        }
        boolean sugar = words.has("ice", p.word(i - 1)) || words.has("sugarword", p.word(i - 1));
        if (i > from && sugar && words.has("sort", t.text())) {
            return false;
        }
        if (words.has("prep", t.text()) && i > from) {
            return words.has("head", p.word(i + 1)) && !words.has("stop", p.word(i + 1));
        }
        return !isVerb(i, from);
    }

    /** “It. vermouth” is Italian. */
    private boolean isItalian(int i) {
        return p.word(i).equals("it")
                && p.at(i).capital()
                && p.at(i + 1).isMark('.')
                && words.has("head", p.word(i + 2));
    }

    private boolean abbreviated(int i, int from) {
        if (isItalian(i - 1)) {
            return true;
        }
        Token next = p.at(i + 1);
        boolean lower = next.isWord() && !next.capital() && p.word(i - 1).length() < 10;
        boolean shortened = i > from && (words.has("abbrev", p.word(i - 1)) || lower);
        return shortened
                && (next.isWord()
                                && !words.has("stop", next.text())
                                && !isNumber(i + 1)
                                && !isSentence(i)
                        || next.isMark(',')
                        || next.ends()
                        || next.type() == Token.Type.SIGN
                        || isNumber(i + 1));
    }

    /** A unit of pharmacy that stands before its number ends the name. */
    private boolean isUnit(int i) {
        boolean roman =
                Roman.isSmall(p.word(i))
                        && Roman.parse(p.word(i)).isPresent()
                        && words.at("measure", p, i + 1).isPresent();
        boolean pints =
                p.word(i).startsWith("o")
                        && p.at(i).capital()
                        && (Roman.isSmall(p.word(i).substring(1)) || p.word(i).equals("oss"));
        boolean prefix =
                words.has("sign-prefix", p.word(i)) && p.at(i + 1).type() == Token.Type.SIGN;
        if (roman || pints || prefix) {
            return true;
        }
        Optional<PhraseTable.Match> measure = words.at("measure", p, i);
        if (!words.has("pharm-unit", p.word(i)) && measure.isEmpty()) {
            return false;
        }
        int next = measure.map(PhraseTable.Match::next).orElse(i + 1);
        next = p.at(next).isMark('.') ? next + 1 : next;
        return isFigure(next, measure.isPresent());
    }

    private boolean isFigure(int next, boolean word) {
        Token t = p.at(next);
        boolean roman = t.isWord() && Roman.parse(t.text()).isPresent();
        boolean figure = t.type() == Token.Type.NUMBER || t.type() == Token.Type.FRACTION;
        if (word && !(figure && p.at(next - 1).isMark('.'))) {
            return roman || words.has("latin", t.text());
        }
        return t.type() == Token.Type.NUMBER
                || t.type() == Token.Type.SIGN
                || t.type() == Token.Type.FRACTION
                || words.has("latin", t.text())
                || roman;
    }

    private boolean closes(int i) {
        Token t = p.at(i);
        return t.ends()
                || t.type() == Token.Type.MARK
                || words.has("stop", t.text())
                || words.has("and", t.text());
    }

    /** “St. Croix” goes on; “… of rum co. Shake well” does not. */
    private boolean isSentence(int i) {
        return words.at("verb", p, i + 1).isPresent();
    }

    private boolean ofGoesOn(int i) {
        Token next = p.at(i + 1);
        if (!next.isWord() || isNumber(i + 1) || words.has("stop", next.text())) {
            return false;
        }
        return !words.has("article", next.text());
    }

    private boolean isParticiple(int i) {
        String w = p.word(i);
        return w.length() > 4 && w.endsWith("ed") && !words.has("head", w)
                || words.verbs().participle(w).isPresent() && !words.has("verb", w);
    }

    boolean isNumber(int i) {
        Token t = p.at(i);
        return t.type() == Token.Type.NUMBER
                || t.type() == Token.Type.FRACTION
                || words.has("number", t.text())
                || words.has("fraction", t.text()) && !t.glued()
                || words.has("multiple", t.text());
    }

    private boolean isVerb(int i, int from) {
        Optional<PhraseTable.Match> verb = words.at("verb", p, i);
        if (verb.isEmpty()) {
            return false;
        }
        boolean strict = verb.get().value().endsWith("/strict");
        return !strict && (i > from || verb.get().value().contains("/"));
    }

    private int trim(int from, int to) {
        int i = to;
        while (i > from) {
            String last = p.word(i - 1);
            if (p.at(i - 1).glued()) {
                return i;
            }
            boolean spare =
                    words.has("praise", last)
                            || words.has("trailing", last)
                            || words.has("of", last)
                            || words.has("size", last)
                            || p.at(i - 1).isMark('.') && words.has("prep", p.word(i - 2))
                            || words.has("prep", last) && i - 1 > from && !p.at(i - 1).glued()
                            || words.has("article", last);
            boolean known = names.longest(p, i - 1).isPresent();
            if (!spare || known && i - 1 == from) {
                return i;
            }
            i--;
        }
        return i;
    }

    private boolean isNoun(int from, int to) {
        if (words.has("time", p.word(from))) {
            return false;
        }
        if (to - from > 1) {
            return true;
        }
        String w = p.word(from);
        return p.at(from).isWord()
                && w.length() > 1
                && !words.has("not-name", w)
                && !words.has("vessel-only", w);
    }

    /** Passes over “, well beaten” and “grated” after a name. */
    private int trailing(int to, List<String> preparations) {
        int i = p.at(to).isMark(',') ? to + 1 : to;
        Optional<PhraseTable.Match> powder = words.at("powder", p, i);
        if (powder.isPresent()) {
            preparations.add(p.name(i, powder.get().next()));
            return powder.get().next();
        }
        int start = i;
        boolean over = words.has("garnish-over", p.word(i + 1));
        if (over) {
            return to;
        }
        while (words.has("prep", p.word(i))
                || i > to && isParticiple(i)
                || words.has("prep-link", p.word(i)) && i > start) {
            i++;
        }
        Token after = p.at(i);
        boolean closes =
                after.ends()
                        || after.type() == Token.Type.MARK
                        || words.has("and", after.text())
                        || words.has("stop", after.text());
        if (i == start || !closes) {
            return to;
        }
        preparations.add(p.name(start, i));
        return i;
    }
}
