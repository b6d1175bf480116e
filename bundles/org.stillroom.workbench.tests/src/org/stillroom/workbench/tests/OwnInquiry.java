package org.stillroom.workbench.tests;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;

/** An inquiry of this bundle's own: counts the recipes whose titles hold some words. */
final class OwnInquiry implements Inquiry {
    @Override
    public String name() {
        return "count";
    }

    @Override
    public String summary() {
        return "count the recipes whose titles hold some words";
    }

    @Override
    public String example() {
        return "count punch";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(Parameter.object("words", Parameter.Kind.TEXT, "words of a title"));
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        String words = arguments.required("words").toLowerCase(java.util.Locale.ROOT);
        long number =
                desk.study(progress).versions().stream()
                        .map(v -> v.witness().title().toLowerCase(java.util.Locale.ROOT))
                        .filter(t -> t.contains(words))
                        .count();
        return new Answer(
                "Titles with “" + words + "”",
                List.of(
                        new Answer.Block.Paragraph(number + " recipes."),
                        new Answer.Block.Why(Explanation.of("Titles were compared."))),
                JsonNodeFactory.instance.objectNode().put("number", number),
                List.of());
    }
}
