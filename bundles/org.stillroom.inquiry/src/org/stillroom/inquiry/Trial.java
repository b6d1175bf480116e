package org.stillroom.inquiry;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.LineCorrections;
import org.stillroom.reading.spec.SpecResolver;

/**
 * What a recipe would say if a line were corrected; nothing is decided by trying.
 *
 * @param version the recipe with the correction carried out
 * @param line the corrected line in millilitres, unless the words are no line
 */
public record Trial(Version version, Optional<SpecLine> line) {

    /**
     * Tries a correction.
     *
     * @param versionId the recipe
     * @param words the words concerned
     * @param values as of a decision of the kind {@code line}
     * @return nothing where the recipe is not in the library, or does not hold the words
     */
    public static Optional<Trial> of(
            Study study, String versionId, Span words, Map<String, String> values) {
        return study.version(versionId)
                .filter(v -> v.witness().span().contains(words))
                .flatMap(
                        v ->
                                study.book(v.source().id())
                                        .map(b -> of(study.knowledge(), b, v, words, values)));
    }

    private static Trial of(
            Knowledge knowledge,
            BookStudy book,
            Version version,
            Span words,
            Map<String, String> values) {
        Source source = version.source();
        Assertion trial =
                new Assertion(
                        "",
                        "",
                        "",
                        "line",
                        source.id(),
                        Optional.of(Anchor.of(source.text(), words)),
                        new TreeMap<>(values),
                        Optional.empty());
        Reading reading = LineCorrections.corrected(version.reading(), source, trial, words);
        SpecResolver resolver =
                SpecResolver.forBook(
                        knowledge.measures(),
                        knowledge.thesaurus(),
                        book.reading().readings(),
                        source.bibliography().circumstances(),
                        book.measures());
        Version tried =
                new Version(source, resolver.resolve(reading, version.words()), version.putRight());
        Optional<ReadingLine> line = LineCorrections.lineAt(reading, words);
        return new Trial(
                tried,
                line.flatMap(
                        l ->
                                tried.spec().lines().stream()
                                        .filter(s -> s.line().equals(l))
                                        .findFirst()));
    }
}
