package org.stillroom.ingredients.skos;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.StringJoiner;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.Validity;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.SkosTerms;
import org.stillroom.model.explain.Citation;

/**
 * Writes a thesaurus as a SKOS concept scheme in Turtle.
 *
 * <p>Vocabulary by the W3C Recommendations “SKOS Simple Knowledge Organization System Reference”
 * (18 August 2009) and “RDF 1.1 Turtle” (25 February 2014). Each sense is a concept with one
 * preferred label; a misspelling is a hidden label. The years and countries of a sense are a scope
 * note for people and Dublin Core terms for programs; those of a single name an editorial note and
 * a label of SKOS-XL (appendix B of the reference). Figures are property values of schema.org.
 * Allergens, hazards and first dates, for which no open vocabulary has terms, stand in terms of our
 * own ({@link SkosTerms}), each with its source, and for people as notes of SKOS.
 */
public final class SkosTurtle {

    private static final String SCHEME = "urn:stillroom:ingredients";

    private SkosTurtle() {}

    /** Returns the whole scheme; equal thesauri give equal text. */
    public static String write(Thesaurus thesaurus) {
        StringBuilder out = new StringBuilder(1 << 20);
        out.append("@prefix skos: <http://www.w3.org/2004/02/skos/core#> .\n");
        out.append("@prefix skosxl: <http://www.w3.org/2008/05/skos-xl#> .\n");
        out.append("@prefix dcterms: <http://purl.org/dc/terms/> .\n");
        out.append("@prefix schema: <https://schema.org/> .\n");
        SkosStatements.prefixes(out);
        out.append('\n');
        out.append('<').append(SCHEME).append("> a skos:ConceptScheme ;\n");
        out.append("    dcterms:title \"Ingredients of old drinks, by period and place\"@en .\n");
        SkosStatements.define(out);
        Knowledge rows = thesaurus.rows();
        SkosStatements statements = new SkosStatements(rows, thesaurus);
        thesaurus.senses().values().forEach(s -> concept(s, thesaurus, statements, out));
        statements.others(out);
        return out.toString();
    }

    private static void concept(
            Sense sense, Thesaurus thesaurus, SkosStatements statements, StringBuilder out) {
        StringJoiner lines = new StringJoiner(" ;\n    ", "\n", " .\n");
        lines.add(iri(sense.id()) + " a skos:Concept");
        lines.add("skos:inScheme <" + SCHEME + '>');
        lines.add("skos:notation \"" + sense.id() + '"');
        labels(sense, thesaurus.labels(sense.id()), lines);
        sense.broader().forEach(id -> lines.add("skos:broader " + iri(id)));
        sense.close().forEach(id -> lines.add("skos:closeMatch " + iri(id)));
        String scope = note(sense.validity(), sense.scope());
        if (!scope.isEmpty()) {
            lines.add("skos:scopeNote " + literal(scope) + "@en");
        }
        if (!sense.scope().isEmpty()) {
            lines.add("skos:definition " + literal(sense.scope()) + "@en");
        }
        lines.add("dcterms:type " + literal(sense.kind().word()));
        limits(sense.validity()).forEach(lines::add);
        source(sense.source()).forEach(lines::add);
        statements.of(sense.id(), lines);
        out.append(lines);
    }

    /** SKOS wants one preferred label a language, and no label of two sorts at once (S13, S14). */
    private static void labels(Sense sense, List<Label> labels, StringJoiner lines) {
        Set<String> used = new HashSet<>();
        String preferred = literal(sense.label()) + "@en";
        used.add(preferred);
        lines.add("skos:prefLabel " + preferred);
        Set<String> limited = new HashSet<>();
        labels.stream()
                .filter(l -> !isPlain(l, sense))
                .forEach(l -> limited.add(l.text() + '@' + language(l)));
        for (Label label : labels) {
            String text = literal(label.text()) + '@' + language(label);
            if (used.add(text)) {
                boolean hidden = label.kind() == Label.Kind.HIDDEN;
                lines.add((hidden ? "skos:hiddenLabel " : "skos:altLabel ") + text);
            }
            if (limited.contains(label.text() + '@' + language(label))) {
                lines.add(described(label));
            }
            String note = note(label.validity(), "");
            if (!note.isEmpty()) {
                String about = "“" + label.text() + "” " + note;
                if (used.add(about)) {
                    lines.add("skos:editorialNote " + literal(about) + "@en");
                }
            }
        }
    }

    private static boolean isPlain(Label label, Sense sense) {
        return label.validity().equals(Validity.ALWAYS) && label.source().equals(sense.source());
    }

    /** A label with its years, countries, trades and source, which SKOS alone cannot say. */
    private static String described(Label label) {
        String property =
                switch (label.kind()) {
                    case PREFERRED -> "skosxl:prefLabel";
                    case ALTERNATIVE -> "skosxl:altLabel";
                    case HIDDEN -> "skosxl:hiddenLabel";
                };
        StringJoiner parts = new StringJoiner(" ; ", property + " [ ", " ]");
        parts.add("a skosxl:Label");
        parts.add("skosxl:literalForm " + literal(label.text()) + '@' + language(label));
        limits(label.validity()).forEach(parts::add);
        source(label.source()).forEach(parts::add);
        return parts.toString();
    }

    /** Years as an interval of EDTF, countries by ISO 3166-1, trades in words. */
    private static List<String> limits(Validity validity) {
        List<String> limits = new ArrayList<>();
        if (validity.isDated()) {
            String from = validity.from().isPresent() ? "" + validity.from().getAsInt() : "..";
            String to = validity.to().isPresent() ? "" + validity.to().getAsInt() : "..";
            limits.add("dcterms:temporal \"" + from + '/' + to + '"');
        }
        validity.places().forEach(p -> limits.add("dcterms:spatial \"" + p + '"'));
        validity.trades().forEach(t -> limits.add("dcterms:audience \"" + t.word() + '"'));
        return limits;
    }

    private static String language(Label label) {
        String tag = label.language().toLowerCase(Locale.ROOT);
        return tag.matches("[a-z]{2,8}(-[a-z0-9]{1,8})*") ? tag : "und";
    }

    private static String note(Validity validity, String scope) {
        StringJoiner note = new StringJoiner("; ");
        if (!scope.isEmpty()) {
            note.add(scope);
        }
        if (validity.isDated()) {
            note.add(validity.years());
        }
        if (!validity.places().isEmpty()) {
            note.add("in " + String.join(", ", validity.places()));
        }
        if (!validity.trades().isEmpty()) {
            StringJoiner trades = new StringJoiner(", ");
            validity.trades().forEach(t -> trades.add(t.word()));
            note.add("trade: " + trades);
        }
        return note.toString();
    }

    /** Who says so, and how well it is known. */
    static List<String> source(Citation source) {
        return List.of(
                "dcterms:source " + literal(source.work()),
                SkosTerms.STATUS.prefixed()
                        + " \""
                        + source.status().name().toLowerCase(Locale.ROOT)
                        + '"');
    }

    static String iri(String id) {
        return "<urn:stillroom:ingredient:" + id + '>';
    }

    /** A literal of Turtle, production STRING_LITERAL_QUOTE. */
    static String literal(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
