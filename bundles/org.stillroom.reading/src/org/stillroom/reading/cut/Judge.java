package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.stillroom.model.source.Section;
import org.stillroom.model.text.Folding;

/**
 * Decides which of the possible titles head a recipe.
 *
 * <p>Each title gets points: for what follows (up to 3.5 where it reads like a recipe, down to -3
 * where it does not), for the book's habit (up to 2 either way, by the share of titles set alike
 * that head recipes), for standing in the contents or index (2), for its words, and for how it is
 * set. More than nought makes it a title. The decision is taken three times, because what follows a
 * title ends at the next one.
 */
final class Judge {

    private static final int ROUNDS = 3;
    private static final int REACH = 8;
    private static final double LEAST = 0.13;
    private static final double MADE_OF = 4;
    private static final double DEFINES = 3;
    private static final double HEADS_MANY = 6.5;
    private static final double GROUPED = 0.4;
    private static final int FIRM = 40;
    private static final double FIRM_HABIT = 1.2;
    private static final int STRONG = 16;
    private static final double STRONG_HABIT = 1.6;
    private static final int OPENING = 80;

    /** How a sentence goes on whose first words are the title of a drink. */
    private static final Pattern MADE =
            Pattern.compile(
                    "^(?:which )?(?:is|was|were|are|can be|may be|should be|must be)(?: also|,? ?[a-z]+ly,?)?"
                            + " (?:made|mixed|prepared|brewed|compounded|composed|concocted|the same"
                            + "|a (?:mixture|compound|combination) of)\\b"
                            + "|^(?:this|it) is (?:made|prepared|mixed|composed) (?:of|by|with|from|like|in|as)\\b"
                            + "|^the [a-z ]{3,30} takes the place\\b"
                            + "|^(?:to make|take|put|mix|omit|pour|squeeze|beat|boil|break|dissolve|steep) ");

    private static final Pattern SENDS =
            Pattern.compile(
                    "(?i)^(?:made|mixed|prepared|proceed|the same|same|just|exactly|precisely|as|like|do\\.|ditto)"
                            + "\\b.* (?:as|like|with|but|for|only|using|instead|in place)\\b");

    private static final Pattern ADDRESS = Pattern.compile("\\b(?:Mrs?|Dr|Messrs|Capt)\\.\\s*$");

    private static final Pattern ADDRESSED =
            Pattern.compile("(?i)to (?:the|our|my|all|every|those|young) ");

    private final Structure structure;
    private final Listing listing;
    private final Cues cues;

    private int recipeLevel;

    Judge(Structure structure, Listing listing, Cues cues) {
        this.structure = structure;
        this.listing = listing;
        this.cues = cues;
    }

    /** Returns the units, their titles decided. */
    List<Unit> decide(List<Unit> units) {
        List<Integer> heads = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            if (units.get(i).head().isPresent()) {
                heads.add(i);
                Head head = head(units, i);
                head.listed = listing.lists(head.key);
                head.accepted = prior(head) > -2;
            }
        }
        double confirms = listedShare(units, heads);
        boolean marked = heads.stream().anyMatch(i -> head(units, i).place == Head.Place.MARKED);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i : heads) {
                head(units, i).body = bodyAfter(units, i, round);
            }
            recipeLevel = recipeLevel(units, heads);
            Map<String, double[]> habits = habits(units, heads, round);
            for (int n = 0; n < heads.size(); n++) {
                Head head = head(units, heads.get(n));
                head.points =
                        prior(head)
                                + body(head)
                                + habit(habits.get(head.style()))
                                + strong(head, habits.get(head.style()))
                                + confirmation(head, confirms)
                                + setting(units, heads.get(n), marked)
                                + sequence(units, heads, n);
            }
            for (int i : heads) {
                Head head = head(units, i);
                head.accepted = head.points > 0;
            }
            if (round == 0) {
                demote(units, heads, habits);
            }
        }
        return units;
    }

    /**
     * Makes a body of a line that looks like a title where it stands alone under a title that is set
     * as most of the book's are (“SAUTERNE PUNCH. / Same, with Sauterne.”).
     */
    private void demote(List<Unit> units, List<Integer> heads, Map<String, double[]> habits) {
        List<Integer> gone = new ArrayList<>();
        for (int i : heads) {
            Head own = head(units, i);
            int above = i - 1;
            while (above > 0 && units.get(above).kind() == Unit.Kind.NOISE) {
                above--;
            }
            boolean plain =
                    own.place == Head.Place.OWN_LINE
                            && !own.emphasis
                            && own.letters != Head.Letters.CAPITALS
                            && own.title.number().isEmpty();
            if (!plain || above < 0 || units.get(above).kind() != Unit.Kind.HEAD) {
                continue;
            }
            Head over = head(units, above);
            boolean taken = gone.contains(above);
            boolean firmer = habit(habits.get(over.style())) > 1 + habit(habits.get(own.style()));
            boolean sends = over.place == Head.Place.MARKED && sendsOn(units.get(i));
            if (!taken && !own.listed && (firmer || sends)) {
                gone.add(i);
            }
        }
        for (int i : gone) {
            units.set(i, asBody(units.get(i)));
        }
        heads.removeAll(gone);
    }

    /** Tells whether a line under a heading of the file says how another recipe is changed. */
    private boolean sendsOn(Unit unit) {
        String line = structure.text().substring(unit.start(), unit.end()).strip();
        return line.endsWith(".") && SENDS.matcher(line).find();
    }

    private Unit asBody(Unit unit) {
        BodyScore score = BodyScore.of(structure.text(), unit.start(), unit.end(), cues);
        return new Unit(
                Unit.Kind.BODY,
                unit.start(),
                unit.end(),
                unit.blankBefore(),
                unit.indent(),
                score,
                Optional.empty());
    }

    private static Head head(List<Unit> units, int i) {
        return units.get(i).head().orElseThrow();
    }

    /** What the title's own words say. */
    private double prior(Head head) {
        if (Double.isNaN(head.prior)) {
            head.prior = priorOf(head);
        }
        return head.prior;
    }

    private double priorOf(Head head) {
        String words = head.title.words();
        double points = TitleWords.points(words, cues);
        if (cues.heading(Folding.foldWord(words)).isPresent()) {
            points -= 8;
        }
        if (asksOrNames(head) || ADDRESSED.matcher(words).lookingAt()) {
            points -= 8;
        }
        return points;
    }

    /** A heading in the middle of a question (“What was …?”) or after “Mr.” heads no recipe. */
    private boolean asksOrNames(Head head) {
        if (head.place != Head.Place.OWN_LINE) {
            return false;
        }
        String above = structure.text().substring(Math.max(0, head.start - 12), head.start);
        String tail = head.title.words();
        return tail.endsWith("?") || Splitter.count(tail) == 1 && ADDRESS.matcher(above).find();
    }

    /** Returns what share of the listed titles stands in the book, or 0 where few are listed. */
    private double listedShare(List<Unit> units, List<Integer> heads) {
        long found =
                heads.stream()
                        .map(i -> head(units, i))
                        .filter(h -> h.listed && h.place != Head.Place.SENTENCE)
                        .map(h -> h.key)
                        .distinct()
                        .count();
        return listing.size() >= 5 && found >= 5 ? (double) found / listing.size() : 0;
    }

    /** What comes after the title, up to the next one that is accepted. */
    private BodyScore bodyAfter(List<Unit> units, int at, int round) {
        Unit own = units.get(at);
        BodyScore best = own.kind() == Unit.Kind.BODY ? own.score() : BodyScore.NONE;
        double weight = own.kind() == Unit.Kind.BODY ? 0.9 : 1;
        int end = Math.min(units.size(), at + 1 + REACH);
        for (int i = at + 1; i < end; i++) {
            Unit unit = units.get(i);
            if (unit.kind() == Unit.Kind.LISTING) {
                break;
            }
            if (unit.head().isPresent()
                    && head(units, i).accepted
                    && !(round == 0 && head(units, i).place == Head.Place.SENTENCE)) {
                break;
            }
            if (unit.kind() == Unit.Kind.HEAD && closes(head(units, i))) {
                break;
            }
            if (unit.kind() == Unit.Kind.BODY) {
                BodyScore score = unit.score();
                if (score.value() * weight > best.value()) {
                    best = scaled(score, weight);
                }
                weight *= 0.92;
            }
        }
        return best;
    }

    /** Tells whether a line that heads no recipe still ends the one above it. */
    private boolean closes(Head head) {
        return head.place == Head.Place.MARKED
                || head.blankBefore && head.letters == Head.Letters.CAPITALS
                || cues.heading(Folding.foldWord(head.title.words())).isPresent();
    }

    private static BodyScore scaled(BodyScore s, double weight) {
        return new BodyScore(
                s.words(),
                s.value() * weight,
                s.mean(),
                s.amounts(),
                s.verbs(),
                s.ingredients(),
                s.references(),
                s.narrative());
    }

    private static double body(Head head) {
        BodyScore body = head.body;
        if (body.words() == 0) {
            return -7;
        }
        double weight = Math.min(1, (body.words() + 4) / 24.0);
        double low =
                body.value() >= LEAST || body.references() > 0
                        ? 0
                        : weight * (body.value() < 0.08 ? -5.5 : -4);
        boolean defines =
                body.words() >= 20
                        && body.verbs() + body.references() == 0
                        && body.amounts() <= 1
                        && body.value() < LEAST / 2;
        return low
                - (defines ? DEFINES : 0)
                + Math.max(-3 * weight, Math.min(3.5, (body.value() - 0.16) * 18));
    }

    private Map<String, double[]> habits(List<Unit> units, List<Integer> heads, int round) {
        Map<String, double[]> habits = new HashMap<>();
        for (int i : heads) {
            Head head = head(units, i);
            double[] counts = habits.computeIfAbsent(head.style(), k -> new double[2]);
            counts[0]++;
            boolean good = round == 0 ? head.body.value() >= BodyScore.RECIPE : head.accepted;
            counts[1] += good ? 1 : 0;
        }
        return habits;
    }

    private static double habit(double[] counts) {
        double share = counts[1] / counts[0];
        boolean firm = counts[0] >= FIRM && share > 0.7;
        return (firm ? FIRM_HABIT : 0) + (2 * share - 1) * 2 * Math.min(1, counts[0] / 6);
    }

    /** Titles that nearly always head a recipe, and are set so that a sentence is not, are believed. */
    private static double strong(Head head, double[] counts) {
        boolean set =
                switch (head.place) {
                    case OWN_LINE -> head.emphasis || head.letters == Head.Letters.CAPITALS;
                    case RUN_IN -> !head.manner.equals("stop");
                    default -> false;
                };
        boolean told = head.body.narrative() * 12 > head.body.words() || head.body.value() < 0.05;
        return set && !told && counts[0] >= STRONG && counts[1] >= 0.85 * counts[0]
                ? STRONG_HABIT
                : 0;
    }

    /** Contents list chapters too, so a heading whose words speak against it gains little by them. */
    private double confirmation(Head head, double share) {
        boolean full = share > 0.75;
        if (head.listed) {
            double own = prior(head);
            boolean whole =
                    full && head.place == Head.Place.OWN_LINE && head.body.words() > 0 && own >= 0;
            return own < -4 ? 0 : whole ? 6 : 2;
        }
        return share > 0.4 ? -0.7 : 0;
    }

    /** How the title is set in the page. */
    private double setting(List<Unit> units, int at, boolean marked) {
        Head head = head(units, at);
        double points = head.blankBefore ? 0.3 : 0;
        points +=
                head.place == Head.Place.OWN_LINE && head.emphasis && isMade(units, at)
                        ? MADE_OF
                        : 0;
        points +=
                switch (head.place) {
                    case MARKED -> 0.5;
                    case OWN_LINE ->
                            (head.letters == Head.Letters.SENTENCE ? -0.5 : 0)
                                    + (head.emphasis ? 0.8 : 0)
                                    + (marked && !head.emphasis ? -1.5 : 0);
                    case RUN_IN -> head.manner.equals("stop") ? -0.8 : -0.3;
                    case MIDDLE ->
                            head.title.number().isEmpty() && prior(head) <= 0 && !head.listed
                                    ? -2.5
                                    : -1;
                    case SENTENCE -> -1.5;
                    case LEAD_IN -> -0.5;
                };
        if (at == 0 && !head.listed) {
            points -= opensWithRecipe(head) ? 1 : 5;
        }
        if (structure.isOther(head.start)) {
            points -= 20;
        }
        if (isAdvertised(units, at)) {
            points -= 3;
        }
        if (isSubtitle(units, at)) {
            points -= 9;
        }
        if (head.place == Head.Place.MIDDLE && !goesOnFrom(units, at)) {
            points -= 5;
        }
        if (head.place == Head.Place.MARKED && head.level < recipeLevel) {
            points -= 2;
        }
        if (treats(head) && head.body.value() < BodyScore.RECIPE || headsMany(units, at)) {
            points -= HEADS_MANY;
        }
        if (followsChapter(units, at)) {
            points -= 4;
        }
        if (head.place != Head.Place.OWN_LINE
                && head.place != Head.Place.MARKED
                && isWeak(head)
                && followsTitle(units, at)) {
            points -= 3;
        }
        return points;
    }

    /** “Of Made Wines” says what a chapter treats of. */
    private static boolean treats(Head head) {
        String words = Folding.foldWord(head.title.words());
        return head.place == Head.Place.OWN_LINE
                && (words.startsWith("of ") || words.startsWith("on "));
    }

    /** “SOURS AND FIZZES” over a paragraph that tells of them all, and then a title. */
    private boolean headsMany(List<Unit> units, int at) {
        Head head = head(units, at);
        return head.place == Head.Place.OWN_LINE
                && head.title.number().isEmpty()
                && head.body.value() < GROUPED
                && TitleWords.isGroup(head.title.words(), cues);
    }

    /** The first line is the book's title, unless amounts stand right under it. */
    private static boolean opensWithRecipe(Head head) {
        BodyScore body = head.body;
        return body.value() >= BodyScore.RECIPE && body.amounts() >= (body.verbs() > 0 ? 2 : 3);
    }

    /** Tells whether the nearest heading above, among the few units before, opens advertisements. */
    private boolean isAdvertised(List<Unit> units, int at) {
        for (int i = at - 1; i >= Math.max(0, at - REACH); i--) {
            Optional<Section.Kind> known =
                    units.get(i)
                            .head()
                            .flatMap(h -> cues.heading(Folding.foldWord(h.title.words())));
            if (known.isPresent()) {
                return known.get() == Section.Kind.ADVERTISEMENT;
            }
        }
        return false;
    }

    /** Tells whether the sentence that a title opens says what it is made of: “… is made like …”. */
    private boolean isMade(List<Unit> units, int at) {
        int i = at + 1;
        while (i < units.size() && units.get(i).kind() == Unit.Kind.NOISE) {
            i++;
        }
        if (i >= units.size() || units.get(i).kind() != Unit.Kind.BODY) {
            return false;
        }
        int end = Math.min(units.get(i).end(), units.get(i).start() + OPENING);
        String opening = structure.text().substring(units.get(i).start(), end);
        return MADE.matcher(Folding.fold(opening).folded().strip()).find();
    }

    /** Tells whether the words stand in the line under a title, with no empty line between. */
    private static boolean isSubtitle(List<Unit> units, int at) {
        Unit unit = units.get(at);
        return at > 0
                && unit.kind() == Unit.Kind.BODY
                && !unit.blankBefore()
                && units.get(at - 1).kind() == Unit.Kind.HEAD
                && head(units, at).title.number().isEmpty();
    }

    /** Tells whether the paragraph's words before this one belong to a recipe. */
    private static boolean goesOnFrom(List<Unit> units, int at) {
        return at > 0 && units.get(at - 1).head().filter(h -> h.accepted).isPresent();
    }

    /** Returns the level of headings that most recipes of the book stand under, or 0. */
    private static int recipeLevel(List<Unit> units, List<Integer> heads) {
        int[] counts = new int[10];
        for (int i : heads) {
            Head head = head(units, i);
            if (head.place == Head.Place.MARKED && head.body.value() >= BodyScore.RECIPE) {
                counts[Math.min(9, head.level)]++;
            }
        }
        int best = 0;
        for (int level = 1; level < 10; level++) {
            best = counts[level] > Math.max(4, counts[best]) ? level : best;
        }
        return best;
    }

    /** Tells whether the title is a chapter's, directly under the line that counts the chapters. */
    private boolean followsChapter(List<Unit> units, int at) {
        Head head = head(units, at);
        if (at == 0
                || units.get(at - 1).kind() != Unit.Kind.HEAD
                || head.place != Head.Place.OWN_LINE) {
            return false;
        }
        Head above = head(units, at - 1);
        String words = Folding.foldWord(above.title.words());
        return !above.accepted && words.startsWith("chapter") && Splitter.count(words) <= 2;
    }

    private static boolean isWeak(Head head) {
        return head.place == Head.Place.SENTENCE
                || head.place == Head.Place.LEAD_IN
                || head.manner.equals("stop")
                || head.manner.equals("italics") && !head.stop;
    }

    /** Tells whether the paragraph directly follows a title of its own. */
    private static boolean followsTitle(List<Unit> units, int at) {
        int i = at - 1;
        int steps = 0;
        while (i >= 0
                && (units.get(i).kind() == Unit.Kind.NOISE
                        || isLeading(units.get(i)) && ++steps < 4)) {
            i--;
        }
        return i >= 0 && units.get(i).kind() == Unit.Kind.HEAD && head(units, i).accepted;
    }

    /** A paragraph between a title and its recipe. */
    private static boolean isLeading(Unit unit) {
        return unit.kind() == Unit.Kind.BODY
                && unit.score().value() < 0.18
                && unit.head().filter(h -> h.accepted).isEmpty();
    }

    /** Numbers that count on from the title before, or to the one after, speak for both. */
    private static double sequence(List<Unit> units, List<Integer> heads, int n) {
        int own = number(units, heads, n);
        if (own < 0) {
            return 0;
        }
        for (int near = 1; near <= 3; near++) {
            if (number(units, heads, n - near) == own - 1 && own > 1
                    || number(units, heads, n + near) == own + 1) {
                return 1;
            }
        }
        return 0;
    }

    private static int number(List<Unit> units, List<Integer> heads, int n) {
        if (n < 0 || n >= heads.size()) {
            return -9;
        }
        String words = head(units, heads.get(n)).title.number().orElse("");
        boolean digits =
                !words.isEmpty()
                        && words.length() < 6
                        && words.chars().allMatch(c -> c >= '0' && c <= '9');
        return digits ? Integer.parseInt(words) : -9;
    }
}
