package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Review;
import org.stillroom.inquiry.Study;
import org.stillroom.model.progress.Progress;

/** Lists doubtful readings, first those whose correction would change most. */
@Component(service = Inquiry.class)
public final class ReviewInquiry implements Inquiry {

    private static final int USUAL = 50;

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.option(
                            "source", Parameter.Kind.TEXT, "only this source, by its file"),
                    Parameter.option(
                            "limit", Parameter.Kind.NUMBER, "at most so many; usually 50"));

    @Override
    public String name() {
        return "review";
    }

    @Override
    public String summary() {
        return "list doubtful readings, first those whose correction would change most";
    }

    @Override
    public String example() {
        return "review --limit 20";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        int limit = Math.max(1, arguments.number("limit").orElse(USUAL));
        List<Review.Item> all =
                Review.of(study, progress).stream()
                        .filter(
                                i ->
                                        arguments
                                                .text("source")
                                                .map(i.version().source().id()::equals)
                                                .orElse(true))
                        .toList();
        List<Review.Item> items = all.subList(0, Math.min(limit, all.size()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(summary(items.size(), all.size())));
        if (!items.isEmpty()) {
            blocks.add(table(items));
            blocks.add(new Block.Paragraph(Review.GAIN));
        }
        ObjectNode json = Json.object().put("doubtful", all.size());
        ArrayNode nodes = Json.array();
        items.forEach(i -> nodes.add(node(i)));
        json.set("items", nodes);
        return new Answer("Doubtful readings of " + study.title(), blocks, json, List.of());
    }

    private static String summary(int shown, int all) {
        if (all == 0) {
            return "Nothing in this library is read with doubt.";
        }
        String some = shown < all ? ", of which the first " + shown + " follow" : "";
        return all + (all == 1 ? " doubtful reading" : " doubtful readings") + some + ".";
    }

    private static Block table(List<Review.Item> items) {
        return new Block.Table(
                "Doubtful readings, those that would change most first",
                List.of("gain", "recipe", "printed", "read as", "doubt", "sure", "source"),
                List.of(true, false, false, false, false, true, false),
                items.stream().map(ReviewInquiry::row).toList(),
                items.stream().map(i -> i.version().id()).toList());
    }

    private static List<String> row(Review.Item i) {
        return List.of(
                String.format(Locale.ROOT, "%.2f", i.gain()),
                i.version().witness().title(),
                i.printed(),
                i.read().isEmpty() ? "–" : i.read(),
                i.reason(),
                Math.round(100 * i.sure()) + " %",
                i.version().source().shortName());
    }

    private static ObjectNode node(Review.Item i) {
        return Json.object()
                .put("version", i.version().id())
                .put("recipe", i.version().witness().title())
                .put("source", i.version().source().id())
                .put("start", i.words().start())
                .put("end", i.words().end())
                .put("printed", i.printed())
                .put("read", i.read())
                .put("doubt", i.reason())
                .put("sure", i.sure())
                .put("gain", i.gain())
                .put("alike", i.alike());
    }
}
