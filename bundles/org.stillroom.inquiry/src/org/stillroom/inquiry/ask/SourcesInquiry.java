package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Component;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Study;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/** Lists the sources of the library with what was read in each. */
@Component(service = Inquiry.class)
public final class SourcesInquiry implements Inquiry {

    private static final List<String> COLUMNS =
            List.of("source", "author", "date", "place", "trade", "recipes", "doubtful");
    private static final List<Boolean> NUMERIC =
            List.of(false, false, false, false, false, true, true);

    @Override
    public String name() {
        return "sources";
    }

    @Override
    public String summary() {
        return "list the sources of the library, and which decades and places are thin";
    }

    @Override
    public String example() {
        return "sources";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of();
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        List<BookStudy> books = new ArrayList<>(study.books());
        books.sort(
                Comparator.comparingDouble(SourcesInquiry::year)
                        .thenComparing(b -> b.source().id()));
        List<List<String>> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        ArrayNode json = Json.array();
        for (BookStudy book : books) {
            rows.add(row(book));
            targets.add(book.source().id());
            json.add(
                    ReadingJson.source(book.source())
                            .put("recipes", book.versions().size())
                            .put("doubtful", doubtful(book)));
        }
        ObjectNode answer = Json.object().put("library", study.title());
        answer.set("sources", json);
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Paragraph(
                        counted(books.size(), "source")
                                + " with "
                                + counted(study.versions().size(), "recipe")
                                + ", of which "
                                + books.stream().mapToLong(SourcesInquiry::doubtful).sum()
                                + " have something doubtful."));
        blocks.add(new Block.Table("Sources by date", COLUMNS, NUMERIC, rows, targets));
        blocks.add(coverage(books, answer));
        return new Answer("Sources of " + study.title(), blocks, answer, study.problems());
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private static double year(BookStudy book) {
        double year =
                book.source().bibliography().date().map(d -> d.middleYear()).orElse(Double.NaN);
        return Double.isNaN(year) ? Double.MAX_VALUE : year;
    }

    private static long doubtful(BookStudy book) {
        return book.versions().stream().filter(v -> !v.reading().doubts().isEmpty()).count();
    }

    private static List<String> row(BookStudy book) {
        Bibliography b = book.source().bibliography();
        return List.of(
                b.title(),
                b.author().orElse(""),
                b.date().map(d -> d.toText()).orElse("undated"),
                b.place().map(Place::toText).orElse("unknown"),
                b.trade().map(Trade::word).orElse("unknown"),
                Integer.toString(book.versions().size()),
                Long.toString(doubtful(book)));
    }

    /** Returns how many recipes each decade has in each country. */
    private static Block coverage(List<BookStudy> books, ObjectNode answer) {
        Map<String, Map<String, Integer>> counts = new TreeMap<>();
        Map<String, Integer> countries = new TreeMap<>();
        for (BookStudy book : books) {
            double year = year(book);
            String decade =
                    year == Double.MAX_VALUE ? "undated" : (int) Math.floor(year / 10) * 10 + "s";
            String country =
                    book.source()
                            .bibliography()
                            .place()
                            .flatMap(Place::country)
                            .orElse("elsewhere");
            countries.merge(country, book.versions().size(), Integer::sum);
            counts.computeIfAbsent(decade, d -> new TreeMap<>())
                    .merge(country, book.versions().size(), Integer::sum);
        }
        List<String> columns = new ArrayList<>(List.of("decade"));
        columns.addAll(countries.keySet());
        List<Boolean> numeric = new ArrayList<>(List.of(false));
        countries.forEach((c, n) -> numeric.add(true));
        List<List<String>> rows = new ArrayList<>();
        ObjectNode json = Json.object();
        for (Map.Entry<String, Map<String, Integer>> decade : counts.entrySet()) {
            List<String> row = new ArrayList<>(List.of(decade.getKey()));
            ObjectNode node = Json.object();
            for (String country : countries.keySet()) {
                int n = decade.getValue().getOrDefault(country, 0);
                row.add(Integer.toString(n));
                node.put(country, n);
            }
            rows.add(row);
            json.set(decade.getKey(), node);
        }
        answer.set("coverage", json);
        return new Block.Table("Recipes by decade and country", columns, numeric, rows, List.of());
    }
}
