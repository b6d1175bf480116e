package org.stillroom.library.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;

/** The package document of an EPUB (EPUB 3.3 and 2.0.1): its metadata, its parts, their order. */
final class EpubPackage implements SafeXml.Handler {

    private record Item(String part, String kind, Set<String> properties) {}

    private final String folder;
    private final OwnFields fields;
    private final Map<String, Item> items = new LinkedHashMap<>();
    private final List<String> order = new ArrayList<>();
    private final StringBuilder words = new StringBuilder();
    private String element = "";
    private String role = "";
    private String event = "";
    private String toc = "";

    EpubPackage(String part, OwnFields fields) {
        this.folder = Hrefs.folder(part);
        this.fields = fields;
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        words.setLength(0);
        element = OdtStyles.attribute(xml, "id");
        role = OdtStyles.attribute(xml, "role");
        event = OdtStyles.attribute(xml, "event");
        switch (name) {
            case "item" -> {
                String href = OdtStyles.attribute(xml, "href");
                String properties = OdtStyles.attribute(xml, "properties");
                items.put(
                        element,
                        new Item(
                                Hrefs.resolve(folder, href),
                                OdtStyles.attribute(xml, "media-type"),
                                new HashSet<>(List.of(properties.split("\\s+")))));
            }
            case "spine" -> toc = OdtStyles.attribute(xml, "toc");
            case "itemref" -> order.add(OdtStyles.attribute(xml, "idref"));
            case "meta" -> event = OdtStyles.attribute(xml, "property");
            default -> {
                // metadata say what they are in words
            }
        }
    }

    @Override
    public void words(String characters) {
        words.append(characters);
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        String said = words.toString();
        switch (name) {
            case "title" -> fields.title(said);
            case "creator" -> fields.say("author", said);
            case "contributor" -> {
                if (role.equals("trc")) {
                    fields.say("transcriber", said);
                }
            }
            case "language" -> fields.language(said);
            case "rights" -> fields.say("rights", said);
            case "date" -> date(said);
            case "meta" -> {
                if (event.equals("dcterms:issued") || event.equals("dcterms:created")) {
                    fields.date(said);
                }
            }
            default -> {
                // what else it says is about the file
            }
        }
        words.setLength(0);
    }

    private void date(String said) {
        if (event.equals("original-publication") && said.strip().matches("\\d{4}.*")) {
            fields.say("text-date", said.strip().substring(0, 4));
        } else {
            fields.date(said);
        }
    }

    /** Returns the parts of the text in the order of reading, by their names. */
    List<String> order() {
        return order.stream()
                .map(items::get)
                .filter(i -> i != null)
                .map(Item::part)
                .distinct()
                .toList();
    }

    /** Returns the number of places in the order that no part stands for. */
    long lost() {
        return order.stream().filter(i -> !items.containsKey(i)).count();
    }

    /** Returns the navigation document, if there is one. */
    Optional<String> navigation() {
        return items.values().stream()
                .filter(i -> i.properties().contains("nav"))
                .map(Item::part)
                .findFirst();
    }

    /** Returns the older table of navigation (NCX), if there is one. */
    Optional<String> table() {
        return Optional.ofNullable(items.get(toc))
                .or(() -> items.values().stream().filter(i -> i.kind().contains("ncx")).findFirst())
                .map(Item::part);
    }
}
