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
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.WordAnswers;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.WeightedAuthority;
import org.stillroom.measures.WordAccount;
import org.stillroom.model.progress.Progress;

/** Shows everything that is said about a word of measure, over time and place. */
@Component(service = Inquiry.class)
public final class WordInquiry implements Inquiry {

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.object(
                            "word", Kind.TEXT, "a word of measure: “wineglass”, “lump of sugar”"),
                    Parameter.option("date", Kind.DATE, "when it was written"),
                    Parameter.option("place", Kind.PLACE, "a town, region or country"),
                    Parameter.option("trade", Kind.TEXT, "bar, kitchen, pharmacy or distilling"));

    @Override
    public String name() {
        return "word";
    }

    @Override
    public String summary() {
        return "show everything that is said of a word of measure: by whom, where, when, how much";
    }

    @Override
    public String example() {
        return "word wineglass --date 1862 --place GB --trade kitchen";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        MeasureTable table = desk.knowledge().measures();
        WordAccount account = WordAnswers.account(table, arguments);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(account.meaning().reason()));
        if (!account.disagreement().equals(account.meaning().reason())) {
            blocks.add(new Block.Paragraph(account.disagreement()));
        }
        blocks.add(WordAnswers.table(account));
        blocks.add(new Block.Why(account.meaning().explanation()));
        blocks.add(new Block.Picture("word", new Figure.MeasureFigure(account)));
        String title = "What is said of the " + account.word();
        return new Answer(title, blocks, json(account), List.of());
    }

    private static ObjectNode json(WordAccount account) {
        String unit = account.dimension().symbol();
        ObjectNode json = Json.object().put("word", account.word()).put("where", account.where());
        MeasureMeaning meaning = account.meaning();
        Json.put(json, "ml", meaning.millilitres(), 1);
        Json.put(json, "g", meaning.grams(), 1);
        json.put("reason", meaning.reason()).put("disagreement", account.disagreement());
        ArrayNode statements = Json.array();
        for (WordAccount.Statement s : account.statements()) {
            WeightedAuthority a = s.said();
            ObjectNode node = Json.object().put("number", s.number()).put("source", a.source());
            Json.put(node, "date", filled(a.date()));
            Json.put(node, "place", filled(a.placeName()));
            Json.put(node, "trade", filled(a.authority().trade()));
            node.putNull(unit);
            if (s.measures(account.dimension())) {
                double[] limits = a.limits();
                node.set(
                        unit,
                        Json.object()
                                .put("low", Json.number(limits[0]))
                                .put("likely", Json.number(a.amount()))
                                .put("high", Json.number(limits[1])));
            }
            node.put("status", a.authority().citation().status().words())
                    .put("work", a.authority().citation().work())
                    .put("weight", Json.number(a.share()))
                    .put("why", a.why())
                    .put("statement", a.authority().statement());
            statements.add(node);
        }
        json.set("statements", statements);
        return json;
    }

    private static Optional<String> filled(String words) {
        return Optional.of(words).filter(w -> !w.isEmpty());
    }
}
