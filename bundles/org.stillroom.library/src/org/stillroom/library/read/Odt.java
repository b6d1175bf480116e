package org.stillroom.library.read;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;
import org.stillroom.model.source.Circumstances;

/** Reads ODT, as word processors write it, packed or as one XML file (ISO/IEC 26300). */
final class Odt implements SourceReader {

    private static final String KIND = "ODT";
    private static final String CONTENT = "content.xml";

    private final FileAccess access;

    Odt(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".odt", ".ott", ".fodt");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        boolean flat = id.toLowerCase(Locale.ROOT).endsWith(".fodt");
        return TimedReading.of(
                id,
                access.limits(),
                budget ->
                        (flat ? flat(id, file, budget) : packed(id, file, budget))
                                .bind(id, file, defaults, access));
    }

    private Draft flat(String id, Path file, TimeBudget budget) throws Refused {
        byte[] bytes = access.bytes(id, file);
        SafeXml xml = new SafeXml(id, "", access.limits(), budget);
        OwnFields fields = new OwnFields(id);
        xml.read(new ByteArrayInputStream(bytes), new Within("meta", new CoreProperties(fields)));
        OdtStyles styles = new OdtStyles();
        xml.read(new ByteArrayInputStream(bytes), styles);
        return draft(xml, bytes, styles, fields, FileText.digest(bytes));
    }

    private Draft packed(String id, Path file, TimeBudget budget) throws Refused {
        Limits limits = access.limits();
        String digest = access.digest(id, file, limits.containerBytes(), budget);
        try (Container container = Container.open(id, file, KIND, limits, budget)) {
            Optional<byte[]> manifest = container.part("META-INF/manifest.xml");
            if (manifest.isPresent() && FileText.find(manifest.get(), "encryption-data")) {
                throw Refused.of(
                        id,
                        "It is protected with a password.",
                        "Open it in a word processor and save it without the password.");
            }
            byte[] content = container.needed(CONTENT, KIND);
            OdtStyles styles = new OdtStyles();
            container.read("styles.xml", styles);
            container.xml(CONTENT).read(new ByteArrayInputStream(content), styles);
            OwnFields fields = new OwnFields(id);
            container.read("meta.xml", new CoreProperties(fields));
            return draft(container.xml(CONTENT), content, styles, fields, digest);
        }
    }

    private static Draft draft(
            SafeXml xml, byte[] content, OdtStyles styles, OwnFields fields, String digest)
            throws Refused {
        Spacing spacing = Spacing.ofOdt();
        xml.read(new ByteArrayInputStream(content), spacing);
        BlockText words = new BlockText(xml.budget());
        OdtBody body = new OdtBody(words, styles, spacing, xml.budget());
        xml.read(new ByteArrayInputStream(content), body);
        String text = words.text();
        return new Draft(
                text, StatedPages.outrank(text, words.marks()), fields.fields(), digest, List.of());
    }

    /** Passes on what stands inside an element. */
    private static final class Within implements SafeXml.Handler {
        private final String element;
        private final SafeXml.Handler inner;
        private int depth;

        Within(String element, SafeXml.Handler inner) {
            this.element = element;
            this.inner = inner;
        }

        @Override
        public void start(String name, XMLStreamReader xml) throws Refused {
            if (depth > 0) {
                inner.start(name, xml);
            }
            depth += depth > 0 || name.equals(element) ? 1 : 0;
        }

        @Override
        public void end(String name, XMLStreamReader xml) throws Refused {
            depth -= depth > 0 ? 1 : 0;
            if (depth > 0) {
                inner.end(name, xml);
            }
        }

        @Override
        public void words(String characters) {
            if (depth > 0) {
                inner.words(characters);
            }
        }
    }
}
