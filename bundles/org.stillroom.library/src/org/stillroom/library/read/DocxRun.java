package org.stillroom.library.read;

import javax.xml.stream.XMLStreamReader;

/** How the run of words that is open in a DOCX file is set. */
final class DocxRun {

    private final DocxStyles styles;
    private boolean open;
    private int properties;
    private boolean italic;
    private boolean bold;
    private boolean raised;

    DocxRun(DocxStyles styles) {
        this.styles = styles;
    }

    /** Takes the start of an element and tells whether it says how words are set. */
    boolean start(String name, XMLStreamReader xml) {
        if (name.equals("r")) {
            open = true;
            italic = false;
            bold = false;
            raised = false;
            return true;
        }
        if (name.equals("rPr")) {
            properties++;
            return true;
        }
        if (properties > 0 && open) {
            property(name, xml);
        }
        return properties > 0;
    }

    private void property(String name, XMLStreamReader xml) {
        switch (name) {
            case "i" -> italic = DocxBody.isOn(xml);
            case "b" -> bold = DocxBody.isOn(xml);
            case "rStyle" -> {
                italic |= styles.isItalic(DocxBody.value(xml));
                bold |= styles.isBold(DocxBody.value(xml));
            }
            case "vertAlign" -> raised = DocxBody.value(xml).equals("superscript");
            default -> {
                // how else it looks does not matter
            }
        }
    }

    /** Takes the end of an element. */
    void end(String name) {
        if (name.equals("r")) {
            open = false;
        } else if (name.equals("rPr")) {
            properties--;
        }
    }

    boolean isItalic() {
        return italic;
    }

    boolean isBold() {
        return bold;
    }

    boolean isRaised() {
        return raised;
    }
}
