package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.source.Circumstances;

class ThesaurusTests {

    private final Thesaurus thesaurus = Thesaurus.shipped();

    @Test
    void shipsWhatWasPromised() {
        long labels =
                thesaurus.senses().keySet().stream()
                        .mapToLong(id -> thesaurus.labels(id).size())
                        .sum();
        assertTrue(thesaurus.senses().size() >= 600, () -> thesaurus.senses().size() + " senses");
        assertTrue(labels >= 2500, () -> labels + " labels");
    }

    @Test
    void everyStatementNamesItsSource() {
        for (Sense sense : thesaurus.senses().values()) {
            assertFalse(sense.source().work().isBlank(), sense.id());
            thesaurus
                    .labels(sense.id())
                    .forEach(l -> assertFalse(l.source().work().isBlank(), l.text()));
            sense.properties()
                    .figures()
                    .values()
                    .forEach(f -> assertFalse(f.source().work().isBlank(), sense.id()));
        }
    }

    @Test
    void everyNameFindsItsSense() {
        List<String> lost = new ArrayList<>();
        for (String id : thesaurus.senses().keySet()) {
            for (Label label : thesaurus.labels(id)) {
                boolean found =
                        thesaurus.find(label.text(), Circumstances.UNKNOWN).stream()
                                .anyMatch(c -> c.sense().id().equals(id));
                if (!found) {
                    lost.add(id + ": " + label.text());
                }
            }
        }
        assertEquals(List.of(), lost);
    }

    /**
     * Period senses. Sources beside each: KAP95 is Kappeler, Modern American Drinks, 1895, whose gum
     * syrup is sugar and water; the rest is common knowledge of the trade, from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "gum syrup, 1895, US, gum-syrup-plain", // KAP95
        "gum syrup, 1862, US, gum-syrup-acacia", // from memory
        "orgeat, 1750, GB, orgeat-barley", // 1913 dictionary: “formerly a decoction of barley”
        "orgeat, 1861, GB, orgeat",
        "Italian vermouth, 1895, US, sweet-vermouth", // KAP95 stocks both
        "French vermouth, 1895, US, dry-vermouth", // KAP95
        "gin, 1862, US, geneva",
        "gin, 1889, US, old-tom-gin",
        "gin, 1925, US, dry-gin",
        "Hollands, 1830, GB, geneva",
        "peach brandy, 1830, US, peach-brandy-distilled",
        "peach brandy, 1900, GB, peach-brandy-cordial",
        "arrack, 1740, GB, palm-arrack",
        "arrack, 1890, US, batavia-arrack",
        "whisky, 1890, GB, scotch-whisky",
        "shrub, 1850, GB, shrub",
        "plums, 1740, GB, raisin-dried",
        "plums, 1890, GB, plum",
    })
    void aNameMeansWhatItMeantThere(String words, String date, String place, String sense) {
        List<Candidate> found = thesaurus.find(words, Where.of(date, place));
        assertEquals(sense, found.get(0).sense().id(), () -> found.toString());
    }

    @Test
    void anAmbiguousNameKeepsItsCandidates() {
        List<String> senses =
                thesaurus.find("gin", Where.of("1862", "US")).stream()
                        .map(c -> c.sense().id())
                        .toList();
        assertTrue(senses.containsAll(List.of("geneva", "gin", "old-tom-gin", "dry-gin")));
    }

    @ParameterizedTest
    @CsvSource({
        "maraſchino, maraschino",
        "MARASCHINO, maraschino",
        "pine-apples, pineapple",
        "orange flower-water, orange-flower-water",
        "crême de menthe, creme-de-menthe",
        "rafpberry vinegar, raspberry-vinegar",
        "bitters, aromatic-bitters",
        "vermouth (Italian), sweet-vermouth",
        "'vermouth, French', dry-vermouth",
        "Fr. verm., dry-vermouth",
        "cort. limonis, lemon-peel",
        "peel of the lemon, lemon-peel",
        "the yolk of an egg, egg-yolk",
        "kiimmel, kummel",
        "lernon juice, lemon-juice",
        "best old pale brandy, brandy",
    })
    void foldsShortensAndMends(String words, String sense) {
        List<Candidate> found = thesaurus.find(words, Where.of("1888", "US"));
        assertEquals(sense, found.get(0).sense().id(), () -> found.toString());
    }

    @Test
    void whatIsNoIngredientIsNotFound() {
        assertEquals(List.of(), thesaurus.find("qxzzvw", Circumstances.UNKNOWN));
        assertEquals(List.of(), thesaurus.find("", Circumstances.UNKNOWN));
        assertFalse(thesaurus.looksLikeIngredient("qxzzvw"));
        assertTrue(thesaurus.looksLikeIngredient("a little ginger"));
        assertTrue(thesaurus.looksLikeIngredient("marachino"));
    }

    @Test
    void misspellingsAndTradeWordsAreNeverShown() {
        thesaurus
                .find("curacoe", Circumstances.UNKNOWN)
                .forEach(c -> assertFalse(c.reason().contains("curacoe"), c.reason()));
    }

    @ParameterizedTest
    @CsvSource({
        "geneva, gin",
        "old-tom-gin, gin",
        "cognac, brandy",
        "curacao, curacao",
        "triple-sec, curacao",
        "loaf-sugar, sugar",
        "gum-syrup-plain, sugar-syrup",
        "orgeat, orgeat",
        "egg-white, egg-white",
        "jamaica-rum, rum",
        "lemon-juice, lemon-juice",
    })
    void aFamilyIsWhatVersionsAreComparedBy(String sense, String family) {
        assertEquals(family, thesaurus.family(sense));
    }

    @Test
    void sameQuestionSameAnswer() {
        assertEquals(
                thesaurus.find("curracoa", Where.of("186X", "GB")),
                thesaurus.find("curracoa", Where.of("186X", "GB")));
    }
}
