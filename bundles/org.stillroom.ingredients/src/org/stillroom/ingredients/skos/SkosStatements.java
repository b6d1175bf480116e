package org.stillroom.ingredients.skos;

import static org.stillroom.ingredients.skos.SkosTurtle.iri;
import static org.stillroom.ingredients.skos.SkosTurtle.literal;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.StringJoiner;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.Milestone;
import org.stillroom.ingredients.Properties.Quantity;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.knowledge.AllergenRow;
import org.stillroom.ingredients.knowledge.FigureRow;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.SkosTerms;

/**
 * Writes what is stated about senses: figures, allergens, hazards, first and last dates, merges.
 *
 * <p>A sense has what is stated for it alone; what it takes over from broader senses stands there.
 */
final class SkosStatements {

    private final Knowledge rows;
    private final List<Hazard> hazards;
    private final List<Milestone> milestones;
    private final Map<String, Map<Quantity, FigureRow>> figures = new HashMap<>();
    private final Map<String, Set<AllergenRow>> allergens = new HashMap<>();

    SkosStatements(Knowledge rows, Thesaurus thesaurus) {
        this.rows = rows;
        this.hazards = thesaurus.hazards();
        this.milestones = thesaurus.milestones();
        for (FigureRow f : rows.figures()) {
            figures.computeIfAbsent(rows.current(f.sense()), s -> new EnumMap<>(Quantity.class))
                    .put(f.quantity(), f);
        }
        for (AllergenRow a : rows.allergens()) {
            String sense = rows.current(a.sense());
            allergens.computeIfAbsent(sense, s -> new LinkedHashSet<>()).add(a.withSense(sense));
        }
    }

    static void prefixes(StringBuilder out) {
        out.append("@prefix rdf: <http://www.w3.org/1999/02/22-rdf-syntax-ns#> .\n");
        out.append("@prefix rdfs: <http://www.w3.org/2000/01/rdf-schema#> .\n");
        out.append("@prefix st: <").append(SkosTerms.NAMESPACE).append("> .\n");
    }

    /** Writes what each term of our own means. */
    static void define(StringBuilder out) {
        for (SkosTerms term : SkosTerms.values()) {
            out.append('\n').append(term.prefixed()).append(" a rdf:Property ;\n    rdfs:label ");
            out.append(literal(term.words())).append("@en ;\n    rdfs:comment ");
            out.append(literal(term.comment())).append("@en .\n");
        }
        out.append("\nst:Hazard a rdfs:Class ;\n    rdfs:label \"hazard\"@en .\n");
        out.append("\nst:Milestone a rdfs:Class ;\n    rdfs:label \"first or last date\"@en .\n");
    }

    /** Adds the properties of one sense. */
    void of(String sense, StringJoiner lines) {
        figures.getOrDefault(sense, Map.of()).values().forEach(f -> lines.add(figure(f)));
        for (AllergenRow row : allergens.getOrDefault(sense, Set.of())) {
            lines.add(allergen(row));
            lines.add("skos:note " + literal(words(row)) + "@en");
        }
        hazards.stream()
                .filter(h -> h.senses().stream().map(rows::current).anyMatch(sense::equals))
                .forEach(h -> lines.add("skos:note " + literal(words(h)) + "@en"));
        milestones.stream()
                .filter(m -> m.subjects().contains(sense))
                .forEach(m -> lines.add("skos:historyNote " + literal(m.statement()) + "@en"));
    }

    private static String figure(FigureRow figure) {
        StringJoiner parts = new StringJoiner(" ; ", "schema:additionalProperty [ ", " ]");
        parts.add("a schema:PropertyValue");
        parts.add("schema:name \"" + figure.quantity().word() + '"');
        parts.add("schema:minValue " + number(figure.low()));
        parts.add("schema:value " + number(figure.likely()));
        parts.add("schema:maxValue " + number(figure.high()));
        parts.add("schema:unitText \"" + figure.quantity().unit() + '"');
        SkosTurtle.source(figure.source()).forEach(parts::add);
        return parts.toString();
    }

    /** A decimal of Turtle; an integer or a double would be another type. */
    private static String number(double value) {
        String plain = new BigDecimal(Double.toString(value)).toPlainString();
        return plain.contains(".") ? plain : plain + ".0";
    }

    private static String allergen(AllergenRow row) {
        StringJoiner parts =
                new StringJoiner(" ; ", SkosTerms.ALLERGEN_STATEMENT.prefixed() + " [ ", " ]");
        row.allergen()
                .ifPresent(a -> parts.add(SkosTerms.ALLERGEN.prefixed() + " \"" + a.word() + '"'));
        parts.add(SkosTerms.PRESENCE.prefixed() + " \"" + word(row.presence()) + '"');
        SkosTurtle.source(row.source()).forEach(parts::add);
        return parts.toString();
    }

    private static String words(AllergenRow row) {
        String of = " (" + row.source().work() + ", " + row.source().status().words() + ")";
        String what = row.allergen().map(a -> a.words()).orElse("");
        return switch (row.presence()) {
            case CONTAINS -> "Allergen: contains " + what + of + '.';
            case POSSIBLE -> "Allergen: some makings contain " + what + of + '.';
            case NONE -> "Allergens: none of the listed ones belongs in it" + of + '.';
            case UNKNOWN -> "Allergens: not known" + of + '.';
        };
    }

    private static String words(Hazard hazard) {
        String level =
                switch (hazard.level()) {
                    case STOP -> "Caution, not to be served: ";
                    case RESTRICTED -> "Caution, restricted: ";
                    case CARE -> "Caution: ";
                };
        String where = hazard.region().isEmpty() ? "" : " (" + hazard.region() + ")";
        return level + hazard.words() + where;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** Writes what does not belong to one sense: hazards, dates, and ids that were merged. */
    void others(StringBuilder out) {
        hazards.forEach(h -> out.append(hazard(h, rows)));
        milestones.forEach(m -> out.append(milestone(m)));
        rows.moved()
                .forEach(
                        (from, into) ->
                                out.append('\n')
                                        .append(iri(from))
                                        .append(" dcterms:isReplacedBy ")
                                        .append(iri(into))
                                        .append(" .\n"));
    }

    private static String hazard(Hazard hazard, Knowledge rows) {
        StringJoiner lines = new StringJoiner(" ;\n    ", "\n", " .\n");
        lines.add('<' + SkosTerms.HAZARD + hazard.id() + "> a st:Hazard");
        lines.add(SkosTerms.LEVEL.prefixed() + " \"" + word(hazard.level()) + '"');
        hazard.senses().stream()
                .map(rows::current)
                .distinct()
                .forEach(s -> lines.add(SkosTerms.GOES_WITH.prefixed() + ' ' + iri(s)));
        hazard.triggers()
                .forEach(t -> lines.add(SkosTerms.TRIGGER.prefixed() + ' ' + literal(t) + "@en"));
        if (!hazard.region().isEmpty()) {
            lines.add(SkosTerms.REGION.prefixed() + ' ' + literal(hazard.region()));
        }
        lines.add("dcterms:description " + literal(hazard.what()) + "@en");
        lines.add(SkosTerms.RULE.prefixed() + ' ' + literal(hazard.rule()) + "@en");
        SkosTurtle.source(hazard.source()).forEach(lines::add);
        return lines.toString();
    }

    private static String milestone(Milestone milestone) {
        StringJoiner lines = new StringJoiner(" ;\n    ", "\n", " .\n");
        lines.add('<' + SkosTerms.MILESTONE + milestone.id() + "> a st:Milestone");
        lines.add(SkosTerms.MILESTONE_KIND.prefixed() + " \"" + word(milestone.kind()) + '"');
        milestone
                .subjects()
                .forEach(s -> lines.add(SkosTerms.SUBJECT.prefixed() + ' ' + literal(s)));
        if (milestone.first().isPresent() || milestone.last().isPresent()) {
            lines.add(
                    "dcterms:temporal \""
                            + year(milestone.first())
                            + '/'
                            + year(milestone.last())
                            + '"');
        }
        if (!milestone.place().isEmpty()) {
            lines.add("dcterms:spatial " + literal(milestone.place()));
        }
        lines.add("dcterms:description " + literal(milestone.statement()) + "@en");
        SkosTurtle.source(milestone.source()).forEach(lines::add);
        return lines.toString();
    }

    private static String year(OptionalInt year) {
        return year.isPresent() ? Integer.toString(year.getAsInt()) : "..";
    }
}
