package org.stillroom.library.read;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamReader;

/** The styles of a DOCX file: which are headings, lists of contents, italic or bold. */
final class DocxStyles implements SafeXml.Handler {

    private static final int LONGEST_CHAIN = 20;
    private static final Pattern HEADING = Pattern.compile("heading (\\d)");

    /** One style. */
    private static final class Style {
        private String name = "";
        private String above = "";
        private int outline = -1;
        private boolean list;
        private Optional<Boolean> italic = Optional.empty();
        private Optional<Boolean> bold = Optional.empty();
    }

    private final Map<String, Style> styles = new HashMap<>();
    private Style current = new Style();

    @Override
    public void start(String name, XMLStreamReader xml) {
        String value = DocxBody.value(xml);
        switch (name) {
            case "style" -> {
                current = new Style();
                styles.put(String.valueOf(xml.getAttributeValue(null, "styleId")), current);
            }
            case "name" -> current.name = value.toLowerCase(Locale.ROOT);
            case "basedOn" -> current.above = value;
            case "outlineLvl" -> current.outline = DocxBody.number(value, -1);
            case "numPr" -> current.list = true;
            case "i" -> current.italic = Optional.of(DocxBody.isOn(xml));
            case "b" -> current.bold = Optional.of(DocxBody.isOn(xml));
            default -> {
                // how else it looks does not matter
            }
        }
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        if (name.equals("style")) {
            current = new Style();
        }
    }

    @Override
    public void words(String characters) {
        // everything stands in attributes
    }

    /** Returns the level of a heading, 1 for the highest, or 0 for another style. */
    int headingLevel(String style) {
        Style at = styles.get(style);
        for (int i = 0; at != null && i < LONGEST_CHAIN; i++) {
            Matcher heading = HEADING.matcher(at.name);
            if (at.outline >= 0 && at.outline < 9) {
                return at.outline + 1;
            }
            if (heading.matches()) {
                return Math.max(1, DocxBody.number(heading.group(1), 1));
            }
            if (at.name.equals("title")) {
                return 1;
            }
            at = styles.get(at.above);
        }
        return 0;
    }

    /** Returns what holds no recipes by its style: contents, an index. */
    Optional<String> division(String style) {
        String name = styles.containsKey(style) ? styles.get(style).name : "";
        if (name.matches("toc (?:\\d|heading)|table of figures|table of authorities")) {
            return Optional.of("contents");
        }
        return name.matches("index \\d|index heading") ? Optional.of("index") : Optional.empty();
    }

    /** Tells whether paragraphs of a style are items of a list. */
    boolean isItem(String style) {
        return styles.containsKey(style) && styles.get(style).list;
    }

    /** Tells whether characters of a style are italic. */
    boolean isItalic(String style) {
        return chain(style, s -> s.italic);
    }

    /** Tells whether characters of a style are bold. */
    boolean isBold(String style) {
        return chain(style, s -> s.bold);
    }

    private boolean chain(
            String style, java.util.function.Function<Style, Optional<Boolean>> property) {
        Style at = styles.get(style);
        for (int i = 0; at != null && i < LONGEST_CHAIN; i++) {
            Optional<Boolean> said = property.apply(at);
            if (said.isPresent()) {
                return said.get();
            }
            at = styles.get(at.above);
        }
        return false;
    }
}
