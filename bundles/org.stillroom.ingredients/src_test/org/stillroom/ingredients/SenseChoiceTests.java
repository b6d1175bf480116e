package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/** Sense choice on dated mentions, and planted anachronisms; both print their figures. */
class SenseChoiceTests {

    private final Thesaurus thesaurus = Thesaurus.shipped();

    static List<Row> rows(String file) throws IOException {
        try (InputStream in = SenseChoiceTests.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<String> lines = text.lines().filter(l -> !l.startsWith("#")).toList();
            List<String> heading = List.of(lines.get(0).split(","));
            return lines.stream()
                    .skip(1)
                    .map(l -> new Row(heading, List.of(l.split(",", -1))))
                    .toList();
        }
    }

    /** One row; the cells that are read hold no commas. */
    record Row(List<String> heading, List<String> cells) {
        String cell(String name) {
            return cells.get(heading.indexOf(name));
        }
    }

    private static Circumstances where(Row row) {
        return new Circumstances(
                Optional.of(row.cell("place")).filter(p -> !p.isEmpty()).map(Place::of),
                UncertainDate.parse(row.cell("date")),
                Optional.of(row.cell("trade")).flatMap(Trade::of),
                Optional.of("en"));
    }

    @Test
    void theRightSenseOfADatedMentionComesFirst() throws IOException {
        List<Row> rows = rows("mentions.csv");
        List<String> wrong = new ArrayList<>();
        for (Row row : rows) {
            List<Candidate> found = thesaurus.find(row.cell("words"), where(row));
            String sense = row.cell("sense").replace("*", singular(row.cell("words")));
            boolean right =
                    !found.isEmpty()
                            && thesaurus.withBroader(found.get(0).sense().id()).contains(sense);
            if (!right) {
                String first = found.isEmpty() ? "nothing" : found.get(0).sense().id();
                wrong.add(
                        row.cell("words")
                                + ' '
                                + row.cell("date")
                                + ' '
                                + row.cell("place")
                                + ": "
                                + first
                                + ", not "
                                + sense);
            }
        }
        double share = 1 - (double) wrong.size() / rows.size();
        System.out.printf(
                Locale.ROOT, "Sense choice: %.3f of %d dated mentions%n", share, rows.size());
        assertTrue(rows.size() >= 500, "only " + rows.size() + " mentions");
        assertTrue(share >= 0.95, share + ": " + wrong);
    }

    private static String singular(String words) {
        return words.equals("cloves") ? "clove" : words;
    }

    @Test
    void plantedAnachronismsAreFound() throws IOException {
        List<Row> rows = rows("planted.csv");
        List<String> missed = new ArrayList<>();
        List<String> alarms = new ArrayList<>();
        int planted = 0;
        for (Row row : rows) {
            List<Sense> senses =
                    row.cell("ingredient").isEmpty()
                            ? List.of()
                            : thesaurus.find(row.cell("ingredient"), where(row)).stream()
                                    .limit(1)
                                    .map(Candidate::sense)
                                    .toList();
            List<Anachronism> found =
                    Anachronisms.check(senses, row.cell("words"), where(row), thesaurus);
            boolean early = row.cell("early").equals("yes");
            planted += early ? 1 : 0;
            if (early && found.isEmpty()) {
                missed.add(row.cell("words") + ' ' + row.cell("date"));
            } else if (!early && !found.isEmpty()) {
                alarms.add(row.cell("words") + ' ' + row.cell("date"));
            }
        }
        int usual = rows.size() - planted;
        double recall = 1 - (double) missed.size() / planted;
        double false1 = (double) alarms.size() / usual;
        System.out.printf(
                Locale.ROOT,
                "Anachronisms: %.3f of %d planted found; %.3f of %d others reported%n",
                recall,
                planted,
                false1,
                usual);
        assertTrue(planted >= 60, "only " + planted);
        assertTrue(recall >= 0.95, recall + ": " + missed);
        assertTrue(false1 <= 0.02, false1 + ": " + alarms);
    }
}
