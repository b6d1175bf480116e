package org.stillroom.library.read;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.xml.stream.XMLStreamReader;

/** The styles of an ODT file (ISO/IEC 26300), automatic ones included. */
final class OdtStyles implements SafeXml.Handler {

    private static final int LONGEST_CHAIN = 20;

    /** One style. */
    private static final class Style {
        private String above = "";
        private Optional<Boolean> italic = Optional.empty();
        private Optional<Boolean> bold = Optional.empty();
        private boolean raised;
        private boolean onNewPage;
    }

    private final Map<String, Style> styles = new HashMap<>();
    private Style current = new Style();

    @Override
    public void start(String name, XMLStreamReader xml) {
        switch (name) {
            case "style" -> {
                current = new Style();
                current.above = attribute(xml, "parent-style-name");
                styles.put(attribute(xml, "name"), current);
            }
            case "text-properties" -> {
                current.italic = said(xml, "font-style").map(s -> !s.equals("normal"));
                current.bold = said(xml, "font-weight").map(OdtStyles::isBoldWeight);
                current.raised = attribute(xml, "text-position").startsWith("super");
            }
            case "paragraph-properties" ->
                    current.onNewPage = attribute(xml, "break-before").equals("page");
            default -> {
                // how else it looks does not matter
            }
        }
    }

    private static boolean isBoldWeight(String weight) {
        return weight.equals("bold") || DocxBody.number(weight, 400) >= 600;
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

    /** Returns an attribute, or nothing. */
    static String attribute(XMLStreamReader xml, String name) {
        return said(xml, name).orElse("");
    }

    private static Optional<String> said(XMLStreamReader xml, String name) {
        return Optional.ofNullable(xml.getAttributeValue(null, name));
    }

    /** Tells whether a paragraph of this style is a title. */
    boolean isTitle(String style) {
        String at = style;
        for (int i = 0; i < LONGEST_CHAIN && !at.isEmpty(); i++) {
            if (at.equals("Title")) {
                return true;
            }
            at = styles.containsKey(at) ? styles.get(at).above : "";
        }
        return false;
    }

    boolean isItalic(String style) {
        return chain(style, s -> s.italic);
    }

    boolean isBold(String style) {
        return chain(style, s -> s.bold);
    }

    boolean isRaised(String style) {
        return styles.containsKey(style) && styles.get(style).raised;
    }

    /** Tells whether a paragraph of this style starts on a new page. */
    boolean isOnNewPage(String style) {
        return styles.containsKey(style) && styles.get(style).onNewPage;
    }

    private boolean chain(String style, Function<Style, Optional<Boolean>> property) {
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
