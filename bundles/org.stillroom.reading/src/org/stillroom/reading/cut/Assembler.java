package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.source.Section;
import org.stillroom.model.text.Folding;

/** Lays the units of a book together to recipes and sections, once the titles are decided. */
final class Assembler {

    private static final double CORE = 0.17;
    private static final int SHORT = 25;
    private static final int LONG = 60;

    private final Structure structure;
    private final Cues cues;
    private final List<BookCutter.Stretch> out = new ArrayList<>();
    private Section.Kind region = Section.Kind.FRONT;
    private boolean indentedBodies;

    Assembler(Structure structure, Cues cues) {
        this.structure = structure;
        this.cues = cues;
    }

    /** Returns recipes and sections in the order of the text, without overlap. */
    List<BookCutter.Stretch> assemble(List<Unit> units) {
        indentedBodies = indentsBodies(units);
        int at = 0;
        while (at < units.size()) {
            Unit unit = units.get(at);
            boolean recipe = unit.head().isPresent() && unit.head().get().accepted;
            at = recipe ? recipe(units, at) : other(units, at);
        }
        return out;
    }

    /** Returns units without recipes as sections. */
    List<BookCutter.Stretch> sections(List<Unit> units) {
        out.clear();
        for (int i = 0; i < units.size(); ) {
            i = other(units, i);
        }
        if (!units.isEmpty()) {
            region = region == Section.Kind.FRONT ? Section.Kind.ANECDOTE : region;
        }
        return List.copyOf(out);
    }

    /** Tells whether this book sets its recipes in and its story not. */
    private static boolean indentsBodies(List<Unit> units) {
        int recipeIn = 0;
        int recipes = 0;
        int storyIn = 0;
        int stories = 0;
        for (Unit unit : units) {
            if (unit.kind() != Unit.Kind.BODY || unit.score().words() < 12) {
                continue;
            }
            boolean in = unit.indent() > 0;
            if (unit.score().value() > 0.3) {
                recipes++;
                recipeIn += in ? 1 : 0;
            } else if (unit.score().value() < 0.08 && unit.score().words() > LONG) {
                stories++;
                storyIn += in ? 1 : 0;
            }
        }
        return recipes > 10 && stories > 10 && recipeIn > 0.7 * recipes && storyIn < 0.2 * stories;
    }

    /** Adds the recipe that starts at a unit and returns the unit after it. */
    private int recipe(List<Unit> units, int at) {
        int end = regionEnd(units, at);
        int last = at;
        int words = 0;
        int gap = 0;
        boolean first = true;
        boolean fed = false;
        for (int i = units.get(at).kind() == Unit.Kind.BODY ? at : at + 1; i < end; i++) {
            Unit unit = units.get(i);
            if (unit.kind() == Unit.Kind.NOISE) {
                continue;
            }
            boolean core = isCore(unit, first, words);
            boolean late = !fed && indentedBodies && unit.indent() > 0 && isLate(unit.score());
            if (core && gap <= 2 * LONG || late) {
                last = i;
                gap = 0;
                fed |= late || unit.score().value() >= BodyScore.RECIPE;
            } else {
                gap += unit.score().words();
            }
            words += unit.score().words();
            first = false;
        }
        Unit start = units.get(at);
        last = withMeat(units, at, end, last);
        out.add(new BookCutter.Stretch(start.start(), units.get(last).end(), start.head(), null));
        region = Section.Kind.ANECDOTE;
        return last + 1;
    }

    /** A recipe set in, after a story: it may be in verse or old spelling. */
    private static boolean isLate(BodyScore score) {
        boolean list = score.amounts() >= 3 && score.value() >= BodyScore.RECIPE;
        return list || score.words() >= 40 && score.verbs() >= 2 && score.value() >= 0.09;
    }

    /** A title that nothing like a recipe follows keeps the paragraph after it. */
    private static int withMeat(List<Unit> units, int at, int end, int last) {
        if (last > at || units.get(at).kind() == Unit.Kind.BODY) {
            return last;
        }
        int i = at + 1;
        while (i < end && units.get(i).kind() == Unit.Kind.NOISE) {
            i++;
        }
        return i < end ? i : last;
    }

    private boolean isCore(Unit unit, boolean first, int wordsBefore) {
        BodyScore score = unit.score();
        if (score.value() >= CORE && !isMeasures(score) || first && score.value() >= 0.1) {
            return true;
        }
        if (indentedBodies && unit.indent() == 0) {
            return false;
        }
        String opening = opening(unit);
        boolean goesOn =
                opening.startsWith("this ")
                        || opening.startsWith("it ")
                        || opening.startsWith("these ")
                        || opening.startsWith("n.b")
                        || opening.startsWith("serve")
                        || opening.startsWith("note")
                        || opening.startsWith("obs")
                        || opening.startsWith("time")
                        || opening.startsWith("average")
                        || opening.startsWith("sufficient")
                        || opening.startsWith("seasonable")
                        || opening.startsWith("mode");
        int letters = 0;
        while (letters < opening.length() && Character.isLetter(opening.charAt(letters))) {
            letters++;
        }
        boolean orders =
                !first
                        && wordsBefore > 0
                        && score.verbs() > 0
                        && cues.is(opening.substring(0, letters), Cues.VERB);
        return (goesOn || orders) && score.words() <= 2 * LONG && score.narrative() <= 3
                || score.words() <= SHORT && score.narrative() <= 1 && unit.indent() > 0
                || score.words() <= SHORT
                        && score.narrative() == 0
                        && score.value() > 0.05
                        && !opening.startsWith("*");
    }

    private static boolean isMeasures(BodyScore score) {
        return score.amounts() >= 3
                && score.ingredients() * 3 < score.amounts()
                && score.verbs() <= 1;
    }

    private String opening(Unit unit) {
        int end = Math.min(unit.end(), unit.start() + 24);
        return Folding.fold(structure.text().substring(unit.start(), end)).folded().strip();
    }

    /** Returns the first unit that cannot belong to the recipe at a unit. */
    private int regionEnd(List<Unit> units, int at) {
        int i = at + 1;
        while (i < units.size()) {
            Unit unit = units.get(i);
            if (unit.kind() == Unit.Kind.LISTING) {
                return i;
            }
            if (unit.head().isPresent() && ends(units, i)) {
                return i;
            }
            i++;
        }
        return i;
    }

    private boolean ends(List<Unit> units, int i) {
        Unit unit = units.get(i);
        Head head = unit.head().orElseThrow();
        if (head.accepted) {
            return true;
        }
        if (unit.kind() != Unit.Kind.HEAD) {
            return false;
        }
        return known(head).isPresent()
                || head.place == Head.Place.MARKED
                || head.blankBefore
                        && (head.letters == Head.Letters.CAPITALS
                                || head.emphasis
                                || nextIsAccepted(units, i));
    }

    private static boolean nextIsAccepted(List<Unit> units, int i) {
        int next = i + 1;
        while (next < units.size() && units.get(next).kind() == Unit.Kind.NOISE) {
            next++;
        }
        return next < units.size()
                && units.get(next).head().isPresent()
                && units.get(next).head().get().accepted;
    }

    private Optional<Section.Kind> known(Head head) {
        return cues.heading(Folding.foldWord(head.title.words()));
    }

    /** Adds a unit that belongs to no recipe and returns the next one. */
    private int other(List<Unit> units, int at) {
        Unit unit = units.get(at);
        Section.Kind kind =
                switch (unit.kind()) {
                    case LISTING ->
                            region == Section.Kind.INDEX
                                            || out.stream().anyMatch(s -> s.head().isPresent())
                                    ? Section.Kind.INDEX
                                    : Section.Kind.CONTENTS;
                    case NOISE -> Section.Kind.OTHER;
                    case HEAD -> heading(unit);
                    case BODY -> body(unit);
                };
        out.add(new BookCutter.Stretch(unit.start(), unit.end(), Optional.empty(), kind));
        return at + 1;
    }

    private Section.Kind heading(Unit unit) {
        Head head = unit.head().orElseThrow();
        Optional<Section.Kind> known = known(head);
        boolean plain =
                head.place == Head.Place.OWN_LINE
                        && !head.emphasis
                        && head.letters == Head.Letters.SENTENCE;
        if (known.isEmpty() && plain) {
            return region;
        }
        if (known.isPresent() && known.get() != Section.Kind.HEADING) {
            region = known.get();
            return region;
        }
        if (region != Section.Kind.FRONT || known.isPresent()) {
            region =
                    known.isPresent() || region != Section.Kind.CONTENTS
                            ? Section.Kind.ANECDOTE
                            : region;
            return Section.Kind.HEADING;
        }
        return region;
    }

    private Section.Kind body(Unit unit) {
        String opening = opening(unit);
        if (opening.startsWith("*")
                || opening.startsWith("[transcriber")
                || opening.startsWith("[footnote")
                || opening.startsWith("[note")
                || opening.startsWith("transcriber")) {
            return Section.Kind.NOTE;
        }
        if (isMeasures(unit.score())) {
            return Section.Kind.MEASURES;
        }
        return region;
    }
}
