package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import org.stillroom.drift.Drift;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Amounts;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;

/** Shows how a drink's proportions moved, honestly at small numbers. */
@Component(service = Inquiry.class)
public final class DriftInquiry extends DrinkInquiry {

    @Override
    public String name() {
        return "drift";
    }

    @Override
    public String summary() {
        return "show how a drink's proportions moved, what came in and what dropped out";
    }

    @Override
    Answer answer(Study study, Drink drink, Progress progress) {
        Drift drift = study.drift(drink, progress);
        List<Block> blocks = new ArrayList<>();
        List<String> tabled = drift.events().stream().map(Drift.Event::words).toList();
        drift.words().stream()
                .filter(w -> !tabled.contains(w))
                .forEach(w -> blocks.add(new Block.Paragraph(w)));
        blocks.add(shares(drink, drift, study));
        trends(drift).ifPresent(blocks::add);
        if (!drift.events().isEmpty()) {
            blocks.add(events(drift));
        }
        if (!drift.distances().isEmpty()) {
            blocks.add(distances(drift, study));
        }
        drift.left().forEach(l -> blocks.add(new Block.Paragraph("Left out: " + l)));
        blocks.add(new Block.Picture("drift", new Figure.DriftFigure(drink.name(), drift)));
        return new Answer("Drift of " + drink.name(), blocks, json(drink, drift), List.of());
    }

    private static Block shares(Drink drink, Drift drift, Study study) {
        List<String> columns = new ArrayList<>(List.of("version", "year", "counts"));
        List<Boolean> numeric = new ArrayList<>(List.of(false, true, false));
        for (String role : drift.roles()) {
            columns.add(role + " %");
            numeric.add(true);
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        List<Explanation> whys = new ArrayList<>();
        for (Drift.Point point : drift.points()) {
            List<String> row = new ArrayList<>();
            row.add(point.label());
            row.add(Double.isNaN(point.year()) ? "–" : Integer.toString((int) point.year()));
            row.add(point.independent() ? "yes" : "copy");
            point.shares().forEach(s -> row.add(Amounts.share(s)));
            rows.add(row);
            targets.add(point.version());
            whys.add(
                    study.version(point.version())
                            .map(v -> AmountReasons.shares(v, drift, point))
                            .orElseGet(() -> Explanation.of(point.label())));
        }
        return new Block.Table(
                "Shares of the whole, " + drink.name(), columns, numeric, rows, targets, whys);
    }

    /** Returns the findings that the words do not tell already. */
    private static Optional<Block> trends(Drift drift) {
        List<List<String>> rows =
                drift.trends().stream()
                        .filter(t -> !drift.words().contains(t.words()))
                        .map(t -> List.of(t.role(), t.words()))
                        .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Block.Table(
                                "What can be said of the other roles",
                                List.of("role", "finding"),
                                List.of(false, false),
                                rows,
                                List.of()));
    }

    private static Block events(Drift drift) {
        List<List<String>> rows = new ArrayList<>();
        for (Drift.Event e : drift.events()) {
            rows.add(
                    List.of(
                            e.ingredient(),
                            e.enters() ? "comes in" : "drops out",
                            e.after(),
                            e.by()));
        }
        return new Block.Table(
                "What comes in and drops out",
                List.of("ingredient", "change", "after", "by"),
                List.of(false, false, false, false),
                rows,
                List.of());
    }

    private static Block distances(Drift drift, Study study) {
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        for (Drift.Distance d : drift.distances()) {
            rows.add(
                    List.of(
                            name(study, d.from()),
                            name(study, d.to()),
                            d.aitchison()
                                    .map(a -> String.format(Locale.ROOT, "%.2f", a))
                                    .orElse("–"),
                            d.added().isEmpty() ? "–" : String.join(", ", d.added()),
                            d.dropped().isEmpty() ? "–" : String.join(", ", d.dropped())));
            targets.add(d.to());
        }
        return new Block.Table(
                "From each version to the next (Aitchison distance on what both have)",
                List.of("from", "to", "distance", "added", "dropped"),
                List.of(false, false, true, false, false),
                rows,
                targets);
    }

    private static String name(Study study, String version) {
        return study.version(version).map(v -> v.source().shortName()).orElse(version);
    }

    private static ObjectNode json(Drink drink, Drift drift) {
        ObjectNode json =
                Json.object()
                        .put("drink", drink.name())
                        .put("id", drink.id())
                        .put("versions", drift.versions())
                        .put("independent", drift.independent());
        json.set("words", Json.strings(drift.words()));
        json.set("roles", Json.strings(drift.roles()));
        ArrayNode points = Json.array();
        for (Drift.Point p : drift.points()) {
            ObjectNode node = Json.object().put("version", p.version()).put("label", p.label());
            if (!Double.isNaN(p.year())) {
                node.put("year", Json.number(p.year()));
            }
            node.put("independent", p.independent());
            ArrayNode shares = Json.array();
            for (Drift.Share s : p.shares()) {
                shares.add(
                        Json.object()
                                .put("low", Json.number(s.low()))
                                .put("likely", Json.number(s.likely()))
                                .put("high", Json.number(s.high())));
            }
            node.set("shares", shares);
            points.add(node);
        }
        json.set("points", points);
        json.set("trends", trendsJson(drift));
        json.set("events", eventsJson(drift));
        json.set("distances", distancesJson(drift));
        json.set("left", Json.strings(drift.left()));
        return json;
    }

    private static ArrayNode trendsJson(Drift drift) {
        ArrayNode trends = Json.array();
        for (Drift.Trend t : drift.trends()) {
            ObjectNode node = Json.object().put("role", t.role()).put("words", t.words());
            if (t instanceof Drift.Trend.Tested x) {
                node.put("n", x.n())
                        .put("slopePerDecade", Json.number(x.slopePerDecade()))
                        .put("low", Json.number(x.low()))
                        .put("high", Json.number(x.high()))
                        .put("p", Json.number(x.p()));
            }
            trends.add(node.put("tested", t instanceof Drift.Trend.Tested));
        }
        return trends;
    }

    private static ArrayNode eventsJson(Drift drift) {
        ArrayNode events = Json.array();
        for (Drift.Event e : drift.events()) {
            events.add(
                    Json.object()
                            .put("ingredient", e.ingredient())
                            .put("enters", e.enters())
                            .put("after", e.after())
                            .put("by", e.by())
                            .put("words", e.words()));
        }
        return events;
    }

    private static ArrayNode distancesJson(Drift drift) {
        ArrayNode distances = Json.array();
        for (Drift.Distance d : drift.distances()) {
            ObjectNode node = Json.object().put("from", d.from()).put("to", d.to());
            if (d.aitchison().isPresent()) {
                node.put("aitchison", Json.number(d.aitchison().get()));
            } else {
                node.putNull("aitchison");
            }
            node.set("added", Json.strings(d.added()));
            node.set("dropped", Json.strings(d.dropped()));
            distances.add(node);
        }
        return distances;
    }
}
