package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Emphasis;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Reads Markdown with a YAML front matter between two lines of three hyphens.
 *
 * <p>The text is what follows the front matter, mark-up included, so that a place in it is a place
 * in the file; what the mark-up says is kept as marks.
 */
final class Markdown implements SourceReader {

    private static final String FENCE = "---\n";

    @Override
    public List<String> endings() {
        return List.of(".md", ".markdown");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        try {
            FileText whole = FileText.read(id, file);
            return read(id, file, whole, defaults);
        } catch (FileText.Refused e) {
            return Result.failed(e.problem());
        }
    }

    private static Result read(String id, Path file, FileText whole, Circumstances defaults) {
        List<Problem> problems = new ArrayList<>();
        String text = whole.text();
        String yaml = "";
        if (text.startsWith(FENCE)) {
            int end = text.indexOf("\n---", FENCE.length() - 1);
            if (end < 0) {
                problems.add(
                        Problem.error(
                                id,
                                1,
                                "---",
                                "The front matter has no closing line of three hyphens.",
                                "Add a line “---” after its last field; "
                                        + "the whole file was taken as text."));
            } else {
                yaml = text.substring(FENCE.length(), Math.max(end + 1, FENCE.length()));
                int next = text.indexOf('\n', end + 1);
                text = next < 0 ? "" : text.substring(next + 1);
            }
        }
        if (text.isBlank()) {
            problems.add(
                    Problem.error(id, "There is no text in it.", "Put the transcription into it."));
            return new Result(Optional.empty(), problems);
        }
        FrontMatter matter = FrontMatter.parse(id, yaml, 2);
        problems.addAll(matter.problems());
        BibliographyFields fields = new BibliographyFields(id, matter.fields());
        Bibliography b = fields.toBibliography(Titles.fromFile(file), defaults);
        problems.addAll(fields.problems());
        SourceText words = SourceText.of(text);
        return new Result(
                Optional.of(new Source(id, b, words, marks(words), whole.digest())), problems);
    }

    private static List<Mark> marks(SourceText text) {
        Parser parser =
                Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES).build();
        Collector collector = new Collector(text);
        parser.parse(text.toString()).accept(collector);
        collector.marks.sort(java.util.Comparator.comparing(Mark::span).thenComparing(Mark::kind));
        return collector.marks;
    }

    /** Collects what the mark-up says. */
    private static final class Collector extends AbstractVisitor {
        private final SourceText text;
        private final List<Mark> marks = new ArrayList<>();

        Collector(SourceText text) {
            this.text = text;
        }

        @Override
        public void visit(Heading heading) {
            add(Mark.Kind.HEADING, Integer.toString(heading.getLevel()), heading);
            visitChildren(heading);
        }

        @Override
        public void visit(ListItem item) {
            add(Mark.Kind.ITEM, "", item);
            visitChildren(item);
        }

        @Override
        public void visit(Emphasis emphasis) {
            add(Mark.Kind.EMPHASIS, "italic", emphasis);
            visitChildren(emphasis);
        }

        @Override
        public void visit(StrongEmphasis emphasis) {
            add(Mark.Kind.EMPHASIS, "bold", emphasis);
            visitChildren(emphasis);
        }

        private void add(Mark.Kind kind, String label, Node node) {
            List<SourceSpan> spans = node.getSourceSpans();
            if (!spans.isEmpty()) {
                SourceSpan first = spans.get(0);
                SourceSpan last = spans.get(spans.size() - 1);
                int start = text.toPlace(first.getInputIndex());
                int end = text.toPlace(last.getInputIndex() + last.getLength());
                marks.add(new Mark(kind, label, new Span(start, end)));
            }
        }
    }
}
