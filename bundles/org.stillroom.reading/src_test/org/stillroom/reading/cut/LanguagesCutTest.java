package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.Reader;

/** Plain books in French, German and Spanish are cut as English ones are; all invented. */
class LanguagesCutTest {

    private static final String FRENCH =
            """
            PRÉFACE.

            On nous a demandé souvent la manière de bien servir au comptoir de la rade.

            PUNCH DE LA DIGUE.

            Mettez dans un grand verre deux cuillerées de sucre, le jus d'un citron et un verre de
            rhum; versez de l'eau chaude et servez.

            FLIP DU GABIER.

            Prenez un œuf frais, une cuillerée de sucre et un petit verre de cognac. Agitez et passez.
            """;

    private static final String GERMAN =
            """
            VORWORT.

            Oft hat man uns gefragt, wie im Hafen ausgeschenkt wird.

            DEICHPUNSCH.

            Man nimmt zwei Flaschen Rotwein, ein Pfund Zucker und den Saft von drei Zitronen,
            läßt alles heiß werden und gießt eine halbe Flasche Rum hinzu.

            LOTSENFLIP.

            Ein Eigelb, zwei Löffel Zucker und ein Glas Sherry werden gut geschüttelt.
            """;

    private static final String SPANISH =
            """
            PRÓLOGO.

            Muchos nos han preguntado cómo se sirve en el muelle.

            PONCHE DEL FARO.

            El zumo de dos limones, una libra de azúcar y una botella de ron; se mezcla con agua
            hirviendo y se sirve caliente.

            COPA DEL PRÁCTICO.

            Una copita de ginebra, dos gotas de amargo y una cucharada de azúcar. Bátase y sírvase.
            """;

    @ParameterizedTest
    @CsvSource({
        "fr,PUNCH DE LA DIGUE,FLIP DU GABIER",
        "de,DEICHPUNSCH,LOTSENFLIP",
        "es,PONCHE DEL FARO,COPA DEL PRÁCTICO"
    })
    void cutsAPlainBook(String language, String first, String second) {
        String book =
                switch (language) {
                    case "fr" -> FRENCH;
                    case "de" -> GERMAN;
                    default -> SPANISH;
                };
        Source source =
                new Source("b.txt", Bibliography.titled("b"), SourceText.of(book), List.of(), "");
        List<String> titles =
                Reader.standard().read(source, List.of(), Progress.SILENT).readings().stream()
                        .map(r -> r.witness().title())
                        .toList();
        assertEquals(List.of(first, second), titles);
    }
}
