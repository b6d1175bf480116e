package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;

/**
 * Reads HTML: words, headings, items, rows, emphasis, page anchors such as {@code id="page_12"}.
 *
 * <p>Nothing that a page refers to is fetched. The dates of its metadata are those of the file, not
 * of the text, and are left out.
 */
final class Html implements SourceReader {

    private static final Set<String> PARAGRAPHS =
            Set.of("p", "h1", "h2", "h3", "h4", "h5", "h6", "ul", "ol", "dl", "table", "hr");
    private static final Set<String> SILENT =
            Set.of("head", "script", "style", "template", "noscript", "svg", "iframe");
    private static final Set<String> ITALIC = Set.of("i", "em", "cite");
    private static final Set<String> BOLD = Set.of("b", "strong");
    private static final Pattern PAGE =
            Pattern.compile("(?i)(?:page|pg|p)[-_.]?(\\d{1,4}|[ivxlc]{1,8})");

    @Override
    public List<String> endings() {
        return List.of(".html", ".htm", ".xhtml");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        try {
            FileText whole = FileText.read(id, file);
            Document document = Jsoup.parse(whole.text());
            BlockText words = new BlockText();
            walk(document, words);
            if (words.text().isBlank()) {
                return Result.failed(
                        Problem.error(
                                id, "There is no text in it.", "Put the transcription into it."));
            }
            Sidecar sidecar = Sidecar.of(id, file);
            Map<String, FrontMatter.Field> said = new LinkedHashMap<>(sidecar.fields());
            metadata(document).forEach(said::putIfAbsent);
            BibliographyFields fields = new BibliographyFields(sidecar.id(), said);
            Bibliography b = fields.toBibliography(Titles.fromFile(file), defaults);
            List<Problem> problems = new ArrayList<>(sidecar.problems());
            problems.addAll(fields.problems());
            SourceText text = SourceText.of(words.text());
            String digest = whole.digest() + sidecar.digest();
            return new Result(
                    Optional.of(new Source(id, b, text, words.marks(), digest)), problems);
        } catch (FileText.Refused e) {
            return Result.failed(e.problem());
        }
    }

    private static Map<String, FrontMatter.Field> metadata(Document document) {
        Map<String, FrontMatter.Field> fields = new LinkedHashMap<>();
        put(fields, "title", document.title());
        for (Node node : document.head().childNodes()) {
            if (node.nodeName().equals("meta")) {
                switch (node.attr("name").toLowerCase(Locale.ROOT)) {
                    case "author", "dc.creator" -> put(fields, "author", node.attr("content"));
                    case "dc.language" -> put(fields, "language", node.attr("content"));
                    case "dc.rights" -> put(fields, "rights", node.attr("content"));
                    default -> {
                        // other fields say nothing of the edition
                    }
                }
            }
        }
        return fields;
    }

    private static void put(Map<String, FrontMatter.Field> fields, String name, String words) {
        if (!words.isBlank()) {
            fields.putIfAbsent(name, new FrontMatter.Field(words.strip(), 1));
        }
    }

    private static void walk(Node node, BlockText words) {
        if (node instanceof TextNode text) {
            words.words(text.getWholeText());
            return;
        }
        String name = node.nodeName();
        if (SILENT.contains(name)) {
            return;
        }
        int lineEnds = lineEnds(node, name);
        words.breakLine(lineEnds);
        Matcher page =
                PAGE.matcher(node.attr("id").isEmpty() ? node.attr("name") : node.attr("id"));
        if (node instanceof Element && page.matches()) {
            words.page(page.group(1));
        }
        int start = words.place();
        for (Node child : node.childNodes()) {
            walk(child, words);
        }
        if (name.equals("td") || name.equals("th")) {
            words.words(" ");
        }
        mark(name, start, words);
        words.breakLine(lineEnds);
    }

    private static int lineEnds(Node node, String name) {
        if (PARAGRAPHS.contains(name)) {
            return 2;
        }
        boolean cell = name.equals("td") || name.equals("th");
        boolean block = node instanceof Element element && element.isBlock() && !cell;
        return block || name.equals("br") ? 1 : 0;
    }

    private static void mark(String name, int start, BlockText words) {
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
    }
}
