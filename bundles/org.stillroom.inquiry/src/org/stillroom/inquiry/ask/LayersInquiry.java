package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.LayeredText;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.anchor.WordCorrection;

/**
 * Shows the words of a source layer by layer: as its file has them, put right, and folded for
 * comparing; and who answers for each.
 */
@Component(service = Inquiry.class)
public final class LayersInquiry implements Inquiry {

    private static final String NONE = "none";
    private static final String FILE = "file";
    private static final String RIGHT = "right";
    private static final String FOLDED = "folded";

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.object("source", Kind.TEXT, "the source, by its file"),
                    Parameter.choice(
                            "layer",
                            "show the words of one layer too",
                            NONE,
                            List.of(NONE, FILE, RIGHT, FOLDED)),
                    Parameter.option("from", Kind.NUMBER, "first line that is shown"),
                    Parameter.option("to", Kind.NUMBER, "last line that is shown"));

    @Override
    public String name() {
        return "layers";
    }

    @Override
    public String summary() {
        return "show a source's words as its file has them, put right and folded, and who says so";
    }

    @Override
    public String example() {
        return "layers 1838-pell.md --layer right --from 20 --to 30";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        BookStudy book = book(study, arguments.required("source"));
        Source source = book.source();
        List<WordCorrection> putRight = book.reading().putRight();
        LayeredText right =
                LayeredText.of(source.text())
                        .under(putRight.stream().map(WordCorrection::edit).toList());
        List<Block> blocks = new ArrayList<>(List.of(layers(source, putRight, right)));
        if (!putRight.isEmpty()) {
            blocks.add(corrections(source, putRight));
        }
        ObjectNode json = Json.object().put("source", source.id());
        json.set("putRight", json(source, putRight));
        String layer = arguments.text("layer").orElse(NONE);
        if (!layer.equals(NONE)) {
            words(layer, right, arguments, blocks, json);
        }
        return new Answer("The words of " + source.bibliography().title(), blocks, json, List.of());
    }

    private static BookStudy book(Study study, String id) {
        return study.book(id)
                .orElseThrow(
                        () ->
                                new InquiryException(
                                        "There is no source “" + id + "” in the library.",
                                        study.sources().isEmpty()
                                                ? "Put its file into sources/."
                                                : "The nearest is “" + nearest(study, id) + "”."));
    }

    private static String nearest(Study study, String id) {
        var alike = new org.apache.commons.text.similarity.JaroWinklerSimilarity();
        return study.sources().stream()
                .map(Source::id)
                .max(Comparator.comparingDouble(s -> alike.apply(id, s)))
                .orElse("");
    }

    private static Block layers(Source source, List<WordCorrection> putRight, LayeredText right) {
        String folded = Folding.fold(right.text().toString()).folded();
        List<List<String>> rows =
                List.of(
                        List.of(
                                FILE,
                                Integer.toString(source.text().length()),
                                "as the file has them",
                                transcriber(source.bibliography())),
                        List.of(
                                RIGHT,
                                Integer.toString(right.text().length()),
                                putRight.isEmpty()
                                        ? "the same: nothing was put right"
                                        : putRight.size() + " put right",
                                people(putRight)),
                        List.of(
                                FOLDED,
                                Integer.toString(folded.codePointCount(0, folded.length())),
                                "long s, ligatures, accents, capitals, words divided at line ends",
                                "the program"));
        return new Block.Table(
                "Layers, the lowest first",
                List.of("layer", "letters", "what changes", "who answers for it"),
                List.of(false, true, false, false),
                rows,
                List.of());
    }

    private static String transcriber(Bibliography b) {
        return b.transcriber().filter(t -> !t.isBlank()).orElse("whoever made the file");
    }

    private static String people(List<WordCorrection> putRight) {
        TreeMap<String, Integer> count = new TreeMap<>();
        putRight.forEach(c -> count.merge(c.decision().by(), 1, Integer::sum));
        List<String> names = new ArrayList<>();
        count.forEach((who, n) -> names.add(count.size() == 1 ? who : who + " (" + n + ")"));
        return String.join(", ", names);
    }

    private static Block corrections(Source source, List<WordCorrection> putRight) {
        List<List<String>> rows =
                putRight.stream()
                        .map(
                                c ->
                                        List.of(
                                                Integer.toString(line(source, c)),
                                                source.text().slice(c.span()),
                                                c.reads(),
                                                c.decision().by(),
                                                day(c)))
                        .toList();
        return new Block.Table(
                "Words put right",
                List.of("line", "in the file", "reads", "who", "when"),
                List.of(true, false, false, false, false),
                rows,
                List.of());
    }

    private static int line(Source source, WordCorrection c) {
        return source.text().lineAt(c.span().start());
    }

    private static String day(WordCorrection c) {
        return c.decision().at().split("T")[0];
    }

    private static ArrayNode json(Source source, List<WordCorrection> putRight) {
        ArrayNode all = Json.array();
        for (WordCorrection c : putRight) {
            all.add(
                    Json.object()
                            .put("line", line(source, c))
                            .put("start", c.span().start())
                            .put("end", c.span().end())
                            .put("printed", source.text().slice(c.span()))
                            .put("reads", c.reads())
                            .put("by", c.decision().by())
                            .put("at", c.decision().at()));
        }
        return all;
    }

    /** Adds the lines of one layer. */
    private static void words(
            String layer,
            LayeredText right,
            Arguments arguments,
            List<Block> blocks,
            ObjectNode json) {
        SourceText text = layer.equals(FILE) ? right.bottom() : right.text();
        int from = Math.max(1, arguments.number("from").orElse(1));
        int to = Math.min(text.lineCount(), arguments.number("to").orElse(text.lineCount()));
        ArrayNode lines = Json.array();
        List<List<String>> rows = new ArrayList<>();
        for (int n = from; n <= to; n++) {
            String printed = text.slice(text.line(n));
            String shown = layer.equals(FOLDED) ? Folding.fold(printed).folded() : printed;
            rows.add(List.of(Integer.toString(n), shown));
            lines.add(shown);
        }
        blocks.add(
                new Block.Table(
                        "The words, layer “" + layer + "”",
                        List.of("line", "words"),
                        List.of(true, false),
                        rows,
                        List.of()));
        json.put("layer", layer).put("from", from);
        json.set("lines", lines);
    }
}
