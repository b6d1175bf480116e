package org.stillroom.reading.grammar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.stillroom.model.text.Folding;

/**
 * One row of the vocabulary of a language: a word or phrase and what it is in a recipe.
 *
 * @param kind its class (“measure”, “verb”, “head” of an ingredient's name, “vessel”, “number”)
 * @param form the folded words
 * @param value what they stand for, or empty
 */
public record VocabularyRow(String kind, String form, String value) {

    /** The languages that have a vocabulary, English first. */
    public static final List<String> LANGUAGES = List.of("en", "fr", "de", "es");

    /**
     * Returns the rows of a language.
     *
     * @throws IllegalArgumentException if it is none of {@link #LANGUAGES}
     */
    public static List<VocabularyRow> of(String language) {
        String name = language + ".tsv";
        try (InputStream in = VocabularyRow.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException(
                        "There is no vocabulary for “"
                                + language
                                + "”; there are "
                                + String.join(", ", LANGUAGES)
                                + ".");
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split("\t", -1))
                    .map(c -> new VocabularyRow(c[0], Folding.foldWord(c[1]), c[2]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The vocabulary " + name + " cannot be read", e);
        }
    }
}
