package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.Validity;
import org.stillroom.ingredients.skos.SkosTurtle;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;

/** Finds what the name of an ingredient meant, and shows one sense with all that is known of it. */
@Component(service = Inquiry.class)
public final class ThesaurusInquiry implements Inquiry {

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.optionalObject(
                            "name",
                            Kind.TEXT,
                            "a name as printed, or a sense's id; else all senses"),
                    Parameter.option("date", Kind.DATE, "when it was written"),
                    Parameter.option("place", Kind.PLACE, "a town, region or country"),
                    Parameter.option("trade", Kind.TEXT, "bar, kitchen, pharmacy or distilling"),
                    Parameter.option("language", Kind.TEXT, "language of the words, such as fr"),
                    Parameter.option(
                            "skos", Kind.FILE, "write the whole thesaurus there, SKOS in Turtle"));

    @Override
    public String name() {
        return "thesaurus";
    }

    @Override
    public String summary() {
        return "find what an ingredient's name meant, with names, figures, allergens and cautions";
    }

    @Override
    public String example() {
        return "thesaurus \"gum syrup\" --date 1895 --place US";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Thesaurus thesaurus = desk.knowledge().thesaurus();
        List<Block> blocks = new ArrayList<>();
        ObjectNode json = Json.object();
        Optional<String> name = arguments.text("name");
        if (name.isPresent()) {
            named(thesaurus, name.get(), arguments.circumstances(), blocks, json);
        } else {
            all(thesaurus, blocks, json);
        }
        arguments.text("skos").ifPresent(f -> export(thesaurus, Path.of(f), blocks, json));
        String title = name.map(n -> "What “" + n + "” may be").orElse("Senses of ingredients");
        return new Answer(title, blocks, json, desk.knowledge().problems());
    }

    private static void named(
            Thesaurus thesaurus,
            String name,
            Circumstances where,
            List<Block> blocks,
            ObjectNode json) {
        List<Candidate> candidates = thesaurus.find(name, where);
        Optional<Sense> byId = thesaurus.sense(name.strip().toLowerCase(Locale.ROOT));
        if (candidates.isEmpty() && byId.isEmpty()) {
            throw new InquiryException(
                    "Nothing called “" + name + "” is in the thesaurus.",
                    "Try another spelling, or add it in knowledge/ingredients.csv or by a decision.");
        }
        ArrayNode found = Json.array();
        List<List<String>> rows = new ArrayList<>();
        for (Candidate c : candidates) {
            rows.add(
                    List.of(
                            c.sense().id(),
                            c.sense().label(),
                            limits(c.sense().validity()),
                            String.format(Locale.ROOT, "%.2f", c.score()),
                            c.reason()));
            found.add(
                    Json.object()
                            .put("sense", c.sense().id())
                            .put("label", c.sense().label())
                            .put("score", Json.number(c.score()))
                            .put("matched", c.label().text())
                            .put("reason", c.reason()));
        }
        json.put("name", name);
        json.set("candidates", found);
        if (!rows.isEmpty() && byId.isEmpty()) {
            blocks.add(
                    new Block.Table(
                            "What it may be, likeliest first",
                            List.of("sense", "name", "when and where", "fit", "why"),
                            List.of(false, false, false, true, false),
                            rows,
                            List.of()));
        }
        Sense shown = byId.orElseGet(() -> candidates.get(0).sense());
        SenseBlocks sense = new SenseBlocks(thesaurus, shown);
        blocks.addAll(sense.blocks());
        json.set("sense", sense.json());
    }

    private static void all(Thesaurus thesaurus, List<Block> blocks, ObjectNode json) {
        List<List<String>> rows = new ArrayList<>();
        ArrayNode senses = Json.array();
        long names = 0;
        for (Sense s : thesaurus.senses().values()) {
            int count = thesaurus.labels(s.id()).size();
            names += count;
            rows.add(
                    List.of(
                            s.id(),
                            s.label(),
                            s.kind().word(),
                            limits(s.validity()),
                            Integer.toString(count)));
            senses.add(
                    Json.object()
                            .put("sense", s.id())
                            .put("label", s.label())
                            .put("role", s.kind().word())
                            .put("names", count));
        }
        blocks.add(
                new Block.Paragraph(
                        thesaurus.senses().size() + " senses with " + names + " names."));
        blocks.add(
                new Block.Table(
                        "All senses",
                        List.of("sense", "name", "role", "when and where", "names"),
                        List.of(false, false, false, false, true),
                        rows,
                        List.of()));
        json.set("senses", senses);
    }

    static String limits(Validity v) {
        List<String> parts = new ArrayList<>();
        if (v.isDated()) {
            parts.add(v.years());
        }
        if (!v.places().isEmpty()) {
            parts.add(String.join(", ", v.places()));
        }
        v.trades().forEach(t -> parts.add(t.word()));
        return String.join("; ", parts);
    }

    private static void export(
            Thesaurus thesaurus, Path file, List<Block> blocks, ObjectNode json) {
        try {
            Files.writeString(file, SkosTurtle.write(thesaurus));
        } catch (IOException e) {
            throw new InquiryException(
                    "The thesaurus could not be written to " + file + " (" + e.getMessage() + ").",
                    "Name a file in a folder that you may write to, such as thesaurus.ttl.");
        }
        blocks.add(
                new Block.Paragraph(
                        thesaurus.senses().size()
                                + " senses were written to "
                                + file
                                + " as a SKOS concept scheme in Turtle."));
        json.put("skos", file.toString());
    }
}
