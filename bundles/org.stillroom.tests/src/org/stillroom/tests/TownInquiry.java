package org.stillroom.tests;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.model.progress.Progress;

/** An inquiry of the test bundle: registered as a service, it appears everywhere by itself. */
public final class TownInquiry implements Inquiry {

    @Override
    public String name() {
        return "town";
    }

    @Override
    public String summary() {
        return "count the sources of one town";
    }

    @Override
    public String example() {
        return "town Saltreath";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(Parameter.object("town", Parameter.Kind.PLACE, "the town"));
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        String town = arguments.required("town");
        long count =
                desk.study(progress).sources().stream()
                        .filter(
                                s ->
                                        s.bibliography()
                                                .place()
                                                .filter(p -> p.name().equals(town))
                                                .isPresent())
                        .count();
        return new Answer(
                "Sources of " + town,
                List.of(new Block.Paragraph(count + " sources")),
                JsonNodeFactory.instance.objectNode().put("sources", count),
                List.of());
    }
}
