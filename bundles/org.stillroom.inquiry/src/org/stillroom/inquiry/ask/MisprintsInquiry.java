package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.osgi.service.component.annotations.Component;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Source;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.reading.misprint.Misprint;
import org.stillroom.reading.misprint.MisprintFinder;
import org.stillroom.reading.misprint.Words;

/** Proposes what words were that type or a scanner has damaged; nothing is ever changed. */
@Component(service = Inquiry.class)
public final class MisprintsInquiry implements Inquiry {

    private static final List<Parameter> PARAMETERS =
            List.of(Parameter.option("source", Kind.TEXT, "only those in this source"));

    @Override
    public String name() {
        return "misprints";
    }

    @Override
    public String summary() {
        return "list words that type or a scanner seems to have damaged, and what they were";
    }

    @Override
    public String example() {
        return "misprints --source old-book.txt";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        MisprintFinder finder = new MisprintFinder(words(study));
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        ArrayNode json = Json.array();
        for (BookStudy book : study.books()) {
            progress.check();
            Source source = book.source();
            if (arguments.text("source").map(source.id()::equals).orElse(true)) {
                for (Misprint m : open(book, finder.find(source.text()))) {
                    rows.add(row(source, m));
                    targets.add(source.id());
                    json.add(json(source, m));
                }
            }
        }
        List<Block> blocks = new ArrayList<>(List.of(new Block.Paragraph(summary(rows.size()))));
        if (!rows.isEmpty()) {
            blocks.add(
                    new Block.Table(
                            "Likely misprints",
                            List.of("source", "line", "printed", "probably", "why", "sure"),
                            List.of(false, true, false, false, false, true),
                            rows,
                            targets));
        }
        ObjectNode answer = Json.object().put("library", study.title());
        answer.set("misprints", json);
        return new Answer("Misprints in " + study.title(), blocks, answer, study.problems());
    }

    /** Leaves out what a person has put right already. */
    private static List<Misprint> open(BookStudy book, List<Misprint> found) {
        List<WordCorrection> putRight = book.reading().putRight();
        return found.stream()
                .filter(m -> putRight.stream().noneMatch(c -> c.span().overlaps(m.span())))
                .toList();
    }

    private static Words words(Study study) {
        Thesaurus thesaurus = study.knowledge().thesaurus();
        List<String> names =
                thesaurus.senses().keySet().stream()
                        .flatMap(id -> thesaurus.labels(id).stream())
                        .filter(l -> l.kind() != Label.Kind.HIDDEN)
                        .map(Label::text)
                        .toList();
        return Words.of(
                study.books().stream().map(b -> b.source().text().toString()).toList(), names);
    }

    private static String summary(int found) {
        if (found == 0) {
            return "No word looks damaged.";
        }
        return (found == 1 ? "1 word looks" : found + " words look")
                + " damaged. Each is a proposal: look at the page. “decide words” and “Put the words"
                + " right” on the page put them right beside the file, which stays as it is.";
    }

    private static List<String> row(Source source, Misprint m) {
        return List.of(
                source.shortName(),
                Integer.toString(source.text().lineAt(m.span().start())),
                m.printed(),
                m.meant(),
                m.confused(),
                String.format(Locale.ROOT, "%.0f %%", 100 * m.probability()));
    }

    private static ObjectNode json(Source source, Misprint m) {
        return Json.object()
                .put("source", source.id())
                .put("line", source.text().lineAt(m.span().start()))
                .put("start", m.span().start())
                .put("end", m.span().end())
                .put("printed", m.printed())
                .put("meant", m.meant())
                .put("why", m.confused())
                .put("probability", Json.number(m.probability()));
    }
}
