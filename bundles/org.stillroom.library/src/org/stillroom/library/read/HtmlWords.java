package org.stillroom.library.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jsoup.nodes.CDataNode;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeFilter;
import org.stillroom.model.source.Mark;

/**
 * Collects the words of a tree of HTML with headings, items, rows, notes, emphasis and pages.
 *
 * <p>Goes through the tree without recursion, however deep it is.
 */
final class HtmlWords implements NodeFilter {

    private static final Set<String> PARAGRAPHS =
            Set.of("p", "h1", "h2", "h3", "h4", "h5", "h6", "ul", "ol", "dl", "table", "hr", "pre");
    private static final Set<String> LINES =
            Set.of(
                    "address",
                    "article",
                    "aside",
                    "blockquote",
                    "body",
                    "caption",
                    "center",
                    "dd",
                    "details",
                    "dialog",
                    "dir",
                    "div",
                    "dt",
                    "fieldset",
                    "figcaption",
                    "figure",
                    "footer",
                    "form",
                    "header",
                    "hgroup",
                    "li",
                    "main",
                    "menu",
                    "nav",
                    "option",
                    "section",
                    "summary",
                    "tbody",
                    "tfoot",
                    "thead",
                    "tr");
    private static final Set<String> SILENT =
            Set.of("head", "script", "style", "template", "iframe", "object");
    private static final Set<String> ITALIC = Set.of("i", "em", "cite", "dfn");
    private static final Set<String> BOLD = Set.of("b", "strong");
    private static final Set<String> NOTES =
            Set.of("footnote", "footnotes", "endnote", "endnotes", "rearnote", "rearnotes");

    /** What divisions say of themselves, by our names for what holds no recipes. */
    private static final Map<String, String> DIVISIONS =
            Map.ofEntries(
                    Map.entry("toc", "contents"),
                    Map.entry("landmarks", "contents"),
                    Map.entry("page-list", "contents"),
                    Map.entry("loi", "illustrations"),
                    Map.entry("index", "index"),
                    Map.entry("titlepage", "titlepage"),
                    Map.entry("halftitlepage", "titlepage"),
                    Map.entry("copyright-page", "imprint"),
                    Map.entry("imprint", "imprint"),
                    Map.entry("preface", "preface"),
                    Map.entry("foreword", "foreword"),
                    Map.entry("dedication", "dedication"),
                    Map.entry("colophon", "colophon"),
                    Map.entry("errata", "errata"),
                    Map.entry("glossary", "glossary"),
                    Map.entry("bibliography", "bibliography"));

    private final BlockText words;
    private final Map<String, String> pages;
    private final Deque<Integer> starts = new ArrayDeque<>();
    private int preformatted;
    private int raised;

    /**
     * Makes a collector.
     *
     * @param pages labels of pages by the ids of the elements that they start at
     */
    HtmlWords(BlockText words, Map<String, String> pages) {
        this.words = words;
        this.pages = pages;
    }

    /** Adds the words of a tree. */
    void add(Node root) {
        root.filter(this);
    }

    @Override
    public FilterResult head(Node node, int depth) {
        if (node instanceof TextNode text && !(node instanceof CDataNode && isSilent(node))) {
            text(text.getWholeText());
            return FilterResult.CONTINUE;
        }
        if (!(node instanceof Element element)) {
            return FilterResult.SKIP_ENTIRELY;
        }
        String name = name(element);
        if (SILENT.contains(name)) {
            return FilterResult.SKIP_ENTIRELY;
        }
        words.breakLine(lineEnds(element, name));
        page(element);
        if (PageLabels.isBreak(element) && PageLabels.isBare(element)) {
            return FilterResult.SKIP_ENTIRELY;
        }
        open(element, name);
        starts.push(words.place());
        return FilterResult.CONTINUE;
    }

    private static boolean isSilent(Node node) {
        return node.parent() != null && SILENT.contains(node.parent().nodeName());
    }

    private void text(String characters) {
        if (preformatted > 0) {
            words.lines(characters.replace("\r\n", "\n").replace('\r', '\n'));
        } else if (raised > 0) {
            words.raised(characters);
        } else {
            words.words(characters);
        }
    }

    private void page(Element element) {
        Optional<String> listed =
                element.id().isEmpty()
                        ? Optional.empty()
                        : Optional.ofNullable(pages.get(element.id()));
        listed.or(() -> PageLabels.of(element)).ifPresent(words::page);
    }

    private void open(Element element, String name) {
        switch (name) {
            case "br" -> words.lineEnd();
            case "td", "th" -> words.openCell();
            case "pre" -> preformatted++;
            case "sup" -> raised++;
            case "mfrac" -> words.numerator();
            case "img" -> {
                // an ornamental letter is the first letter of its word
                if (element.attr("alt")
                                .strip()
                                .codePointCount(0, element.attr("alt").strip().length())
                        == 1) {
                    words.words(element.attr("alt").strip());
                }
            }
            default -> {
                // other elements only carry words
            }
        }
    }

    @Override
    public FilterResult tail(Node node, int depth) {
        if (!(node instanceof Element element)) {
            return FilterResult.CONTINUE;
        }
        String name = name(element);
        int start = starts.pop();
        switch (name) {
            case "td", "th" -> words.closeCell();
            case "pre" -> preformatted--;
            case "sup" -> raised--;
            default -> {
                // other elements only carry words
            }
        }
        mark(element, name, start);
        Element above = element.parent();
        if (above != null && name(above).equals("mfrac") && element.nextElementSibling() != null) {
            words.words("/");
        }
        words.breakLine(lineEnds(element, name));
        return FilterResult.CONTINUE;
    }

    private static String name(Element element) {
        String name = element.normalName();
        return name.substring(name.indexOf(':') + 1);
    }

    private static int lineEnds(Element element, String name) {
        if (PARAGRAPHS.contains(name) || element.hasClass("ocr_par")) {
            return 2;
        }
        boolean line = element.hasClass("ocr_line") || element.hasClass("ocr_header");
        return line || LINES.contains(name) ? 1 : 0;
    }

    private void mark(Element element, String name, int start) {
        if (name.matches("h[1-6]")) {
            words.mark(Mark.Kind.HEADING, name.substring(1), start);
        } else if (name.equals("li")) {
            words.mark(Mark.Kind.ITEM, "", start);
        } else if (name.equals("tr")) {
            words.mark(Mark.Kind.ROW, "", start);
        } else if (ITALIC.contains(name)) {
            words.mark(Mark.Kind.EMPHASIS, "italic", start);
        } else if (BOLD.contains(name)) {
            words.mark(Mark.Kind.EMPHASIS, "bold", start);
        }
        division(element).ifPresent(d -> words.mark(Mark.Kind.OTHER, d, start));
    }

    private static Optional<String> division(Element element) {
        String said = element.attr("epub:type") + " " + element.attr("role").replace("doc-", "");
        for (String word : said.strip().split("\\s+")) {
            if (NOTES.contains(word)) {
                return Optional.of("note");
            }
            if (DIVISIONS.containsKey(word)) {
                return Optional.of(DIVISIONS.get(word));
            }
        }
        boolean note = NOTES.stream().anyMatch(element::hasClass);
        return note ? Optional.of("note") : Optional.empty();
    }
}
