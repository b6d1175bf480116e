package org.stillroom.report.page;

import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.explain.Problem;
import org.stillroom.report.Drawing;
import org.stillroom.report.Figures;
import org.stillroom.report.Look;

/**
 * Writes an answer as one page of HTML that needs nothing beside it.
 *
 * <p>Headings, table headers and alternative texts are marked so that a screen reader can go by
 * them.
 */
public final class AnswerPage {

    private static final String STYLE =
            "body{font:16px/1.5 Georgia,serif;max-width:60rem;margin:2rem auto;padding:0 1rem;"
                    + "color:#2b2a28;background:#fbf9f4}table{border-collapse:collapse;margin:1rem 0}"
                    + "caption{text-align:left;font-weight:bold;padding:.3rem 0}"
                    + "th,td{border-bottom:1px solid #cfc8ba;padding:.25rem .6rem;text-align:left;"
                    + "vertical-align:top}td.n,th.n{text-align:right}figure{margin:1rem 0}"
                    + "svg{max-width:100%;height:auto}.problem{color:#8c2f1b}";

    private AnswerPage() {}

    /** Returns the page. */
    public static String of(Answer answer) {
        Document page = Document.createShell("");
        page.outputSettings().prettyPrint(false);
        Element html = page.selectFirst("html");
        html.attr("lang", "en");
        page.head().appendElement("meta").attr("charset", "utf-8");
        page.head()
                .appendElement("meta")
                .attr("name", "viewport")
                .attr("content", "width=device-width, initial-scale=1");
        page.title(answer.title());
        page.head().appendElement("style").appendChild(new org.jsoup.nodes.DataNode(STYLE));
        Element main = page.body().appendElement("main");
        main.appendElement("h1").text(answer.title());
        int figures = 0;
        for (Block block : answer.blocks()) {
            switch (block) {
                case Block.Paragraph p -> main.appendElement("p").text(p.words());
                case Block.Heading h -> main.appendElement("h2").text(h.words());
                case Block.Table t -> table(main, t);
                case Block.Why w -> why(main.appendElement("ul"), w.explanation());
                case Block.Picture p -> picture(main, p, ++figures);
            }
        }
        for (Problem problem : answer.problems()) {
            main.appendElement("p").addClass("problem").text(problem.toText());
        }
        return "<!doctype html>\n" + html.outerHtml() + "\n";
    }

    private static void table(Element main, Block.Table t) {
        Element table = main.appendElement("table");
        table.appendElement("caption").text(t.caption());
        Element head = table.appendElement("thead").appendElement("tr");
        for (int i = 0; i < t.columns().size(); i++) {
            Element cell = head.appendElement("th").attr("scope", "col").text(t.columns().get(i));
            if (t.numeric().get(i)) {
                cell.addClass("n");
            }
        }
        Element body = table.appendElement("tbody");
        for (var row : t.rows()) {
            Element line = body.appendElement("tr");
            for (int i = 0; i < row.size(); i++) {
                Element cell = line.appendElement("td").text(row.get(i));
                if (t.numeric().get(i)) {
                    cell.addClass("n");
                }
            }
        }
        if (!t.whys().isEmpty()) {
            Element details = main.appendElement("details");
            details.appendElement("summary").text("Why these amounts");
            Element list = details.appendElement("ul");
            t.whys().forEach(w -> why(list, w));
        }
    }

    private static void why(Element list, Explanation e) {
        String source =
                e.source().map(c -> " [" + c.work() + "; " + c.status().words() + "]").orElse("");
        Element item = list.appendElement("li").text(e.statement() + source);
        if (!e.because().isEmpty()) {
            Element inner = item.appendElement("ul");
            e.because().forEach(b -> why(inner, b));
        }
    }

    private static void picture(Element main, Block.Picture p, int number) {
        Drawing drawing = Figures.draw(p.figure(), Look.LIGHT);
        String svg = drawing.svg().substring(drawing.svg().indexOf("<svg"));
        Element figure = main.appendElement("figure");
        String unique =
                svg.replace("id=\"", "id=\"f" + number + "-")
                        .replace("url(#", "url(#f" + number + "-");
        Document parsed = org.jsoup.Jsoup.parse(unique, "", Parser.xmlParser());
        figure.appendChild(parsed.child(0));
        figure.appendElement("figcaption").text(drawing.title());
    }
}
