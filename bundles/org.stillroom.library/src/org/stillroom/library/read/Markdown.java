package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Mark;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Reads Markdown with a YAML front matter between two lines of three hyphens.
 *
 * <p>The text is what follows the front matter, mark-up included, so that a place in it is a place
 * in the file; what the mark-up says is kept as marks.
 */
final class Markdown implements SourceReader {

    private static final String FENCE = "---";
    private static final Pattern OPENING = Pattern.compile("---[ \\t]*\\n");
    private static final Pattern CLOSING =
            Pattern.compile("^(?:---|\\.\\.\\.)[ \\t]*(?:\\n|\\z)", Pattern.MULTILINE);

    /** Blocks inside one another; deeper ones are taken as words. */
    private static final int DEEPEST = 100;

    private final FileAccess access;

    Markdown(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".md", ".markdown");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        return TimedReading.of(
                id,
                access.limits(),
                budget -> draft(id, access.text(id, file)).bind(id, file, defaults, access));
    }

    private static Draft draft(String id, FileText whole) {
        List<Problem> problems = new ArrayList<>();
        String text = whole.text();
        String yaml = "";
        Matcher opening = OPENING.matcher(text);
        if (opening.lookingAt()) {
            Matcher closing = CLOSING.matcher(text);
            if (closing.find(opening.end())) {
                yaml = text.substring(opening.end(), closing.start());
                text = text.substring(closing.end());
            } else {
                problems.add(neverClosed(id));
            }
        }
        FrontMatter matter = FrontMatter.parse(id, yaml, 2);
        problems.addAll(matter.problems());
        List<Mark> marks = marks(SourceText.of(text));
        return new Draft(text, marks, matter.fields(), whole.digest(), problems);
    }

    private static Problem neverClosed(String id) {
        return Problem.error(
                id,
                1,
                FENCE,
                "The front matter has no closing line of three hyphens.",
                "Add a line “---” after its last field; the whole file was taken as text.");
    }

    private static List<Mark> marks(SourceText text) {
        Parser parser =
                Parser.builder()
                        .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                        .maxOpenBlockParsers(DEEPEST)
                        .build();
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
