package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.search.Facet;
import org.stillroom.search.SearchException;
import org.stillroom.search.SearchHit;
import org.stillroom.search.SearchResult;

/** Finds recipes by words and by structure together. */
@Component(service = Inquiry.class)
public final class FindInquiry implements Inquiry {

    private static final int USUAL = 20;
    private static final int CONTEXT = 40;
    private static final int MOST_VALUES = 8;

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.object(
                            "query",
                            Kind.TEXT,
                            "words, “words side by side”, -without, ingredient:gin, measure:wineglass,"
                                    + " title:, vessel:, place:, trade:, source:, date:1860/1880;"
                                    + " ‘or’ between two"),
                    Parameter.option(
                            "limit", Kind.NUMBER, "the most hits to show, 20 if not told"));

    @Override
    public String name() {
        return "find";
    }

    @Override
    public String summary() {
        return "find recipes by words and by ingredient, measure, date, place, vessel or source";
    }

    @Override
    public String example() {
        return "find \"ingredient:gin -ingredient:vermouth date:1860/1900 shake\"";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        String query = arguments.required("query");
        int limit = arguments.number("limit").orElse(USUAL);
        if (limit < 1) {
            throw new InquiryException(
                    "A limit of " + limit + " shows nothing.", "Give 1 or more.");
        }
        SearchResult result;
        try {
            result = study.search(query, limit, progress);
        } catch (SearchException e) {
            throw new InquiryException(e.getMessage(), e.remedy());
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        ArrayNode hits = Json.array();
        for (SearchHit hit : result.hits()) {
            Optional<Version> version = study.version(hit.version());
            if (version.isPresent()) {
                rows.add(row(version.get(), hit));
                targets.add(hit.version());
                hits.add(json(version.get(), hit));
            }
        }
        String summary =
                result.total()
                        + (result.total() == 1 ? " recipe has " : " recipes have ")
                        + result.words()
                        + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(summary));
        if (result.total() == 0) {
            blocks.add(
                    new Block.Paragraph(
                            "Searched: "
                                    + study.versions().size()
                                    + " recipes in "
                                    + study.books().size()
                                    + " sources."));
        } else {
            blocks.add(
                    new Block.Table(
                            "Recipes found, best first",
                            List.of("recipe", "source", "date fits", "words"),
                            List.of(false, false, false, false),
                            rows,
                            targets));
            blocks.add(facets(result.facets()));
        }
        ObjectNode json =
                Json.object()
                        .put("query", query)
                        .put("words", result.words())
                        .put("total", result.total());
        json.set("hits", hits);
        json.set("facets", facetsJson(result.facets()));
        return new Answer("Recipes found", blocks, json, study.indexProblems());
    }

    private static List<String> row(Version version, SearchHit hit) {
        String fits = hit.certainty() == Certainty.CERTAIN ? "certainly" : "possibly";
        return List.of(
                version.witness().title(),
                version.source().shortName(),
                fits,
                snippet(version, hit));
    }

    /** Returns the printed words around the first mark, the marked ones in brackets. */
    private static String snippet(Version version, SearchHit hit) {
        Span whole = version.witness().span();
        Span first =
                hit.marks().isEmpty() ? new Span(whole.start(), whole.start()) : hit.marks().get(0);
        int from = Math.max(whole.start(), first.start() - CONTEXT);
        int to = Math.min(whole.end(), first.end() + CONTEXT);
        StringBuilder out = new StringBuilder(from > whole.start() ? "…" : "");
        int at = from;
        for (Span mark : hit.marks()) {
            if (mark.start() >= at && mark.end() <= to) {
                out.append(version.source().text().slice(new Span(at, mark.start())));
                out.append('[').append(version.source().text().slice(mark)).append(']');
                at = mark.end();
            }
        }
        out.append(version.source().text().slice(new Span(at, to)));
        return out.append(to < whole.end() ? "…" : "")
                .toString()
                .replaceAll("\\s+", " ")
                .replaceAll("(?<=^|[ …])#{1,6} |\\*\\*", "");
    }

    private static ObjectNode json(Version version, SearchHit hit) {
        ObjectNode node =
                Json.object()
                        .put("version", hit.version())
                        .put("source", hit.source())
                        .put("title", hit.title())
                        .put("certain", hit.certainty() == Certainty.CERTAIN);
        Json.put(node, "date", version.source().bibliography().date().map(Object::toString));
        ArrayNode marks = Json.array();
        hit.marks().forEach(m -> marks.add(Json.span(m)));
        node.set("marks", marks);
        return node;
    }

    private static Block facets(List<Facet> facets) {
        List<List<String>> rows = new ArrayList<>();
        for (Facet facet : facets) {
            String values =
                    String.join(
                            ", ",
                            facet.counts().stream()
                                    .limit(MOST_VALUES)
                                    .map(c -> c.value() + " (" + c.hits() + ")")
                                    .toList());
            rows.add(List.of(facet.field(), values));
        }
        return new Block.Table(
                "How they are spread",
                List.of("by", "values (recipes)"),
                List.of(false, false),
                rows,
                List.of());
    }

    private static ObjectNode facetsJson(List<Facet> facets) {
        ObjectNode node = Json.object();
        for (Facet facet : facets) {
            ObjectNode counts = Json.object();
            facet.counts().forEach(c -> counts.put(c.value(), c.hits()));
            node.set(facet.field(), counts);
        }
        return node;
    }
}
