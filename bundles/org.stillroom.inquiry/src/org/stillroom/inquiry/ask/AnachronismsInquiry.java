package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import org.stillroom.ingredients.Anachronism;
import org.stillroom.ingredients.Anachronisms;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Version;

/** Finds ingredients, units and techniques that a dated source names before their time. */
@Component(service = Inquiry.class)
public final class AnachronismsInquiry implements Inquiry {

    private static final List<String> COLUMNS =
            List.of(
                    "source",
                    "recipe",
                    "what",
                    "source's date",
                    "known from",
                    "sure",
                    "who says so");

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.option("source", Kind.TEXT, "only those in this source"),
                    Parameter.option(
                            "sure",
                            Kind.FLAG,
                            "only where the whole of the source's date is earlier"));

    @Override
    public String name() {
        return "anachronisms";
    }

    @Override
    public String summary() {
        return "find ingredients, units and techniques named before their time";
    }

    @Override
    public String example() {
        return "anachronisms --sure";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        List<Explanation> whys = new ArrayList<>();
        ArrayNode json = Json.array();
        for (Version version : study.versions()) {
            progress.check();
            if (!arguments.text("source").map(version.source().id()::equals).orElse(true)) {
                continue;
            }
            for (Anachronism a : check(version, study.knowledge().thesaurus())) {
                if (a.certain() || !arguments.flag("sure")) {
                    rows.add(row(version, a));
                    targets.add(version.id());
                    whys.add(a.why());
                    json.add(json(version, a));
                }
            }
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Paragraph(
                        rows.isEmpty()
                                ? "Nothing is named before its time."
                                : rows.size()
                                        + " things are named before their time. Either the source is"
                                        + " dated too early, or the thing is older than it is known to"
                                        + " be, or the name meant something else."));
        if (!rows.isEmpty()) {
            blocks.add(
                    new Block.Table(
                            "Before their time",
                            COLUMNS,
                            List.of(false, false, false, false, true, false, false),
                            rows,
                            targets,
                            whys));
        }
        ObjectNode answer = Json.object().put("library", study.title());
        answer.set("anachronisms", json);
        return new Answer("Anachronisms in " + study.title(), blocks, answer, study.problems());
    }

    private static List<Anachronism> check(Version version, Thesaurus thesaurus) {
        Circumstances where = version.source().bibliography().circumstances();
        List<Sense> senses =
                version.spec().lines().stream()
                        .filter(l -> l.ingredient().known())
                        .flatMap(l -> thesaurus.sense(l.ingredient().id()).stream())
                        .toList();
        String words = version.source().text().slice(version.witness().body());
        return Anachronisms.check(senses, words, where, thesaurus);
    }

    private static List<String> row(Version v, Anachronism a) {
        Citation who = a.milestone().source();
        return List.of(
                v.source().shortName(),
                v.witness().title(),
                a.subject(),
                v.source().bibliography().date().map(d -> d.toText()).orElse(""),
                Integer.toString(a.milestone().first().orElse(0)),
                a.certain() ? "yes" : "perhaps",
                who.work() + " (" + who.status().words() + ")");
    }

    private static ObjectNode json(Version v, Anachronism a) {
        return Json.object()
                .put("recipe", v.id())
                .put("subject", a.subject())
                .put("first", a.milestone().first().orElse(0))
                .put("date", v.source().bibliography().date().map(d -> d.toString()).orElse(""))
                .put("certain", a.certain())
                .put("statement", a.milestone().statement())
                .put("source", a.milestone().source().work())
                .put("status", a.milestone().source().status().words());
    }
}
