package org.stillroom.library.read;

import javax.xml.stream.XMLStreamReader;

/**
 * What a word processor's file says of itself: core properties (ISO/IEC 29500-2) and custom ones of
 * DOCX, or the metadata of ODT (ISO/IEC 26300).
 *
 * <p>When the file was made says nothing of the book and is left out.
 */
final class CoreProperties implements SafeXml.Handler {

    private final OwnFields fields;
    private final StringBuilder words = new StringBuilder();
    private String custom = "";

    CoreProperties(OwnFields fields) {
        this.fields = fields;
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        words.setLength(0);
        if (name.equals("property") || name.equals("user-defined")) {
            custom = String.valueOf(xml.getAttributeValue(null, "name"));
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
            case "creator", "initial-creator" -> fields.maker(said);
            case "language" -> fields.language(said);
            case "property", "user-defined" -> fields.named(custom, said);
            default -> {
                // what else it says is about the file, not the book
            }
        }
        // a custom property of DOCX keeps its words in an element of their type
        if (!name.startsWith("lp") && !name.equals("bool") && !name.equals("i4")) {
            words.setLength(0);
        }
    }
}
