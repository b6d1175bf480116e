package org.stillroom.library.read;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/**
 * Reads TEI P5: header, text, divisions, heads, lists, notes, page and line breaks; and ALTO, which
 * bears the same ending.
 *
 * <p>Document types and external entities are neither fetched nor expanded. Unknown elements are
 * passed through: their words are read, their names ignored.
 */
final class Tei implements SourceReader {

    private final FileAccess access;

    Tei(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".xml", ".tei");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        return TimedReading.of(
                id,
                access.limits(),
                budget -> draft(id, file, budget).bind(id, file, defaults, access));
    }

    private Draft draft(String id, Path file, TimeBudget budget) throws Refused {
        byte[] bytes = access.bytes(id, file);
        BlockText recognised = new BlockText(budget);
        Events events = new Events(id, new AltoWords(recognised));
        new SafeXml(id, "", access.limits(), budget).read(new ByteArrayInputStream(bytes), events);
        if (!recognised.text().isBlank()) {
            String digest = FileText.digest(bytes);
            return new Draft(recognised.text(), recognised.marks(), Map.of(), digest, List.of());
        }
        String text = events.body.text();
        if (text.isBlank()) {
            throw new Refused(
                    Problem.error(
                            id,
                            "It has no words inside an element “text”.",
                            "A TEI file keeps its transcription in TEI/text/body."));
        }
        return new Draft(
                text,
                events.body.marks(),
                events.header.fields(),
                FileText.digest(bytes),
                List.of());
    }

    /** Deals the events out to header and text. */
    private static final class Events implements SafeXml.Handler {
        private final TeiHeader header;
        private final TeiBody body = new TeiBody();
        private final AltoWords alto;
        private boolean inHeader;
        private boolean inAlto;

        Events(String id, AltoWords alto) {
            this.header = new TeiHeader(id);
            this.alto = alto;
        }

        @Override
        public void start(String name, XMLStreamReader xml) {
            inHeader |= name.equals("teiHeader");
            inAlto |= name.equals("alto");
            if (inAlto) {
                alto.start(name, xml);
            } else if (inHeader) {
                header.start(xml);
            } else {
                body.start(xml);
            }
        }

        @Override
        public void end(String name, XMLStreamReader xml) {
            if (inAlto) {
                alto.end(name, xml);
            } else if (inHeader) {
                header.end();
            } else {
                body.end(name);
            }
            inHeader &= !name.equals("teiHeader");
        }

        @Override
        public void words(String characters) {
            if (inHeader) {
                header.words(characters);
            } else if (!inAlto) {
                body.words(characters);
            }
        }
    }
}
