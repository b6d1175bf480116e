package org.stillroom.reading.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.measures.MeasureTable;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.Reader;

/** Shares, per cents and parts; the drinks are invented, the arithmetic is plain. */
class SharesTests {

    private static final Reader READER = Reader.standard();

    private static Spec spec(String words) {
        String book = "A DRINK.\n\n" + words + "\n";
        Source source =
                new Source("b.md", Bibliography.titled("b"), SourceText.of(book), List.of(), "");
        List<Reading> readings = READER.read(source, List.of(), Progress.SILENT).readings();
        return SpecResolver.forBook(
                        MeasureTable.shipped(),
                        Thesaurus.shipped(),
                        readings,
                        Circumstances.UNKNOWN)
                .resolve(readings.get(0), book);
    }

    private static List<String> shares(Spec spec) {
        return spec.lines().stream()
                .map(SpecLine::share)
                .flatMap(Optional::stream)
                .map(Rational::toString)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Take 60 per cent. gin, 40 per cent. vermouth. Shake and strain.|3/5 2/5",
                "2 parts rum, 1 part lime juice, 1 part sugar syrup. Shake.|1/2 1/4 1/4",
                "Equal parts gin, vermouth and sherry. Stir and strain.|1/3 1/3 1/3",
                "1/2 gin, 1/4 vermouth, 1/4 sherry, 1 dash bitters. Stir.|1/2 1/4 1/4"
            })
    void whatWordsGiveAsShares(String words, String expected) {
        Spec spec = spec(words);
        assertEquals(List.of(expected.split(" ")), shares(spec));
        assertTrue(spec.volume().isEmpty(), "nobody tells how large the drink is");
    }

    @Test
    void onePartAloneIsNoShare() {
        assertEquals(List.of(), shares(spec("1 part rum, 2 dashes bitters. Stir.")));
    }

    @Test
    void theStrengthFollowsFromTheShares() {
        Estimate half = spec("1 part brandy, 1 part water. Stir.").strength().orElseThrow();
        Estimate all = spec("2 ounces brandy. Stir.").strength().orElseThrow();
        assertEquals(all.likely() / 2, half.likely(), 1e-9);
        assertEquals(all.low() / 2, half.low(), 1e-9);
        Spec unknown = spec("1/2 brandy, 1/2 gin, 1 wineglass of claret. Stir.");
        assertTrue(unknown.strength().isEmpty(), "a wineglass of a whole of unknown size");
    }
}
