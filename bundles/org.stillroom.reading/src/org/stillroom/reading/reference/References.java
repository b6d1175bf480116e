package org.stillroom.reading.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Finds and follows the references between the recipes of one source.
 *
 * <p>A recipe is named by its title (its words in any order, plural or singular), by its number, or
 * as the one before. What the words change is applied to the other recipe's lines. A reference that
 * leads nowhere, or back to itself, ends with a doubt.
 */
public final class References {

    /** The most recipes that a chain shows; longer chains are followed and shown to this length. */
    private static final int LONGEST_CHAIN = 24;

    private static final int DEEPEST = 200;
    private static final int FULL = 4;

    private static final Pattern ABBREVIATED =
            Pattern.compile("\\b(oz|ozs|lb|lbs|tsp|tbsp|dr|drs|pt|qt|gal|gill|jig)\\.");

    private static final Pattern REST =
            Pattern.compile(
                    "\\b(?:otherwise|the rest|in (?:all )?other respects|all else|everything else"
                            + "|the other ingredients|the remaining)\\b");

    /** Where a recipe that is a reference begins with it. */
    private static final int OPENING = 8;

    /** How many characters may follow it where they only name what is changed. */
    private static final int BRIEF = 80;

    private final List<Reading> readings;
    private final SourceText text;
    private final Function<String, List<ReadingLine>> reader;
    private final MentionFinder finder;
    private final TitleIndex titles;
    private final Reading[] resolved;
    private final boolean[] open;

    private References(
            List<Reading> readings, SourceText text, Function<String, List<ReadingLine>> reader) {
        this.readings = readings;
        this.text = text;
        this.reader = reader;
        this.titles = new TitleIndex(readings.stream().map(Reading::witness).toList());
        this.finder = new MentionFinder(titles);
        this.resolved = new Reading[readings.size()];
        this.open = new boolean[readings.size()];
    }

    /**
     * Returns the readings with their references resolved as far as that is possible.
     *
     * @param readings the recipes of one source, in the order of the text
     * @param text the source's words
     * @param reader reads a phrase into lines
     */
    public static List<Reading> resolve(
            List<Reading> readings, SourceText text, Function<String, List<ReadingLine>> reader) {
        References references = new References(readings, text, reader);
        List<Reading> all = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            all.add(references.resolved(i, 0));
        }
        return all;
    }

    private Reading resolved(int i, int depth) {
        if (resolved[i] == null) {
            open[i] = true;
            resolved[i] = resolve(i, depth);
            open[i] = false;
        }
        return resolved[i];
    }

    private Reading resolve(int i, int depth) {
        Reading reading = readings.get(i);
        Span body = reading.witness().body();
        int end = Math.min(body.end(), body.start() + 2 * MentionFinder.REACH);
        String printed = text.slice(new Span(body.start(), end)).strip();
        String slice = text.slice(new Span(body.start(), end));
        int lead = slice.indexOf(printed);
        int offset = body.start() + slice.codePointCount(0, Math.max(0, lead));
        FoldedText folded = Folding.fold(printed);
        Optional<Mention> mention = finder.find(folded.folded(), printed, i, isFull(reading));
        if (mention.isEmpty()) {
            return reading;
        }
        Words words = new Words(reading, mention.get(), folded, offset);
        OptionalInt target = target(mention.get(), i);
        if (target.isEmpty() || target.getAsInt() == i) {
            boolean alone = mention.get().kind() == Mention.Kind.BEFORE && i == 0;
            return alone && mention.get().end() == 0
                    ? reading
                    : unresolved(words, "No recipe of this source is meant for certain.");
        }
        if (open[target.getAsInt()] || depth > DEEPEST) {
            return circular(words, readings.get(target.getAsInt()));
        }
        return linked(words, resolved(target.getAsInt(), depth + 1));
    }

    /** Tells whether a recipe has several amounts of its own. */
    private static boolean isFull(Reading reading) {
        return reading.lines().stream().filter(l -> l.amount().quantity().isPresent()).count()
                >= FULL;
    }

    /** A recipe's words with the reference in them. */
    private record Words(Reading reading, Mention mention, FoldedText folded, int offset) {

        Span span() {
            int to = Math.max(mention.end(), mention.start());
            return folded.toPrinted(mention.start(), to).shift(offset);
        }

        String printed(SourceText text) {
            return text.slice(span());
        }
    }

    private OptionalInt target(Mention mention, int i) {
        return switch (mention.kind()) {
            case SEVERAL -> OptionalInt.empty();
            case BEFORE ->
                    i >= mention.back() ? OptionalInt.of(i - mention.back()) : OptionalInt.empty();
            case NUMBER -> titles.number(mention.name().orElse(""), i);
            case TITLE -> {
                String name = mention.name().orElse("");
                OptionalInt exact = titles.exact(name, i);
                yield exact.isPresent() ? exact : titles.partly(name, i);
            }
        };
    }

    private Reading unresolved(Words words, String reason) {
        Mention mention = words.mention();
        Reference reference =
                new Reference(
                        words.printed(text),
                        words.span(),
                        mention.name(),
                        List.of(),
                        asked(words),
                        new Confidence(0.3, List.of(reason)));
        List<Doubt> doubts = new ArrayList<>(words.reading().doubts());
        doubts.add(0, new Doubt(reason, words.span(), 1));
        return with(words.reading(), words.reading().lines(), List.of(), reference, doubts);
    }

    /** Returns the changes that the words ask for, though no recipe is there to be changed. */
    private List<Reference.Edit> asked(Words words) {
        if (!words.mention().whole()) {
            return List.of();
        }
        EditPlan plan = new EditPlan(List.of(), words.folded(), words.offset(), reader);
        EditFinder.find(marked(words), w -> false).forEach(plan::apply);
        return plan.edits();
    }

    /** A reference that leads back to itself keeps the step that it takes, and takes nothing over. */
    private Reading circular(Words words, Reading target) {
        String reason =
                "The references lead back to this recipe by way of “"
                        + target.witness().title()
                        + "”.";
        Reference reference =
                new Reference(
                        words.printed(text),
                        words.span(),
                        words.mention().name(),
                        List.of(target.witness().id()),
                        asked(words),
                        new Confidence(0.3, List.of(reason)));
        List<Doubt> doubts = new ArrayList<>(words.reading().doubts());
        doubts.add(0, new Doubt(reason, words.span(), 1));
        return with(words.reading(), words.reading().lines(), List.of(), reference, doubts);
    }

    private Reading linked(Words words, Reading base) {
        Mention mention = words.mention();
        List<ReadingLine> lines = base.allLines();
        EditPlan plan = new EditPlan(lines, words.folded(), words.offset(), reader);
        List<RawEdit> edits = mention.whole() ? edits(words, plan, base) : List.of();
        edits.forEach(plan::apply);
        if (mention.whole()) {
            plan.exchangeByTitle(words.reading().witness().title(), base.witness().title());
            plan.settle();
        }
        List<String> chain = new ArrayList<>();
        chain.add(base.witness().id());
        base.reference().ifPresent(r -> chain.addAll(r.chain()));
        boolean exact =
                mention.kind() != Mention.Kind.TITLE
                        || titles.exact(mention.name().orElse(""), base.witness().ordinal())
                                .isPresent();
        List<String> reasons = new ArrayList<>();
        if (!exact) {
            reasons.add("the title is named in part: " + base.witness().title());
        }
        plan.doubts().forEach(d -> reasons.add(d.reason()));
        double probability = Math.max(0.3, (exact ? 0.97 : 0.9) - 0.15 * plan.doubts().size());
        Reference reference =
                new Reference(
                        words.printed(text),
                        words.span(),
                        mention.name(),
                        chain.subList(0, Math.min(chain.size(), LONGEST_CHAIN)),
                        plan.edits(),
                        new Confidence(probability, reasons));
        List<Doubt> doubts = doubts(words.reading(), plan, base);
        if (!mention.whole()) {
            return with(words.reading(), words.reading().lines(), List.of(), reference, doubts);
        }
        List<ReadingLine> own = own(words, edits, plan);
        return with(words.reading(), own, plan.lines(), reference, doubts);
    }

    private List<RawEdit> edits(Words words, EditPlan plan, Reading base) {
        String there = Folding.fold(text.slice(base.witness().body())).folded();
        List<RawEdit> all = new ArrayList<>(otherwise(words));
        all.addAll(EditFinder.find(marked(words), w -> plan.find(w) >= 0 || there.contains(w)));
        return all.isEmpty() ? told(words) : all;
    }

    /** “See the Mule. Rye.”: what stands alone after the reference takes a place or is added. */
    private static List<RawEdit> told(Words words) {
        List<RawEdit> edits = new ArrayList<>();
        String body = words.folded().folded();
        boolean opens = words.mention().start() < OPENING;
        boolean brief = body.length() - words.mention().end() < BRIEF;
        for (ReadingLine line : opens && brief ? words.reading().lines() : List.<ReadingLine>of()) {
            int start = words.folded().toFolded(line.span().start() - words.offset());
            int end = words.folded().toFolded(line.span().end() - words.offset());
            if (start >= words.mention().end() && end > start && end <= body.length()) {
                String said = body.substring(start, end);
                edits.add(new RawEdit(RawEdit.Op.WITH, "", said, start, end, start));
            }
        }
        return edits;
    }

    /** In “brandy, one jigger; otherwise the same” the lines before stand in for others. */
    private static List<RawEdit> otherwise(Words words) {
        String body = words.folded().folded();
        int from = Math.max(0, words.mention().start() - 30);
        boolean rest = REST.matcher(body.substring(from, words.mention().end())).find();
        List<RawEdit> edits = new ArrayList<>();
        for (ReadingLine line : rest ? words.reading().lines() : List.<ReadingLine>of()) {
            String text = Folding.fold(line.text()).folded();
            int at = body.indexOf(text);
            if (at >= 0 && at + text.length() <= words.mention().start()) {
                edits.add(new RawEdit(RawEdit.Op.WITH, "", text, at, at + text.length(), at));
            }
        }
        return edits;
    }

    /** Returns the body with the words of the reference made “§”. */
    private static String marked(Words words) {
        StringBuilder body = new StringBuilder(words.folded().folded());
        for (int at = words.mention().start(); at < words.mention().end(); at++) {
            body.setCharAt(at, '§');
        }
        body.setLength(Math.min(body.length(), MentionFinder.REACH));
        return ABBREVIATED.matcher(body).replaceAll("$1 ");
    }

    /** The recipe's own lines: not those whose words were part of the reference or a change. */
    private List<ReadingLine> own(Words words, List<RawEdit> edits, EditPlan plan) {
        List<Span> taken = new ArrayList<>();
        taken.add(words.span());
        int length = words.folded().folded().length();
        for (RawEdit edit : edits) {
            int start = Math.min(edit.start(), length);
            int end = Math.min(edit.end(), length);
            taken.add(words.folded().toPrinted(start, end).shift(words.offset()));
        }
        List<ReadingLine> own = new ArrayList<>(plan.added());
        for (ReadingLine line : words.reading().lines()) {
            if (taken.stream().noneMatch(line.span()::overlaps)) {
                own.add(line);
            }
        }
        own.sort(Comparator.comparing(ReadingLine::span));
        return own;
    }

    private static List<Doubt> doubts(Reading reading, EditPlan plan, Reading base) {
        List<Doubt> doubts = new ArrayList<>();
        boolean lines = !base.allLines().isEmpty();
        for (Doubt doubt : reading.doubts()) {
            boolean none = reading.lines().isEmpty() && doubt.weight() == 1;
            if (!(lines && none)) {
                doubts.add(doubt);
            }
        }
        doubts.addAll(plan.doubts());
        doubts.sort(Comparator.comparingDouble(Doubt::weight).reversed());
        return doubts;
    }

    private static Reading with(
            Reading r,
            List<ReadingLine> lines,
            List<ReadingLine> inherited,
            Reference reference,
            List<Doubt> doubts) {
        Witness witness = r.witness();
        double own = r.lines().isEmpty() ? 1 : r.confidence().probability();
        double both =
                reference.isResolved()
                        ? own * reference.confidence().probability()
                        : Math.min(own, reference.confidence().probability());
        return new Reading(
                witness,
                r.genre(),
                lines,
                inherited,
                r.steps(),
                r.vessels(),
                r.serves(),
                Optional.of(reference),
                r.temperature(),
                doubts,
                new Confidence(both, reference.confidence().reasons()));
    }
}
