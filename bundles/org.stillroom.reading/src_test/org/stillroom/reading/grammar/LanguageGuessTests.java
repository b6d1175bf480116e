package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The language of a passage is told by its small words, whatever the book declares. */
class LanguageGuessTests {

    private static final String ENGLISH =
            "Put into a tumbler one spoonful of sugar, the juice of half a lemon and a glass of rum."
                    + " Fill with ice and stir.";
    private static final String FRENCH =
            "Mettez dans un verre une cuillerée de sucre, le jus d'un citron et un verre de rhum."
                    + " Remplir de glace, puis versez sur le tout de l'eau de Seltz.";
    private static final String GERMAN =
            "Man gibt in ein Glas einen Löffel Zucker, den Saft einer Zitrone und ein Glas Rum."
                    + " Das Ganze wird mit Eis gut geschüttelt und mit Wasser aufgefüllt.";
    private static final String SPANISH =
            "Se pone en un vaso una cucharada de azúcar, el jugo de un limón y una copa de ron."
                    + " Se llena con hielo, se agita y se cuela en la copa.";

    private static String passage(String language) {
        return switch (language) {
            case "fr" -> FRENCH;
            case "de" -> GERMAN;
            case "es" -> SPANISH;
            default -> ENGLISH;
        };
    }

    @ParameterizedTest
    @CsvSource({"en,", "fr,", "de,", "es,", "en,fr", "fr,en", "de,en", "es,en", "es,fr", "de,es"})
    void tellsThePassage(String language, String declared) {
        assertEquals(language, LanguageGuess.of(passage(language), Optional.ofNullable(declared)));
    }

    @ParameterizedTest
    @CsvSource({"fr", "de", "es", "en"})
    void aFewWordsFollowTheBook(String declared) {
        assertEquals(
                declared, LanguageGuess.of("Gin, Vermouth, Angostura.", Optional.of(declared)));
    }
}
