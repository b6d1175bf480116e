package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the names of recipes in the sentences that lead to them: “the landlord gave me the recipe
 * for his Harbour Punch:—”, “what was called “Bishop’s Comfort.””.
 *
 * <p>Looks at the last sentence before a paragraph that reads like a recipe, and at the first
 * sentences of such a paragraph; never at more than three hundred characters.
 */
final class LeadIns {

    private static final int REACH = 300;
    private static final Pattern NAMED =
            Pattern.compile(
                    "(?s)\\b(?:recipe|receipt|formula|directions?|method|way|mode|manner|secret)"
                            + "\\s+(?:for|of|to)\\s+"
                            + "(?:making|make|mixing|mix|preparing|prepare|brewing|brew)?\\s*"
                            + "([^:;.]{3,70}?)\\s*"
                            + "(?=\\b(?:is|was|are|runs|ran|as|which|that|thus|in|from)\\b|[:;,.]|$)");
    private static final Pattern QUOTED =
            Pattern.compile("[“\"‘_]([A-Z][^“”\"_.:;]{2,50}?)[.,]?[”\"’_]");
    private static final Pattern WAY =
            Pattern.compile(
                    "(?s)^[^.:;]{0,160}\\b(?:way|manner|method|mode|recipe|receipt|formula|directions?"
                            + "|this\\s+for|following\\s+for)\\b[^.:;]{0,120}?\\b((?:\\p{Lu}[\\p{L}’'-]*\\s+){0,5}\\p{Lu}[\\p{L}’'-]+)"
                            + "\\s*:[\\s—-]*");
    private static final Pattern OPENS =
            Pattern.compile(
                    "(?s)^(?:An?|The|My|Our|His|Her)\\s[^.:;]{0,40}?\\b(?:recipe|receipt|formula|directions?|method"
                            + "|way|mode|manner)\\s+(?:for|of|to)\\s+(?:(?:making|make|mixing|mix|preparing"
                            + "|prepare|brewing|brew)\\s+)?([^:;.,]{3,50}?)"
                            + "(?:\\s+(?:is|was)\\s+(?:as follows|the following|this|thus))?[.:]\\s*[—-]*\\s*(?=\\S)");
    private static final Pattern ARTICLE =
            Pattern.compile("(?s)^(?:a|an|the|his|her|our|their|my|some|this|that|your)\\s+");

    private final String text;
    private final Cues cues;

    LeadIns(Structure structure, Cues cues) {
        this.text = structure.text();
        this.cues = cues;
    }

    /** Returns the units with the paragraphs parted where such a name leads to a recipe. */
    List<Unit> mark(List<Unit> units) {
        List<Unit> marked = new ArrayList<>(units.size());
        for (int i = 0; i < units.size(); i++) {
            Unit unit = units.get(i);
            if (!isRecipe(unit)) {
                marked.add(unit);
                continue;
            }
            Optional<Head> own = inside(unit).or(() -> said(unit));
            Unit before = marked.isEmpty() ? unit : marked.get(marked.size() - 1);
            if (own.isPresent()) {
                part(marked, unit, own.get());
                continue;
            }
            Optional<Head> head = leading(before, unit);
            if (head.isPresent()) {
                marked.remove(marked.size() - 1);
                part(marked, before, head.get());
            }
            marked.add(unit);
        }
        return marked;
    }

    private boolean isRecipe(Unit unit) {
        return unit.kind() == Unit.Kind.BODY
                && unit.head().isEmpty()
                && unit.score().value() >= BodyScore.RECIPE
                && unit.score().words() >= 12
                && unit.score().verbs() + unit.score().amounts() >= 3;
    }

    private void part(List<Unit> marked, Unit unit, Head head) {
        int end = head.start;
        while (end > unit.start() && Lines.isBlank(text.charAt(end - 1))) {
            end--;
        }
        if (end > unit.start()) {
            marked.add(body(unit, unit.start(), end, unit.blankBefore(), unit.head()));
        }
        marked.add(body(unit, head.start, unit.end(), false, Optional.of(head)));
    }

    private Unit body(Unit from, int start, int end, boolean blank, Optional<Head> head) {
        BodyScore score = BodyScore.of(text, start, end, cues);
        return new Unit(Unit.Kind.BODY, start, end, blank, from.indent(), score, head);
    }

    /** The name in the last sentence of the paragraph before, where that sentence points on. */
    private Optional<Head> leading(Unit before, Unit unit) {
        boolean strong = before.head().filter(h -> h.place != Head.Place.SENTENCE).isPresent();
        if (before.kind() != Unit.Kind.BODY || before == unit || strong || isRecipe(before)) {
            return Optional.empty();
        }
        int end = before.end();
        int from = Lines.sentenceStart(text, Math.max(before.start(), end - REACH), end);
        String sentence = text.substring(from, end);
        char close = sentence.charAt(sentence.length() - 1);
        boolean points =
                close == ':' || close == '—' || close == '-' || sentence.contains("follow");
        Matcher named = NAMED.matcher(sentence);
        if (named.find() && named.group(1).chars().anyMatch(Character::isLetter)) {
            Matcher quoted = QUOTED.matcher(sentence);
            boolean inQuotes =
                    quoted.find(named.start(1) > 0 ? Math.max(0, named.start(1) - 1) : 0);
            return inQuotes
                    ? head(from, from + quoted.start(1), from + quoted.end(1), end)
                    : head(from, from + named.start(1), from + named.end(1), end);
        }
        Matcher quoted = QUOTED.matcher(sentence);
        if (points && quoted.find()) {
            return head(from, from + quoted.start(1), from + quoted.end(1), end);
        }
        return Optional.empty();
    }

    /** A name in quotation marks that closes a sentence of a recipe's own paragraph. */
    private Optional<Head> inside(Unit unit) {
        int limit = Math.min(unit.end(), unit.start() + REACH);
        String opening = text.substring(unit.start(), limit);
        Matcher quoted = QUOTED.matcher(opening);
        while (quoted.find()) {
            int after = quoted.end();
            char last = opening.charAt(after - 2);
            char next = after < opening.length() ? opening.charAt(after) : ' ';
            boolean closes = last == '.' || next == '.' || next == ':';
            int body = after;
            while (body < opening.length() && " .:—-\n".indexOf(opening.charAt(body)) >= 0) {
                body++;
            }
            if (closes && body < opening.length() && Character.isUpperCase(opening.charAt(body))) {
                int start = Lines.sentenceStart(text, unit.start(), unit.start() + quoted.start());
                int end = unit.start() + body;
                BodyScore rest = BodyScore.of(text, end, unit.end(), cues);
                return rest.value() >= BodyScore.RECIPE
                        ? head(
                                start,
                                unit.start() + quoted.start(1),
                                unit.start() + quoted.end(1),
                                end)
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** “This is the way in which the club makes its Tide Cup: a bottle of …”. */
    private Optional<Head> said(Unit unit) {
        int limit = Math.min(unit.end(), unit.start() + REACH);
        String opening = text.substring(unit.start(), limit);
        Matcher opens = OPENS.matcher(opening);
        if (opens.find()) {
            return said(unit, opens);
        }
        Matcher way = WAY.matcher(opening);
        if (!way.find()) {
            return Optional.empty();
        }
        String name = way.group(1);
        boolean drink =
                TitleWords.points(name, cues) >= 1
                        || name.contains(" ") && Head.letters(name) != Head.Letters.SENTENCE;
        return drink ? said(unit, way) : Optional.empty();
    }

    private Optional<Head> said(Unit unit, Matcher name) {
        int end = unit.start() + name.end();
        BodyScore rest = BodyScore.of(text, end, unit.end(), cues);
        return rest.value() >= BodyScore.RECIPE
                ? head(unit.start(), unit.start() + name.start(1), unit.start() + name.end(1), end)
                : Optional.empty();
    }

    private Optional<Head> head(int start, int titleStart, int titleEnd, int end) {
        int from = titleStart;
        Matcher article = ARTICLE.matcher(text.substring(titleStart, titleEnd));
        if (article.find()) {
            from += article.end();
        }
        TitleText title = TitleText.of(text, from, titleEnd);
        String words = title.words();
        boolean name =
                TitleWords.points(words, cues) > 0.4 || Head.letters(words) == Head.Letters.TITLE;
        if (words.length() < 3 || Splitter.count(words) > 7 || !name) {
            return Optional.empty();
        }
        return Optional.of(
                new Head(
                        Head.Place.LEAD_IN,
                        "",
                        0,
                        Head.letters(words),
                        false,
                        false,
                        true,
                        title,
                        start,
                        Math.max(end, titleEnd)));
    }
}
