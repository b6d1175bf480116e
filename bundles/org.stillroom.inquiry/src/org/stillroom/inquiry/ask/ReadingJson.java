package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.reading.Size;
import org.stillroom.model.reading.Step;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.spec.Caution;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * The stable form of a reading for programs, described by {@code schema/read.schema.json}.
 *
 * <p>Spans count Unicode code points of the source’s text, which for Markdown starts after the
 * front matter.
 */
final class ReadingJson {

    private ReadingJson() {}

    static ObjectNode source(Source source) {
        Bibliography b = source.bibliography();
        ObjectNode node = Json.object().put("id", source.id()).put("title", b.title());
        Json.put(node, "author", b.author());
        Json.put(node, "place", b.place().map(Place::toText));
        Json.put(node, "date", b.date().map(Object::toString));
        Json.put(node, "trade", b.trade().map(Trade::word));
        Json.put(node, "language", b.language());
        return node.put("digest", source.digest());
    }

    static ObjectNode recipe(Version version) {
        Reading reading = version.reading();
        Witness w = reading.witness();
        ObjectNode node = Json.object();
        Json.put(node, "number", w.number());
        node.put("title", w.title());
        node.set("span", Json.span(w.span()));
        Json.put(node, "page", w.page());
        Json.put(node, "serves", reading.serves().map(s -> s.low().toString()));
        Json.put(
                node,
                "servesMax",
                reading.serves()
                        .filter(s -> !s.low().equals(s.high()))
                        .map(s -> s.high().toString()));
        node.set("lines", lines(version.spec().lines(), reading.inherited().size()));
        node.set("inherited", inherited(version.spec().lines(), reading.inherited().size()));
        Json.put(node, "vessel", reading.vessel().map(Vessel::word));
        node.set("steps", Json.strings(reading.steps().stream().map(Step::verb).toList()));
        node.set("doubts", doubts(reading.doubts()));
        reading.reference().ifPresent(r -> node.set("reference", reference(r)));
        Json.put(node, "volume", version.spec().volume(), 1);
        Json.put(node, "strength", version.spec().strength(), 1);
        node.put("system", version.spec().system());
        node.put("systemReason", version.spec().systemReason());
        node.set("cautions", cautions(version.spec().cautions()));
        return node.put("confidence", Json.number(reading.confidence().probability()));
    }

    private static ArrayNode lines(List<SpecLine> all, int inherited) {
        ArrayNode array = Json.array();
        all.subList(inherited, all.size()).forEach(l -> array.add(line(l)));
        return array;
    }

    private static ArrayNode inherited(List<SpecLine> all, int inherited) {
        ArrayNode array = Json.array();
        all.subList(0, inherited).forEach(l -> array.add(line(l)));
        return array;
    }

    private static ObjectNode line(SpecLine spec) {
        ReadingLine line = spec.line();
        ObjectNode node = Json.object().put("text", line.text());
        node.set("span", Json.span(line.span()));
        facts(node, line);
        Json.put(node, "ml", spec.millilitres(), 1);
        node.put("confidence", Json.number(line.confidence().probability()));
        ArrayNode others = Json.array();
        for (ReadingLine other : line.alternatives()) {
            ObjectNode alternative = Json.object();
            facts(alternative, other);
            others.add(
                    alternative.put("confidence", Json.number(other.confidence().probability())));
        }
        node.set("alternatives", others);
        Json.put(node, "g", spec.grams(), 1);
        node.put("sense", spec.ingredient().known() ? spec.ingredient().id() : null);
        return node.put("role", spec.ingredient().role().word());
    }

    private static void facts(ObjectNode node, ReadingLine line) {
        node.put("kind", line.kind().word());
        Json.put(node, "quantity", line.amount().quantity().map(Rational::toString));
        Json.put(node, "quantityMax", line.amount().quantityMax().map(Rational::toString));
        node.put("measure", line.measure());
        Json.put(node, "size", line.size().map(Size::word));
        Json.put(
                node,
                "ingredient",
                java.util.Optional.of(line.ingredientName()).filter(n -> !n.isEmpty()));
    }

    private static ArrayNode doubts(List<Doubt> doubts) {
        ArrayNode array = Json.array();
        for (Doubt doubt : doubts) {
            ObjectNode node = Json.object().put("reason", doubt.reason());
            node.set("span", Json.span(doubt.span()));
            array.add(node.put("weight", Json.number(doubt.weight())));
        }
        return array;
    }

    private static ObjectNode reference(Reference r) {
        ObjectNode node = Json.object().put("words", r.words());
        Json.put(node, "target", r.target());
        node.set("chain", Json.strings(r.chain()));
        ArrayNode edits = Json.array();
        for (Reference.Edit edit : r.edits()) {
            edits.add(
                    switch (edit) {
                        case Reference.Edit.Replace x ->
                                Json.object()
                                        .put("op", "replace")
                                        .put("from", x.from())
                                        .put("to", x.to());
                        case Reference.Edit.Add x ->
                                Json.object().put("op", "add").put("to", x.line().text());
                        case Reference.Edit.Remove x ->
                                Json.object().put("op", "remove").put("from", x.ingredient());
                        case Reference.Edit.Change x ->
                                Json.object()
                                        .put("op", "amount")
                                        .put("from", x.ingredient())
                                        .put("to", x.words());
                    });
        }
        node.set("edits", edits);
        return node;
    }

    private static ArrayNode cautions(List<Caution> cautions) {
        ArrayNode array = Json.array();
        for (Caution c : cautions) {
            array.add(
                    Json.object()
                            .put("level", c.level().name().toLowerCase(java.util.Locale.ROOT))
                            .put("subject", c.subject())
                            .put("words", c.words())
                            .put("source", c.source().work()));
        }
        return array;
    }
}
