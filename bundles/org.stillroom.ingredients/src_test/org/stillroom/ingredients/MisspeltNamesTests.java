package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.text.Folding;

/** Names as careless hands, old printers and other languages spell them. */
class MisspeltNamesTests {

    private static final Thesaurus THESAURUS = Thesaurus.shipped();

    private static List<Candidate> find(String words) {
        return THESAURUS.find(words, Circumstances.UNKNOWN);
    }

    @Test
    void periodSpellingsLeadToTheirSenses() throws IOException {
        Map<String, Set<String>> bearers = new HashMap<>();
        for (String id : THESAURUS.senses().keySet()) {
            for (Label label : THESAURUS.labels(id)) {
                bearers.computeIfAbsent(Folding.foldWord(label.text()), k -> new HashSet<>())
                        .add(id);
            }
        }
        int all = 0;
        int first = 0;
        int three = 0;
        for (String line : lines()) {
            String[] cells = line.split("\t");
            int rank = rank(find(cells[0]), bearers.get(Folding.foldWord(cells[1])));
            all++;
            first += rank == 1 ? 1 : 0;
            three += rank >= 1 && rank <= 3 ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "Period spellings: %d of %d right first, %d within three%n",
                first,
                all,
                three);
        assertTrue(first >= 0.95 * all, first + " of " + all);
        assertTrue(three >= 0.99 * all, three + " of " + all);
    }

    private static List<String> lines() throws IOException {
        try (BufferedReader reader =
                new BufferedReader(
                        new InputStreamReader(
                                MisspeltNamesTests.class.getResourceAsStream("misspelt.tsv"),
                                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(l -> !l.startsWith("#") && !l.startsWith("spelling\t"))
                    .toList();
        }
    }

    private static int rank(List<Candidate> found, Set<String> right) {
        for (int i = 0; i < found.size(); i++) {
            if (THESAURUS.withBroader(found.get(i).sense().id()).stream()
                    .anyMatch(right::contains)) {
                return i + 1;
            }
        }
        return 0;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Water,Tonic|tonic-water",
                "flowers, eldder|elderflower",
                "syrup, rasberry|raspberry-syrup",
                "brendy, Californa|brandy",
                "Melh|honey",
                "thé|tea",
                "arrrack|arrack",
            })
    void wordsInAnyOrderAndOneSlipAreFound(String words, String sense) {
        List<Candidate> found = find(words);
        boolean there =
                found.stream()
                        .limit(3)
                        .anyMatch(c -> THESAURUS.withBroader(c.sense().id()).contains(sense));
        assertTrue(there, found.toString());
    }

    @Test
    void anArticleIsNoTea() {
        assertEquals(List.of(), find("the"));
    }
}
