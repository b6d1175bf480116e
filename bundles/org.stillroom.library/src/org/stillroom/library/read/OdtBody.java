package org.stillroom.library.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.source.Mark;

/**
 * Collects the words of the text of an ODT file (ISO/IEC 26300).
 *
 * <p>Deleted words, comments and descriptions of pictures are no words of the text. A note stands
 * after the paragraph that refers to it, its number before it.
 */
final class OdtBody implements SafeXml.Handler {

    private static final Set<String> SKIPPED =
            Set.of(
                    "tracked-changes",
                    "annotation",
                    "sequence-decls",
                    "variable-decls",
                    "user-field-decls",
                    "forms",
                    "title",
                    "desc",
                    "table-of-content-source",
                    "alphabetical-index-source");

    /** A paragraph that is open. */
    private static final class Paragraph {
        private final int level;
        private int start;
        private boolean begun;
        private final List<BlockText> notes = new ArrayList<>();

        Paragraph(int level) {
            this.level = level;
        }
    }

    /** Words that are being collected: those of the text, or of a note in it. */
    private static final class Flow {
        private final BlockText words;
        private final Emphases emphases;
        private final Deque<Paragraph> open = new ArrayDeque<>();
        private int levelBefore;

        Flow(BlockText words) {
            this.words = words;
            this.emphases = new Emphases(words);
        }
    }

    private final TimeBudget budget;
    private final OdtStyles styles;
    private final int gap;
    private final CountedPages pages;
    private final Deque<Flow> flows = new ArrayDeque<>();
    private final Deque<String> spans = new ArrayDeque<>();
    private final Deque<Integer> starts = new ArrayDeque<>();
    private boolean inBody;
    private int skipped;
    private int cells;

    OdtBody(BlockText words, OdtStyles styles, Spacing spacing, TimeBudget budget) {
        this.budget = budget;
        this.styles = styles;
        this.gap = spacing.gap();
        this.pages = new CountedPages(words, spacing);
        flows.push(new Flow(words));
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        inBody |= name.equals("text") && xml.getNamespaceURI().contains(":office:");
        if (!inBody) {
            return;
        }
        if (skipped > 0 || SKIPPED.contains(name)) {
            skipped++;
            return;
        }
        BlockText words = words();
        switch (name) {
            case "p", "h" -> startParagraph(name, xml);
            case "span" -> spans.push(OdtStyles.attribute(xml, "style-name"));
            case "s", "tab" -> words.words(" ");
            case "line-break" -> words.lineEnd();
            case "soft-page-break" -> pages.full();
            case "note" -> flows.push(new Flow(new BlockText(budget)));
            case "table" -> words.breakLine(2);
            case "table-row" -> {
                words.breakLine(1);
                starts.push(words.place());
            }
            case "table-cell" -> {
                cells++;
                words.openCell();
            }
            case "list" -> words.breakLine(starts.isEmpty() ? 2 : 1);
            case "list-item", "table-of-content", "alphabetical-index" -> {
                words.breakLine(1);
                starts.push(words.place());
            }
            default -> {
                // other elements only carry words
            }
        }
    }

    private BlockText words() {
        return flows.peek().words;
    }

    private void startParagraph(String name, XMLStreamReader xml) {
        flows.peek().emphases.end();
        String style = OdtStyles.attribute(xml, "style-name");
        int level = styles.isTitle(style) ? 1 : 0;
        if (name.equals("h")) {
            level = Math.max(1, DocxBody.number(OdtStyles.attribute(xml, "outline-level"), 1));
        }
        flows.peek().open.push(new Paragraph(level));
        if (styles.isOnNewPage(style) && flows.size() == 1) {
            begin();
            pages.forced();
        }
    }

    /** Sets the paragraph apart from the one before, once something stands in it. */
    private void begin() {
        Flow flow = flows.peek();
        Paragraph paragraph = flow.open.peek();
        if (paragraph == null || paragraph.begun) {
            return;
        }
        paragraph.begun = true;
        boolean close = cells > 0 || !starts.isEmpty() || flow.open.size() > 1 || flows.size() > 1;
        boolean heading = paragraph.level > 0 || flow.levelBefore > 0;
        flow.words.breakLine(heading ? 2 : close ? 1 : gap);
        paragraph.start = flow.words.place();
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        if (!inBody) {
            return;
        }
        if (skipped > 0) {
            skipped--;
            return;
        }
        BlockText words = words();
        switch (name) {
            case "p", "h" -> endParagraph();
            case "span" -> spans.pop();
            case "note" -> {
                Flow note = flows.pop();
                Deque<Paragraph> open = flows.peek().open;
                if (!open.isEmpty()) {
                    open.peek().notes.add(note.words);
                }
            }
            // the note's first paragraph goes on in the line of its number
            case "note-citation" -> words.openCell();
            case "table", "list" -> words.breakLine(starts.isEmpty() ? 2 : 1);
            case "table-row" -> endMarked(Mark.Kind.ROW, "");
            case "list-item" -> endMarked(Mark.Kind.ITEM, "");
            case "table-of-content" -> endMarked(Mark.Kind.OTHER, "contents");
            case "alphabetical-index" -> endMarked(Mark.Kind.OTHER, "index");
            case "table-cell" -> {
                cells--;
                words.closeCell();
            }
            default -> {
                // other elements end without a sign
            }
        }
    }

    private void endMarked(Mark.Kind kind, String label) {
        words().mark(kind, label, starts.pop());
        words().breakLine(1);
    }

    private void endParagraph() {
        Flow flow = flows.peek();
        flow.emphases.end();
        Paragraph paragraph = flow.open.pop();
        if (paragraph.begun && flow.words.hasWordsSince(paragraph.start)) {
            flow.levelBefore = paragraph.level;
            if (paragraph.level > 0) {
                String level = Integer.toString(paragraph.level);
                flow.words.mark(Mark.Kind.HEADING, level, paragraph.start);
            }
            if (cells == 0) {
                flow.words.breakLine(1);
            }
        } else if (cells == 0) {
            flow.words.lineEnd();
        }
        for (BlockText note : paragraph.notes) {
            flow.words.breakLine(1);
            int start = flow.words.place();
            flow.words.block(note);
            flow.words.mark(Mark.Kind.OTHER, "note", start);
        }
    }

    @Override
    public void words(String characters) {
        Flow flow = flows.peek();
        if (!inBody || skipped > 0 || flow.open.isEmpty() && flows.size() == 1) {
            return;
        }
        begin();
        boolean italic = spans.stream().anyMatch(styles::isItalic);
        boolean bold = spans.stream().anyMatch(styles::isBold);
        boolean raised = spans.stream().anyMatch(styles::isRaised);
        flow.emphases.add(characters, italic, bold, raised);
    }
}
