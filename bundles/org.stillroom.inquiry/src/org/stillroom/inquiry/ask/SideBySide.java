package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.WeightedAuthority;
import org.stillroom.measures.phrase.PhraseAnswer;
import org.stillroom.measures.phrase.PhraseAnswer.Quantity;
import org.stillroom.measures.phrase.Phrases;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;

/** A phrase of measure in several places and at several dates, side by side. */
record SideBySide(Phrases phrases, String phrase) {

    private static final int NAMED = 3;

    void write(List<Circumstances> wheres, List<Block> blocks, ObjectNode json) {
        List<List<String>> rows = new ArrayList<>();
        ArrayNode array = Json.array();
        List<Block> further = new ArrayList<>();
        for (Circumstances where : wheres) {
            PhraseAnswer answer = phrases.answer(phrase, where);
            String place = where.place().map(Place::toText).orElse("unknown");
            String date = where.date().map(d -> d.toText()).orElse("unknown");
            rows.add(List.of(place, date, amount(answer), who(answer), answer.reason()));
            ObjectNode node = Json.object().put("place", place).put("date", date);
            Json.put(node, "ml", answer instanceof Quantity q ? q.amount() : Optional.empty(), 1);
            ArrayNode authorities = Json.array();
            if (answer instanceof Quantity q && q.meaning() instanceof Measured m) {
                List<Block> into = rows.size() > 1 ? further : new ArrayList<>();
                MeasureInquiry.authorities(
                        "Who says what: " + place + ", " + date,
                        m.authorities(),
                        q.phrase().quantity().toDouble(),
                        MeasureInquiry.isMass(q),
                        into,
                        authorities);
            }
            node.set("authorities", authorities);
            array.add(node.put("reason", answer.reason()));
        }
        blocks.add(
                new Block.Table(
                        "Side by side",
                        List.of("place", "date", "amount", "who says so", "why"),
                        List.of(false, false, true, false, false),
                        rows,
                        List.of()));
        blocks.addAll(further);
        json.set("beside", array);
    }

    private static String amount(PhraseAnswer answer) {
        return switch (answer) {
            case Quantity q -> MeasureInquiry.written(q);
            case PhraseAnswer.Strength s ->
                    s.readings().stream()
                            .map(r -> String.format(Locale.ROOT, "%.1f %% vol", 100 * r.strength()))
                            .distinct()
                            .collect(Collectors.joining(" or "));
            case PhraseAnswer.Syrup s ->
                    s.readings().stream()
                            .map(r -> String.format(Locale.ROOT, "%.1f °Bx", r.brix()))
                            .distinct()
                            .collect(Collectors.joining(" or "));
            case PhraseAnswer.None n -> "no answer";
        };
    }

    /** Names the weightiest authorities with how their figures are known. */
    private static String who(PhraseAnswer answer) {
        return switch (answer) {
            case Quantity q when q.meaning() instanceof Measured m ->
                    m.authorities().stream()
                            .filter(a -> a.share() > 0.005)
                            .limit(NAMED)
                            .map(SideBySide::known)
                            .collect(Collectors.joining("; "));
            case PhraseAnswer.Strength s ->
                    s.readings().stream()
                            .map(r -> r.scale() + " (" + r.source() + ")")
                            .limit(NAMED)
                            .collect(Collectors.joining("; "));
            case PhraseAnswer.Syrup s ->
                    s.readings().stream()
                            .map(r -> r.scale() + " (" + r.source() + ")")
                            .limit(NAMED)
                            .collect(Collectors.joining("; "));
            default -> "";
        };
    }

    private static String known(WeightedAuthority a) {
        return a.source() + " (" + a.authority().citation().status().words() + ")";
    }
}
