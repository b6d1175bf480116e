package org.stillroom.library.read;

import javax.xml.stream.XMLStreamReader;

/**
 * A first look at a word processor's text: how its paragraphs are set apart and its pages counted.
 *
 * <p>Who sets recipes apart by empty paragraphs types one paragraph a line; who sets none types one
 * paragraph a block.
 */
final class Spacing implements SafeXml.Handler {

    /** One empty paragraph among so many speaks for a text typed line by line. */
    private static final int TYPED = 12;

    private int paragraphs;
    private int empty;
    private boolean hasWords;
    private boolean inText;
    private final boolean wordsInT;
    private int firstPage = 1;
    private boolean paged;

    private Spacing(boolean wordsInT) {
        this.wordsInT = wordsInT;
    }

    /** Looks at a DOCX file, which keeps its words in elements of their own. */
    static Spacing ofDocx() {
        return new Spacing(true);
    }

    /** Looks at an ODT file. */
    static Spacing ofOdt() {
        return new Spacing(false);
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        switch (name) {
            case "p", "h" -> hasWords = false;
            case "t" -> inText = true;
            case "lastRenderedPageBreak", "soft-page-break" -> paged = true;
            case "br" -> paged |= "page".equals(xml.getAttributeValue(null, "type"));
            case "pgNumType" -> {
                if (firstPage == 1) {
                    String start = String.valueOf(xml.getAttributeValue(null, "start"));
                    firstPage = DocxBody.number(start, 1);
                }
            }
            default -> {
                // nothing else sets paragraphs apart
            }
        }
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        if (name.equals("p") || name.equals("h")) {
            paragraphs++;
            empty += hasWords ? 0 : 1;
        }
        inText &= !name.equals("t");
    }

    @Override
    public void words(String characters) {
        hasWords |= (inText || !wordsInT) && !characters.isBlank();
    }

    /** Returns how many line ends to put between two paragraphs. */
    int gap() {
        return empty > 1 && empty * TYPED >= paragraphs ? 1 : 2;
    }

    /** Returns the number of the first page. */
    int firstPage() {
        return firstPage;
    }

    /** Tells whether the text says where its pages end. */
    boolean isPaged() {
        return paged;
    }
}
