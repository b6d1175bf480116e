package org.stillroom.library.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;

/**
 * Collects what a TEI header says of an edition.
 *
 * <p>What stands in {@code sourceDesc} (the printed book) outranks {@code titleStmt} and {@code
 * publicationStmt} (the transcription).
 */
final class TeiHeader {

    /** Fields of the printed book and of the transcription, by our names. */
    private final Map<String, FrontMatter.Field> book = new LinkedHashMap<>();

    private final Map<String, FrontMatter.Field> file = new LinkedHashMap<>();
    private final String id;
    private final Deque<String> path = new ArrayDeque<>();
    private final StringBuilder words = new StringBuilder();
    private String attribute = "";
    private String noteType = "";
    private int line = 1;

    TeiHeader(String id) {
        this.id = id;
    }

    void start(XMLStreamReader xml) {
        path.push(xml.getLocalName());
        words.setLength(0);
        attribute = date(xml);
        noteType = String.valueOf(xml.getAttributeValue(null, "type"));
        line = Math.max(1, xml.getLocation().getLineNumber());
        language(xml);
    }

    void words(String characters) {
        words.append(characters);
    }

    void end() {
        String name = path.pop();
        field(name).ifPresent(this::put);
        words.setLength(0);
        attribute = "";
    }

    private static String date(XMLStreamReader xml) {
        String when = xml.getAttributeValue(null, "when");
        if (when != null) {
            return approximate(xml, when);
        }
        String from = or(xml.getAttributeValue(null, "notBefore"), xml, "from");
        String to = or(xml.getAttributeValue(null, "notAfter"), xml, "to");
        if (from == null && to == null) {
            return "";
        }
        return (from == null ? ".." : from) + "/" + (to == null ? ".." : to);
    }

    private static String approximate(XMLStreamReader xml, String when) {
        String certainty = xml.getAttributeValue(null, "cert");
        return "low".equals(certainty) || "medium".equals(certainty) ? when + "?" : when;
    }

    private static String or(String value, XMLStreamReader xml, String other) {
        return value == null ? xml.getAttributeValue(null, other) : value;
    }

    private void language(XMLStreamReader xml) {
        String ident = xml.getAttributeValue(null, "ident");
        if (xml.getLocalName().equals("language") && ident != null) {
            file.putIfAbsent("language", new FrontMatter.Field(ident, id, line));
        }
    }

    private Optional<String> field(String name) {
        return switch (name) {
            case "title" -> Optional.of("title");
            case "author", "editor" -> Optional.of("author");
            case "edition" -> Optional.of("edition");
            case "pubPlace" -> Optional.of("place");
            case "date" -> path.contains("change") ? Optional.empty() : Optional.of("date");
            case "licence" -> Optional.of("rights");
            case "term", "catDesc" -> Optional.of("trade");
            case "note" -> Optional.of(noteType.equals("trade") ? "trade" : "notes");
            default ->
                    path.contains("respStmt") && name.equals("name")
                            ? Optional.of("transcriber")
                            : Optional.empty();
        };
    }

    private void put(String field) {
        boolean ofBook = path.contains("sourceDesc");
        String value = words.toString().strip().replaceAll("\\s+", " ");
        String name = field;
        if (field.equals("date")) {
            if (!ofBook) {
                return;
            }
            value = attribute.isEmpty() ? value : attribute;
            name = book.containsKey("text-date") ? "printing-date" : "text-date";
        }
        if (field.equals("trade") && org.stillroom.model.source.Trade.of(value).isEmpty()) {
            return;
        }
        if (!value.isEmpty()) {
            (ofBook ? book : file).putIfAbsent(name, new FrontMatter.Field(value, id, line));
        }
    }

    /** Returns the fields, those of the printed book first. */
    Map<String, FrontMatter.Field> fields() {
        Map<String, FrontMatter.Field> all = new LinkedHashMap<>(book);
        file.forEach(all::putIfAbsent);
        return all;
    }
}
