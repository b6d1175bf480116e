package org.stillroom.library.read;

import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/**
 * Reads HTML and XHTML, also as programs for text recognition write it (hOCR): words, headings,
 * items, rows, emphasis, page anchors such as {@code id="page_12"}.
 *
 * <p>Nothing that a page refers to is fetched.
 */
final class Html implements SourceReader {

    /** As many bytes as the HTML standard lets a reader look for the encoding. */
    private static final int PRESCAN = 1024;

    private static final Pattern CHARSET =
            Pattern.compile(
                    "(?i)(?:<meta[^>]*?charset|<\\?xml[^>]*?encoding)\\s*=\\s*[\"']?\\s*"
                            + "([a-z0-9_:.()-]+)");

    private final FileAccess access;

    Html(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".html", ".htm", ".xhtml", ".hocr");
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
        FileText whole = FileText.of(id, bytes, charset(id, bytes));
        boolean xml = id.toLowerCase(Locale.ROOT).endsWith(".xhtml");
        Document document = parse(id, "", whole.text(), xml, budget);
        BlockText words = new BlockText(budget);
        new HtmlWords(words, Map.of()).add(document);
        return new Draft(
                words.text(), words.marks(), metadata(id, document), whole.digest(), List.of());
    }

    /**
     * Parses a page, or a chapter of an EPUB.
     *
     * @param part the part of the file that it is, or empty
     * @param xml whether an empty element may be closed in its own tag
     */
    static Document parse(String id, String part, String text, boolean xml, TimeBudget budget)
            throws Refused {
        int root = Math.max(0, text.toLowerCase(Locale.ROOT).indexOf("<html"));
        if (text.substring(0, root).contains("<!ENTITY")) {
            throw new Refused(
                    Problem.error(
                            id,
                            1,
                            part,
                            "It declares entities, which are neither fetched nor expanded.",
                            "Write the words themselves in the place of each “&name;”."));
        }
        Parser parser = xml ? Parser.xmlParser() : Parser.htmlParser();
        return parser.parseInput(new TimedReader(new StringReader(text), budget), "");
    }

    /** Returns the encoding that a page declares, else UTF-8. */
    static Charset charset(String id, byte[] bytes) throws Refused {
        String head =
                new String(bytes, 0, Math.min(bytes.length, PRESCAN), StandardCharsets.ISO_8859_1);
        Matcher m = CHARSET.matcher(head);
        if (!m.find()) {
            return StandardCharsets.UTF_8;
        }
        String name = m.group(1).toLowerCase(Locale.ROOT);
        // by the WHATWG Encoding Standard a page that says Latin-1 or ASCII means Windows-1252,
        // and one that says UTF-16 in plain letters cannot be in it
        if (name.matches("iso-?8859-1|latin-?1|(?:us-)?ascii|cp1252|x-cp1252")) {
            return Charset.forName("windows-1252");
        }
        if (name.startsWith("utf-16")) {
            return StandardCharsets.UTF_8;
        }
        try {
            return Charset.forName(name);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new Refused(
                    Problem.error(
                            id,
                            1,
                            m.group(1),
                            "It says that it is in an encoding that is not known here.",
                            "Open it in a text editor and save it as UTF-8."));
        }
    }

    private static Map<String, FrontMatter.Field> metadata(String id, Document document) {
        OwnFields fields = new OwnFields(id);
        Optional.ofNullable(document.selectFirst("head > title, html > title"))
                .ifPresent(t -> fields.title(t.text()));
        for (Element meta : document.select("head > meta[name]")) {
            String content = meta.attr("content");
            switch (meta.attr("name").toLowerCase(Locale.ROOT)) {
                case "author", "dc.creator", "dcterms.creator" -> fields.say("author", content);
                case "dc.title", "dcterms.title" -> fields.title(content);
                case "dc.language", "dcterms.language" -> fields.language(content);
                case "dc.rights", "dcterms.rights" -> fields.say("rights", content);
                case "date", "dc.date", "dcterms.date", "dcterms.created", "dcterms.issued" ->
                        fields.date(content);
                default -> {
                    // other fields say nothing of the edition
                }
            }
        }
        Optional.ofNullable(document.selectFirst("html"))
                .ifPresent(
                        h ->
                                fields.language(
                                        h.attr("lang").isEmpty()
                                                ? h.attr("xml:lang")
                                                : h.attr("lang")));
        return fields.fields();
    }
}
