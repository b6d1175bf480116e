package org.stillroom.library.read;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.model.source.Circumstances;

/** Reads DOCX, as word processors write it (ISO/IEC 29500). */
final class Docx implements SourceReader {

    private static final String KIND = "DOCX";

    private final FileAccess access;

    Docx(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".docx", ".docm", ".dotx");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        return TimedReading.of(
                id,
                access.limits(),
                budget -> draft(id, file, budget).bind(id, file, defaults, access));
    }

    private Draft draft(String id, Path file, TimeBudget budget) throws Refused {
        Limits limits = access.limits();
        String digest = access.digest(id, file, limits.containerBytes(), budget);
        try (Container container = Container.open(id, file, KIND, limits, budget)) {
            BlockText words = new BlockText(budget);
            words(container, words, budget);
            OwnFields fields = new OwnFields(id);
            container.read("docProps/core.xml", new CoreProperties(fields));
            container.read("docProps/custom.xml", new CoreProperties(fields));
            String text = words.text();
            return new Draft(
                    text,
                    StatedPages.outrank(text, words.marks()),
                    fields.fields(),
                    digest,
                    List.of());
        }
    }

    private static void words(Container container, BlockText words, TimeBudget budget)
            throws Refused {
        String main = Relations.of(container, "").target("officeDocument", "word/document.xml");
        Relations relations = Relations.of(container, main);
        String folder = Hrefs.folder(main);
        DocxStyles styles = new DocxStyles();
        container.read(relations.target("styles", folder + "styles.xml"), styles);
        Map<String, BlockText> notes = new LinkedHashMap<>();
        for (String kind : List.of("footnotes", "endnotes")) {
            DocxNotes found = new DocxNotes(budget, styles);
            container.read(relations.target(kind, folder + kind + ".xml"), found);
            notes.putAll(found.notes());
        }
        byte[] bytes = container.needed(main, KIND);
        Spacing spacing = Spacing.ofDocx();
        container.xml(main).read(new ByteArrayInputStream(bytes), spacing);
        DocxBody body = new DocxBody(words, styles, spacing, notes);
        container.xml(main).read(new ByteArrayInputStream(bytes), body);
        body.finish();
    }
}
