package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Caution;

class CautionsTests {

    private final Thesaurus thesaurus = Thesaurus.shipped();

    private Sense sense(String words) {
        return thesaurus.find(words, Where.of("1860", "GB")).get(0).sense();
    }

    private Cautions of(String... words) {
        return Cautions.of(
                List.of(words).stream().map(this::sense).toList(),
                List.of(),
                Where.of("2020", "GB"));
    }

    /** Period names and the rule or author that speaks of the thing. */
    @ParameterizedTest
    @CsvSource({
        "sweet flag root, STOP", // 21 CFR 189.110
        "calamus aromaticus, STOP", // 21 CFR 189.110
        "oil of sassafras, STOP", // 21 CFR 189.180, from memory
        "tonquin bean, STOP", // 21 CFR 189.130, from memory
        "woodruff, RESTRICTED", // 88/388/EEC
        "wormwood, RESTRICTED", // 21 CFR 172.510
        "absinthe, RESTRICTED", // Regulation 1334/2008
        "tansy, STOP", // 21 CFR 172.510
        "Peruvian bark, RESTRICTED", // 21 CFR 172.575
        "bitter almonds, STOP", // 88/388/EEC
        "noyeau, STOP", // 88/388/EEC
        "peach kernels, STOP", // 88/388/EEC
        "laurel water, STOP", // Accum 1820
        "pennyroyal, STOP", // 88/388/EEC
        "rue, STOP", // 21 CFR 184.1698, from memory
        "quassia chips, RESTRICTED", // 88/388/EEC
        "St. John's wort, RESTRICTED", // 88/388/EEC
        "aloes, RESTRICTED", // 88/388/EEC
        "Virginia snake-root, STOP", // FDA 2001, from memory
        "oil of vitriol, STOP", // Spons 1894
        "elixir of vitriol, STOP", // Spons 1894
        "sugar of lead, STOP", // Accum 1820
        "litharge, STOP", // Accum 1820
        "cocculus indicus, STOP", // Accum 1820
        "nux vomica, STOP", // Accum 1820
        "laudanum, STOP", // Accum 1820
        "sal volatile, STOP", // Kappeler 1895
        "acid phosphate, CARE", // Kappeler 1895
        "cochineal, CARE", // 21 CFR 73.100, from memory
        "ambergris, RESTRICTED", // CITES, from memory
        "isinglass, CARE", // Regulation 1169/2011, from memory
        "yolk of egg, CARE", // 21 CFR 101.17(h), from memory
        "methylated spirit, STOP", // Regulation 2019/787, from memory
        "acetic ether, STOP", // Spons 1894
        "Spanish juice, CARE", // Regulation 1169/2011, from memory
        "ergot, STOP", // Blyth 1895
        "cantharides, STOP", // Blyth 1895
        "coca wine, STOP", // controlled substance, from memory
        "chloral, STOP", // Blyth 1895
        "salicylic acid, STOP", // Spons 1894
    })
    void hazardsAreFlaggedUnderTheirPeriodNames(String words, Caution.Level level) {
        Cautions cautions = of(words);
        assertFalse(cautions.hazards().isEmpty(), words);
        assertEquals(level, cautions.hazards().get(0).level(), words);
        assertEquals(level != Caution.Level.CARE, cautions.needAcknowledgement());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "loaf sugar", "lemon juice", "orange peel", "rum", "brandy", "soda water", "ice",
                "green tea", "nutmeg", "cinnamon", "mint", "honey", "gum syrup", "raspberries",
                "cognac", "rye whiskey", "pineapple", "borage", "cloves", "rose water", "salt"
            })
    void harmlessThingsAreNot(String words) {
        assertEquals(List.of(), of(words).all(), words);
    }

    @Test
    void theWordsSayWhatItIsWhichRuleAndToCheckTheLaw() {
        String words = of("calamus").hazards().get(0).words();
        assertTrue(words.contains("sweet flag"), words);
        assertTrue(words.contains("21 CFR 189.110") || words.contains("88/388"), words);
        assertTrue(words.contains("Check current local law"), words);
    }

    @Test
    void noCautionGivesMedicalAdvice() {
        for (Hazard hazard : thesaurus.hazards()) {
            String words = hazard.words().toLowerCase(Locale.ROOT);
            for (String advice :
                    List.of(
                            "you should take",
                            "dosage",
                            "treat with",
                            "remedy for",
                            "cures",
                            "safe dose",
                            "safe to drink")) {
                assertFalse(words.contains(advice), hazard.id());
            }
        }
    }

    @Test
    void rulesOfThePlaceComeFirst() {
        Cautions american =
                Cautions.of(List.of(sense("calamus")), List.of(), Where.of("2020", "New York, US"));
        assertTrue(american.hazards().get(0).words().contains("189.110"));
    }

    @Test
    void unknownIsNeverFreeFrom() {
        Cautions unresolved =
                Cautions.of(
                        List.of(sense("gin")), List.of("mystery cordial"), Circumstances.UNKNOWN);
        assertFalse(unresolved.together().assessed());
        assertEquals(List.of("mystery cordial"), unresolved.unknown());
        assertFalse(of("aromatic bitters").together().assessed());
        assertTrue(of("gin", "lemon juice", "loaf sugar").together().assessed());
    }

    /** Lists of Regulation (EU) No 1169/2011, annex II, and of the FALCPA, from memory. */
    @ParameterizedTest
    @CsvSource({
        "orgeat, NUTS",
        "almond milk, NUTS",
        "cream, MILK",
        "white of egg, EGGS",
        "ale, GLUTEN",
        "barley water, GLUTEN",
        "claret, SULPHITES",
        "sherry, SULPHITES",
        "isinglass, FISH",
        "celery bitters, CELERY",
        "mustard, MUSTARD",
        "sesame, SESAME",
        "soy sauce, SOYBEANS",
        "peanuts, PEANUTS",
        "oysters, MOLLUSCS",
        "lupin seed, LUPIN",
        "advocaat, EGGS",
        "port wine, SULPHITES",
        "noyau, NUTS",
        "butter, MILK",
        "porter, GLUTEN",
        "Worcestershire sauce, FISH",
        "shrimp, CRUSTACEANS",
        "wheat flour, WHEAT",
    })
    void allergensAreKnown(String words, Allergen allergen) {
        assertTrue(sense(words).allergens().contains().contains(allergen), words);
    }

    @Test
    void theListsHaveFourteenAndNine() {
        assertEquals(14, List.of(Allergen.values()).stream().filter(Allergen::isEuropean).count());
        assertEquals(9, List.of(Allergen.values()).stream().filter(Allergen::isAmerican).count());
    }

    /** Kappeler 1895 pours burning spirit; Beeton 1861 no. 1835 counts children. */
    @Test
    void fireAndChildrenAreSeenInTheWords() {
        List<Caution> fire = Cautions.inWords("Ignite the rum and stir.", thesaurus);
        assertEquals(1, fire.size());
        assertEquals(Caution.Level.CARE, fire.get(0).level());
        List<Caution> children =
                Cautions.inWords("A weak negus, enough for ten children.", thesaurus);
        assertEquals(Caution.Level.STOP, children.get(0).level());
        assertEquals(List.of(), Cautions.inWords("Stir the rum gently over the ice.", thesaurus));
    }
}
