package org.stillroom.measures.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.reading.Size;

/**
 * The table of measures that a book itself prints, in whatever form, made one system.
 *
 * <p>Each of its measures is so many of one that is known elsewhere (its pint, if it names one), so
 * that all ratios of the book are exact whatever its pint holds. For that book it outranks every
 * other authority.
 */
public final class OwnTable {

    /** The table of a book that prints none. */
    public static final OwnTable NONE = new OwnTable(List.of(), Map.of(), List.of());

    private final List<Equation> statements;
    private final Map<String, Definition> definitions;
    private final List<Authority> rows;

    private OwnTable(
            List<Equation> statements, Map<String, Definition> definitions, List<Authority> rows) {
        this.statements = List.copyOf(statements);
        this.definitions = Map.copyOf(definitions);
        this.rows = List.copyOf(rows);
    }

    /**
     * A table with the statements that could not be part of it.
     *
     * @param table the table
     * @param problems statements that contradict others or hang on nothing known
     */
    public record Built(OwnTable table, List<Problem> problems) {

        /** Keeps the problems unchangeable. */
        public Built {
            problems = List.copyOf(problems);
        }
    }

    /** Returns the table of these statements, in the order in which they stand in the book. */
    public static Built of(List<Equation> equations, KnownMeasures known) {
        List<Problem> problems = new ArrayList<>();
        List<Authority> rows = new ArrayList<>();
        List<Equation> kept = new ArrayList<>();
        RatioWeb web = new RatioWeb();
        for (Equation e : equations) {
            Optional<Authority> weight = known.weight(e);
            if (weight.isPresent()) {
                rows.add(weight.get());
            } else if (!known.isVolume(e)) {
                continue;
            } else if (web.join(e.one().name(), e.other().name(), Ratio.of(e))) {
                kept.add(e);
            } else {
                problems.add(contradiction(e, web, kept));
            }
        }
        Map<String, Definition> definitions = new TreeMap<>();
        for (List<String> group : web.groups()) {
            define(group, web, kept, known, definitions, problems);
        }
        return new Built(new OwnTable(kept, definitions, rows), problems);
    }

    private static Problem contradiction(Equation e, RatioWeb web, List<Equation> kept) {
        String one = e.one().name();
        String other = e.other().name();
        List<Equation> path = new Chain(kept).between(one, other);
        String before =
                path.isEmpty()
                        ? "one " + one + " is one " + other
                        : "in "
                                + path.get(0).where()
                                + " (“"
                                + path.get(0).words()
                                + "”) one "
                                + one
                                + " comes to "
                                + web.between(one, other)
                                + " "
                                + other;
        return Problem.warning(
                e.file(),
                e.line(),
                e.words(),
                "The book contradicts itself: here one "
                        + one
                        + " is "
                        + Ratio.of(e)
                        + " "
                        + other
                        + ", but "
                        + before
                        + ".",
                "The earlier statement is kept. If it is the wrong one, write the right one as a"
                        + " row with the role “own-table” in knowledge/measures.csv.");
    }

    private static void define(
            List<String> group,
            RatioWeb web,
            List<Equation> kept,
            KnownMeasures known,
            Map<String, Definition> definitions,
            List<Problem> problems) {
        Optional<String> base =
                group.stream()
                        .filter(known::isKnown)
                        .min(Comparator.comparingDouble(known::rank).thenComparing(n -> n));
        if (base.isEmpty()) {
            kept.stream()
                    .filter(e -> group.contains(e.one().name()))
                    .findFirst()
                    .ifPresent(e -> problems.add(circle(e, group)));
            return;
        }
        Chain chain = new Chain(kept);
        for (String name : group) {
            if (!name.equals(base.get())) {
                definitions.put(
                        name,
                        new Definition(
                                name,
                                base.get(),
                                web.between(name, base.get()),
                                chain.between(name, base.get())));
            }
        }
    }

    private static Problem circle(Equation e, List<String> group) {
        return Problem.warning(
                e.file(),
                e.line(),
                e.words(),
                "The definitions go round in a circle: "
                        + String.join(", ", group.stream().sorted().toList())
                        + " are told by one another alone.",
                "Say what one of them holds in a row of knowledge/measures.csv.");
    }

    /** Returns this table with rows that the user wrote for the book, which outrank it. */
    public OwnTable with(List<Authority> more) {
        if (more.isEmpty()) {
            return this;
        }
        List<Authority> all = new ArrayList<>(more);
        all.addAll(rows);
        Map<String, Definition> rest = new TreeMap<>(definitions);
        more.stream()
                .filter(a -> a.dimension() == Dimension.VOLUME && a.of().isEmpty())
                .forEach(a -> rest.remove(Side.name(a.size(), a.word())));
        return new OwnTable(statements, rest, all);
    }

    /** Returns the statements that make the table, in the book's order. */
    public List<Equation> statements() {
        return statements;
    }

    /** Returns statements in millilitres or grams. */
    public List<Authority> rows() {
        return rows;
    }

    /** Returns how the book defines a measure of this size. */
    public Optional<Definition> definition(Optional<Size> size, String word) {
        return Optional.ofNullable(definitions.get(Side.name(size, word)));
    }

    /** Returns every definition, by name. */
    public List<Definition> definitions() {
        return definitions.values().stream()
                .sorted(Comparator.comparing(Definition::name))
                .toList();
    }

    /** Tells whether the book says nothing about its measures. */
    public boolean isEmpty() {
        return statements.isEmpty() && rows.isEmpty();
    }
}
