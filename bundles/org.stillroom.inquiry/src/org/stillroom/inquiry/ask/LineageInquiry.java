package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Candidate;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Lineage;
import org.stillroom.model.progress.Progress;

/** Shows who took a drink from whom, with the margin and the alternatives. */
@Component(service = Inquiry.class)
public final class LineageInquiry extends DrinkInquiry {

    private static final int CANDIDATES = 3;

    /** Support below this is shown as nought, and says nothing to a reader. */
    private static final double WORTH_NAMING = 0.005;

    @Override
    public String name() {
        return "lineage";
    }

    @Override
    public String summary() {
        return "show who took a drink from whom, how sure that is, and which are reprints";
    }

    @Override
    Answer answer(Study study, Drink drink, Progress progress) {
        Lineage lineage = study.lineage(drink, progress);
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        ArrayNode json = Json.array();
        for (Descent descent : lineage.descents()) {
            rows.add(row(descent));
            targets.add(descent.version().id());
            json.add(json(descent));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(summary(lineage)));
        blocks.add(
                new Block.Table(
                        "Lineage of " + drink.name(),
                        List.of(
                                "version",
                                "called",
                                "standing",
                                "likeliest source",
                                "ahead by",
                                "others near"),
                        List.of(false, false, false, false, true, false),
                        rows,
                        targets));
        lineage.descents().stream()
                .filter(d -> d.standing() != Descent.Standing.INDEPENDENT)
                .map(d -> d.version().source().shortName() + ": " + d.reason())
                .forEach(w -> blocks.add(new Block.Paragraph(w)));
        independent(lineage).ifPresent(w -> blocks.add(new Block.Paragraph(w)));
        blocks.add(new Block.Picture("lineage", new Figure.LineageFigure(lineage)));
        ObjectNode answer = Json.object().put("drink", drink.name()).put("id", drink.id());
        answer.set("descents", json);
        return new Answer("Lineage of " + drink.name(), blocks, answer, List.of());
    }

    private static String summary(Lineage lineage) {
        long roots = lineage.roots().values().stream().distinct().count();
        long reprints = count(lineage, Descent.Standing.REPRINT);
        long taken = count(lineage, Descent.Standing.TAKEN);
        long tied = count(lineage, Descent.Standing.TIED);
        int versions = lineage.descents().size();
        return versions
                + (versions == 1 ? " version makes " : " versions make ")
                + roots
                + (roots == 1 ? " independent line: " : " independent lines: ")
                + reprints
                + (reprints == 1 ? " reprint, " : " reprints, ")
                + taken
                + " taken from one earlier version, "
                + tied
                + " tied between several. Only this library was searched.";
    }

    /** Says of all independent versions together what holds of each of them. */
    private static Optional<String> independent(Lineage lineage) {
        List<String> names =
                lineage.descents().stream()
                        .filter(d -> d.standing() == Descent.Standing.INDEPENDENT)
                        .map(d -> d.version().source().shortName())
                        .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Independent: "
                                + String.join("; ", names)
                                + ". No earlier version in this library is nearer to "
                                + (names.size() == 1 ? "it" : "one of them")
                                + " than independent recipes of one drink are; the table names the"
                                + " nearest.");
    }

    private static long count(Lineage lineage, Descent.Standing standing) {
        return lineage.descents().stream().filter(d -> d.standing() == standing).count();
    }

    private static List<String> row(Descent d) {
        List<Candidate> candidates = d.candidates();
        String first = candidates.isEmpty() ? "–" : said(candidates.get(0));
        List<String> others =
                candidates.stream()
                        .skip(1)
                        .filter(c -> c.support() >= WORTH_NAMING)
                        .limit(CANDIDATES)
                        .map(LineageInquiry::said)
                        .toList();
        String margin =
                candidates.size() < 2 ? "–" : String.format(Locale.ROOT, "%.1f edits", d.margin());
        return List.of(
                d.version().source().shortName(),
                d.version().witness().title(),
                d.standing().words(),
                first,
                margin,
                others.isEmpty() ? "–" : String.join("; ", others));
    }

    private static String said(Candidate c) {
        return c.parent().source().shortName()
                + String.format(Locale.ROOT, " (%.0f %%)", c.support() * 100);
    }

    private static ObjectNode json(Descent d) {
        ObjectNode node =
                Json.object()
                        .put("version", d.version().id())
                        .put("title", d.version().witness().title())
                        .put("standing", d.standing().words())
                        .put("margin", Json.number(Double.isFinite(d.margin()) ? d.margin() : 0))
                        .put("reason", d.reason());
        Json.put(node, "parent", d.parent().map(p -> p.id()));
        ArrayNode candidates = Json.array();
        for (Candidate c : d.candidates()) {
            ObjectNode candidate =
                    Json.object()
                            .put("version", c.parent().id())
                            .put("support", Json.number(c.support()))
                            .put("cost", Json.number(c.cost()))
                            .put("nearVerbatim", c.nearVerbatim());
            candidate.set("reasons", Json.strings(c.reasons()));
            candidates.add(candidate);
        }
        node.set("candidates", candidates);
        return node;
    }
}
