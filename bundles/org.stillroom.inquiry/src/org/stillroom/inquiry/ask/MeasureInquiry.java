package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import org.stillroom.ingredients.Anachronism;
import org.stillroom.ingredients.Anachronisms;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Parameter.Kind;
import org.stillroom.inquiry.Study;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.WeightedAuthority;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.phrase.PhraseAnswer;
import org.stillroom.measures.phrase.PhraseAnswer.Quantity;
import org.stillroom.measures.phrase.Phrases;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;

/** Says what a phrase of measure, strength or syrup meant, and who says so. */
@Component(service = Inquiry.class)
public final class MeasureInquiry implements Inquiry {

    private static final int MOST_ROWS = 12;

    private static final List<Parameter> PARAMETERS =
            List.of(
                    Parameter.object(
                            "phrase",
                            Kind.TEXT,
                            "such as “2 wineglasses”, “1½ gills”, “3 dashes”, “70 proof”, “30 °Bé”"),
                    Parameter.options(
                            "date", Kind.DATE, "when it was written; several are compared"),
                    Parameter.options(
                            "place", Kind.PLACE, "a town, region or country; several are compared"),
                    Parameter.option("trade", Kind.TEXT, "bar, kitchen, pharmacy or distilling"),
                    Parameter.option(
                            "source",
                            Kind.TEXT,
                            "a source of the library: its place, date, own table and decisions"),
                    Parameter.option(
                            "beside",
                            Kind.TEXT,
                            "more places and dates to compare: “US 1895; London 1862”"));

    @Override
    public String name() {
        return "measure";
    }

    @Override
    public String summary() {
        return "say what a measure held then and there, how sure that is, and who says so";
    }

    @Override
    public String example() {
        return "measure \"2 wineglasses\" --date 1862 --place GB --trade kitchen";
    }

    @Override
    public List<Parameter> parameters() {
        return PARAMETERS;
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        String phrase = arguments.required("phrase");
        Book book = book(desk, arguments, progress);
        List<Circumstances> wheres = wheres(arguments, book.where());
        Circumstances where = wheres.get(0);
        Phrases phrases = new Phrases(book.measures());
        PhraseAnswer answer = phrases.answer(phrase, where);
        List<Block> blocks = new ArrayList<>();
        ObjectNode json = Json.object().put("phrase", phrase);
        switch (answer) {
            case Quantity q -> quantity(q, blocks, json);
            case PhraseAnswer.Strength s -> strength(s, blocks, json);
            case PhraseAnswer.Syrup s -> syrup(s, blocks, json);
            case PhraseAnswer.None n -> throw refusal(n);
        }
        early(desk, phrase, wheres, blocks, json);
        if (wheres.size() > 1) {
            new SideBySide(phrases, phrase).write(wheres, blocks, json);
        }
        return new Answer(
                "What “" + phrase + "” meant",
                blocks,
                json,
                strangePlaces(book.measures(), wheres));
    }

    /** Reports places that the gazetteer does not know: nothing can be concluded from them. */
    private static List<Problem> strangePlaces(MeasureTable measures, List<Circumstances> wheres) {
        return wheres.stream()
                .flatMap(w -> w.place().stream())
                .filter(p -> measures.places().find(p).isEmpty())
                .map(Place::toText)
                .distinct()
                .map(
                        p ->
                                Problem.warning(
                                        "",
                                        "The place “"
                                                + p
                                                + "” is not known, so the answer holds for"
                                                + " any place.",
                                        "Name a country or a larger town, such as GB, US-NY or"
                                                + " London, or give it a row in knowledge/places.csv."))
                .toList();
    }

    /** A table of measures with the circumstances of the book that it is of, if it is of one. */
    private record Book(MeasureTable measures, Circumstances where) {}

    private static Book book(Desk desk, Arguments arguments, Progress progress) {
        Optional<String> id = arguments.text("source");
        if (id.isEmpty()) {
            return new Book(desk.knowledge().measures(), Circumstances.UNKNOWN);
        }
        Study study = desk.study(progress);
        BookStudy book =
                study.book(id.get())
                        .orElseThrow(
                                () ->
                                        new InquiryException(
                                                "There is no source “" + id.get() + "”.",
                                                "“sources --json” lists the ids of all."));
        return new Book(
                book.table(study.knowledge()), book.source().bibliography().circumstances());
    }

    /** Returns every place with every date, then those to be set beside. */
    private static List<Circumstances> wheres(Arguments told, Circumstances book) {
        List<String> places = told.texts("place").isEmpty() ? List.of("") : told.texts("place");
        List<String> dates = told.texts("date").isEmpty() ? List.of("") : told.texts("date");
        List<Circumstances> all = new ArrayList<>();
        for (String place : places) {
            for (String date : dates) {
                all.add(told.with("place", place).with("date", date).circumstances().orElse(book));
            }
        }
        for (String other : told.texts("beside")) {
            all.add(circumstances(other, all.get(0)));
        }
        return all;
    }

    /** Tells where a word of measure stands before its time. */
    private static void early(
            Desk desk,
            String phrase,
            List<Circumstances> wheres,
            List<Block> blocks,
            ObjectNode json) {
        ArrayNode early = Json.array();
        for (Circumstances where : wheres) {
            for (Anachronism a :
                    Anachronisms.check(List.of(), phrase, where, desk.knowledge().thesaurus())) {
                blocks.add(new Block.Paragraph("Before its time: " + a.why().statement()));
                blocks.add(new Block.Why(a.why()));
                early.add(
                        Json.object()
                                .put("subject", a.subject())
                                .put("certain", a.certain())
                                .put("why", a.why().statement())
                                .put("source", a.milestone().source().work()));
            }
        }
        json.set("anachronisms", early);
    }

    private static InquiryException refusal(PhraseAnswer.None none) {
        boolean told = none.reason().contains("The nearest known");
        if (told) {
            return new InquiryException(
                    none.reason(), "“word” shows what is known of a word of measure.");
        }
        String nearest =
                none.nearest().isEmpty()
                        ? "Try a number and a measure, such as “2 wineglasses”."
                        : "The nearest that are known: " + String.join(", ", none.nearest()) + ".";
        return new InquiryException(none.reason(), nearest);
    }

    private static void quantity(Quantity q, List<Block> blocks, ObjectNode json) {
        boolean mass = isMass(q);
        Json.put(json, "ml", mass ? Optional.empty() : q.amount(), 1);
        Json.put(json, "g", mass ? q.amount() : Optional.empty(), 1);
        blocks.add(new Block.Paragraph(q.text() + ": " + written(q) + "."));
        blocks.add(new Block.Paragraph(q.reason()));
        ArrayNode authorities = Json.array();
        Optional<String> system = Optional.empty();
        List<String> warnings = List.of();
        if (q.meaning() instanceof MeasureMeaning.Measured m) {
            double number = q.phrase().quantity().toDouble();
            competing(m, number, mass, blocks);
            authorities(
                    "Who says what, weightiest first",
                    m.authorities(),
                    number,
                    mass,
                    blocks,
                    authorities);
            system = Optional.of(m.systems().likeliest().label());
            warnings = m.warnings();
        } else if (q.meaning() instanceof MeasureMeaning.Unmeasured u) {
            warnings = u.warnings();
        }
        beware(warnings, blocks);
        blocks.add(new Block.Why(q.meaning().explanation()));
        json.set("authorities", authorities);
        Json.put(json, "system", system);
        json.put("reason", q.reason());
        json.set("warnings", Json.strings(warnings));
    }

    private static void beware(List<String> warnings, List<Block> blocks) {
        warnings.forEach(w -> blocks.add(new Block.Paragraph("Beware: " + w)));
    }

    static boolean isMass(Quantity q) {
        return q.dimension().filter(d -> d == Dimension.MASS).isPresent();
    }

    static String written(Quantity q) {
        String unit = isMass(q) ? "g" : "ml";
        return q.amount().map(a -> AmountFormat.write(a, unit)).orElse("no amount");
    }

    /** Where several amounts compete, none is settled by force. */
    private static void competing(
            MeasureMeaning.Measured m, double number, boolean mass, List<Block> blocks) {
        List<List<String>> rows =
                m.answers().stream()
                        .filter(a -> a.share() >= 0.05)
                        .map(
                                a ->
                                        List.of(
                                                AmountFormat.exact(a.amount() * number),
                                                String.format(
                                                        Locale.ROOT, "%.0f %%", 100 * a.share()),
                                                a.who()))
                        .toList();
        if (rows.size() > 1) {
            blocks.add(
                    new Block.Table(
                            "Amounts that compete",
                            List.of(mass ? "g" : "ml", "likely", "by"),
                            List.of(true, true, false),
                            rows,
                            List.of()));
        }
    }

    static void authorities(
            String caption,
            List<WeightedAuthority> all,
            double number,
            boolean mass,
            List<Block> blocks,
            ArrayNode json) {
        List<List<String>> rows = new ArrayList<>();
        for (WeightedAuthority a : all) {
            double amount = a.amount() * number;
            if (rows.size() < MOST_ROWS) {
                rows.add(row(a, amount, mass));
            }
            json.add(json(a, amount, mass));
        }
        if (!rows.isEmpty()) {
            blocks.add(
                    new Block.Table(
                            caption,
                            List.of(
                                    "source",
                                    "date",
                                    "place",
                                    "trade",
                                    mass ? "g" : "ml",
                                    "weight",
                                    "known"),
                            List.of(false, false, false, false, true, true, false),
                            rows,
                            List.of()));
        }
    }

    private static List<String> row(WeightedAuthority a, double amount, boolean mass) {
        return List.of(
                a.source(),
                a.date(),
                a.placeName(),
                a.authority().trade(),
                Double.isNaN(amount) ? "–" : AmountFormat.exact(amount),
                String.format(Locale.ROOT, "%.0f %%", a.share() * 100),
                a.authority().citation().status().words());
    }

    private static ObjectNode json(WeightedAuthority a, double amount, boolean mass) {
        ObjectNode node = Json.object().put("source", a.source());
        Json.put(node, "date", filled(a.date()));
        Json.put(node, "place", filled(a.placeName()));
        Json.put(node, "trade", filled(a.authority().trade()));
        String unit = mass ? "g" : "ml";
        node.putNull("ml");
        if (!Double.isNaN(amount)) {
            node.put(unit, Json.number(amount));
        }
        return node.put("status", a.authority().citation().status().words())
                .put("weight", Json.number(a.share()))
                .put("statement", a.authority().statement());
    }

    private static Optional<String> filled(String words) {
        return Optional.of(words).filter(w -> !w.isEmpty());
    }

    private static void strength(PhraseAnswer.Strength s, List<Block> blocks, ObjectNode json) {
        blocks.add(new Block.Paragraph(s.reason()));
        List<List<String>> rows = new ArrayList<>();
        ArrayNode readings = Json.array();
        for (PhraseAnswer.StrengthReading r : s.readings()) {
            rows.add(
                    List.of(
                            r.scale(),
                            String.format(Locale.ROOT, "%.1f", r.strength() * 100),
                            String.format(Locale.ROOT, "%.0f %%", r.share() * 100),
                            r.source()));
            readings.add(
                    Json.object()
                            .put("scale", r.scale())
                            .put("strength", Json.number(r.strength()))
                            .put("share", Json.number(r.share()))
                            .put("source", r.source()));
        }
        blocks.add(
                new Block.Table(
                        "What it may mean, likeliest first",
                        List.of("scale", "% vol at 20 °C", "likely", "source"),
                        List.of(false, true, true, false),
                        rows,
                        List.of()));
        beware(s.warnings(), blocks);
        ObjectNode answer = none(json, s.reason());
        answer.set("strengths", readings);
        answer.set("warnings", Json.strings(s.warnings()));
    }

    private static void syrup(PhraseAnswer.Syrup s, List<Block> blocks, ObjectNode json) {
        blocks.add(new Block.Paragraph(s.reason()));
        List<List<String>> rows = new ArrayList<>();
        ArrayNode readings = Json.array();
        for (PhraseAnswer.SyrupReading r : s.readings()) {
            rows.add(
                    List.of(
                            r.scale(),
                            String.format(Locale.ROOT, "%.3f", r.gravity()),
                            String.format(Locale.ROOT, "%.1f", r.brix()),
                            String.format(Locale.ROOT, "%.0f", r.gramsPerLitre()),
                            r.source()));
            readings.add(
                    Json.object()
                            .put("scale", r.scale())
                            .put("gravity", Json.number(r.gravity()))
                            .put("brix", Json.number(r.brix()))
                            .put("gramsPerLitre", Json.number(r.gramsPerLitre()))
                            .put("source", r.source()));
        }
        blocks.add(
                new Block.Table(
                        "What it may mean, likeliest first",
                        List.of("scale", "specific gravity", "°Brix", "g/L sugar", "source"),
                        List.of(false, true, true, true, false),
                        rows,
                        List.of()));
        beware(s.warnings(), blocks);
        ObjectNode answer = none(json, s.reason());
        answer.set("syrups", readings);
        answer.set("warnings", Json.strings(s.warnings()));
    }

    /** Fills the stable fields of an answer that is no volume. */
    private static ObjectNode none(ObjectNode json, String reason) {
        json.putNull("ml");
        json.set("authorities", Json.array());
        json.putNull("system");
        return json.put("reason", reason);
    }

    /** Reads “London 1862”: the last word is a date where it is one. */
    private static Circumstances circumstances(String words, Circumstances rest) {
        int blank = words.lastIndexOf(' ');
        Arguments told =
                org.stillroom.model.date.UncertainDate.parse(words.substring(blank + 1)).isPresent()
                        ? Arguments.of(
                                "place", words.substring(0, Math.max(0, blank)).strip(),
                                "date", words.substring(blank + 1))
                        : Arguments.of("place", words);
        return told.circumstances()
                .orElse(
                        new Circumstances(
                                Optional.empty(), Optional.empty(), rest.trade(), rest.language()));
    }
}
