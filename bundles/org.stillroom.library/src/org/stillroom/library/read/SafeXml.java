package org.stillroom.library.read;

import java.io.InputStream;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.explain.Problem;

/**
 * Reads XML event by event. Document types and external entities are neither fetched nor expanded.
 *
 * @param id the source's id, for problems
 * @param part the part of the file that is read, or empty where it is the file itself
 * @param limits says how deep elements may lie
 * @param budget says how long it may take
 */
record SafeXml(String id, String part, Limits limits, TimeBudget budget) {

    /** Takes the events of a file. */
    interface Handler {
        /** An element starts. */
        void start(String name, XMLStreamReader xml) throws Refused;

        /** An element ends. */
        void end(String name, XMLStreamReader xml) throws Refused;

        /** Characters. */
        void words(String characters);
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        return factory;
    }

    /** Gives every event to a handler. */
    void read(InputStream in, Handler handler) throws Refused {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(in);
            int depth = 0;
            while (xml.hasNext()) {
                budget.check();
                switch (xml.next()) {
                    case XMLStreamReader.START_ELEMENT -> {
                        if (++depth > limits.depth()) {
                            throw refused(xml, "Its elements are nested too deeply.");
                        }
                        handler.start(xml.getLocalName(), xml);
                    }
                    case XMLStreamReader.END_ELEMENT -> {
                        depth--;
                        handler.end(xml.getLocalName(), xml);
                    }
                    case XMLStreamReader.CHARACTERS, XMLStreamReader.CDATA, XMLStreamReader.SPACE ->
                            handler.words(xml.getText());
                    case XMLStreamReader.DTD -> refuseEntities(xml);
                    case XMLStreamReader.ENTITY_REFERENCE -> throw entities(xml);
                    default -> {
                        // comments and processing instructions say nothing
                    }
                }
            }
        } catch (XMLStreamException e) {
            throw notXml(e);
        }
    }

    private void refuseEntities(XMLStreamReader xml) throws Refused {
        String declared = xml.getText();
        if (declared != null && declared.contains("<!ENTITY")) {
            throw entities(xml);
        }
    }

    private Refused entities(XMLStreamReader xml) {
        return new Refused(
                Problem.error(
                        id,
                        Math.max(1, xml.getLocation().getLineNumber()),
                        part,
                        "It declares or uses entities, which are neither fetched nor expanded.",
                        "Write the words themselves in the place of each “&name;”."));
    }

    private Refused refused(XMLStreamReader xml, String reason) {
        return new Refused(
                Problem.error(
                        id,
                        Math.max(1, xml.getLocation().getLineNumber()),
                        part,
                        reason,
                        "Save the words as plain text."));
    }

    private Refused notXml(XMLStreamException e) {
        int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
        String message = String.valueOf(e.getMessage());
        int at = message.indexOf("Message:");
        String reason = at < 0 ? message : message.substring(at + 8).strip();
        String remedy =
                reason.contains("entity")
                        ? "Entities are neither fetched nor expanded here: write the words "
                                + "themselves."
                        : "Mend the line, or save the words as plain text.";
        return new Refused(
                Problem.error(id, line, part, "It is not well-formed XML: " + reason, remedy));
    }
}
