package org.stillroom.library.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.source.Mark;
import org.stillroom.model.text.Span;

/** Collects the words of a TEI text, a block a line, with what its elements say as marks. */
final class TeiBody {

    private static final Set<String> BLOCKS =
            Set.of(
                    "p",
                    "head",
                    "item",
                    "list",
                    "div",
                    "row",
                    "l",
                    "lg",
                    "ab",
                    "note",
                    "titlePart",
                    "docTitle",
                    "byline",
                    "docImprint",
                    "trailer",
                    "table",
                    "front",
                    "body",
                    "back",
                    "label");

    /** An element that is open. */
    private record Open(String name, String type, int start, int level) {}

    private final StringBuilder text = new StringBuilder();
    private final List<Mark> marks = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private String page = "";
    private int pageStart;
    private int places;
    private int skipped;
    private boolean inText;

    void start(XMLStreamReader xml) {
        String name = xml.getLocalName();
        if (name.equals("text")) {
            inText = true;
        }
        if (!inText) {
            return;
        }
        // in a choice the printed form (sic, orig) is kept and what was made of it left out
        if (name.equals("corr") || name.equals("reg")) {
            skipped++;
        }
        if (BLOCKS.contains(name)) {
            breakLine(name.equals("div") || name.equals("p") || name.equals("head") ? 2 : 1);
        }
        if (name.equals("lb")) {
            breakLine(1);
        }
        if (name.equals("pb")) {
            closePage();
            page = attribute(xml, "n");
            pageStart = places;
        }
        int level = (int) open.stream().filter(o -> o.name().startsWith("div")).count();
        open.push(new Open(name, attribute(xml, "type"), places, level));
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    void end(String name) {
        if (!inText || open.isEmpty()) {
            return;
        }
        if (name.equals("corr") || name.equals("reg")) {
            skipped--;
        }
        Open element = open.pop();
        mark(element);
        if (name.equals("cell")) {
            words(" ");
        }
        if (BLOCKS.contains(name)) {
            breakLine(name.equals("p") || name.equals("head") || name.equals("list") ? 2 : 1);
        }
        if (name.equals("text")) {
            closePage();
        }
    }

    private void mark(Open element) {
        Span span = new Span(Math.min(element.start(), trimmedEnd()), trimmedEnd());
        if (span.isEmpty()) {
            return;
        }
        switch (element.name()) {
            case "head" ->
                    add(Mark.Kind.HEADING, Integer.toString(Math.max(1, element.level())), span);
            case "item" -> add(Mark.Kind.ITEM, "", span);
            case "row" -> add(Mark.Kind.ROW, "", span);
            case "note" -> add(Mark.Kind.OTHER, "note", span);
            case "hi", "emph" -> add(Mark.Kind.EMPHASIS, "", span);
            case "div" -> {
                boolean recipe = element.type().equals("recipe");
                if (recipe || !element.type().isEmpty()) {
                    add(recipe ? Mark.Kind.RECIPE : Mark.Kind.OTHER, element.type(), span);
                }
            }
            default -> {
                // other elements only carry words
            }
        }
    }

    private void add(Mark.Kind kind, String label, Span span) {
        marks.add(new Mark(kind, label, span));
    }

    private int trimmedEnd() {
        int i = text.length();
        int end = places;
        while (i > 0 && Character.isWhitespace(text.charAt(i - 1))) {
            i--;
            end--;
        }
        return end;
    }

    private void closePage() {
        if (!page.isEmpty() && places > pageStart) {
            marks.add(new Mark(Mark.Kind.PAGE, page, new Span(pageStart, places)));
        }
    }

    void words(String characters) {
        if (!inText || skipped > 0) {
            return;
        }
        for (int i = 0; i < characters.length(); ) {
            int c = characters.codePointAt(i);
            i += Character.charCount(c);
            if (Character.isWhitespace(c)) {
                boolean after = !text.isEmpty() && !Character.isWhitespace(last());
                if (after) {
                    append(' ');
                }
            } else {
                append(c);
            }
        }
    }

    private char last() {
        return text.charAt(text.length() - 1);
    }

    private void append(int c) {
        text.appendCodePoint(c);
        places++;
    }

    private void breakLine(int wanted) {
        if (text.isEmpty()) {
            return;
        }
        while (!text.isEmpty() && last() == ' ') {
            text.setLength(text.length() - 1);
            places--;
        }
        int have = 0;
        while (have < text.length() && text.charAt(text.length() - 1 - have) == '\n') {
            have++;
        }
        for (int i = have; i < wanted; i++) {
            append('\n');
        }
    }

    String text() {
        return text.toString();
    }

    List<Mark> marks() {
        marks.sort(Comparator.comparing(Mark::span).thenComparing(Mark::kind));
        return marks;
    }
}
