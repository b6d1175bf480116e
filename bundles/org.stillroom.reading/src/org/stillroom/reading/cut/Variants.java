package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the recipes that have no title of their own: the numbered ones under one heading, those
 * after “another way”, those that a sentence names at its end (“… and it becomes”), and those told
 * in passing (“A Tide Cup is made in the same way …”).
 */
final class Variants {

    private static final int REACH = 300;
    private static final double LIKELY = 0.14;
    private static final Pattern NUMBER =
            Pattern.compile("^(\\d{1,2})(?:\\.\\s|,? and last(?:ly)?\\b[.,:]?)");
    private static final String WAY = "(?:way|recipe|receipt|method|mode|manner|sort|kind|formula)";
    private static final Pattern ANOTHER =
            Pattern.compile(
                    "(?is)^[“\"]?(?:(?:yet|still) another\\b|another(?:\\s+[a-z]+)?\\s+"
                            + WAY
                            + "\\b|another\\s*[.:;,—-]|(?:a|the) (?:second|third|fourth) "
                            + WAY
                            + "\\b|or thus\\b)");
    private static final Pattern OR =
            Pattern.compile("(?i)[_*=]{0,2}or(?: else)?[,.:;—-]{0,3}[_*=]{0,2}[,.:;—-]{0,2}");
    private static final Pattern POINTS =
            Pattern.compile(
                    "(?is)(?:\\bfollow|\\banother\\s+way\\b|\\bdirections?\\b|\\bprepared\\b"
                            + "|\\bmade\\b|\\bmethod\\b|\\brecipe\\b|\\breceipt\\b)");
    private static final Pattern BECOMES =
            Pattern.compile(
                    "(?is)\\b(?:it|this|that|which)\\s+(?:then\\s+|now\\s+)?(?:becomes|makes"
                            + "|is\\s+(?:then\\s+)?(?:called|named|known\\s+as|entitled\\s+to\\s+"
                            + "(?:the|its)\\s+name\\s+of))(?:\\s+(?:a|an|the))?\\s*$");
    private static final Pattern PASSING =
            Pattern.compile(
                    "(?s)(?:^|(?<=[.!?]\\s))(?:An?|The)\\s+([\\p{L}’-]+(?:\\s+[\\p{L}’-]+){0,3}?)"
                            + "\\s+(?:may\\s+be|can\\s+be|is)\\s+(?:made|prepared|brewed)\\s+"
                            + "(?:by|in\\s+the\\s+same|like|exactly|with)\\b");

    private final String text;
    private final Cues cues;
    private final List<Unit> out = new ArrayList<>();

    private Optional<Head> open = Optional.empty();
    private boolean fed;
    private boolean counts;
    private int number;

    Variants(Structure structure, Cues cues) {
        this.text = structure.text();
        this.cues = cues;
    }

    /** Returns the judged units with a head, accepted, on every recipe without a title. */
    List<Unit> add(List<Unit> units) {
        for (int i = 0; i < units.size(); i++) {
            Unit unit = units.get(i);
            boolean titled = unit.head().filter(h -> h.accepted).isPresent();
            if (titled) {
                enter(units, i);
            } else if (unit.kind() == Unit.Kind.HEAD) {
                head(unit);
            } else if (unit.kind() == Unit.Kind.BODY) {
                body(unit);
            } else {
                out.add(unit);
            }
        }
        return out;
    }

    /** A title: it stays open for what comes after, unless it counts on from the one above. */
    private void enter(List<Unit> units, int at) {
        Unit unit = units.get(at);
        Head head = unit.head().orElseThrow();
        Optional<Integer> own =
                head.title.number().filter(n -> n.matches("\\d{1,2}")).map(Integer::parseInt);
        if (counts && own.filter(n -> n == number + 1).isPresent()) {
            number++;
            fed = isRecipe(unit);
            out.add(unit);
            return;
        }
        int sentence = head.place == Head.Place.OWN_LINE && head.emphasis ? named() : -1;
        if (sentence >= 0) {
            Head named = copy(head.title, sentence, sentence);
            BodyScore score = BodyScore.of(text, sentence, unit.end(), cues);
            out.add(
                    new Unit(
                            Unit.Kind.BODY,
                            sentence,
                            unit.end(),
                            false,
                            0,
                            score,
                            Optional.of(named)));
            open = Optional.of(named);
            fed = true;
            counts = false;
            return;
        }
        open = Optional.of(head);
        fed = isRecipe(unit);
        counts = countsOn(units, at);
        number = counts ? 1 : 0;
        out.add(unit);
    }

    /** Tells whether the paragraphs under a title are whole recipes that are counted. */
    private boolean countsOn(List<Unit> units, int at) {
        int counted = 0;
        int whole = 0;
        for (int i = at; i < units.size(); i++) {
            Unit unit = units.get(i);
            boolean titled = i > at && unit.head().filter(h -> h.accepted).isPresent();
            if (titled && unit.head().get().title.number().isEmpty()
                    || unit.kind() == Unit.Kind.LISTING) {
                break;
            }
            if (unit.kind() == Unit.Kind.BODY && numberOf(unit) > 0) {
                counted++;
                whole += isWhole(unit) ? 1 : 0;
            }
        }
        return counted >= 2 && whole * 3 >= counted * 2;
    }

    private static boolean isRecipe(Unit unit) {
        return unit.kind() == Unit.Kind.BODY
                && unit.score().value() >= BodyScore.RECIPE
                && unit.score().words() >= 12
                && unit.score().verbs() + unit.score().amounts() >= 2;
    }

    /** After words that point to a recipe, less will do. */
    private static boolean isLikely(Unit unit) {
        return unit.score().value() >= LIKELY
                && unit.score().words() >= 12
                && unit.score().verbs() + unit.score().amounts() >= 2;
    }

    private static boolean isWhole(Unit unit) {
        return isRecipe(unit) && unit.score().words() >= 18 && unit.score().amounts() >= 2;
    }

    private int numberOf(Unit unit) {
        Matcher matcher = NUMBER.matcher(text.substring(unit.start(), unit.end()));
        return matcher.find() ? Integer.parseInt(matcher.group(1)) : 0;
    }

    /** A heading that is no title: where the sentence above names it, that sentence is a recipe. */
    private void head(Unit unit) {
        Head head = unit.head().orElseThrow();
        int from = head.emphasis ? named() : -1;
        if (from >= 0) {
            Head own = copy(head.title, from, from);
            BodyScore score = BodyScore.of(text, from, unit.end(), cues);
            out.add(new Unit(Unit.Kind.BODY, from, unit.end(), false, 0, score, Optional.of(own)));
            open = Optional.of(own);
            fed = true;
            counts = false;
            return;
        }
        boolean ends = head.emphasis || head.letters == Head.Letters.CAPITALS;
        if (ends || head.place == Head.Place.MARKED) {
            open = Optional.empty();
        }
        out.add(unit);
    }

    /**
     * Parts the paragraph before a heading where its last sentence ends in “… and it becomes”, and
     * returns where that sentence starts, or -1.
     */
    private int named() {
        int last = out.size() - 1;
        if (last < 0 || out.get(last).kind() != Unit.Kind.BODY) {
            return -1;
        }
        Unit before = out.get(last);
        int end = before.end();
        if (!BECOMES.matcher(text.substring(Math.max(before.start(), end - 90), end)).find()) {
            return -1;
        }
        int from = Lines.sentenceStart(text, Math.max(before.start(), end - REACH), end);
        boolean whole = from == before.start();
        if (whole && before.head().filter(h -> h.accepted).isPresent()) {
            return -1;
        }
        out.remove(last);
        if (!whole) {
            out.add(part(before, before.start(), from));
        }
        return from;
    }

    private void body(Unit unit) {
        if (open.isPresent() && variant(unit)) {
            fed = true;
            return;
        }
        fed |= open.isPresent() && isRecipe(unit);
        if (!isRecipe(unit) || open.isEmpty()) {
            passing(unit);
        } else {
            out.add(unit);
        }
    }

    private boolean variant(Unit unit) {
        int own = numberOf(unit);
        if (counts && own == number + 1 && own > 1) {
            number = own;
            Matcher matcher = NUMBER.matcher(text.substring(unit.start(), unit.end()));
            int end = matcher.find() ? unit.start() + matcher.end() : unit.start();
            TitleText title =
                    new TitleText(
                            Optional.of(Integer.toString(own)),
                            open.get().title.words(),
                            unit.start(),
                            end);
            out.add(with(unit, unit.start(), copy(title, unit.start(), end)));
            return true;
        }
        if (!fed || !isLikely(unit)) {
            return false;
        }
        Matcher another = ANOTHER.matcher(text.substring(unit.start(), unit.end()));
        if (another.find()) {
            int end = unit.start() + another.end();
            out.add(with(unit, unit.start(), copy(title(unit.start(), end), unit.start(), end)));
            return true;
        }
        return alone(unit) || led(unit);
    }

    /** A whole recipe after a line that says nothing but “or”. */
    private boolean alone(Unit unit) {
        int last = out.size() - 1;
        if (last < 0 || !isWhole(unit) || unit.score().verbs() == 0) {
            return false;
        }
        Unit before = out.get(last);
        if (!OR.matcher(text.substring(before.start(), before.end())).matches()) {
            return false;
        }
        out.remove(last);
        int from = before.start();
        out.add(with(unit, from, copy(title(from, before.end()), from, before.end())));
        return true;
    }

    /** A recipe set in, after a sentence that points to it (“… in the following way:”). */
    private boolean led(Unit unit) {
        int last = out.size() - 1;
        while (last >= 0 && out.get(last).kind() == Unit.Kind.NOISE) {
            last--;
        }
        if (last < 0 || out.get(last).kind() != Unit.Kind.BODY || unit.indent() == 0) {
            return false;
        }
        Unit before = out.get(last);
        if (before.indent() > 0 || before.head().filter(h -> h.accepted).isPresent()) {
            return false;
        }
        int from =
                Lines.sentenceStart(
                        text, Math.max(before.start(), before.end() - REACH), before.end());
        String sentence = text.substring(from, before.end());
        boolean colon = sentence.matches("(?s).*[:—-]\\s*");
        boolean another = ANOTHER.matcher(sentence).find();
        boolean names = sentence.toLowerCase(java.util.Locale.ROOT).contains("another way");
        if (!another && !names && !(colon && POINTS.matcher(sentence).find())) {
            return false;
        }
        out.subList(last, out.size()).clear();
        if (from > before.start()) {
            out.add(part(before, before.start(), from));
        }
        out.add(with(unit, from, copy(title(from, before.end()), from, before.end())));
        return true;
    }

    /** A recipe in a sentence of a story: “A Tide Cup is made in the same way …”. */
    private void passing(Unit unit) {
        Matcher matcher = PASSING.matcher(text.substring(unit.start(), unit.end()));
        while (matcher.find()) {
            int from = unit.start() + matcher.start();
            TitleText title =
                    TitleText.of(
                            text, unit.start() + matcher.start(1), unit.start() + matcher.end(1));
            String words = title.words();
            String lastWord =
                    words.substring(words.lastIndexOf(' ') + 1).toLowerCase(java.util.Locale.ROOT);
            boolean drink = cues.is(lastWord, Cues.DRINK) || cues.is(lastWord, Cues.INGREDIENT);
            boolean name = drink || Head.letters(words) == Head.Letters.TITLE;
            BodyScore score = BodyScore.of(text, from, unit.end(), cues);
            boolean told = score.amounts() + score.references() > 0 && score.ingredients() > 0;
            if (name && told && score.words() <= 80) {
                if (from > unit.start()) {
                    out.add(part(unit, unit.start(), from));
                }
                out.add(with(unit, from, copy(title, from, from)));
                open = Optional.empty();
                return;
            }
        }
        out.add(unit);
    }

    private TitleText title(int from, int to) {
        return new TitleText(Optional.empty(), open.orElseThrow().title.words(), from, to);
    }

    private static Head copy(TitleText title, int start, int end) {
        Head head =
                new Head(
                        Head.Place.LEAD_IN,
                        "",
                        0,
                        Head.letters(title.words()),
                        false,
                        false,
                        true,
                        title,
                        start,
                        end);
        head.accepted = true;
        return head;
    }

    private Unit with(Unit unit, int from, Head head) {
        BodyScore score = BodyScore.of(text, from, unit.end(), cues);
        return new Unit(
                Unit.Kind.BODY, from, unit.end(), true, unit.indent(), score, Optional.of(head));
    }

    private Unit part(Unit unit, int from, int to) {
        int end = to;
        while (end > from && Lines.isBlank(text.charAt(end - 1))) {
            end--;
        }
        BodyScore score = BodyScore.of(text, from, end, cues);
        return new Unit(
                Unit.Kind.BODY, from, end, unit.blankBefore(), unit.indent(), score, unit.head());
    }
}
