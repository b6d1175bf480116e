package org.stillroom.library.read;

import java.util.Locale;
import javax.xml.stream.XMLStreamReader;

/**
 * Collects the words of recognised pages in ALTO (Library of Congress, versions 2 to 4): lines as
 * printed, blocks set apart, pages by their printed number or their place.
 */
final class AltoWords implements SafeXml.Handler {

    private final BlockText words;
    private final Emphases emphases;

    AltoWords(BlockText words) {
        this.words = words;
        this.emphases = new Emphases(words);
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        switch (name) {
            case "Page" -> {
                String printed = OdtStyles.attribute(xml, "PRINTED_IMG_NR");
                words.page(
                        printed.isEmpty() ? OdtStyles.attribute(xml, "PHYSICAL_IMG_NR") : printed);
            }
            case "TextBlock" -> words.breakLine(2);
            case "TextLine" -> words.breakLine(1);
            case "String" -> {
                String style = OdtStyles.attribute(xml, "STYLE").toLowerCase(Locale.ROOT);
                String characters = OdtStyles.attribute(xml, "CONTENT");
                emphases.add(
                        " " + characters, style.contains("italic"), style.contains("bold"), false);
            }
            // the sign of a word that goes on in the next line
            case "HYP" -> words.words(OdtStyles.attribute(xml, "CONTENT"));
            default -> {
                // places and shapes say nothing of the words
            }
        }
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        if (name.equals("TextLine") || name.equals("TextBlock")) {
            emphases.end();
            words.breakLine(name.equals("TextBlock") ? 2 : 1);
        }
    }

    @Override
    public void words(String characters) {
        // every word stands in an attribute
    }
}
