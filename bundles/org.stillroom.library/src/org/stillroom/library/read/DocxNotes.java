package org.stillroom.library.read;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;

/** Collects the footnotes or endnotes of a DOCX file, each by itself. */
final class DocxNotes implements SafeXml.Handler {

    private final TimeBudget budget;
    private final DocxStyles styles;
    private final Map<String, BlockText> notes = new LinkedHashMap<>();
    private BlockText words;
    private DocxBody note;

    DocxNotes(TimeBudget budget, DocxStyles styles) {
        this.budget = budget;
        this.styles = styles;
        clear();
    }

    private void clear() {
        words = new BlockText(budget);
        note = new DocxBody(words, styles, Spacing.ofDocx(), Map.of());
    }

    /** Returns the name of a note, from its element or from one that refers to it. */
    static String key(String element, XMLStreamReader xml) {
        return element.replace("Reference", "") + " " + xml.getAttributeValue(null, "id");
    }

    @Override
    public void start(String name, XMLStreamReader xml) throws Refused {
        if (name.equals("footnote") || name.equals("endnote")) {
            clear();
            if (xml.getAttributeValue(null, "type") == null) {
                notes.put(key(name, xml), words);
            }
        } else {
            note.start(name, xml);
        }
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        if (!name.equals("footnote") && !name.equals("endnote")) {
            note.end(name, xml);
        }
    }

    @Override
    public void words(String characters) {
        note.words(characters);
    }

    /** Returns the notes by their names. */
    Map<String, BlockText> notes() {
        return notes;
    }
}
