package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.FileStudy;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;

/** Reads one file into recipes, line by line. */
@Component(service = Inquiry.class)
public final class ReadInquiry implements Inquiry {

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.object("file", Kind.FILE, "the transcription to read"),
                    Parameter.option("date", Kind.DATE, "its date, where the file names none"),
                    Parameter.option("place", Kind.PLACE, "its place, where the file names none"),
                    Parameter.option(
                            "trade",
                            Kind.TEXT,
                            "bar, kitchen, pharmacy or distilling, where the file names none"));

    @Override
    public String name() {
        return "read";
    }

    @Override
    public String summary() {
        return "read a file into recipes: amounts, ingredients, steps, and what is doubtful";
    }

    @Override
    public String example() {
        return "read old-book.txt --date 1862 --place London --trade bar";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Path file = Path.of(arguments.required("file"));
        if (!Files.isRegularFile(file)) {
            throw new InquiryException(
                    "There is no file " + file + ".",
                    Files.isDirectory(file)
                            ? "It is a folder: open it with --library and ask “sources”."
                            : "Name a file of plain text, Markdown, TEI, HTML, DOCX, ODT, EPUB or PDF.");
        }
        FileStudy read =
                FileStudy.read(file, arguments.circumstances(), desk.knowledge(), progress);
        BookStudy book =
                read.book()
                        .orElseThrow(
                                () ->
                                        new InquiryException(
                                                read.problems().get(0).toText(),
                                                read.problems().get(0).remedy()));
        Source source = book.source();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(summary(book)));
        OwnTableBlocks own = new OwnTableBlocks(book, desk.knowledge());
        blocks.addAll(own.blocks());
        AmountReasons reasons = new AmountReasons(desk.knowledge().thesaurus());
        ArrayNode recipes = Json.array();
        for (Version version : book.versions()) {
            progress.check();
            blocks.addAll(RecipeBlocks.of(version, reasons));
            recipes.add(ReadingJson.recipe(version));
        }
        ObjectNode json = Json.object();
        json.set("source", ReadingJson.source(source));
        json.set("recipes", recipes);
        json.set("ownMeasures", own.json());
        List<Problem> problems = new ArrayList<>(read.problems());
        problems.addAll(book.reading().problems());
        return new Answer("Reading of " + source.bibliography().title(), blocks, json, problems);
    }

    private static String summary(BookStudy book) {
        int recipes = book.versions().size();
        long doubts = book.versions().stream().filter(v -> !v.reading().doubts().isEmpty()).count();
        String measures =
                book.versions().stream()
                        .findFirst()
                        .map(v -> " Measures: " + v.spec().systemReason())
                        .orElse("");
        return recipes
                + (recipes == 1 ? " recipe" : " recipes")
                + " found, "
                + doubts
                + " of them with something doubtful."
                + measures;
    }
}
