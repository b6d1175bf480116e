package org.stillroom.library.read;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * The list of pages of an EPUB: where in its parts each page of the printed book starts.
 *
 * <p>It stands in the navigation document, or in the older table (NCX).
 */
final class EpubPages implements SafeXml.Handler {

    /** Labels by part, and in it by the id of an element; the empty id is the part's start. */
    private final Map<String, Map<String, String>> labels = new LinkedHashMap<>();

    private String folder = "";
    private String label = "";
    private boolean inTarget;
    private boolean inText;

    /** Takes the list out of a navigation document. */
    void take(String part, Document navigation) {
        folder = Hrefs.folder(part);
        for (Element nav : navigation.getElementsByTag("nav")) {
            boolean list =
                    nav.attr("epub:type").contains("page-list")
                            || nav.attr("role").contains("doc-pagelist");
            if (list) {
                nav.getElementsByTag("a").forEach(a -> put(a.attr("href"), a.text()));
            }
        }
    }

    /** Takes the list out of an older table. */
    void take(String part, Container container) throws Refused {
        folder = Hrefs.folder(part);
        container.read(part, this);
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        if (name.equals("pageTarget")) {
            inTarget = true;
            label = "";
        }
        inText = inTarget && name.equals("text");
        if (inTarget && name.equals("content")) {
            put(OdtStyles.attribute(xml, "src"), label);
        }
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        inTarget &= !name.equals("pageTarget");
        inText &= !name.equals("text");
    }

    @Override
    public void words(String characters) {
        label += inText ? characters : "";
    }

    private void put(String href, String words) {
        String page = PageLabels.plain(words);
        if (!href.isEmpty() && !page.isEmpty()) {
            labels.computeIfAbsent(Hrefs.resolve(folder, href), p -> new LinkedHashMap<>())
                    .putIfAbsent(Hrefs.fragment(href), page);
        }
    }

    /** Returns the labels of a part. */
    Map<String, String> of(String part) {
        return labels.getOrDefault(part, Map.of());
    }
}
