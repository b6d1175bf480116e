package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.ingredients.Allergen;
import org.stillroom.ingredients.Allergens;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Properties;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.explain.Citation;

/** One sense of an ingredient in words and for programs. */
record SenseBlocks(Thesaurus thesaurus, Sense sense) {

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(sense.label()));
        blocks.add(new Block.Paragraph(about()));
        blocks.add(names());
        if (!sense.properties().figures().isEmpty()) {
            blocks.add(figures());
        }
        blocks.add(new Block.Paragraph(allergens(sense.allergens())));
        for (Hazard h : sense.hazards()) {
            blocks.add(
                    new Block.Paragraph(
                            "Caution ("
                                    + h.level().name().toLowerCase(java.util.Locale.ROOT)
                                    + "): "
                                    + h.words()
                                    + " ["
                                    + cited(h.source())
                                    + "]"));
        }
        return blocks;
    }

    private String about() {
        String kinds = sense.broader().isEmpty() ? "" : "; a kind of " + labels(sense.broader());
        String close = sense.close().isEmpty() ? "" : "; easily taken for " + labels(sense.close());
        String limits = ThesaurusInquiry.limits(sense.validity());
        String scope = sense.scope().isEmpty() ? "" : " " + sense.scope() + ".";
        return sense.id()
                + ": "
                + sense.kind().word()
                + (limits.isEmpty() ? "" : ", " + limits)
                + kinds
                + close
                + "."
                + scope
                + " ["
                + cited(sense.source())
                + "]";
    }

    private String labels(List<String> ids) {
        return ids.stream()
                .map(id -> thesaurus.sense(id).map(Sense::label).orElse(id))
                .collect(Collectors.joining(", "));
    }

    private static String cited(Citation c) {
        return c.work().equals(c.status().words())
                ? c.work()
                : c.work() + "; " + c.status().words();
    }

    /** Misspellings are found and never shown among the names; they are counted. */
    private Block names() {
        List<Label> all = thesaurus.labels(sense.id());
        List<List<String>> rows =
                all.stream()
                        .filter(l -> l.kind() != Label.Kind.HIDDEN)
                        .map(
                                l ->
                                        List.of(
                                                l.text(),
                                                l.kind().word(),
                                                l.language(),
                                                ThesaurusInquiry.limits(l.validity()),
                                                cited(l.source())))
                        .toList();
        long hidden = all.size() - rows.size();
        return new Block.Table(
                "Names" + (hidden == 0 ? "" : ", and " + hidden + " misspellings that are found"),
                List.of("name", "kind", "language", "when and where", "source"),
                List.of(false, false, false, false, false),
                rows,
                List.of());
    }

    private Block figures() {
        List<List<String>> rows = new ArrayList<>();
        for (Properties.Quantity q : Properties.Quantity.values()) {
            Properties.Figure f = sense.properties().figures().get(q);
            if (f != null) {
                String from =
                        f.of().equals(sense.id())
                                ? ""
                                : thesaurus.sense(f.of()).map(Sense::label).orElse(f.of());
                rows.add(
                        List.of(
                                q.word(),
                                AmountFormat.write(f.value(), q.unit()),
                                from,
                                cited(f.source())));
            }
        }
        return new Block.Table(
                "Figures",
                List.of("quantity", "value", "taken from", "source"),
                List.of(false, true, false, false),
                rows,
                List.of());
    }

    private static String allergens(Allergens a) {
        String contains = words(a.contains());
        String possible = words(a.possible());
        if (contains.isEmpty() && possible.isEmpty()) {
            return a.assessed()
                    ? "Allergens: none of those that must be declared is stated."
                    : "Allergens: not known. That is never the same as free from them.";
        }
        return "Allergens: "
                + (contains.isEmpty() ? "" : "contains " + contains)
                + (contains.isEmpty() || possible.isEmpty() ? "" : "; ")
                + (possible.isEmpty() ? "" : "some makings hold " + possible)
                + (a.assessed() ? "." : "; others are not known.");
    }

    private static String words(java.util.Collection<Allergen> allergens) {
        return allergens.stream().map(Allergen::word).collect(Collectors.joining(", "));
    }

    ObjectNode json() {
        ObjectNode node =
                Json.object()
                        .put("id", sense.id())
                        .put("label", sense.label())
                        .put("role", sense.kind().word())
                        .put("limits", ThesaurusInquiry.limits(sense.validity()))
                        .put("scope", sense.scope())
                        .put("source", sense.source().work())
                        .put("status", sense.source().status().words());
        node.set("broader", Json.strings(sense.broader()));
        node.set("close", Json.strings(sense.close()));
        ArrayNode names = Json.array();
        for (Label l : thesaurus.labels(sense.id())) {
            names.add(
                    Json.object()
                            .put("name", l.text())
                            .put("kind", l.kind().word())
                            .put("language", l.language())
                            .put("limits", ThesaurusInquiry.limits(l.validity()))
                            .put("source", l.source().work()));
        }
        node.set("names", names);
        ObjectNode figures = Json.object();
        sense.properties()
                .figures()
                .forEach(
                        (q, f) ->
                                figures.set(
                                        q.word(),
                                        Json.estimate(f.value(), 1)
                                                .put("unit", q.unit())
                                                .put("of", f.of())
                                                .put("source", f.source().work())));
        node.set("figures", figures);
        node.set(
                "contains",
                Json.strings(sense.allergens().contains().stream().map(Allergen::word).toList()));
        node.set(
                "possible",
                Json.strings(sense.allergens().possible().stream().map(Allergen::word).toList()));
        node.put("allergensAssessed", sense.allergens().assessed());
        ArrayNode cautions = Json.array();
        sense.hazards()
                .forEach(
                        h ->
                                cautions.add(
                                        Json.object()
                                                .put(
                                                        "level",
                                                        h.level()
                                                                .name()
                                                                .toLowerCase(java.util.Locale.ROOT))
                                                .put("words", h.words())
                                                .put("source", h.source().work())));
        node.set("cautions", cautions);
        return node;
    }
}
