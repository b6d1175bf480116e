package org.stillroom.library.read;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;

/**
 * Reads TEI P5: header, text, divisions, heads, lists, page and line breaks.
 *
 * <p>Document types and external entities are neither fetched nor expanded. Unknown elements are
 * passed through: their words are read, their names ignored.
 */
final class Tei implements SourceReader {

    @Override
    public List<String> endings() {
        return List.of(".xml", ".tei");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        byte[] bytes;
        try {
            bytes = FileText.bytes(id, file);
        } catch (FileText.Refused e) {
            return Result.failed(e.problem());
        }
        TeiHeader header = new TeiHeader();
        TeiBody body = new TeiBody();
        Optional<Problem> broken = parse(id, bytes, header, body);
        if (broken.isPresent()) {
            return Result.failed(broken.get());
        }
        String text = body.text();
        if (text.isBlank()) {
            return Result.failed(
                    Problem.error(
                            id,
                            "It has no words inside an element “text”.",
                            "A TEI file keeps its transcription in TEI/text/body."));
        }
        Map<String, FrontMatter.Field> said = new LinkedHashMap<>(header.fields());
        BibliographyFields fields = new BibliographyFields(id, said);
        Bibliography b = fields.toBibliography(Titles.fromFile(file), defaults);
        List<Problem> problems = new ArrayList<>(fields.problems());
        Source source =
                new Source(id, b, SourceText.of(text), body.marks(), FileText.digest(bytes));
        return new Result(Optional.of(source), problems);
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        return factory;
    }

    private static Optional<Problem> parse(
            String id, byte[] bytes, TeiHeader header, TeiBody body) {
        XMLStreamReader xml = null;
        try {
            xml = factory().createXMLStreamReader(new ByteArrayInputStream(bytes));
            boolean inHeader = false;
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamReader.DTD && hasEntities(xml)) {
                    return Optional.of(entities(id, xml));
                }
                if (event == XMLStreamReader.ENTITY_REFERENCE) {
                    return Optional.of(entities(id, xml));
                }
                if (event == XMLStreamReader.START_ELEMENT
                        && xml.getLocalName().equals("teiHeader")) {
                    inHeader = true;
                }
                if (inHeader) {
                    header.take(xml, event);
                } else {
                    body.take(xml, event);
                }
                if (event == XMLStreamReader.END_ELEMENT
                        && xml.getLocalName().equals("teiHeader")) {
                    inHeader = false;
                }
            }
            return Optional.empty();
        } catch (XMLStreamException e) {
            return Optional.of(notXml(id, e));
        }
    }

    private static boolean hasEntities(XMLStreamReader xml) {
        String declared = xml.getText();
        return declared != null && declared.contains("<!ENTITY");
    }

    private static Problem entities(String id, XMLStreamReader xml) {
        return Problem.error(
                id,
                Math.max(1, xml.getLocation().getLineNumber()),
                "",
                "It declares or uses entities, which are neither fetched nor expanded.",
                "Write the words themselves in the place of each “&name;”.");
    }

    private static Problem notXml(String id, XMLStreamException e) {
        int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
        String message = String.valueOf(e.getMessage());
        int at = message.indexOf("Message:");
        String reason = at < 0 ? message : message.substring(at + 8).strip();
        boolean entity = reason.contains("entity");
        return Problem.error(
                id,
                line,
                "",
                "It is not well-formed XML: " + reason,
                entity
                        ? "Entities are neither fetched nor expanded here: write the words themselves."
                        : "Mend the line, or save the words as plain text.");
    }
}
