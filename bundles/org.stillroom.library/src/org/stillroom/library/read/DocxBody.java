package org.stillroom.library.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.source.Mark;

/**
 * Collects the words of a part of a DOCX file (ISO/IEC 29500-1): its text, or a note.
 *
 * <p>Deleted words, field codes and comments are no words of the text. A note stands after the
 * paragraph that refers to it.
 */
final class DocxBody implements SafeXml.Handler {

    /** What is not in the text, or is in it twice. */
    private static final Set<String> SKIPPED =
            Set.of(
                    "del",
                    "moveFrom",
                    "Fallback",
                    "instrText",
                    "pPrChange",
                    "rPrChange",
                    "sectPrChange");

    /** A paragraph that is open; a text box holds paragraphs inside another one. */
    private static final class Paragraph {
        private int start;
        private boolean begun;
        private boolean onNewPage;
        private String style = "";
        private int outline = -1;
        private boolean item;
        private final List<String> notes = new ArrayList<>();
    }

    private final BlockText words;
    private final Emphases emphases;
    private final DocxStyles styles;
    private final int gap;
    private final CountedPages pages;
    private final Map<String, BlockText> notes;
    private final Deque<Paragraph> open = new ArrayDeque<>();
    private final Deque<Integer> rows = new ArrayDeque<>();
    private final DocxRun run;
    private Paragraph before = new Paragraph();
    private int skipped;
    private boolean inText;
    private int cells;

    /**
     * Makes a collector.
     *
     * @param spacing what the first look told
     * @param notes the notes that the text may refer to
     */
    DocxBody(BlockText words, DocxStyles styles, Spacing spacing, Map<String, BlockText> notes) {
        this.words = words;
        this.styles = styles;
        this.run = new DocxRun(styles);
        this.gap = spacing.gap();
        this.pages = new CountedPages(words, spacing);
        this.notes = new LinkedHashMap<>(notes);
        this.emphases = new Emphases(words);
    }

    /** Returns the value of an element that has one, or nothing. */
    static String value(XMLStreamReader xml) {
        String value = xml.getAttributeValue(null, "val");
        return value == null ? "" : value;
    }

    /** Tells whether an element that switches something switches it on. */
    static boolean isOn(XMLStreamReader xml) {
        String value = value(xml);
        return !value.equals("0") && !value.equals("false") && !value.equals("off");
    }

    /** Returns the number of some digits, or another one where they are none. */
    static int number(String digits, int otherwise) {
        return digits.matches("\\d{1,6}") ? Integer.parseInt(digits) : otherwise;
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        if (skipped > 0 || SKIPPED.contains(name)) {
            skipped++;
            return;
        }
        if (run.start(name, xml)) {
            return;
        }
        switch (name) {
            case "p" -> {
                emphases.end();
                open.push(new Paragraph());
            }
            case "t" -> inText = true;
            case "tbl" -> words.breakLine(2);
            case "tr" -> {
                words.breakLine(1);
                rows.push(words.place());
            }
            case "tc" -> {
                cells++;
                words.openCell();
            }
            default -> {
                if (!open.isEmpty()) {
                    property(name, xml);
                    sign(name, xml);
                }
            }
        }
    }

    private void property(String name, XMLStreamReader xml) {
        Paragraph paragraph = open.peek();
        switch (name) {
            case "pStyle" -> {
                paragraph.style = value(xml);
                paragraph.item |= styles.isItem(paragraph.style);
            }
            case "outlineLvl" -> paragraph.outline = number(value(xml), -1);
            case "numPr" -> paragraph.item = true;
            case "pageBreakBefore" -> paragraph.onNewPage = isOn(xml);
            default -> {
                // how else it looks does not matter
            }
        }
    }

    /** Takes what stands for a character, ends a page or refers to a note. */
    private void sign(String name, XMLStreamReader xml) {
        switch (name) {
            case "tab", "ptab" -> words.words(" ");
            case "cr" -> words.lineEnd();
            case "br" -> lineEnd(xml);
            case "lastRenderedPageBreak" -> {
                begin();
                pages.full();
            }
            case "noBreakHyphen" -> characters("\u2011");
            case "softHyphen" -> characters("\u00ad");
            case "sym" -> characters(symbol(xml));
            case "footnoteReference", "endnoteReference" ->
                    open.peek().notes.add(DocxNotes.key(name, xml));
            case "f" -> {
                if (String.valueOf(xml.getNamespaceURI()).endsWith("/math")) {
                    words.numerator();
                }
            }
            default -> {
                // everything else carries no words
            }
        }
    }

    private void lineEnd(XMLStreamReader xml) {
        String type = String.valueOf(xml.getAttributeValue(null, "type"));
        if (type.equals("page")) {
            begin();
            pages.forced();
        }
        words.lineEnd();
    }

    private static String symbol(XMLStreamReader xml) {
        String hex = String.valueOf(xml.getAttributeValue(null, "char"));
        int code = hex.matches("[0-9A-Fa-f]{1,5}") ? Integer.parseInt(hex, 16) : 0;
        boolean half = code >= Character.MIN_SURROGATE && code <= Character.MAX_SURROGATE;
        return code > ' ' && !half ? Character.toString(code) : "";
    }

    /** Sets the paragraph apart from the one before, once something stands in it. */
    private void begin() {
        Paragraph paragraph = open.peek();
        if (paragraph == null || paragraph.begun) {
            return;
        }
        paragraph.begun = true;
        words.breakLine(cells > 0 || open.size() > 1 ? 1 : between(before, paragraph));
        if (paragraph.onNewPage) {
            pages.forced();
        }
        paragraph.start = words.place();
    }

    private int between(Paragraph first, Paragraph second) {
        boolean apart = level(first) > 0 || level(second) > 0 || first.item != second.item;
        return apart ? 2 : second.item ? 1 : gap;
    }

    private int level(Paragraph paragraph) {
        boolean own = paragraph.outline >= 0 && paragraph.outline < 9;
        return own ? paragraph.outline + 1 : styles.headingLevel(paragraph.style);
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        if (skipped > 0) {
            skipped--;
            return;
        }
        run.end(name);
        switch (name) {
            case "p" -> endParagraph();
            case "t" -> inText = false;
            case "tc" -> {
                cells--;
                words.closeCell();
            }
            case "tr" -> {
                words.mark(Mark.Kind.ROW, "", rows.pop());
                words.breakLine(1);
            }
            case "tbl" -> words.breakLine(2);
            case "num" -> words.words("/");
            default -> {
                // everything else ends without a sign
            }
        }
    }

    private void endParagraph() {
        emphases.end();
        Paragraph paragraph = open.pop();
        if (paragraph.begun && words.hasWordsSince(paragraph.start)) {
            mark(paragraph);
            before = paragraph;
            if (cells == 0) {
                words.breakLine(1);
            }
        } else if (cells == 0) {
            words.lineEnd();
        }
        paragraph.notes.forEach(this::note);
    }

    private void mark(Paragraph paragraph) {
        int level = level(paragraph);
        if (level > 0) {
            words.mark(Mark.Kind.HEADING, Integer.toString(level), paragraph.start);
        } else if (paragraph.item) {
            words.mark(Mark.Kind.ITEM, "", paragraph.start);
        }
        styles.division(paragraph.style)
                .ifPresent(d -> words.mark(Mark.Kind.OTHER, d, paragraph.start));
    }

    private void note(String key) {
        BlockText note = notes.remove(key);
        if (note != null) {
            words.breakLine(1);
            int start = words.place();
            words.block(note);
            words.mark(Mark.Kind.OTHER, "note", start);
        }
    }

    /** Adds the notes that no paragraph referred to. */
    void finish() {
        for (String key : List.copyOf(notes.keySet())) {
            words.breakLine(2);
            note(key);
        }
    }

    @Override
    public void words(String characters) {
        if (inText && skipped == 0) {
            characters(characters);
        }
    }

    private void characters(String characters) {
        begin();
        emphases.add(characters, run.isItalic(), run.isBold(), run.isRaised());
    }
}
